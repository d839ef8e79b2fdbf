#include "libsplice/cut/bind/along_line.h"

#include "libsplice/base/text.h"

namespace libsplice {

namespace {

std::optional<Length> read_distance(LineFields& fields, Column column) {
    const auto count = fields.length(column, 1);
    return count ? std::optional(from_nanometres(*count)) : std::nullopt;
}

/// `0.6 m at 8.2 m`: finished length and where it starts.
void read_sleeve(const JobLine& line, LineFields& fields, LinePlan& plan) {
    const auto text = line.text(Column::sleeve);
    if (text.empty()) {
        return;
    }
    constexpr std::string_view at = " at ";
    const auto middle = text.find(at);
    const auto length = read_length(trimmed(text.substr(0, middle)));
    const auto from = middle == std::string_view::npos
                          ? length
                          : read_length(trimmed(text.substr(middle + at.size())));
    if (middle == std::string_view::npos || !length || !from || !(length->length > Length()) ||
        from->length < Length()) {
        fields.add(Fault{Code::not_a_length, "\"" + std::string(text) +
                                                 "\" must be a length and a place, such as 0.6 m "
                                                 "at 8.2 m"},
                   Column::sleeve);
        return;
    }
    plan.sleeve = Sleeve{length->length, from->length, length->length, {}, {}};
}

/// Ends that are alike, or only cut, can change places.
void check_turnable(LineFields& fields, const LinePlan& plan) {
    const auto& a = plan.end(LineEnd::a);
    const auto& b = plan.end(LineEnd::b);
    const bool plain = !a.allowance->made && !b.allowance->made;
    if (plan.reversible && !plain && a.allowance != b.allowance) {
        fields.add(Fault{Code::cannot_be_both,
                         "a line that is turned end for end needs both ends alike, or only cut and "
                         "whipped"},
                   Column::reversible);
    }
}

/// A sleeve gets shorter as it is opened over the line.
void bind_sleeve(const Rules& rules, LineFields& fields, Sleeve& sleeve) {
    const auto loss = rules.need(FigureId::sleeve_loss);
    if (!loss) {
        fields.add(loss.error(), Column::sleeve);
        return;
    }
    const double kept = 1.0 - loss->number();
    sleeve.cut = sleeve.finished / kept;
    sleeve.sd = sleeve.cut * (loss->number_spread() / kept);
    sleeve.source = loss->source;
}

} // namespace

void read_way(const JobLine& line, LineFields& fields, LinePlan& plan) {
    plan.headroom = read_distance(fields, Column::headroom);
    plan.travel = read_distance(fields, Column::travel);
    plan.cleat = read_distance(fields, Column::cleat);
    plan.smallest_hole = read_distance(fields, Column::smallest_hole);
    plan.reversible = fields.yes(Column::reversible);
    plan.wash = fields.yes(Column::wash);
    read_sleeve(line, fields, plan);
}

void bind_way(const Book& book, LineFields& fields, LinePlan& plan) {
    const Rules rules = book.common_rules(*plan.rope);
    if (const auto cover = rules.find(FigureId::cover_at_cleat)) {
        plan.cover_at_cleat = {cover->length(plan.rope->diameter), cover->source};
    }
    if (const auto sheave = rules.find(FigureId::advised_sheave)) {
        plan.advised_sheave = {sheave->length(plan.rope->diameter), sheave->source};
    }
    if (const auto pair = rules.find(FigureId::pair_tolerance)) {
        plan.pair_tolerance = to_nanometres(pair->length(plan.rope->diameter));
    }
    if (plan.sleeve) {
        bind_sleeve(rules, fields, *plan.sleeve);
    }
    check_turnable(fields, plan);
}

} // namespace libsplice
