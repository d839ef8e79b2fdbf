// The table of options, and how one is found in it.
#include "cli/declared/options.h"

#include "libsplice/base/text.h"
#include "libsplice/choose/choice.h"
#include "libsplice/reel/plan.h"
#include "libsplice/sheet/formats.h"
#include "libsplice/sheet/paper/label_sheets.h"

#include "cli/declared/command.h"

#include <algorithm>
#include <array>

namespace libsplice::cli {

namespace {

using Words = std::vector<std::string_view>;

/// The formats that the command writes; those of all commands if it is none.
Words formats_of(std::string_view name) {
    const Command* command = find_command(name);
    const auto all = format_names();
    Words names;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (command == nullptr ||
            std::ranges::find(command->formats, static_cast<Format>(i)) != command->formats.end()) {
            names.push_back(all[i]);
        }
    }
    return names;
}

Words unit_systems(std::string_view /*command*/) {
    return {"metric", "imperial"};
}

Words marking_tensions(std::string_view /*command*/) {
    return {"reference", "slack"};
}

Words sheets_of_labels(std::string_view /*command*/) {
    return {label_sheet_names().begin(), label_sheet_names().end()};
}

Words objectives(std::string_view /*command*/) {
    return {objective_names.begin(), objective_names.end()};
}

Words preferences(std::string_view /*command*/) {
    return {preference_words.begin(), preference_words.end()};
}

Words colours(std::string_view /*command*/) {
    return {"auto", "always", "never"};
}

constexpr std::string_view with_tables =
    " choose cut show stretch end list reel chart labels learn check ";
constexpr std::string_view with_output =
    " choose cut show stretch end list new reel chart labels tighten learn ";
constexpr std::string_view of_jobs = " choose cut show reel chart labels ";

constexpr std::array option_rows{
    OptionDeclaration{.name = "output",
                      .letter = 'o',
                      .argument = "FILE",
                      .meaning = "write to FILE, whole or not at all; - is standard output",
                      .otherwise = "-",
                      .commands = with_output},
    OptionDeclaration{.name = "format",
                      .letter = 'f',
                      .argument = "FORMAT",
                      .meaning = "how to write the answer",
                      .otherwise = "text",
                      .commands = "", // those that declare formats
                      .setting = true,
                      .choices = formats_of},
    OptionDeclaration{.name = "full",
                      .argument = "",
                      .meaning = "text: everything about every line, in place of a table",
                      .otherwise = "",
                      .commands = " cut ",
                      .setting = true},
    OptionDeclaration{.name = "ledger",
                      .argument = "",
                      .meaning = "show every row of each ledger",
                      .otherwise = "",
                      .commands = " cut show ",
                      .setting = true},
    OptionDeclaration{.name = "rope",
                      .argument = "ROPE",
                      .meaning = "a rope of the tables, or construction, fibre and diameter",
                      .otherwise = "",
                      .commands = " end "},
    OptionDeclaration{.name = "stock",
                      .argument = "FILE",
                      .meaning = "the reels and offcuts there are, and what can be ordered",
                      .otherwise = "",
                      .commands = " choose reel ",
                      .setting = true},
    OptionDeclaration{.name = "ropes",
                      .argument = "FILE",
                      .meaning = "a list of ropes, CSV or TOML, that jobs may name",
                      .otherwise = "",
                      .commands = with_tables,
                      .repeatable = true,
                      .setting = true},
    OptionDeclaration{.name = "prefer",
                      .argument = "WHAT",
                      .meaning = "what comes first among ropes that meet every need",
                      .otherwise = "cost",
                      .commands = " choose ",
                      .setting = true,
                      .choices = preferences},
    OptionDeclaration{.name = "together",
                      .argument = "",
                      .meaning = "one choice for all lines: the cheapest reels to buy and open",
                      .otherwise = "",
                      .commands = " choose "},
    OptionDeclaration{.name = "commit",
                      .argument = "",
                      .meaning = "write the stock as it is after the cuts",
                      .otherwise = "",
                      .commands = " reel "},
    OptionDeclaration{.name = "minimise",
                      .argument = "OBJECTIVE",
                      .meaning = "what to minimise",
                      .otherwise = "cost",
                      .commands = " reel ",
                      .setting = true,
                      .choices = objectives},
    OptionDeclaration{.name = "cut-loss",
                      .argument = "LENGTH",
                      .meaning = "rope that each cut costs, beyond what the ledgers hold",
                      .otherwise = "0 mm",
                      .commands = " choose reel ",
                      .setting = true},
    OptionDeclaration{.name = "seconds",
                      .argument = "SECONDS",
                      .meaning = "when the search ends, with the best plan so far",
                      .otherwise = "10",
                      .commands = " choose reel ",
                      .setting = true},
    OptionDeclaration{.name = "sheet",
                      .argument = "NAME",
                      .meaning = "the sheet that labels are printed on",
                      .otherwise = "a4-2x6",
                      .commands = " labels ",
                      .setting = true,
                      .choices = sheets_of_labels},
    OptionDeclaration{.name = "mesh",
                      .argument = "DIAMETERS",
                      .meaning = "how far apart the points of the rope lie, 0.02 to 0.4",
                      .otherwise = "0.1",
                      .commands = " tighten "},
    OptionDeclaration{.name = "pin",
                      .argument = "DIAMETERS",
                      .meaning =
                          "the pin or spar that the knot goes round, 0.5 to 20 rope diameters",
                      .otherwise = "1 for a loop, 4 for a hitch",
                      .commands = " tighten "},
    OptionDeclaration{.name = "units",
                      .argument = "SYSTEM",
                      .meaning = "units of text and CSV",
                      .otherwise = "metric",
                      .commands = " choose cut show stretch end reel chart labels learn ",
                      .setting = true,
                      .choices = unit_systems},
    OptionDeclaration{.name = "risk",
                      .argument = "PERCENT",
                      .meaning = "accepted chance that the rope is short, over 0 to 50",
                      .otherwise = "1",
                      .commands = " choose cut show reel chart labels learn ",
                      .setting = true},
    OptionDeclaration{.name = "step",
                      .argument = "LENGTH",
                      .meaning = "cut lengths are rounded up to this",
                      .otherwise = "5 mm; 1 mm for exact lines",
                      .commands = of_jobs,
                      .setting = true},
    OptionDeclaration{.name = "marking-tension",
                      .argument = "TENSION",
                      .meaning = "pull on the rope while it is marked: a word, or a force such as "
                                 "3kgf",
                      .otherwise = "reference",
                      .commands = of_jobs,
                      .setting = true,
                      .choices = marking_tensions},
    OptionDeclaration{.name = "tables",
                      .argument = "DIR",
                      .meaning = "a folder of tables; a later one replaces records of the same id",
                      .otherwise = "those that splice list tables shows",
                      .commands = with_tables,
                      .repeatable = true,
                      .setting = true},
    OptionDeclaration{.name = "plug-in",
                      .argument = "FILE",
                      .meaning = "a plug-in with kinds of end or ropes; its code runs with your "
                                 "rights",
                      .otherwise = "",
                      .commands = with_tables,
                      .repeatable = true},
    OptionDeclaration{.name = "quiet",
                      .letter = 'q',
                      .argument = "",
                      .meaning = "no progress and no remarks on standard error, only errors",
                      .otherwise = "",
                      .commands = "*",
                      .setting = true},
    OptionDeclaration{.name = "color",
                      .argument = "WHEN",
                      .meaning =
                          "colour in messages; auto is on a terminal, unless NO_COLOR is set",
                      .otherwise = "auto",
                      .commands = "*",
                      .setting = true,
                      .choices = colours},
    OptionDeclaration{.name = "help",
                      .letter = 'h',
                      .argument = "",
                      .meaning = "show this help",
                      .otherwise = "",
                      .commands = "*"},
    OptionDeclaration{.name = "version",
                      .letter = 'V',
                      .argument = "",
                      .meaning = "show the versions of the program and of its tables",
                      .otherwise = "",
                      .commands = "*"},
};

} // namespace

std::span<const OptionDeclaration> option_declarations() {
    return option_rows;
}

const OptionDeclaration* find_option(std::string_view name) {
    const auto found = std::ranges::find(option_rows, name, &OptionDeclaration::name);
    return found == option_rows.end() ? nullptr : &*found;
}

std::string spelled(const OptionDeclaration& option) {
    std::string text = option.letter == '\0' ? "" : std::string("-") + option.letter + ", ";
    text += "--" + std::string(option.name);
    return option.argument.empty() ? text : text + ' ' + std::string(option.argument);
}

Unexpected wrong_value(std::string_view option, std::string_view value, std::string_view why) {
    return Unexpected(
        Fault{.code = Code::not_a_choice,
              .text = "--" + std::string(option) + ' ' + in_quotes(value) + ": " + std::string(why),
              .field = std::string(option)});
}

Unexpected wrong_choice(std::string_view option, std::string_view value, std::string_view command) {
    const auto words = find_option(option)->choices(command);
    return wrong_value(option, value,
                       "it must be one of " + listed(words) + did_you_mean(value, words));
}

bool takes(std::string_view command, const OptionDeclaration& option) {
    if (option.choices == formats_of) {
        const Command* declared = find_command(command);
        return declared != nullptr && !declared->formats.empty();
    }
    return option.commands == "*" ||
           option.commands.find(' ' + std::string(command) + ' ') != std::string_view::npos;
}

} // namespace libsplice::cli
