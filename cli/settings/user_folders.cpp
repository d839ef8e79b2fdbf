// A variable of the environment names the folder, or it lies below the home folder.
#include "cli/settings/user_folders.h"

#include <cstdlib>

namespace libsplice::cli {

namespace {

std::optional<std::filesystem::path> absolute_path_in(const char* variable) {
    const char* value = std::getenv(variable);
    if (value == nullptr || *value != '/') {
        return std::nullopt;
    }
    return std::filesystem::path(value);
}

std::optional<std::filesystem::path> ours_in(const char* variable, const char* below_home) {
    if (const auto named = absolute_path_in(variable)) {
        return *named / "libsplice";
    }
    const auto home = absolute_path_in("HOME");
    return home ? std::optional(*home / below_home / "libsplice") : std::nullopt;
}

} // namespace

std::optional<std::filesystem::path> user_settings_folder() {
    return ours_in("XDG_CONFIG_HOME", ".config");
}

std::optional<std::filesystem::path> user_data_folder() {
    return ours_in("XDG_DATA_HOME", ".local/share");
}

} // namespace libsplice::cli
