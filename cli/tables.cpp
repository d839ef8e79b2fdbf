#include "cli/tables.h"

#include "libsplice/catalogue/own_tables.h"

#include "cli/messages.h"

#include <filesystem>
#include <system_error>

namespace libsplice::cli {

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
    auto book = Book::open(*std::move(catalogue));
    if (!book) {
        say(book.error());
        return std::nullopt;
    }
    return *std::move(book);
}

} // namespace libsplice::cli
