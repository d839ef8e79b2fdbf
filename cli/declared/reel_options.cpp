// Reads the options of splice reel, each within its limits.
#include "cli/declared/reel_options.h"

#include "libsplice/base/text.h"
#include "libsplice/units/read.h"
#include "libsplice/units/show.h"

#include "cli/declared/options.h"

#include <algorithm>

namespace libsplice::cli {

namespace {

Result<Nanometres> read_cut_loss(const std::string& text) {
    const auto cut_loss = read_length(text);
    if (!cut_loss) {
        return wrong_value("cut-loss", text, cut_loss.error().text);
    }
    if (cut_loss->length.si() < 0.0 || cut_loss->length > metres(1.0)) {
        return wrong_value("cut-loss", text, "it must be from 0 to 1 m");
    }
    return to_nanometres(cut_loss->length);
}

} // namespace

Result<ReelOptions> read_reel_options(const CommandLine& command) {
    ReelOptions options;
    options.stock = command.value("stock", "");
    options.commit = command.has("commit");
    if (options.commit && (options.stock.empty() || options.stock == "-")) {
        return Unexpected(Fault{Code::not_a_choice,
                                "--commit writes the stock after the cuts, so it needs a file of "
                                "the stock: --stock FILE"});
    }
    if (command.has("cut-loss")) {
        const auto cut_loss = read_cut_loss(command.value("cut-loss", ""));
        if (!cut_loss) {
            return Unexpected(cut_loss.error());
        }
        options.cut_loss = *cut_loss;
    }
    const std::string objective = command.value("minimise", "cost");
    const auto known = std::ranges::find(objective_names, objective);
    if (known == objective_names.end()) {
        return wrong_choice("minimise", objective, command.command);
    }
    options.objective = static_cast<Objective>(known - objective_names.begin());
    const std::string seconds = command.value("seconds", "10");
    const auto number = read_number(seconds);
    constexpr double longest = 86'400.0;
    if (!number || !(*number > 0.0) || *number > longest) {
        return wrong_value("seconds", seconds, "it must be a number over 0 and up to 86400");
    }
    options.seconds = *number;
    return options;
}

std::string progress_of(Objective objective, Amount bound, Amount value, double seconds) {
    const double unit = objective == Objective::cost    ? static_cast<double>(money_unit)
                        : objective == Objective::waste ? static_cast<double>(nanometres_per_metre)
                                                        : 1.0;
    const auto low = static_cast<double>(bound);
    const auto high = static_cast<double>(value);
    const double gap = value > bound ? 100.0 * (high - low) / high : 0.0;
    return "planning reels: bound " + show_number(low / unit, 2) + ", best " +
           show_number(high / unit, 2) + ", gap " + show_number(gap, 3) + " %, " +
           show_number(seconds, 0) + " s";
}

} // namespace libsplice::cli
