// splice check: published values compared with ours.
#include "libsplice/base/input.h"

#include "cli/check/case_verdict.h"
#include "cli/declared/command.h"
#include "cli/messages.h"
#include "cli/tables.h"
#include "cli/write_out.h"

#include <algorithm>
#include <filesystem>
#include <system_error>

namespace libsplice::cli {

namespace {

/// What a run came to.
struct Tally {
    std::size_t passed = 0;
    std::size_t failed = 0;
    std::size_t disagree = 0;     ///< of those that passed
    std::size_t printed_rows = 0; ///< of all
    std::size_t accepted = 0;     ///< of those that passed: they show no value
    bool unreadable_file = false;
};

/// The `.toml` files of a folder, sorted; none where there is no such folder.
std::vector<std::string> case_files_in(const std::filesystem::path& folder) {
    std::vector<std::string> files;
    std::error_code error;
    for (const auto& entry : std::filesystem::directory_iterator(folder, error)) {
        if (entry.path().extension() == ".toml") {
            files.push_back(entry.path().lexically_normal().string());
        }
    }
    std::ranges::sort(files);
    return files;
}

/// The files that came with the tables: in the source tree, or beside the installed tables.
std::vector<std::string> files_of_tables(const CommandLine& command) {
    const std::filesystem::path tables = table_folders(command).front();
    auto files = case_files_in(tables / "../tests/published");
    return files.empty() ? case_files_in(tables / "../published") : files;
}

void check_case(const PublishedCase& published, const Book& book, Output& output, Tally& tally) {
    const auto [verdict, why] = judge(published, work_out(published, book));
    tally.printed_rows += published.printed_row ? 1 : 0;
    if (verdict == Verdict::fails) {
        ++tally.failed;
        output.write(published.at.file + ':' + std::to_string(published.at.line) + ": " +
                     published.name + " (" + published.where + "): " + why + '\n');
        return;
    }
    ++tally.passed;
    tally.disagree += verdict == Verdict::disagrees ? 1 : 0;
    tally.accepted += published.accepted ? 1 : 0;
}

/// The file as a document; a fault is said.
std::optional<Node> open_document(const std::string& file) {
    auto input = Input::open(file);
    const auto text = input ? input->read_all() : Result<std::string>(Unexpected(input.error()));
    auto document = text ? parse_toml(*text, file) : Result<Node>(Unexpected(text.error()));
    if (!document) {
        say(document.error());
        return std::nullopt;
    }
    return *std::move(document);
}

void check_file(const std::string& file, const Book& book, Output& output, FaultSink& faults,
                Tally& tally) {
    const auto document = open_document(file);
    if (!document) {
        tally.unreadable_file = true;
        return;
    }
    const CaseFile read = read_cases(*document, book.catalogue(), faults);
    tally.failed += read.unusable;
    for (const PublishedCase& published : read.cases) {
        check_case(published, book, output, tally);
    }
}

/// A table that is checked against the row that it was copied from is not checked at all: of the
/// files that come with the program at most a third of the cases may be such.
void limit_printed_rows(Output& output, Tally& tally) {
    if (tally.printed_rows * 3 > tally.passed - tally.accepted + tally.failed) {
        output.write("over a third of the cases are rows of our own tables; add others\n");
        ++tally.failed;
    }
}

void write_tally(Output& output, const Tally& tally) {
    output.write(std::to_string(tally.printed_rows) + " of the cases are rows of our own tables\n" +
                 std::to_string(tally.accepted) + " show only that a value is accepted\n" +
                 std::to_string(tally.disagree) +
                 " of those that passed disagree with print, and say why\n" +
                 std::to_string(tally.passed) + " passed, " + std::to_string(tally.failed) +
                 " failed\n");
}

} // namespace

Exit run_check(const CommandLine& command) {
    const auto book = open_book(command);
    if (!book) {
        return Exit::unusable_file;
    }
    const bool of_tables = command.words.empty();
    const auto files = of_tables ? files_of_tables(command) : command.words;
    if (files.empty()) {
        say("there are no files of published values beside the tables; name the files to check");
        return Exit::unusable_file;
    }
    return write_out("-", [&](Output& output) {
        Tally tally;
        FaultSink faults = printing_sink();
        for (const std::string& file : files) {
            check_file(file, *book, output, faults, tally);
        }
        if (of_tables) {
            limit_printed_rows(output, tally);
        }
        say_rest(faults);
        write_tally(output, tally);
        if (tally.unreadable_file) {
            output.flush(); // what was found all the same
            return Exit::unusable_file;
        }
        return tally.failed == 0 ? Exit::done : Exit::refused;
    });
}

} // namespace libsplice::cli
