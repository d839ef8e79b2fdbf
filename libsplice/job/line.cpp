// The names of the columns and what they mean.
#include "libsplice/job/line.h"

namespace libsplice {

namespace {

constexpr std::array<std::string_view, column_count> column_names_in_order{
    "name",       "boat",         "quantity",       "rope",   "length",    "route",
    "tension",    "end_a",        "end_b",          "fit",    "tolerance", "first_end",
    "state",      "prestretched", "carries_person", "load",   "spare",     "extra",
    "wear",       "pair",         "fit_first",      "lot",    "colour",    "note",
    "strip",      "sleeve",       "headroom",       "travel", "cleat",     "smallest_hole",
    "reversible", "wash",         "stretch",
};

constexpr std::array<std::string_view, column_count> meanings{
    "what the line is called; required",
    "the boat that it belongs to",
    "how many to cut, 1 to 1,000,000; 1 unless given",
    "its rope: a table id, or construction, fibre and diameter; required",
    "finished length, bearing point to bearing point; this or a route",
    "the way that the line runs, from which its length is worked out; this or a length",
    "the pull at which that length holds; the rope's reference tension unless given",
    "the kind of end a; bare unless given",
    "the kind of end b; bare unless given",
    "exact (within a tolerance each way), trim-aboard (cut to fit aboard) or at-least (never "
    "short); at-least "
    "unless given",
    "how far an exact line may be out, each way",
    "the end that is made first, a or b; a unless given",
    "the state in which the length holds, such as hoisted or eased; shown beside the length",
    "yes if the rope has been loaded before and has prestretched in; no unless given",
    "yes if the line carries a person; no unless given",
    "the greatest load in use, from which the design factor is worked out",
    "rope against coming out short, as a length; instead of working it out from the risk",
    "rope to be cut to fit later; a row of its own",
    "rope to make the worn end again, at the end made last",
    "a name shared by lines that must match",
    "what must be on the rope before an end closes",
    "the lot that the rope must come from",
    "the colour of the rope",
    "anything worth saying to the bench",
    "how far the cover is taken off, from the bearing point of end a on the finished line",
    "a sleeve over the line, its finished length and where it starts: 0.6 m at 8.2 m",
    "from the bearing point of end a to the sheave it comes up to, hoisted",
    "how far the line runs from hoisted to lowered; of elastic: how much longer its way gets",
    "from the bearing point of end a to the cleat, hoisted",
    "the smallest hole or sheave that the made line goes through",
    "yes if the line is to be turned end for end when one end is worn; no unless given",
    "yes if the line will be washed or soaked after it is made; no unless given",
    "how far elastic is pulled out over its relaxed length where its way is shortest, as 30 %; its "
    "length is that way",
};

} // namespace

std::string_view column_name(Column column) {
    return column_names_in_order.at(static_cast<std::size_t>(column));
}

std::span<const std::string_view, column_count> column_names() {
    return column_names_in_order;
}

std::string_view column_meaning(Column column) {
    return meanings.at(static_cast<std::size_t>(column));
}

} // namespace libsplice
