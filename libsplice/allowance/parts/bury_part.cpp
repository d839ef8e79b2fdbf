// A tail inside its host: how long, how much host it uses, and where everything lies.
#include "libsplice/allowance/parts/bury_part.h"

#include "libsplice/units/show.h"

#include <algorithm>

namespace libsplice {

namespace {

/// Lengths that go with the rule's tail and change with it, unless the job gives them itself.
class InProportion {
  public:
    InProportion(Figures& need, const Request& request, const Host& host, Length tail)
        : need_(need), request_(request), host_(host), tail_(tail) {}

    /// `without` where the kind has no such length.
    [[nodiscard]] Length field_or(std::optional<std::size_t> field, FigureId figure,
                                  Length without) {
        if (!field) {
            return without;
        }
        if (const auto given = request_.fields.length(*field)) {
            return *given;
        }
        const Figure of_rule = need_.figure(figure);
        const Figure tail_of_rule = need_.figure(FigureId::tail);
        return need_.failed()
                   ? without
                   : tail_ * (of_rule.length(host_.counted) / tail_of_rule.length(host_.counted));
    }

  private:
    Figures& need_;
    const Request& request_;
    const Host& host_;
    Length tail_;
};

std::optional<Fault> longer_than_tail(Length taper, Length tail) {
    if (taper <= tail) {
        return std::nullopt;
    }
    return Fault{Code::taper_longer_than_tail,
                 "a taper of " + show_length(taper, UnitSystem::metric) +
                     " is longer than its tail of " + show_length(tail, UnitSystem::metric),
                 {},
                 "taper"};
}

std::optional<Fault> out_before_the_end(const BuryFacts& bury) {
    const Nanometres host = to_nanometres(bury.tail) + to_nanometres(bury.take_up);
    if (to_nanometres(bury.exit) >= host) {
        return std::nullopt;
    }
    const Nanometres whole = to_nanometres(millimetres(1.0));
    const Nanometres least = (host + whole - 1) / whole * whole; // what is shown is long enough
    return Fault{Code::field_out_of_range,
                 "the fid would come out before the tail's end; the exit must be at least " +
                     show_length(least, UnitSystem::metric) + " from the throat",
                 {},
                 "exit"};
}

/// K of a braid from the angle of its strands, with what the angle's spread does to it.
Figure constant_of_angle(const Figure& angle) {
    const auto constant_at = [](double count) {
        return braid_constant(degrees(count));
    };
    Figure constant = angle;
    constant.unit = FigureUnit::none;
    constant.value = constant_at(angle.number());
    constant.sd = constant.value - constant_at(angle.number() - angle.number_spread());
    constant.low = constant_at(angle.lowest_number());
    constant.high = constant_at(angle.highest_number());
    return constant;
}

/// One measured value says nothing of its spread: it is taken to err as much as the tables'.
Figure with_spread_of(const Figure& tables, Figure measured) {
    measured.sd = tables.sd;
    measured.origin = tables.origin;
    return measured;
}

/// Of a tail in one or two parts, the second of them thinned evenly.
Working working_of_even(const BuriedTail& tail, double constant) {
    const Length thinned = tail.size() > 1 ? tail.back().length : Length();
    return {FormulaId::take_up,
            {(tail[0].length + thinned).si(), thinned.si(), constant, tail[0].section_at_start,
             tail.back().section_at_end}};
}

/// Of a tail that drops its strands in pairs.
Working working_of_steps(Length tail, const TaperSchedule& schedule, double constant) {
    const auto pairs = static_cast<double>(schedule.drops.size());
    return {FormulaId::take_up_by_steps,
            {tail.si(), schedule.spacing.si() * (pairs + 1.0), pairs,
             static_cast<double>(schedule.strands), constant}};
}

/// The same formula for K once it was loaded, less what was taken up as spliced.
Working working_of_settling(const Working& settled, Length spliced) {
    Working working = settled;
    working.formula =
        settled.formula == FormulaId::take_up ? FormulaId::settling : FormulaId::settling_by_steps;
    working.numbers.push_back(spliced.si());
    return working;
}

/// The rows of the take-up: as spliced and what draws out of that; one of both where the bench
/// loads the end before it measures, or where the tail slides.
std::optional<Fault> add_take_up(const Request& request, BuryPart& bury,
                                 std::optional<std::size_t> settled_field) {
    Figures need(request);
    const auto constants = need.part(read_braid_constants(request));
    if (need.failed()) {
        return need.fault().error();
    }
    const Fault too_thick{Code::table_value_wrong,
                          "a tail of the rope's own size does not go into a braid with this braid "
                          "constant; 0.4 is the most"};
    BuryFacts& facts = bury.facts;
    auto spliced = need.part(take_up_of(facts.inside, constants.spliced, too_thick));
    auto settled = need.part(take_up_of(facts.inside, constants.settled, too_thick));
    if (need.failed()) {
        return need.fault().error();
    }
    if (const auto& schedule = bury.taper.schedule; schedule && !schedule->drops.empty()) {
        spliced.working = working_of_steps(facts.tail, *schedule, constants.spliced.number());
        settled.working = working_of_steps(facts.tail, *schedule, constants.settled.number());
    }
    facts.braid_constant = constants.settled.number();
    facts.take_up = spliced.length;
    facts.settling = settled.length - spliced.length;
    if (!settled_field || is_settled(request, settled_field)) {
        bury.take_up = settled;
        return std::nullopt;
    }
    bury.take_up = spliced;
    bury.settling = settled;
    bury.settling.length = facts.settling;
    bury.settling.sd = settled.sd - spliced.sd; // one constant: together they err as settled
    bury.settling.working = working_of_settling(settled.working, spliced.length);
    return std::nullopt;
}

void add_short_tail_cautions(End& end, const BuryPart& bury, const Request& request) {
    const auto shorter_than = [&](const Figure* figure) {
        return figure != nullptr &&
               to_nanometres(bury.facts.tail) < to_nanometres(figure->length(bury.host.diameter));
    };
    const auto advised = request.rules.find(FigureId::advised_tail);
    if (shorter_than(advised)) {
        end.add(Caution{
            "the tail of {tail} is shorter than is generally advised; lock-stitch it at the throat",
            advised->source});
    }
    const auto for_person = request.rules.find(FigureId::person_tail);
    if (shorter_than(for_person)) {
        end.add(Caution{"its tail is too short for a line that carries a person",
                        for_person->source, Caution::Weight::person_only});
    }
}

} // namespace

bool is_settled(const Request& request, std::optional<std::size_t> field) {
    return field && request.fields.has(*field) && request.fields.at(*field) > 0.5;
}

Host host_of(Length diameter) {
    return {diameter, diameter, diameter_over_bury(diameter)};
}

Result<BuryPart> read_bury(const Request& request, BuryFields fields, const Host& host) {
    Figures need(request);
    BuryPart bury;
    bury.host = host;
    bury.ends_inside = fields.taper.has_value();
    bury.tail = need.field_or(fields.tail, FigureId::tail, host.counted);
    BuryFacts& facts = bury.facts;
    facts.tail = bury.tail.length;
    facts.over = host.over;
    need.check(check_minimum(request, FigureId::minimum_tail, fields.tail_name, facts.tail,
                             host.diameter));
    if (const auto minimum = request.rules.find(FigureId::minimum_tail)) {
        facts.minimum = minimum->length(host.diameter);
    }
    InProportion to_tail(need, request, host, facts.tail);
    const Length taper = to_tail.field_or(fields.taper, FigureId::taper, {});
    need.check(longer_than_tail(taper, facts.tail));
    if (need.failed()) {
        return need.fault();
    }
    bury.taper = need.part(
        read_taper(request, {fields.taper, fields.pairs, fields.strands}, taper, host.diameter));
    facts.taper = bury.taper.length;
    facts.inside = bury.taper.schedule ? stepped_tail(facts.tail, *bury.taper.schedule)
                                       : tapered_tail(facts.tail, facts.taper);
    need.check(add_take_up(request, bury, fields.settled));
    if (need.failed()) {
        return need.fault();
    }
    const Length over_tail =
        from_nanometres(to_nanometres(facts.tail) + to_nanometres(facts.take_up));
    facts.exit = to_tail.field_or(fields.exit, FigureId::exit, over_tail);
    need.check(out_before_the_end(facts));
    if (need.failed()) {
        return need.fault();
    }
    const auto fid =
        request.rules.find(request.rope.imperial ? FigureId::fid : FigureId::fid_metric);
    if (fid != nullptr) {
        facts.fid = fid->length(host.counted);
    }
    return bury;
}

void add_bury_rows(End& end, const BuryPart& bury) {
    end.add(row_of(Item::tail, bury.tail));
    end.add(row_of(Item::take_up, bury.take_up, Group::take_up));
    if (to_nanometres(bury.settling.length) != 0) {
        end.add(row_of(Item::settling, bury.settling, Group::take_up));
    }
}

void lay_tail(End& end, const BuryPart& bury, const Request& request, Nanometres tail_end) {
    end.bury = bury.facts;
    const Nanometres taper_start = tail_end + to_nanometres(bury.facts.taper);
    const Nanometres width = to_nanometres(bury.host.diameter);
    if (taper_start > tail_end) {
        end.add(Span{Span::Form::tapered, tail_end, taper_start, width});
    }
    if (bury.ends_inside) {
        lay_taper(end, bury.taper, request, tail_end);
        end.bury->end = bury.taper.facts;
    }
    end.add(Span{bury.host.seen, taper_start, tail_end + to_nanometres(bury.facts.tail), width});
    end.bury_reach = to_nanometres(bury.facts.tail) + to_nanometres(bury.facts.take_up);
    end.fid_reach = to_nanometres(bury.facts.exit);
    add_short_tail_cautions(end, bury, request);
}

void lay_bury(End& end, const BuryPart& bury, const Request& request, BuryPlace place) {
    lay_tail(end, bury, request, place.tail_end);
    if (end.bury_reach != end.fid_reach) {
        end.add(Mark{MarkName::bury_end, place.throat + end.bury_reach});
    }
    end.add(Mark{MarkName::exit, place.throat + end.fid_reach});
}

Result<BraidConstants> read_braid_constants(const Request& request) {
    if (const Figure* angle = request.rules.find(FigureId::take_up_angle)) {
        const Figure constant = constant_of_angle(*angle);
        return BraidConstants{constant, constant};
    }
    Figures need(request);
    const Figure settled = need.figure(FigureId::braid_constant);
    const Figure spliced = need.figure(FigureId::spliced_constant);
    if (need.failed()) {
        return need.fault();
    }
    const bool of_shop = request.citations.at(settled.source).status == Status::shop;
    const auto& given = of_shop ? settled : request.rope.braid_constant.value_or(settled);
    const Figure own = given.sd > 0.0 ? given : with_spread_of(spliced, given);
    return BraidConstants{spliced.number() > own.number() ? spliced : own, own};
}

Result<SourcedLength> take_up_of(const BuriedTail& tail, const Figure& constant, Fault too_thick) {
    const auto length = take_up_over(tail, constant.number());
    if (!length) {
        return Unexpected(std::move(too_thick));
    }
    const double less = std::max(0.0, constant.number() - constant.number_spread());
    return SourcedLength{*length, *length - *take_up_over(tail, less), constant.origin,
                         constant.source, working_of_even(tail, constant.number())};
}

} // namespace libsplice
