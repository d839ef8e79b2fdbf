// The table of commands: names, help texts, formats, and the function behind each.
#include "cli/declared/command.h"
#include "cli/list/listings.h"
#include "cli/messages.h"

#include <algorithm>
#include <array>

namespace libsplice::cli {

namespace {

std::vector<Word> list_words() {
    std::vector<Word> words;
    for (const Listing& listing : listings()) {
        words.push_back(listing.word);
    }
    return words;
}

constexpr std::array meanings_of_exits{
    ExitMeaning{Exit::done, "all is done; a caution is no failure"},
    ExitMeaning{Exit::refused, "some lines are refused, a piece is not placed, a case of check "
                               "failed, or a value of an end is out of range"},
    ExitMeaning{Exit::wrong_command, "the command line is wrong"},
    ExitMeaning{Exit::unusable_file, "a file cannot be read or has no usable structure, a table or "
                                     "plug-in cannot be loaded, an output cannot be written, or "
                                     "memory ran out"},
    ExitMeaning{Exit::interrupted, "interrupted; a plan that was found so far is written, and "
                                   "nothing is committed"},
};

constexpr std::array every_format{Format::text, Format::csv, Format::json, Format::html};
constexpr std::array no_pages{Format::text, Format::csv, Format::json};
constexpr std::array lists_only{Format::text, Format::json};
constexpr std::array no_csv{Format::text, Format::json, Format::html};

constexpr std::array all_commands{
    Command{.name = "choose",
            .summary = "which rope each line of a job may be made of, and what each gives up",
            .synopsis = "JOB...",
            .about = "Holds ropes against what each line asks: load, give, what holds it, sheave, "
                     "hand and the other columns for the choice of rope. place names a row of "
                     "places.toml, which speaks if the line is silent. Every rope is cut as cut "
                     "does it. It shows the rope named now, a size down and up, and the best three "
                     "others, each with the first need that fails. --output JOB writes the job "
                     "with a rope in each line that names none; the answer stays on standard "
                     "output.",
            .example = "splice new - | splice choose -",
            .run = run_choose,
            .formats = no_csv},
    Command{.name = "cut",
            .summary = "work out a job: what length to cut for every line, and where to mark it",
            .synopsis = "JOB...",
            .about = "Reads job files (CSV or TOML; - is standard input) and writes one sheet: "
                     "for each line the length to cut, the marks, the steps and the check. A line "
                     "that cannot be cut keeps its place in the sheet, which says why.",
            .example = "splice new - | splice cut -",
            .run = run_cut,
            .formats = every_format},
    Command{.name = "show",
            .summary = "one line of a job in full, each row of its ledger worked out",
            .synopsis = "JOB LINE",
            .about = "Shows one line with its sheet, and its length at several pulls. Every row of "
                     "its ledger has its formula, its numbers and its source. LINE is the line's "
                     "name, or its number among the job's lines.",
            .example = "splice new - | splice show - bridle",
            .run = run_show,
            .formats = every_format},
    Command{.name = "stretch",
            .summary = "how far a rope stretches under a load",
            .synopsis = "ROPE load=TENSION [length=LENGTH] [against=SORT]",
            .about = "Shows how far a length of rope (1 m unless given) stretches under a load. "
                     "With a construction and a fibre, such as against=\"double-braid polyester\", "
                     "it also names the size of that sort which stretches no more.",
            .example = "splice stretch demo-cd-hmpe-5 load=600N length=8m",
            .run = run_stretch,
            .formats = every_format},
    Command{.name = "end",
            .summary = "work out one end by itself",
            .synopsis = "KIND --rope ROPE [FIELD=VALUE...]",
            .about = "Shows what one end needs beyond its bearing point, with its marks, steps and "
                     "sources. splice list kinds KIND shows the fields.",
            .example = "splice end buried-eye --rope \"12-strand HMPE 5 mm\" eye=36mm pin=12mm",
            .run = run_end,
            .formats = every_format},
    Command{.name = "list",
            .summary = "ropes, kinds of end, columns, errors, settings, sources and tables",
            .synopsis = "WHAT [NAME...]",
            .about = "Lists all there is of one sort, or only what is named: splice list errors "
                     "305 gives the cause of that error and what to do.",
            .example = "splice list kinds",
            .run = run_list,
            .formats = lists_only,
            .words = list_words},
    Command{.name = "new",
            .summary = "write a sample job that works unchanged",
            .synopsis = "[FILE]",
            .about = "Writes a small job to begin from: TOML with remarks if the name ends in "
                     ".toml, otherwise CSV. Without a name it goes to standard output.",
            .example = "splice new job.csv",
            .run = run_new},
    Command{.name = "reel",
            .summary = "which reel or offcut each piece comes from, and what to order",
            .synopsis = "JOB...",
            .about =
                "Works out the jobs as cut does. Then it plans which reel or offcut of the stock "
                "each piece is cut from, in cutting order. It says what is left of each, what to "
                "order and what it costs. Either the plan is proved optimal, or the sheet gives "
                "the gap. Ctrl-C ends the search; the best plan so far is written.",
            .example = "splice new - | splice reel -",
            .run = run_reel,
            .formats = every_format},
    Command{.name = "chart",
            .summary = "a wall chart of a job: what each boat is roped with",
            .synopsis = "JOB...",
            .about = "Writes one HTML page to print for each boat: every line with its rope, "
                     "diameter, finished and cut length and ends, in letters that can be read from "
                     "a metre away. Boats that are roped alike share a page.",
            .example = "splice new - | splice chart - -o chart.html",
            .run = run_chart},
    Command{.name = "labels",
            .summary = "a label for every piece of a job",
            .synopsis = "JOB...",
            .about = "Writes an HTML page of labels to print: name, boat, rope, cut length and "
                     "line of the job, and the same as a QR code. --sheet says how the labels lie "
                     "on the paper.",
            .example = "splice new - | splice labels - -o labels.html",
            .run = run_labels},
    Command{.name = "tighten",
            .summary = "how much rope a knot uses at its tightest, from its shape",
            .synopsis = "KNOT | FILE.csv",
            .about = "Pulls a knot tight as an ideal rope: round, perfectly flexible, without "
                     "friction. FILE.csv holds the columns x, y and z, in rope diameters, of a "
                     "line whose ends lead away. Shows the rope that the knot takes up, and that "
                     "it is still the same knot. A loop bears on a rigid pin, and a hitch goes "
                     "round a spar, of the diameter --pin.",
            .example = "splice tighten overhand",
            .run = run_tighten,
            .formats = no_pages,
            .words = knot_words},
    Command{.name = "learn",
            .summary = "fit the tables to splices and knots that a shop has measured",
            .synopsis = "MEASURED.csv",
            .about = "Reads how much rope pieces used up, in the columns kind, rope and used, or "
                     "kind, rope, before and after. For each kind in each rope it fits the "
                     "constant that the tables hold. It gives the length that the next piece "
                     "exceeds only with the accepted risk, and names pieces that do not belong. "
                     "With --output the constants are written as a table, for --tables.",
            .example = "splice learn measured.csv -o shop.toml",
            .run = run_learn,
            .formats = no_pages},
    Command{.name = "check",
            .summary = "compare the tables with published values",
            .synopsis = "[FILE...]",
            .about = "Works out every case of the files of published values, by default those that "
                     "came with the program, and compares. The last line counts them.",
            .example = "splice check",
            .run = run_check},
};

} // namespace

std::span<const ExitMeaning> exit_meanings() {
    return meanings_of_exits;
}

std::span<const Command> commands() {
    return all_commands;
}

const Command* find_command(std::string_view name) {
    const auto found = std::ranges::find(all_commands, name, &Command::name);
    return found == all_commands.end() ? nullptr : &*found;
}

Exit wrong_command(std::string_view text) {
    say(text);
    return Exit::wrong_command;
}

Exit wrong_option(const CommandLine& command, const Fault& fault) {
    const auto set = command.set_in.find(fault.field);
    if (set == command.set_in.end()) {
        return wrong_command(fault.text);
    }
    Fault of_file = fault;
    of_file.at = set->second;
    return unusable_file(of_file);
}

Exit unusable_file(const Fault& fault) {
    say(fault);
    return Exit::unusable_file;
}

} // namespace libsplice::cli
