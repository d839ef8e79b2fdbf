// Refuses ends that cannot both be made, and finds a place for rope that is never trimmed.
#include "libsplice/cut/bind/order.h"

#include "libsplice/cut/layout.h"

#include <algorithm>
#include <array>

namespace libsplice {

namespace {

bool does(const BoundEnd& end, Action action) {
    return std::ranges::find(end.allowance->steps, action, &Step::action) !=
           end.allowance->steps.end();
}

/// Whether rope may stick out beyond the finished end: it is only cut, or tied.
bool can_keep(const BoundLine& line, LineEnd end) {
    const BoundEnd& bound = line.end(end);
    if (!bound.allowance->made) {
        return line.fit.fit != Fit::exact;
    }
    constexpr std::array hidden{Action::taper, Action::bury, Action::tuck, Action::lead_in,
                                Action::press};
    return does(bound, Action::tie) &&
           std::ranges::none_of(hidden, [&](Action action) { return does(bound, action); });
}

void place_kept(BoundLine& line, CellReader& cells) {
    line.fit.kept_at = line.ends.last_end();
    if (line.fit.extra + line.fit.wear == 0) {
        return;
    }
    for (const LineEnd end : {line.ends.last_end(), line.ends.first_end}) {
        if (!line.ends.closing && can_keep(line, end)) {
            line.fit.kept_at = end;
            return;
        }
    }
    cells.add(
        Fault{Code::cannot_be_both,
              "rope for wear or to be cut aboard needs an end that is knotted, or that is cut and "
              "whipped on a line that need not be exact; neither end of this line is one"},
        line.fit.wear > 0 ? Column::wear : Column::extra);
}

/// A re-make takes the rope beyond the bearing point once more.
void count_remakes(BoundLine& line) {
    if (line.fit.wear == 0) {
        return;
    }
    for (const LineEnd end : both_ends) {
        const Nanometres takes = line.end(end).allowance->total();
        if (line.end(end).allowance->made && takes > 0) {
            line.remakes.push_back({end, takes, line.fit.wear / takes});
        }
    }
}

Column end_column(LineEnd end) {
    return end == LineEnd::a ? Column::end_a : Column::end_b;
}

std::string named(LineEnd end) {
    return end == LineEnd::a ? "end_a" : "end_b";
}

void refuse(LineEnd end, std::string text, CellReader& cells) {
    cells.add(Fault{Code::order_impossible, std::move(text)}, end_column(end));
}

/// Only an eye, a loop or a hitch can hold a closed fitting.
void check_captive(const BoundLine& line, LineEnd end, CellReader& cells) {
    const BoundEnd& bound = line.end(end);
    if (bound.captive && !bound.allowance->made) {
        refuse(end,
               "nothing holds the " + bound.fitting + ": a " +
                   std::string(bound.kind->declaration.name) +
                   " end has no eye; write another kind, or leave captive out",
               cells);
    }
}

/// An eye that is drawn through the rope cannot hold anything.
void check_turned(const BoundLine& line, LineEnd end, CellReader& cells) {
    const BoundEnd& bound = line.end(end);
    if (!bound.captive || !does(bound, Action::turn_eye_through)) {
        return;
    }
    if (line.ends.closing) {
        refuse(end,
               "the whole eye is drawn through the rope, and the " + bound.fitting +
                   " in it does not pass: write " + named(end) + " = buried-eye and " +
                   named(other(end)) +
                   " = locked-eye, made first, in place of what makes both at once",
               cells);
        return;
    }
    refuse(end,
           "the whole eye is drawn through the rope, because the other end is not free, and the " +
               bound.fitting + " in it does not pass: write " + named(end) +
               " = buried-eye, which is closed round it and stitched, or first_end = " +
               (end == LineEnd::a ? "a" : "b"),
           cells);
}

/// A line whose other end is made cannot be drawn through this one.
void check_drawn_through(const BoundLine& line, CellReader& cells) {
    const bool other_is_made = line.first().allowance->made || line.last().aboard;
    if (!line.ends.closing && other_is_made && does(line.last(), Action::pass_line_through_tail)) {
        refuse(line.ends.last_end(),
               "the line's other end is drawn through this one, and it is made by then: leave "
               "far_end out, or write fixed",
               cells);
    }
}

/// The eye of the end made last is hung by drawing the whole line through it.
void check_hung_last(const BoundLine& line, CellReader& cells) {
    const LineEnd last = line.ends.last_end();
    if (line.ends.closing || !does(line.last(), Action::hang)) {
        return;
    }
    const std::string kind(line.last().kind->declaration.name);
    const std::string offer =
        "write " + named(last) + " = buried-eye with made = aboard, which is closed round the bar";
    const std::string other_first =
        std::string(", or first_end = ") + (last == LineEnd::a ? "a" : "b");
    const std::string drawn =
        "to hang this " + kind + " the line's other end has to pass through its eye, and ";
    if (does(line.first(), Action::hang)) {
        refuse(last, drawn + "that one is hung too: " + offer, cells);
    } else if (line.first().captive) {
        refuse(last,
               drawn + "the " + line.first().fitting + " there does not: " + offer + other_first,
               cells);
    } else if (line.route && line.route->rove && line.first().allowance->made) {
        refuse(last, drawn + "the line is rove by then: " + offer + other_first, cells);
    }
}

} // namespace

void bind_order(BoundLine& line, CellReader& cells) {
    place_kept(line, cells);
    count_remakes(line);
    for (const LineEnd end : both_ends) {
        check_captive(line, end, cells);
        check_turned(line, end, cells);
    }
    check_drawn_through(line, cells);
    check_hung_last(line, cells);
}

} // namespace libsplice
