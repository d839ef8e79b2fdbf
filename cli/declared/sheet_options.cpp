#include "cli/declared/sheet_options.h"

#include "libsplice/base/text.h"

#include "cli/declared/options.h"

namespace libsplice::cli {

namespace {

Result<double> read_risk(std::string_view text) {
    const bool percent = text.ends_with('%');
    const auto number = read_number(percent ? trimmed(text.substr(0, text.size() - 1)) : text);
    if (!number || !(*number > 0.0) || *number > 50.0) {
        return wrong_value("risk", text, "it must be a percentage over 0 and up to 50");
    }
    return *number / 100.0;
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

Result<CutSettings> read_settings(const CommandLine& line) {
    CutSettings settings;
    if (line.has("risk")) {
        const auto risk = read_risk(line.value("risk", ""));
        if (!risk) {
            return Unexpected(risk.error());
        }
        settings.risk = *risk;
    }
    if (line.has("step")) {
        const auto step = read_step(line.value("step", ""));
        if (!step) {
            return Unexpected(step.error());
        }
        settings.step = *step;
    }
    if (line.has("marking-tension")) {
        const auto pull = read_marking_tension(line.value("marking-tension", ""));
        if (!pull) {
            const auto near = did_you_mean(line.value("marking-tension", ""),
                                           find_option("marking-tension")->choices(line.command));
            return Unexpected(Fault{pull.error().code, pull.error().text + near});
        }
        settings.marking_tension = *pull;
    }
    return settings;
}

} // namespace

Result<Format> read_format(const CommandLine& line) {
    const auto format = line.value("format", "text");
    if (const auto known = libsplice::read_format(format)) {
        return *known;
    }
    return wrong_value("format", format,
                       "it must be one of " + listed(format_names()) +
                           did_you_mean(format, format_names()));
}

Result<Answer> read_answer(const CommandLine& line) {
    Answer answer;
    const auto format = read_format(line);
    if (!format) {
        return Unexpected(format.error());
    }
    answer.format = *format;
    const auto units = line.value("units", "metric");
    if (units != "metric" && units != "imperial") {
        const auto known = find_option("units")->choices(line.command);
        return wrong_value("units", units,
                           "it must be metric or imperial" + did_you_mean(units, known));
    }
    const auto settings = read_settings(line);
    if (!settings) {
        return Unexpected(settings.error());
    }
    answer.cut = *settings;
    answer.sheet.units = units == "metric" ? UnitSystem::metric : UnitSystem::imperial;
    answer.sheet.ledger = line.has("ledger");
    answer.sheet.risk = settings->risk;
    answer.output = line.value("output", "-");
    return answer;
}

} // namespace libsplice::cli
