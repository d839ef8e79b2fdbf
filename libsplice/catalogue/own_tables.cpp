// The folders that LIBSPLICE_TABLES names; else the one beside the program, else the installed one.
#include "libsplice/catalogue/own_tables.h"

#include <algorithm>
#include <cstdlib>
#include <string_view>
#include <system_error>

namespace libsplice {

namespace {

/// A program lies in `bin`, a library in `lib` or one folder deeper.
constexpr int most_folders_up = 3;

std::vector<std::string> split_at_colons(std::string_view text) {
    std::vector<std::string> parts;
    while (!text.empty()) {
        const auto end = std::min(text.find(':'), text.size());
        if (end > 0) {
            parts.emplace_back(text.substr(0, end));
        }
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return parts;
}

std::string installed_tables(const std::filesystem::path& binary) {
    std::error_code unresolved; // the path may run over links and `..`
    std::filesystem::path folder = std::filesystem::canonical(binary, unresolved).parent_path();
    for (int up = 0; up < most_folders_up; ++up) {
        std::error_code missing;
        const auto beside = std::filesystem::canonical(folder / "share/libsplice/tables", missing);
        if (!missing) {
            return beside.string();
        }
        folder = folder.parent_path();
    }
    return LIBSPLICE_INSTALLED_TABLES;
}

std::vector<std::string> own_tables(const std::filesystem::path& binary) {
    const char* from_environment = std::getenv("LIBSPLICE_TABLES");
    if (from_environment != nullptr && *from_environment != '\0') {
        return split_at_colons(from_environment);
    }
    return {installed_tables(binary)};
}

} // namespace

std::vector<std::string> table_folders(const std::filesystem::path& binary,
                                       std::span<const std::string> given) {
    std::vector<std::string> folders;
    if (given.empty() || !stands_alone(given.front())) {
        folders = own_tables(binary);
    }
    folders.insert(folders.end(), given.begin(), given.end());
    return folders;
}

bool stands_alone(const std::string& folder) {
    std::error_code ignored;
    return std::filesystem::exists(std::filesystem::path(folder) / "constructions.toml", ignored);
}

} // namespace libsplice
