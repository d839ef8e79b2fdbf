#include "libsplice/allowance/parts/bury_part.h"

#include "libsplice/allowance/parts/take_up_part.h"
#include "libsplice/units/show.h"

namespace libsplice {

namespace {

/// A length that goes with the rule's tail and changes with it, unless the job gives the length
/// itself; `without` where the kind has no such length.
Result<Length> field_or_in_proportion(const Request& request, std::optional<std::size_t> field,
                                      FigureId figure, const BuryPart& bury, Length without) {
    if (!field) {
        return without;
    }
    if (const auto given = request.fields.length(*field)) {
        return *given;
    }
    const auto of_rule = request.rules.need(figure);
    const auto tail_of_rule = request.rules.need(FigureId::tail);
    if (!of_rule || !tail_of_rule) {
        return Unexpected(of_rule ? tail_of_rule.error() : of_rule.error());
    }
    return bury.tail.length * (of_rule->length(bury.counted) / tail_of_rule->length(bury.counted));
}

Result<TaperPart> taper_of(const Request& request, BuryFields fields, const BuryPart& bury) {
    const auto length = field_or_in_proportion(request, fields.taper, FigureId::taper, bury, {});
    if (!length) {
        return Unexpected(length.error());
    }
    if (*length > bury.tail.length) {
        return Unexpected(Fault{Code::taper_longer_than_tail,
                                "a taper of " + show_length(*length, UnitSystem::metric) +
                                    " is longer than its tail of " +
                                    show_length(bury.tail.length, UnitSystem::metric),
                                {},
                                "taper"});
    }
    return read_taper(request, {fields.taper, fields.pairs, fields.strands}, *length, bury.rope);
}

Result<SourcedLength> take_up_of(const Request& request, const BuryPart& bury) {
    auto take_up = read_take_up(request, tail_inside(bury),
                                {Code::table_value_wrong,
                                 "a tail of the rope's own size does not go into a braid with this "
                                 "braid constant; 0.4 is the most"});
    const auto spread = request.rules.need(FigureId::take_up_spread);
    if (take_up && !spread) {
        return Unexpected(spread.error());
    }
    if (take_up) {
        set_usual_spread(*take_up, request, spread->length(bury.rope));
    }
    return take_up;
}

SourcedLength setting_of(const Request& request, std::optional<std::size_t> field, Length tail) {
    if (!field) {
        return {};
    }
    if (request.fields.has(*field)) {
        return {tail * -request.fields.at(*field), {}, SpreadOrigin::none, cited_job};
    }
    const auto figure = request.rules.find(FigureId::setting);
    if (figure == nullptr) {
        return {};
    }
    return {tail * -figure->number(), tail * figure->number_spread(), figure->origin,
            figure->source};
}

} // namespace

Result<BuryPart> read_bury(const Request& request, BuryFields fields, Length rope,
                           std::optional<Length> counted) {
    BuryPart bury;
    bury.rope = rope;
    bury.counted = counted.value_or(rope);
    bury.outside = diameter_over_bury(rope);
    bury.ends_inside = fields.taper.has_value();
    auto tail = field_or_figure(request, fields.tail, FigureId::tail, bury.counted);
    if (!tail) {
        return Unexpected(std::move(tail).error());
    }
    bury.tail = *tail;
    if (auto fault =
            check_minimum(request, FigureId::minimum_tail, "tail", bury.tail.length, rope)) {
        return Unexpected(*std::move(fault));
    }
    if (const auto minimum = request.rules.find(FigureId::minimum_tail)) {
        bury.minimum = minimum->length(rope);
    }
    auto taper = taper_of(request, fields, bury);
    if (!taper) {
        return Unexpected(std::move(taper).error());
    }
    bury.taper = *std::move(taper);
    const auto take_up = take_up_of(request, bury);
    if (!take_up) {
        return Unexpected(take_up.error());
    }
    bury.take_up = *take_up;
    bury.braid_constant = read_braid_constant(request)->number();
    const Nanometres host = to_nanometres(bury.tail.length) + to_nanometres(bury.take_up.length);
    const auto exit =
        field_or_in_proportion(request, fields.exit, FigureId::exit, bury, from_nanometres(host));
    if (!exit) {
        return Unexpected(exit.error());
    }
    bury.exit = *exit;
    bury.setting = setting_of(request, fields.setting, bury.tail.length);
    if (to_nanometres(bury.exit) < host) {
        return Unexpected(
            Fault{Code::field_out_of_range,
                  "the fid would come out before the tail's end; the exit must be at least " +
                      show_length(bury.tail.length + bury.take_up.length, UnitSystem::metric) +
                      " from the throat",
                  {},
                  "exit"});
    }
    return bury;
}

std::array<BuriedPart, 2> tail_inside(const BuryPart& bury) {
    return tapered_tail(bury.tail.length, bury.taper.length, 1.0, bury.taper.even_end);
}

void add_bury_rows(End& allowance, const BuryPart& bury) {
    allowance.add(row_of(Item::tail, bury.tail));
    allowance.add(row_of(Item::take_up, bury.take_up, Group::take_up));
    if (to_nanometres(bury.setting.length) != 0) {
        allowance.add(row_of(Item::setting, bury.setting, Group::setting));
    }
}

void add_taper_marks(End& allowance, const BuryPart& bury, Nanometres tail_end) {
    add_taper_marks(allowance, bury.taper, tail_end);
}

void add_bury_marks(End& allowance, const BuryPart& bury) {
    allowance.bury_reach = to_nanometres(bury.tail.length) + to_nanometres(bury.take_up.length);
    allowance.fid_reach = to_nanometres(bury.exit);
    if (allowance.bury_reach != allowance.fid_reach) {
        allowance.add(Mark{MarkName::bury_end, allowance.standing_mark + allowance.bury_reach});
    }
    allowance.add(Mark{MarkName::exit, allowance.standing_mark + allowance.fid_reach});
}

void add_bury_facts(End& allowance, const BuryPart& bury, const Request& request,
                    Nanometres tail_end) {
    const auto add = [&](ValueName name, Length value) {
        allowance.add(Value{name, value.si()});
    };
    add(ValueName::tail_m, bury.tail.length);
    add(ValueName::bury_m, bury.tail.length);
    add(ValueName::taper_m, bury.taper.length);
    add(ValueName::take_up_m, bury.take_up.length);
    add(ValueName::setting_m, bury.setting.length);
    add(ValueName::exit_m, bury.exit);
    allowance.add(Value{ValueName::braid_constant, bury.braid_constant});
    add(ValueName::over_bury_m, bury.outside);
    if (bury.minimum > Length()) {
        add(ValueName::minimum_bury_m, bury.minimum);
    }
    const auto fid =
        request.rules.find(request.rope.imperial ? FigureId::fid : FigureId::fid_metric);
    if (fid != nullptr) {
        add(ValueName::fid_m, fid->length(bury.counted));
    }
    const Nanometres taper_start = tail_end + to_nanometres(bury.taper.length);
    const Nanometres width = to_nanometres(bury.rope);
    if (taper_start > tail_end) {
        allowance.add(Span{Span::Form::tapered, tail_end, taper_start, width});
    }
    if (bury.ends_inside) {
        add_taper_facts(allowance, bury.taper, request, tail_end);
    }
    allowance.add(Span{bury.seen, taper_start, tail_end + to_nanometres(bury.tail.length), width});

    const auto shorter_than = [&](const Figure* figure) {
        return figure != nullptr &&
               to_nanometres(bury.tail.length) < to_nanometres(figure->length(bury.rope));
    };
    const auto advised = request.rules.find(FigureId::advised_tail);
    if (shorter_than(advised)) {
        allowance.add(Caution{
            "the tail of {tail} is shorter than is generally advised; lock-stitch it at the throat",
            advised->source});
    }
    const auto for_person = request.rules.find(FigureId::person_tail);
    if (shorter_than(for_person)) {
        allowance.add(Caution{"its tail is too short for a line that carries a person",
                              for_person->source, Caution::Weight::person_only});
    }
}

} // namespace libsplice
