// Reads the pull that a bench marks at.
#include "libsplice/cut/settings.h"

namespace libsplice {

Result<MarkingTension> read_marking_tension(std::string_view text) {
    if (text == "reference") {
        return MarkingTension{};
    }
    if (text == "slack") {
        return MarkingTension{MarkingTension::Basis::slack, {}};
    }
    const auto tension = read_tension(text);
    if (!tension || tension->basis != Tension::Basis::force) {
        return Unexpected(
            Fault{Code::not_a_tension,
                  "a marking tension is reference, slack, or a force such as 3 kgf, not \"" +
                      std::string(text) + "\""});
    }
    return MarkingTension{MarkingTension::Basis::load, Force(tension->value)};
}

} // namespace libsplice
