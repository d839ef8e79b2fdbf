// The table of fault codes, and a fault written as one line.
#include "libsplice/base/fault.h"

#include "libsplice/base/text.h"

#include <array>

namespace libsplice {

namespace {

constexpr std::array titles{
    CodeTitle{Code::file_unreadable, "a file cannot be read"},
    CodeTitle{Code::not_utf8, "text is not UTF-8"},
    CodeTitle{Code::no_heading, "a job file has no heading"},
    CodeTitle{Code::duplicate_column, "a column or key occurs twice"},
    CodeTitle{Code::bad_quotes, "quotes of a CSV file do not pair"},
    CodeTitle{Code::broken_toml, "a TOML file is broken"},
    CodeTitle{Code::unknown_column, "a column or key is not known"},
    CodeTitle{Code::too_many_columns, "more than 1,000 columns"},
    CodeTitle{Code::too_many_cells, "a row has more cells than the heading"},
    CodeTitle{Code::cell_too_long, "a cell is longer than 64 KiB"},
    CodeTitle{Code::cell_missing, "a required cell is empty"},
    CodeTitle{Code::not_a_length, "not a length"},
    CodeTitle{Code::not_a_tension, "not a tension"},
    CodeTitle{Code::not_a_number, "not a number"},
    CodeTitle{Code::not_a_choice, "not one of the words allowed here"},
    CodeTitle{Code::length_or_route, "a line needs a length or a route, one of them"},
    CodeTitle{Code::value_out_of_range, "a value of a line is out of range"},
    CodeTitle{Code::route_not_readable, "a route cannot be read"},
    CodeTitle{Code::not_a_rope, "the points are not a knot that can be tightened"},
    CodeTitle{Code::foreign_file, "a file is of another kind than the one asked for"},
    CodeTitle{Code::tables_missing, "no folder of tables"},
    CodeTitle{Code::table_unreadable, "a table cannot be read"},
    CodeTitle{Code::table_key_missing, "a table record lacks a key"},
    CodeTitle{Code::table_value_wrong, "a value of a table is wrong"},
    CodeTitle{Code::source_unknown, "a source key does not resolve"},
    CodeTitle{Code::duplicate_record, "two records of one folder have the same id"},
    CodeTitle{Code::unknown_rope, "a rope is not in the tables"},
    CodeTitle{Code::rope_not_understood, "the description of a rope cannot be read"},
    CodeTitle{Code::unknown_kind, "a kind of end is not known"},
    CodeTitle{Code::strength_missing, "a rope's breaking strength is needed and not known"},
    CodeTitle{Code::stretch_missing, "a rope's stretch is needed and not known"},
    CodeTitle{Code::case_file_empty, "a file of published cases holds no case"},
    CodeTitle{Code::beyond_stretch,
              "a pull is beyond the last published point of a rope's stretch"},
    CodeTitle{Code::nothing_to_learn, "a kind of end has no constant to learn"},
    CodeTitle{Code::wrong_construction, "a kind cannot be made in this construction"},
    CodeTitle{Code::unknown_field, "a kind has no such field"},
    CodeTitle{Code::field_unreadable, "a field's value cannot be read"},
    CodeTitle{Code::field_out_of_range, "a field's value is out of range"},
    CodeTitle{Code::field_missing, "a required field is missing"},
    CodeTitle{Code::eye_too_small, "an eye is too small for its pin"},
    CodeTitle{Code::below_published_minimum, "below a published minimum"},
    CodeTitle{Code::size_not_printed, "a table has no row for this size"},
    CodeTitle{Code::throat_too_wide, "the angle at the throat is too wide"},
    CodeTitle{Code::taper_longer_than_tail, "a taper is longer than its tail"},
    CodeTitle{Code::unknown_rule, "a kind has no rule of that name for this rope"},
    CodeTitle{Code::figure_missing, "no source gives a figure that is needed"},
    CodeTitle{Code::buries_overlap, "the line is too short for its buries"},
    CodeTitle{Code::nothing_left, "nothing is left of the line"},
    CodeTitle{Code::refused_for_person, "refused on a line that carries a person"},
    CodeTitle{Code::slack_for_exact, "an exact line cannot be marked slack"},
    CodeTitle{Code::measured_relaxed, "this rope is measured without load"},
    CodeTitle{Code::tolerance_without_exact, "a tolerance goes with an exact fit"},
    CodeTitle{Code::cannot_be_both, "two fields contradict each other"},
    CodeTitle{Code::strip_does_not_fit, "a stripped part does not fit its line"},
    CodeTitle{Code::pair_unlike, "the lines of a pair are not alike"},
    CodeTitle{Code::route_impassable, "the rope cannot run the way of its route"},
    CodeTitle{Code::overloaded, "the line does not hold its load"},
    CodeTitle{Code::order_impossible, "the ends cannot both be made"},
    CodeTitle{Code::piece_longer_than_reels, "a piece is longer than any reel of its rope"},
    CodeTitle{Code::rope_not_on_stock, "the stock has no such rope"},
    CodeTitle{Code::stock_runs_out, "the stock does not suffice"},
    CodeTitle{Code::lot_cannot_hold, "no lot can give what must come from one"},
    CodeTitle{Code::duplicate_stock, "two rows of a stock have the same id"},
    CodeTitle{Code::stock_changed, "a stock has changed since it was read"},
    CodeTitle{Code::stock_locked, "another run holds a stock"},
    CodeTitle{Code::rope_unbalanced, "the rope of a plan does not add up"},
    CodeTitle{Code::plug_in_unreadable, "a plug-in cannot be loaded"},
    CodeTitle{Code::plug_in_foreign, "a library is no plug-in"},
    CodeTitle{Code::plug_in_epoch, "a plug-in is built for another epoch"},
    CodeTitle{Code::plug_in_size, "a record of a plug-in has a wrong size"},
    CodeTitle{Code::plug_in_text, "a text of a plug-in is wrong"},
    CodeTitle{Code::plug_in_declaration, "a plug-in declares something that cannot be"},
    CodeTitle{Code::plug_in_kind_exists, "a plug-in brings a kind that exists already"},
    CodeTitle{Code::plug_in_function_missing, "a plug-in lacks a function"},
    CodeTitle{Code::plug_in_source, "a source of a plug-in does not resolve"},
    CodeTitle{Code::plug_in_tables, "a plug-in's ropes cannot be read"},
    CodeTitle{Code::plug_in_threw, "a plug-in let an exception escape"},
    CodeTitle{Code::plug_in_refused, "a plug-in refuses an end"},
    CodeTitle{Code::plug_in_number, "a plug-in answers with an impossible number"},
    CodeTitle{Code::plug_in_row_without_source, "a plug-in answers with a row without a source"},
    CodeTitle{Code::plug_in_answer, "a plug-in's answer cannot be used"},
    CodeTitle{Code::plug_in_twice, "a plug-in is named twice"},
    CodeTitle{Code::cannot_write, "an output cannot be written"},
    CodeTitle{Code::wrong_call, "a call of the C library is wrong"},
    CodeTitle{Code::out_of_memory, "the library could not go on"},
};

} // namespace

std::span<const CodeTitle> all_codes() {
    return titles;
}

std::string to_text(const Fault& fault) {
    std::string text = to_text(fault.at);
    if (!text.empty()) {
        text += ": ";
    }
    text += "error " + std::to_string(static_cast<unsigned>(fault.code)) + ": " + fault.text;
    if (!fault.rule.empty()) {
        text += " [" + fault.rule + "]";
    }
    return show_controls(text);
}

} // namespace libsplice
