#include "cli/commands/stretch.h"

#include "libsplice/base/text.h"
#include "libsplice/sheet/formats.h"
#include "libsplice/sheet/panel/stretch_answer.h"

#include "cli/declared/sheet_options.h"
#include "cli/messages.h"
#include "cli/tables.h"

#include <algorithm>
#include <array>

namespace libsplice::cli {

namespace {

/// What `load=`, `length=` and `against=` ask.
struct Asked {
    Tension load;
    Length length = metres(1.0);
    std::string_view against;
};

Unexpected not_understood(std::string text) {
    return Unexpected(Fault{Code::unknown_field, std::move(text)});
}

Result<Asked> read_asked(std::span<const std::string> words) {
    constexpr std::array<std::string_view, 3> names{"load", "length", "against"};
    Asked asked;
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
        return not_understood("show stretch needs a load, such as load=600N");
    }
    return asked;
}

} // namespace

bool asks_for_stretch(const CommandLine& line) {
    return line.words.size() > 2 && line.words.front() == "stretch";
}

Exit run_show_stretch(const CommandLine& line) {
    const auto answer = read_answer(line);
    const auto asked = read_asked(std::span(line.words).subspan(2));
    if (!answer || !asked) {
        return wrong_command(answer ? asked.error().text : answer.error().text);
    }
    const auto book = open_book(line);
    if (!book) {
        return Exit::unusable_file;
    }
    const auto rope = book->catalogue().rope(line.words[1]);
    if (!rope) {
        return wrong_command(rope.error().text);
    }
    const auto known = under_load(*book, *rope, asked->load, asked->length);
    if (!known) {
        say(known.error());
        return Exit::refused;
    }
    StretchAnswer stretch{asked->load, asked->length, *known, {}};
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
    auto output = Output::open(answer->output);
    if (!output) {
        say(output.error());
        return Exit::unusable_file;
    }
    row_of(answer->format).stretch(stretch, *output, *book, answer->sheet);
    if (const auto committed = output->commit(); !committed) {
        say(committed.error());
        return Exit::unusable_file;
    }
    return Exit::done;
}

} // namespace libsplice::cli
