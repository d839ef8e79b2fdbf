#include "libsplice/allowance/parts/locked_part.h"

#include "libsplice/allowance/parts/parts.h"

namespace libsplice {

Result<End> locked_eye_with_bury(const Request& request, EyeFields eye_fields,
                                 BuryFields bury_fields) {
    const Length rope = request.rope.counting_diameter();
    auto allowance = eye_with_bury(request, eye_fields, bury_fields, rope);
    if (allowance) {
        const Length round(*allowance->find(ValueName::rope_round_eye_m));
        add_crossing(*allowance, 2.0, allowance->standing_mark - to_nanometres(round), rope);
    }
    const auto figure = request.rules.find(FigureId::crossing);
    // An eye that is loaded before it is measured has closed up by then.
    const auto setting = bury_fields.setting;
    const bool loaded_before =
        setting && request.fields.has(*setting) && !(request.fields.at(*setting) > 0.0);
    if (allowance && figure != nullptr && !loaded_before) {
        auto closing = from_figure(*figure, rope);
        closing.length = -closing.length;
        allowance->add(row_of(Item::crossing, closing, Group::setting));
    }
    return allowance;
}

} // namespace libsplice
