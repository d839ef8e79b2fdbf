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
    ExitMeaning{Exit::refused, "something was refused, a case of check failed, or a value of an "
                               "end is out of range"},
    ExitMeaning{Exit::wrong_command, "the command line is wrong"},
    ExitMeaning{Exit::unusable_file, "a file cannot be read or has no usable structure, a table or "
                                     "plug-in cannot be loaded, or an output cannot be written"},
};

constexpr std::array all_commands{
    Command{"cut", "work out a job: what length to cut for every line, and where to mark it",
            "JOB...",
            "Reads job files (CSV, or TOML where the name ends in .toml; - is standard input) and "
            "writes "
            "one sheet: for each line the length to cut, the marks, the steps and the check. Lines "
            "that "
            "cannot be cut stay in the sheet and say why.",
            "splice cut docs/examples/sailing-school.csv", run_cut},
    Command{
        "end", "work out one end by itself", "KIND --rope ROPE [FIELD=VALUE...]",
        "Shows what one end needs beyond its bearing point, with its marks, steps and sources. The "
        "fields are those that splice list kinds shows.",
        "splice end buried-eye --rope \"12-strand HMPE 5 mm\" eye=36mm pin=12mm", run_end},
    Command{
        "chart", "a wall chart of a job: what each boat is roped with", "JOB...",
        "Writes one HTML page to print for each boat: every line with its rope, diameter, finished "
        "and cut length and ends, in letters that are read from a metre away. Boats that are roped "
        "alike share a page.",
        "splice chart docs/examples/sailing-school.csv --output chart.html", run_chart},
    Command{
        "labels", "a label for every piece of a job", "JOB...",
        "Writes an HTML page of labels to print: name, boat, rope, cut length and line of the job, "
        "and the same as a QR code. --sheet says how the labels lie on the paper.",
        "splice labels docs/examples/sailing-school.csv --output labels.html", run_labels},
    Command{
        "list", "list what the tables and the program hold", "WHAT [NAME...]",
        "Lists what there is of one sort, all of it or only what is named: splice list faults 305 "
        "tells what that code means.",
        "splice list kinds", run_list, list_words},
    Command{
        "show", "one line of a job in full, each row of its ledger worked out",
        "JOB LINE | stretch ROPE load=PULL [length=LENGTH] [against=SORT]",
        "Shows one line with its sheet and with the formula, the numbers and the source of every "
        "row of "
        "its ledger, and its length at several pulls. LINE is the line's name, or its number "
        "among the "
        "job's lines. The word stretch, with a rope and a load in place of a job, asks how much "
        "length of that rope stretches (1 m unless given), and which size of another construction "
        "and fibre, such as against=\"double-braid polyester\", stretches no more.",
        "splice show docs/examples/sailing-school.csv \"trapeze line\"", run_show},
    Command{"new", "write a starter job that cuts as it stands", "[FILE]",
            "Writes a small job to begin from: CSV where the name ends in .csv, else TOML with "
            "remarks. "
            "Without a name, or with -, it goes to standard output.",
            "splice new -", run_new},
    Command{
        "tighten", "how much rope a knot uses at its tightest, worked out from its shape",
        "KNOT | FILE.csv",
        "Pulls a knot tight as an ideal rope: round, perfectly flexible, without friction. "
        "FILE.csv "
        "holds the columns x, y and z, in rope diameters, of a line whose ends lead away. Shows "
        "the rope "
        "that the knot takes up, and that it is still the same knot. A loop bears on a rigid pin, "
        "and a hitch goes round a spar, of the diameter --pin.",
        "splice tighten overhand", run_tighten, knot_words},
    Command{
        "learn", "what a shop's own measured splices and knots say", "MEASURED.csv",
        "Reads what pieces of rope used up, in the columns kind, rope and used, or kind, rope, "
        "before "
        "and after. For each kind in each rope it fits the constant that the tables hold, with the "
        "limit that the next piece stays under, and names pieces that do not belong. With "
        "--output the constants are written as a table, which --tables lays over ours.",
        "splice learn docs/examples/measured.csv", run_learn},
    Command{
        "reel", "which reel or offcut each piece comes from, what to order, and what it costs",
        "JOB...",
        "Works out the jobs as cut does, and plans which reel or offcut of the stock each piece is "
        "cut from, in cutting order, with what is left of each, and what to order where the stock "
        "does not suffice. The plan is proved best, or the sheet says how far from it it can be. "
        "Ctrl-C ends the search; the best plan so far is written.",
        "splice reel docs/examples/sailing-school.csv --stock docs/examples/stock.csv", run_reel},
    Command{
        "check", "check the tables against print", "[FILE...]",
        "Works out every case of the files of published values, by default those that came with "
        "the "
        "program, and compares with what is printed. The last line counts them.",
        "splice check", run_check},
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

} // namespace libsplice::cli
