#include "libsplice/cut/settings.h"

namespace libsplice {

Result<MarkingPull> read_marking_pull(std::string_view text) {
    if (text == "reference") {
        return MarkingPull{};
    }
    if (text == "slack") {
        return MarkingPull{MarkingPull::Basis::slack, {}};
    }
    const auto tension = read_tension(text);
    if (!tension || tension->basis != Tension::Basis::force) {
        return Unexpected(
            Fault{Code::not_a_tension,
                  "a marking pull is reference, slack, or a force such as 3 kgf, not \"" +
                      std::string(text) + "\""});
    }
    return MarkingPull{MarkingPull::Basis::load, Force(tension->value)};
}

} // namespace libsplice
