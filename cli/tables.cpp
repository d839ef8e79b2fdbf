#include "cli/tables.h"

#include "libsplice/catalogue/own_tables.h"
#include "libsplice/plugin/load_plug_in.h"

#include "cli/messages.h"

#include <filesystem>
#include <system_error>

namespace libsplice::cli {

namespace {

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
    std::error_code ignored;
    const auto program = std::filesystem::read_symlink("/proc/self/exe", ignored);
    return libsplice::table_folders(program, line.values("tables"));
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
