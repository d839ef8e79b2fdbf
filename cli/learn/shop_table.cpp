// What was learnt as a table that --tables lays over ours.
#include "libsplice/sheet/csv/csv_cells.h"

#include "cli/learn/learn_report.h"

namespace libsplice::cli {

namespace {

/// A TOML string of one line.
std::string toml_string(std::string_view text) {
    std::string out = "\"";
    for (const char c : text) {
        if (c == '"' || c == '\\') {
            out += '\\';
        }
        out += c;
    }
    return out + '"';
}

std::string figure(std::string_view name, double value, std::string_view unit,
                   std::optional<double> sd, bool measured) {
    std::string text = std::string(name) + " = { value = ";
    append_number_cell(text, value);
    if (!unit.empty()) {
        text += ", unit = " + toml_string(unit);
    }
    if (sd) {
        text += ", sd = ";
        append_number_cell(text, *sd);
        text += ", spread = " + toml_string(measured ? "measured" : "stated guess");
    }
    return text + " }\n";
}

std::string figures(const Learnt& learnt) {
    const bool measured = learnt.own_spread;
    switch (learnt.what) {
    case Learnable::knot: // its spread is that of the hand's factor, which is 1 of what it sets
        return figure("knot", learnt.constant, "D", std::nullopt, measured) +
               figure("set", 1.0, "", learnt.constant_spread / learnt.constant, measured);
    case Learnable::beyond_loop:
        return figure("beyond_loop", learnt.constant, "D", learnt.constant_spread, measured);
    case Learnable::beyond_turns:
        return figure("beyond_turns", learnt.constant, "D", learnt.constant_spread, measured);
    case Learnable::take_up:
        return figure("braid_constant", learnt.constant, "",
                      measured ? std::optional(learnt.constant_spread) : std::nullopt, measured);
    }
    return {};
}

} // namespace

void write_shop_table(const LearntFile& file, Output& output) {
    output.write(std::string(first_line_of_shop_table) + "\n");
    output.write("version = " +
                 toml_string("shop, " + std::to_string(file.rows - file.left_out) + " pieces of " +
                             file.file) +
                 "\n");
    output.write("title = \"The shop's own measurements\"\n\n");
    output.write("[[source]]\nkey = \"shop-pieces\"\ntitle = " +
                 toml_string("Pieces measured by the shop, " + file.file) +
                 "\nterms = \"the shop's own\"\n");
    for (const LearntPieces& pieces : file.all) {
        const std::string kind(pieces.kind->declaration.name);
        const std::size_t count = pieces.learnt.sample.count;
        output.write(
            "\n[[rule]]\nid = " + toml_string("shop/" + kind + '/' + pieces.rope.id) +
            "\nname = \"shop\"\nkinds = [" + toml_string(kind) + "]\nropes = [" +
            toml_string(pieces.rope.id) + "]\ndefault = true\nsource = \"shop-pieces\"\n" +
            "locator = " +
            toml_string(std::to_string(count) + (count == 1 ? " piece" : " pieces") + " measured") +
            "\nstatus = \"shop\"\n" + figures(pieces.learnt));
    }
}

} // namespace libsplice::cli
