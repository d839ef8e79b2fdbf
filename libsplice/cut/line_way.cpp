#include "libsplice/cut/line_way.h"

#include "libsplice/base/text.h"

namespace libsplice {

namespace {

std::optional<Length> read_distance(LineFields& fields, Column column) {
    const auto count = fields.length(column, 1);
    return count ? std::optional(from_nanometres(*count)) : std::nullopt;
}

/// Ends that are alike, or only cut, can change places.
void check_turnable(LineFields& fields, const LinePlan& plan) {
    if (!fields.yes(Column::turnable)) {
        return;
    }
    const auto& a = plan.end(End::a);
    const auto& b = plan.end(End::b);
    const bool plain = !a.allowance->made && !b.allowance->made;
    if (!plain && a.allowance != b.allowance) {
        fields.add(Fault{Code::cannot_be_both,
                         "a line that is turned end for end needs both ends alike, or only cut and "
                         "whipped"},
                   Column::turnable);
    }
}

/// `0.6 m at 8.2 m`: finished length and where it starts.
void bind_sleeve(const JobLine& line, const Rules& rules, LineFields& fields, LinePlan& plan) {
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
    const bool whole = middle != std::string_view::npos && length && from &&
                       length->length > Length() && from->length >= Length();
    const auto loss = rules.need(FigureId::sleeve_loss);
    if (!whole || !loss) {
        fields.add(whole ? loss.error()
                         : Fault{Code::not_a_length,
                                 "\"" + std::string(text) +
                                     "\" must be a length and a place, such as 0.6 m at 8.2 m"},
                   Column::sleeve);
        return;
    }
    const double kept = 1.0 - loss->number();
    const Length cut = length->length / kept;
    plan.sleeve = Sleeve{length->length, from->length, cut, cut * (loss->number_spread() / kept),
                         loss->source};
}

} // namespace

void bind_way(const JobLine& line, const Book& book, LineFields& fields, LinePlan& plan) {
    const Rules rules = book.common_rules(*plan.rope);
    plan.headroom = read_distance(fields, Column::headroom);
    plan.travel = read_distance(fields, Column::travel);
    plan.cleat = read_distance(fields, Column::cleat);
    plan.passes = read_distance(fields, Column::passes);
    if (const auto cover = rules.find(FigureId::cover_at_cleat)) {
        plan.cover_at_cleat = {cover->length(plan.rope->diameter), cover->source};
    }
    bind_sleeve(line, rules, fields, plan);
    check_turnable(fields, plan);
}

} // namespace libsplice
