// splice end: one end worked out by itself.
#include "libsplice/base/text.h"
#include "libsplice/sheet/formats.h"

#include "cli/declared/command.h"
#include "cli/declared/sheet_options.h"
#include "cli/messages.h"
#include "cli/tables.h"
#include "cli/write_out.h"

#include <algorithm>

namespace libsplice::cli {

namespace {

/// Splits `eye=36mm` words; the fault names the word that is none.
Result<std::vector<FieldText>> read_fields(std::span<const std::string> words) {
    std::vector<FieldText> fields;
    for (const std::string& word : words) {
        const auto equals = word.find('=');
        const auto name = trimmed(std::string_view(word).substr(0, equals));
        if (equals == std::string::npos || name.empty()) {
            return Unexpected(
                Fault{Code::unknown_field, "\"" + word + "\" is no FIELD=VALUE, such as eye=36mm"});
        }
        if (std::ranges::find(fields, name, &FieldText::name) != fields.end()) {
            return Unexpected(
                Fault{Code::unknown_field, "the field " + std::string(name) + " is given twice"});
        }
        fields.push_back({name, trimmed(std::string_view(word).substr(equals + 1))});
    }
    return fields;
}

/// Words that mean nothing are a wrong command; values that cannot be made are a refusal.
Exit status_of(const Fault& fault) {
    switch (fault.code) {
    case Code::unknown_field:
    case Code::field_unreadable:
    case Code::unknown_rule:
        return Exit::wrong_command;
    default:
        return Exit::refused;
    }
}

} // namespace

Exit run_end(const CommandLine& command) {
    const auto answer = read_answer(command);
    if (!answer) {
        return wrong_option(command, answer.error());
    }
    if (command.words.empty()) {
        return wrong_command("end needs a kind; splice list kinds shows them");
    }
    if (!command.has("rope")) {
        return wrong_command("end needs --rope, such as --rope \"12-strand HMPE 5 mm\"");
    }
    const auto fields = read_fields(std::span(command.words).subspan(1));
    if (!fields) {
        return wrong_command(fields.error().text);
    }
    const auto book = open_book(command);
    if (!book) {
        return Exit::unusable_file;
    }
    const auto rope = book->catalogue().rope(command.value("rope", ""));
    const auto kind =
        book->kind(command.words.front(), rope ? std::optional(rope->construction) : std::nullopt);
    if (!kind || !rope) {
        return wrong_command(kind ? rope.error().text : kind.error().text);
    }
    const auto allowance = book->work_out(**kind, *rope, *fields);
    if (!allowance) {
        say(allowance.error());
        return status_of(allowance.error());
    }
    const EndSheet sheet{(*kind)->declaration, *rope, *allowance,
                         stretch_of(*rope, book->common_rules(*rope))};
    return write_out(answer->output, [&](Output& output) {
        row_of(answer->format).end(sheet, output, *book, answer->sheet);
        return Exit::done;
    });
}

} // namespace libsplice::cli
