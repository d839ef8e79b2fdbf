#include "cli/reel_options.h"

#include "libsplice/base/text.h"
#include "libsplice/units/read.h"
#include "libsplice/units/show.h"

#include "cli/options.h"

#include <algorithm>

namespace libsplice::cli {

namespace {

Result<Nanometres> read_kerf(const std::string& text) {
    const auto kerf = read_length(text);
    if (!kerf) {
        return wrong_value("kerf", text, kerf.error().text);
    }
    if (kerf->length.si() < 0.0 || kerf->length > metres(1.0)) {
        return wrong_value("kerf", text, "it must be from 0 to 1 m");
    }
    return to_nanometres(kerf->length);
}

} // namespace

Result<ReelOptions> read_reel_options(const CommandLine& line) {
    ReelOptions options;
    options.shelf = line.value("shelf", "");
    options.commit = line.has("commit");
    if (options.shelf.empty()) {
        return Unexpected(Fault{Code::not_a_choice, "reel needs a shelf: --shelf FILE"});
    }
    if (options.commit && options.shelf == "-") {
        return Unexpected(
            Fault{Code::not_a_choice, "--commit needs a shelf that is a file, and - is none"});
    }
    if (line.has("kerf")) {
        const auto kerf = read_kerf(line.value("kerf", ""));
        if (!kerf) {
            return Unexpected(kerf.error());
        }
        options.kerf = *kerf;
    }
    const std::string aim = line.value("aim", "cost");
    const auto names = aim_names();
    const auto known = std::ranges::find(names, aim);
    if (known == names.end()) {
        return wrong_value("aim", aim,
                           "it must be one of " + listed(names) + did_you_mean(aim, names));
    }
    options.aim = static_cast<Aim>(known - names.begin());
    const std::string seconds = line.value("seconds", "10");
    const auto number = read_number(seconds);
    constexpr double longest = 86'400.0;
    if (!number || !(*number > 0.0) || *number > longest) {
        return wrong_value("seconds", seconds, "it must be a number over 0 and up to 86400");
    }
    options.seconds = *number;
    return options;
}

std::string progress_of(Aim aim, Amount bound, Amount value, double seconds) {
    const double unit = aim == Aim::cost    ? static_cast<double>(money_unit)
                        : aim == Aim::waste ? static_cast<double>(nanometres_per_metre)
                                            : 1.0;
    const auto low = static_cast<double>(bound);
    const auto high = static_cast<double>(value);
    const double gap = value > bound ? 100.0 * (high - low) / high : 0.0;
    return "planning reels: bound " + show_number(low / unit, 2) + ", best " +
           show_number(high / unit, 2) + ", gap " + show_number(gap, 3) + " %, " +
           show_number(seconds, 0) + " s";
}

} // namespace libsplice::cli
