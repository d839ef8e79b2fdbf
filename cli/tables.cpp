// Which folders of tables are in use, and the book that they make with the plug-ins.
#include "cli/tables.h"

#include "libsplice/base/input.h"
#include "libsplice/catalogue/own_tables.h"
#include "libsplice/cut/ropes/listed_rope.h"
#include "libsplice/plugin/load_plug_in.h"

#include "cli/messages.h"
#include "cli/settings/user_folders.h"

#include <cstdlib>
#include <filesystem>
#include <system_error>

namespace libsplice::cli {

namespace {

/// Loads what --plug-in names, in order. Every plug-in that cannot be loaded is said; then there is
/// nothing.
std::optional<PluggedIn> load_plug_ins(const CommandLine& command, Catalogue& catalogue) {
    PluggedIn plugged_in;
    bool all = true;
    for (const std::string& file : command.values("plug-in")) {
        if (const auto fault = load_plug_in(file, catalogue, plugged_in)) {
            say(*fault);
            all = false;
        }
    }
    return all ? std::optional(std::move(plugged_in)) : std::nullopt;
}

/// Adds the ropes of the lists that --ropes names; false after a fault, which has been said.
bool add_rope_lists(const CommandLine& command, Catalogue& catalogue) {
    FaultSink faults = printing_sink();
    bool all = true;
    for (const std::string& file : command.values("ropes")) {
        auto input = Input::open(file);
        if (!input) {
            faults.push(input.error());
        }
        all = input && add_rope_list(*input, catalogue, faults) && all;
    }
    say_rest(faults);
    return all;
}

/// The user's own tables, if there are any and the environment names no others.
std::optional<std::string> tables_of_user() {
    const char* named = std::getenv("LIBSPLICE_TABLES");
    const auto folder = user_data_folder();
    std::error_code ignored;
    if ((named != nullptr && *named != '\0') || !folder ||
        !std::filesystem::is_directory(*folder / "tables", ignored)) {
        return std::nullopt;
    }
    return (*folder / "tables").string();
}

} // namespace

std::vector<std::string> table_folders(const CommandLine& command) {
    std::error_code ignored;
    const auto program = std::filesystem::read_symlink("/proc/self/exe", ignored);
    auto given = command.values("tables");
    if (const auto own = tables_of_user(); own && (given.empty() || !stands_alone(given.front()))) {
        given.insert(given.begin(), *own);
    }
    return libsplice::table_folders(program, given);
}

std::optional<Book> open_book(const CommandLine& command) {
    FaultSink faults = printing_sink();
    const auto folders = table_folders(command);
    auto catalogue = Catalogue::load(folders, faults);
    if (!catalogue) {
        say_rest(faults);
        return std::nullopt;
    }
    auto plugged_in = load_plug_ins(command, *catalogue);
    if (!plugged_in) {
        return std::nullopt;
    }
    if (!add_rope_lists(command, *catalogue)) {
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
