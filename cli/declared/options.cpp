#include "cli/declared/options.h"

#include "libsplice/base/text.h"
#include "libsplice/reel/plan.h"
#include "libsplice/sheet/formats.h"
#include "libsplice/sheet/paper/label_sheets.h"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

namespace libsplice::cli {

namespace {

constexpr std::array<std::string_view, 2> unit_names{"metric", "imperial"};
constexpr std::array<std::string_view, 2> pull_words{"reference", "slack"};

constexpr std::string_view of_no_pages = " list tighten learn ";

std::span<const std::string_view> formats_of(std::string_view command) {
    const bool pages = of_no_pages.find(' ' + std::string(command) + ' ') == std::string_view::npos;
    static const std::vector<std::string_view> without_pages = [] {
        std::vector<std::string_view> names;
        for (const FormatRow& row : formats()) {
            if (!row.has_pages) {
                names.push_back(row.name);
            }
        }
        return names;
    }();
    return pages ? format_names() : without_pages;
}

std::span<const std::string_view> unit_systems(std::string_view /*command*/) {
    return unit_names;
}

std::span<const std::string_view> marking_tensions(std::string_view /*command*/) {
    return pull_words;
}

std::span<const std::string_view> sheets_of_labels(std::string_view /*command*/) {
    return label_sheet_names();
}

std::span<const std::string_view> objectives(std::string_view /*command*/) {
    return objective_names;
}

constexpr std::array options{
    OptionDeclaration{"format", "FORMAT", "how to write the answer", "text",
                      " cut end list show tighten learn reel ", false, formats_of},
    OptionDeclaration{"output", "FILE", "write to FILE, whole or not at all; - is standard output",
                      "-", " cut chart labels end list show new tighten learn reel "},
    OptionDeclaration{
        "tables", "DIR", "a folder of tables; a later one replaces records of the same id",
        "see Tables in the manual", " cut chart labels end list check show learn reel ", true},
    OptionDeclaration{"plug-in", "FILE",
                      "a plug-in with kinds of end or ropes; its code runs with your rights", "",
                      " cut chart labels end list check show learn reel ", true},
    OptionDeclaration{"units", "SYSTEM", "units of text and CSV", "metric",
                      " cut chart labels end show learn reel ", false, unit_systems},
    OptionDeclaration{"rope", "ROPE", "a rope of the tables, or construction, fibre and diameter",
                      "", " end "},
    OptionDeclaration{"risk", "PERCENT", "accepted chance that the rope is short, over 0 to 50",
                      "1", " cut chart labels show learn reel "},
    OptionDeclaration{"step", "LENGTH", "cut lengths are rounded up to this",
                      "5 mm; 1 mm for exact lines", " cut chart labels show reel "},
    OptionDeclaration{"marking-tension", "PULL",
                      "pull on the rope while it is marked: a word, or a force such as 3kgf",
                      "reference", " cut chart labels show reel ", false, marking_tensions},
    OptionDeclaration{"ledger", "", "show every row of each ledger", "", " cut show "},
    OptionDeclaration{"mesh", "DIAMETERS", "how far apart the points of the rope lie, 0.02 to 0.4",
                      "0.1", " tighten "},
    OptionDeclaration{"pin", "DIAMETERS",
                      "the pin or spar that the knot goes round, 0.5 to 20 rope diameters",
                      "1 for a loop, 4 for a hitch", " tighten "},
    OptionDeclaration{"sheet", "NAME", "the sheet that labels are printed on", "a4-2x6", " labels ",
                      false, sheets_of_labels},
    OptionDeclaration{"stock", "FILE", "the reels and offcuts there are, and what can be ordered",
                      "", " reel "},
    OptionDeclaration{"cut-loss", "LENGTH", "rope that a cut costs, besides what the ledgers hold",
                      "0 mm", " reel "},
    OptionDeclaration{"minimise", "OBJECTIVE", "what is made small", "cost", " reel ", false,
                      objectives},
    OptionDeclaration{"seconds", "SECONDS", "when the search ends, with the best plan so far", "10",
                      " reel "},
    OptionDeclaration{"commit", "", "write the stock as it is after the cuts", "", " reel "},
    OptionDeclaration{"help", "", "show this help", "", "*"},
    OptionDeclaration{"version", "", "show the version", "", "*"},
};

} // namespace

std::span<const OptionDeclaration> option_declarations() {
    return options;
}

const OptionDeclaration* find_option(std::string_view name) {
    const auto found = std::ranges::find(options, name, &OptionDeclaration::name);
    return found == options.end() ? nullptr : &*found;
}

Unexpected wrong_value(std::string_view option, std::string_view value, std::string_view why) {
    return Unexpected(Fault{Code::not_a_choice, "--" + std::string(option) + ' ' +
                                                    in_quotes(value) + ": " + std::string(why)});
}

bool takes(std::string_view command, const OptionDeclaration& option) {
    if (option.commands == "*") {
        return true;
    }
    return option.commands.find(' ' + std::string(command) + ' ') != std::string_view::npos;
}

} // namespace libsplice::cli
