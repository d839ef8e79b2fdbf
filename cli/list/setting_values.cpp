// A setting's value is the command line's, else a file's, else the default.
#include "cli/list/setting_values.h"

#include "cli/declared/options.h"
#include "cli/settings/settings.h"

#include <algorithm>

namespace libsplice::cli {

namespace {

std::string joined(const std::vector<std::string>& values) {
    std::string text;
    for (const std::string& value : values) {
        text += (text.empty() ? "" : ", ") + value;
    }
    return text;
}

std::string value_without(const OptionDeclaration& option) {
    return option.argument.empty()    ? "no"
           : option.otherwise.empty() ? "none"
                                      : std::string(option.otherwise);
}

} // namespace

std::vector<SettingValue> setting_values(const CommandLine& command) {
    FaultSink ignored(0);
    const auto settings = read_settings(command, ignored);
    std::vector<SettingValue> values;
    for (const OptionDeclaration& option : option_declarations()) {
        if (!option.setting) {
            continue;
        }
        SettingValue value{std::string(option.name), std::string(option.meaning),
                           value_without(option), "default"};
        const auto set = std::ranges::find(settings, &option, &Setting::option);
        const bool given = command.has(option.name) && !command.set_in.contains(option.name);
        if (given) {
            value.value = option.argument.empty() ? "yes" : joined(command.values(option.name));
            value.from = "command line";
        } else if (set != settings.end()) {
            value.value = option.argument.empty() ? (set->on ? "yes" : "no") : joined(set->values);
            value.from = to_text(set->at);
        }
        values.push_back(std::move(value));
    }
    return values;
}

} // namespace libsplice::cli
