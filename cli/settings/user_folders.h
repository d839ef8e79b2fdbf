// The folders in which a user keeps what belongs to this program.
#pragma once

#include <filesystem>
#include <optional>

namespace libsplice::cli {

/// `$XDG_CONFIG_HOME/libsplice`, else `~/.config/libsplice`; nothing if neither is known. A
/// variable that is not an absolute path is passed over. Nobody says that the folder is there.
[[nodiscard]] std::optional<std::filesystem::path> user_settings_folder();
/// `$XDG_DATA_HOME/libsplice`, else `~/.local/share/libsplice`; the same.
[[nodiscard]] std::optional<std::filesystem::path> user_data_folder();

} // namespace libsplice::cli
