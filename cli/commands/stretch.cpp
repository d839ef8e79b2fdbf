// splice stretch: a rope under a load, and which size of another stretches no more.
#include "libsplice/base/text.h"
#include "libsplice/sheet/formats.h"
#include "libsplice/sheet/panel/stretch_answer.h"
#include "libsplice/units/read.h"

#include "cli/declared/command.h"
#include "cli/declared/sheet_options.h"
#include "cli/messages.h"
#include "cli/tables.h"
#include "cli/write_out.h"

#include <algorithm>
#include <array>

namespace libsplice::cli {

namespace {

/// What `load=`, `length=` and `against=` ask.
struct StretchQuestion {
    Tension load;
    Length length = metres(1.0);
    std::string_view against;
};

Unexpected not_understood(std::string text) {
    return Unexpected(Fault{Code::unknown_field, std::move(text)});
}

Result<StretchQuestion> read_asked(std::span<const std::string> words) {
    constexpr std::array<std::string_view, 3> names{"load", "length", "against"};
    StretchQuestion asked;
    for (const std::string_view word : words) {
        const auto equals = word.find('=');
        const auto name = word.substr(0, equals);
        if (equals == std::string_view::npos || std::ranges::find(names, name) == names.end()) {
            return not_understood("\"" + std::string(word) +
                                  "\" is none of load=600N, length=8m and against=\"double-braid "
                                  "polyester\"" +
                                  did_you_mean(name, names));
        }
        const auto text = trimmed(word.substr(equals + 1));
        if (name == "against") {
            asked.against = text;
        } else if (name == "load") {
            const auto load = read_tension(text);
            if (!load || !(load->value > 0.0)) {
                return not_understood("load: " + (load ? "it must be over 0" : load.error().text));
            }
            asked.load = *load;
        } else {
            const auto length = read_length(text);
            if (!length || !(length->length > Length()) || length->length > metres(100'000.0)) {
                return not_understood("length: " + (length ? "it must be over 0 and up to 100,000 m"
                                                           : length.error().text));
            }
            asked.length = length->length;
        }
    }
    if (asked.load.basis == Tension::Basis::reference) {
        return not_understood("stretch needs a load, such as load=600N");
    }
    return asked;
}

} // namespace

Exit run_stretch(const CommandLine& command) {
    const auto answer = read_answer(command);
    if (!answer) {
        return wrong_option(command, answer.error());
    }
    if (command.words.empty()) {
        return wrong_command("stretch needs a rope and a load, such as splice stretch "
                             "demo-cd-hmpe-5 load=600N");
    }
    const auto asked = read_asked(std::span(command.words).subspan(1));
    if (!asked) {
        return wrong_command(asked.error().text);
    }
    const auto book = open_book(command);
    if (!book) {
        return Exit::unusable_file;
    }
    const auto rope = book->catalogue().rope(command.words.front());
    if (!rope) {
        return wrong_command(rope.error().text);
    }
    const auto known = under_load(*book, *rope, asked->load, asked->length);
    if (!known) {
        say(known.error());
        return Exit::refused;
    }
    StretchAnswer stretch{
        asked->load, pull_of(asked->load, known->rope), asked->length, *known, {}};
    if (!asked->against.empty()) {
        const auto equal =
            size_for_equal_stretch(*book, *rope, asked->load, asked->length, asked->against);
        if (!equal) {
            say(equal.error());
            return equal.error().code == Code::rope_not_understood ? Exit::wrong_command
                                                                   : Exit::refused;
        }
        stretch.equal = *equal;
    }
    return write_out(answer->output, [&](Output& output) {
        row_of(answer->format).stretch(stretch, output, *book, answer->sheet);
        return Exit::done;
    });
}

} // namespace libsplice::cli
