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
    return Fault{Code::field_out_of_range,
                 "the fid would come out before the tail's end; the exit must be at least " +
                     show_length(bury.tail + bury.take_up, UnitSystem::metric) + " from the throat",
                 {},
                 "exit"};
}

Result<SourcedLength> take_up_of(const Request& request, const BuryPart& bury) {
    Figures need(request);
    auto take_up = need.part(read_take_up(
        request, bury.facts.inside,
        {Code::table_value_wrong, "a tail of the rope's own size does not go into a braid with "
                                  "this braid constant; 0.4 is the most"}));
    const Figure spread = need.figure(FigureId::take_up_spread);
    if (need.failed()) {
        return need.fault();
    }
    set_usual_spread(take_up, request, spread.length(bury.host.diameter));
    return take_up;
}

SourcedLength settling_of(const Request& request, std::optional<std::size_t> field, Length tail) {
    const auto figure = request.rules.find(FigureId::setting);
    if (!field || is_settled(request, field) || figure == nullptr) {
        return {};
    }
    return {tail * -figure->number(),
            tail * figure->number_spread(),
            figure->origin,
            figure->source,
            {FormulaId::settling, {figure->number(), tail.si()}}};
}

/// The tables' spread as a share of the take-up over the tail that they state it for.
Result<double> usual_share(const Request& request, double constant) {
    Figures need(request);
    const Figure spread = need.figure(FigureId::take_up_spread);
    const Figure stated_tail = need.figure(FigureId::take_up_tail);
    const Figure stated_taper = need.figure(FigureId::take_up_taper);
    if (need.failed()) {
        return need.fault();
    }
    const Length diameter = metres(1.0);
    const auto stated = take_up_over(
        tapered_tail(stated_tail.length(diameter), stated_taper.length(diameter)), constant);
    if (!stated) {
        return Unexpected(Fault{Code::table_value_wrong,
                                "a tail of the rope's own size does not go into this braid"});
    }
    return *stated > Length() ? spread.length(diameter) / *stated : 0.0;
}

Working working_of_take_up(const std::array<BuriedPart, 2>& tail, double constant) {
    return {FormulaId::take_up,
            {(tail[0].length + tail[1].length).si(), tail[1].length.si(), constant,
             tail[0].section_at_start, tail[1].section_at_end}};
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
    facts.inside = tapered_tail(facts.tail, facts.taper, 1.0, bury.taper.even_end);
    if (need.failed()) {
        return need.fault();
    }
    bury.take_up = need.part(take_up_of(request, bury));
    facts.take_up = bury.take_up.length;
    const Length over_tail =
        from_nanometres(to_nanometres(facts.tail) + to_nanometres(facts.take_up));
    facts.exit = to_tail.field_or(fields.exit, FigureId::exit, over_tail);
    bury.settling = settling_of(request, fields.settled, facts.tail);
    facts.settling = bury.settling.length;
    facts.braid_constant = need.part(read_braid_constant(request)).number();
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
        end.add(row_of(Item::settling, bury.settling, Group::settling));
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

Result<Figure> read_braid_constant(const Request& request) {
    const Figure* of_kind = request.rules.find(FigureId::braid_constant);
    if (of_kind != nullptr && request.citations.at(of_kind->source).status == Status::shop) {
        return *of_kind;
    }
    if (const auto& own = request.rope.braid_constant) {
        return *own;
    }
    return request.rules.need(FigureId::braid_constant);
}

Result<SourcedLength> read_take_up(const Request& request, const std::array<BuriedPart, 2>& tail,
                                   Fault too_thick) {
    const auto constant = read_braid_constant(request);
    if (!constant) {
        return Unexpected(constant.error());
    }
    const auto length = take_up_over(tail, constant->number());
    if (!length) {
        return Unexpected(std::move(too_thick));
    }
    SourcedLength take_up{*length,
                          {},
                          constant->origin,
                          constant->source,
                          working_of_take_up(tail, constant->number())};
    if (constant->sd > 0.0) {
        const double less = std::max(0.0, constant->number() - constant->number_spread());
        take_up.sd = *length - *take_up_over(tail, less);
        return take_up;
    }
    const auto share = usual_share(request, constant->number());
    if (!share) {
        return Unexpected(share.error());
    }
    take_up.sd = *length * *share;
    take_up.origin = SpreadOrigin::stated_guess;
    return take_up;
}

void set_usual_spread(SourcedLength& take_up, const Request& request, Length usual) {
    const auto constant = read_braid_constant(request);
    if (!constant || !(constant->sd > 0.0)) {
        take_up.sd = usual;
        take_up.origin = SpreadOrigin::stated_guess;
    }
}

} // namespace libsplice
