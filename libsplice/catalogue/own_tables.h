// Where the tables are, if nobody names a folder.
#pragma once

#include <filesystem>
#include <span>
#include <string>
#include <vector>

namespace libsplice {

/// The folders to load, the lowest in precedence first. `given` lie on top of the tables that come
/// with `binary`, the program or library that asks: those of the environment's LIBSPLICE_TABLES
/// (parted by colons), else `share/libsplice/tables` in a folder above it, else the path it was
/// built to be installed in. Where the first of `given` brings its own `constructions.toml` it
/// stands alone.
[[nodiscard]] std::vector<std::string> table_folders(const std::filesystem::path& binary,
                                                     std::span<const std::string> given);

/// Whether a folder of tables brings its own `constructions.toml`, so that it needs no other below
/// it.
[[nodiscard]] bool stands_alone(const std::string& folder);

} // namespace libsplice
