#include "cli/tables.h"

#include "libsplice/plugin/load_plug_in.h"

#include "cli/messages.h"

#include <cstdlib>
#include <filesystem>
#include <system_error>

namespace libsplice::cli {

namespace {

bool is_folder(const std::filesystem::path& path) {
    std::error_code ignored;
    return std::filesystem::is_directory(path, ignored);
}

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

std::string installed_tables() {
    std::error_code error;
    const auto program = std::filesystem::read_symlink("/proc/self/exe", error);
    if (!error) {
        const auto beside = program.parent_path().parent_path() / "share/libsplice/tables";
        if (is_folder(beside)) {
            return beside.string();
        }
    }
    return LIBSPLICE_BUILT_IN_TABLES;
}

/// An overlay stands on the program's own tables; a folder that brings its own sources stands
/// alone.
bool stands_alone(const std::string& folder) {
    std::error_code ignored;
    return std::filesystem::exists(std::filesystem::path(folder) / "constructions.toml", ignored);
}

std::vector<std::string> own_tables() {
    const char* from_environment = std::getenv("LIBSPLICE_TABLES");
    if (from_environment != nullptr && *from_environment != '\0') {
        return split_at_colons(from_environment);
    }
    return {installed_tables()};
}

/// Loads what --plug-in names, in order. Every plug-in that cannot be loaded is said; then there is
/// nothing.
std::optional<PluggedIn> load_plug_ins(const CommandLine& line, Catalogue& catalogue) {
    PluggedIn plugged_in;
    bool all = true;
    for (const std::string& file : line.values("plug-in")) {
        if (const auto fault = load_plug_in(file, catalogue, plugged_in)) {
            say(*fault);
            all = false;
        }
    }
    return all ? std::optional(std::move(plugged_in)) : std::nullopt;
}

} // namespace

std::vector<std::string> table_folders(const CommandLine& line) {
    auto given = line.values("tables");
    if (!given.empty() && stands_alone(given.front())) {
        return given;
    }
    auto folders = own_tables();
    folders.insert(folders.end(), given.begin(), given.end());
    return folders;
}

std::optional<Book> open_book(const CommandLine& line) {
    FaultSink faults = printing_sink();
    const auto folders = table_folders(line);
    auto catalogue = Catalogue::load(folders, faults);
    if (!catalogue) {
        say_rest(faults);
        return std::nullopt;
    }
    auto plugged_in = load_plug_ins(line, *catalogue);
    if (!plugged_in) {
        return std::nullopt;
    }
    auto book = Book::open(*std::move(catalogue), *std::move(plugged_in));
    if (!book) {
        say(book.error());
        return std::nullopt;
    }
    return *std::move(book);
}

} // namespace libsplice::cli
