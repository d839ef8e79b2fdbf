// The options of an answer become values; the first wrong one is the fault.
#include "cli/declared/sheet_options.h"

#include "libsplice/base/text.h"
#include "libsplice/sheet/formats.h"
#include "libsplice/units/read.h"

#include "cli/declared/command.h"
#include "cli/declared/options.h"

#include <algorithm>

namespace libsplice::cli {

namespace {

Result<double> read_risk(std::string_view text) {
    const auto risk = read_share(text, BareShare::percent);
    if (!risk || !(*risk > 0.0) || *risk > 0.5) {
        return wrong_value("risk", text, "it must be a percentage over 0 and up to 50");
    }
    return *risk;
}

Result<Length> read_step(std::string_view text) {
    const auto step = read_length(text);
    if (!step) {
        return wrong_value("step", text, step.error().text);
    }
    if (to_nanometres(step->length) < 1 || step->length > metres(1.0)) {
        return wrong_value("step", text, "it must be over 0 and up to 1 m");
    }
    return step->length;
}

Result<CutSettings> read_cutting(const CommandLine& command) {
    CutSettings settings;
    if (command.has("risk")) {
        const auto risk = read_risk(command.value("risk", ""));
        if (!risk) {
            return Unexpected(risk.error());
        }
        settings.risk = *risk;
    }
    if (command.has("step")) {
        const auto step = read_step(command.value("step", ""));
        if (!step) {
            return Unexpected(step.error());
        }
        settings.step = *step;
    }
    if (command.has("marking-tension")) {
        const auto pull = read_marking_tension(command.value("marking-tension", ""));
        if (!pull) {
            Fault fault = pull.error();
            fault.text += did_you_mean(command.value("marking-tension", ""),
                                       find_option("marking-tension")->choices(command.command));
            fault.field = "marking-tension";
            return Unexpected(std::move(fault));
        }
        settings.marking_tension = *pull;
    }
    return settings;
}

} // namespace

Result<Format> read_format(const CommandLine& command) {
    const auto text = command.value("format", "text");
    const auto format = libsplice::read_format(text);
    const Command* declared = find_command(command.command);
    if (!format || std::ranges::find(declared->formats, *format) == declared->formats.end()) {
        return wrong_choice("format", text, command.command);
    }
    return *format;
}

Result<Answer> read_answer(const CommandLine& command) {
    Answer answer;
    if (!find_command(command.command)->formats.empty()) {
        const auto format = read_format(command);
        if (!format) {
            return Unexpected(format.error());
        }
        answer.format = *format;
    }
    const auto units = command.value("units", "metric");
    if (units != "metric" && units != "imperial") {
        return wrong_choice("units", units, command.command);
    }
    const auto settings = read_cutting(command);
    if (!settings) {
        return Unexpected(settings.error());
    }
    answer.cut = *settings;
    answer.cut.lengths_only = row_of(answer.format).lengths_only;
    answer.sheet.units = units == "metric" ? UnitSystem::metric : UnitSystem::imperial;
    answer.sheet.full = command.has("full");
    answer.sheet.ledger = command.has("ledger");
    answer.sheet.risk = settings->risk;
    answer.output = command.value("output", "-");
    return answer;
}

} // namespace libsplice::cli
