// The value of every setting, and where it comes from.
#pragma once

#include "cli/declared/command_line.h"

#include <string>
#include <vector>

namespace libsplice::cli {

struct SettingValue {
    std::string name; ///< of its option
    std::string meaning;
    std::string value;
    std::string from; ///< `default`, `command line`, or the place in a file of settings
};

/// All settings in the order of the options, as a command in the same place would have them. Files
/// at fault are passed over: the command line that reads them has said so.
[[nodiscard]] std::vector<SettingValue> setting_values(const CommandLine& command);

} // namespace libsplice::cli
