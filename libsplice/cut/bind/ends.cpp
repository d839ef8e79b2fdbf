// Binds the ends of a line: what the line keeps of their fields, and what their kinds get.
#include "libsplice/cut/bind/ends.h"

#include "libsplice/allowance/fields.h"
#include "libsplice/cut/layout.h"
#include "libsplice/units/read.h"

#include <algorithm>

namespace libsplice {

namespace {

constexpr std::array<std::string_view, 2> end_letters{"a", "b"};
constexpr std::string_view fitting_field = "fitting";
constexpr std::string_view fitting_length_field = "fitting_length";
constexpr std::string_view measured_field = "measured";
constexpr std::string_view made_field = "made";
constexpr std::string_view captive_field = "captive";

Column column_of(LineEnd end) {
    return end == LineEnd::a ? Column::end_a : Column::end_b;
}

/// Adds a fault of an end's field at the cell that gives it, or at the end's own cell.
void add_fault(CellReader& cells, LineEnd end, Fault fault) {
    const JobLine& job = cells.job();
    std::string name(column_name(column_of(end)));
    const auto given = std::ranges::find_if(job.fields, [&](const EndFieldCell& cell) {
        return cell.end == end && cell.field == fault.field;
    });
    fault.text = name + ": " + fault.text;
    if (given == job.fields.end()) {
        cells.add(std::move(fault), job.cell(column_of(end)), std::move(name));
    } else {
        name += '.';
        name += given->field;
        cells.add(std::move(fault), given->cell, std::move(name));
    }
}

const Kind* find_kind(const Book& book, LineEnd end, const Rope* rope, CellReader& cells) {
    const auto name = cells.text(column_of(end));
    const auto construction = rope == nullptr ? std::nullopt : std::optional(rope->construction);
    const auto kind = book.kind(name.empty() ? "bare" : name, construction);
    if (!kind) {
        add_fault(cells, end, kind.error());
        return nullptr;
    }
    return *kind;
}

/// What the cells of one end say: the fields that every end has, and those for its kind.
struct EndCells {
    std::vector<FieldText> of_kind;
    std::string fitting;
    std::optional<Nanometres> fitting_length;
    bool to_pin_centre = false;
    bool aboard = false;
    bool captive = false;
};

const FieldDeclaration* find_common(std::string_view name) {
    const auto found = std::ranges::find(common_fields(), name, &FieldDeclaration::name);
    return found == common_fields().end() ? nullptr : &*found;
}

/// Reads a field that every end has; its declaration says what it may be. False where it is the
/// kind's.
bool take_common(const EndFieldCell& given, Length diameter, CellReader& cells, EndCells& end) {
    const FieldDeclaration* declaration = find_common(given.field);
    if (declaration == nullptr || given.field == "rule") {
        return false;
    }
    if (given.field == fitting_field) { // a name, in any words
        end.fitting = given.cell.text;
        return true;
    }
    const auto value =
        read_field(*declaration, {given.field, given.cell.text, given.cell.unit}, diameter);
    const auto chosen = [&](std::string_view word) {
        return declaration->choices[static_cast<std::size_t>(*value)] == word;
    };
    if (!value) {
        add_fault(cells, given.end, value.error());
    } else if (given.field == fitting_length_field) {
        end.fitting_length = to_nanometres(Length(*value));
    } else if (given.field == measured_field) {
        end.to_pin_centre = chosen("pin-centre");
    } else if (given.field == made_field) {
        end.aboard = chosen("aboard");
    } else if (given.field == captive_field) {
        end.captive = chosen("yes");
    }
    return true;
}

/// A fitting whose length is not given would leave the line wrong by it, and nobody would see.
void check_fitting(LineEnd end, const EndCells& read, CellReader& cells) {
    const bool length_given =
        std::ranges::any_of(cells.job().fields, [&](const EndFieldCell& given) {
            return given.end == end && given.field == fitting_length_field;
        });
    if (!read.fitting.empty() && !length_given) {
        add_fault(cells, end,
                  Fault{Code::field_missing,
                        "the fitting needs its fitting_length, from the rope's bearing point to "
                        "the fitting's working point",
                        {},
                        std::string(fitting_field)});
    }
    if (read.captive && read.fitting.empty()) {
        add_fault(cells, end,
                  Fault{Code::field_missing,
                        "what is captive needs its name as fitting, and its fitting_length",
                        {},
                        std::string(captive_field)});
    }
}

EndCells read_cells(LineEnd end, Length diameter, CellReader& cells) {
    EndCells read;
    for (const EndFieldCell& given : cells.job().fields) {
        if (given.end == end && !take_common(given, diameter, cells, read)) {
            read.of_kind.push_back({given.field, given.cell.text, given.cell.unit});
        }
    }
    check_fitting(end, read, cells);
    return read;
}

/// Whether the end is more than cut and whipped.
bool is_bulky(const BoundEnd& end) {
    return (end.kind != nullptr && end.kind->declaration.reach != Reach::plain) ||
           !end.fitting.empty();
}

/// Whether the other end is finished or in its place, and so can no longer be passed through the
/// rope.
bool far_end_is_fixed(const BoundEnds& ends, LineEnd end) {
    return (ends.first_end != end && is_bulky(ends.at(other(end)))) || ends.at(end).aboard;
}

void add_far_end(std::vector<FieldText>& fields, const Kind& kind, const BoundEnds& ends,
                 LineEnd end) {
    const auto at = find_field(kind.declaration.fields, FieldRole::far_end);
    if (!at || !far_end_is_fixed(ends, end)) {
        return;
    }
    const FieldDeclaration& far_end = kind.declaration.fields[*at];
    if (std::ranges::find(fields, far_end.name, &FieldText::name) == fields.end()) {
        fields.push_back({far_end.name, far_end.choices[1]});
    }
}

/// The column strip is the end a's own cover_end, measured from its bearing point.
void add_strip(CellReader& cells, const Kind& kind, std::vector<FieldText>& of_kind) {
    const Cell& strip = cells.job().cell(Column::strip);
    if (strip.text.empty()) {
        return;
    }
    const auto at = find_field(kind.declaration.fields, FieldRole::cover_end);
    if (!at) {
        cells.add(Fault{Code::strip_does_not_fit,
                        "cover can be taken off only behind a stripped-eye at end a, not a " +
                            std::string(kind.declaration.name)},
                  Column::strip);
        return;
    }
    const std::string_view cover_end = kind.declaration.fields[*at].name;
    if (std::ranges::find(of_kind, cover_end, &FieldText::name) != of_kind.end()) {
        cells.add(Fault{Code::cannot_be_both, "give strip or end_a.cover_end, not both"},
                  Column::strip);
        return;
    }
    of_kind.push_back({cover_end, strip.text, strip.unit});
}

Nanometres to_pin_centre(LineEnd end, const End& allowance, CellReader& cells) {
    if (!allowance.pin || !(*allowance.pin > Length())) {
        add_fault(cells, end,
                  Fault{Code::field_missing,
                        "measured to the pin's centre needs the pin's diameter as pin",
                        {},
                        std::string(measured_field)});
        return 0;
    }
    return to_nanometres(*allowance.pin / 2.0);
}

bool closes(const BoundEnd& end) {
    return end.kind != nullptr && end.kind->declaration.reach == Reach::both_ends;
}

/// An end made aboard: one that says so, or what is made last of a line that is cut to fit there.
/// On a closed line that is its join.
bool is_aboard(const BoundEnds& ends, LineEnd end, bool says_so, Fit fit) {
    if (closes(ends.at(other(end)))) {
        return false;
    }
    const bool last = closes(ends.at(end)) || end == ends.last_end();
    return says_so || (fit == Fit::trim_aboard && last && is_bulky(ends.at(end)));
}

/// A kind that accounts for both ends leaves nothing to make at the other.
void close_line(BoundEnds& ends, CellReader& cells) {
    for (const LineEnd end : both_ends) {
        if (!closes(ends.at(end))) {
            continue;
        }
        const auto far = cells.text(column_of(other(end)));
        if (!far.empty() && far != "bare") {
            add_fault(cells, other(end),
                      Fault{Code::cannot_be_both,
                            std::string(ends.at(end).kind->declaration.name) +
                                " accounts for both ends of its line; leave this end empty"});
            return;
        }
        ends.closing = end;
        ends.first_end = end;
        auto& far_side = ends.ends[static_cast<std::size_t>(other(end))];
        far_side.allowance = ends.at(end).allowance;
        far_side.pin_centre = ends.at(end).pin_centre;
        return;
    }
}

/// An end that is made aboard is made last, unless both are made there. The last of a line that is
/// cut to fit aboard is, even if it is only cut.
void check_aboard(const BoundEnds& ends, Fit fit, CellReader& cells) {
    const bool last_too = ends.last().aboard || fit == Fit::trim_aboard;
    if (!ends.closing && ends.first().aboard && !last_too) {
        add_fault(cells, ends.first_end,
                  Fault{Code::cannot_be_both,
                        "the end made first is made at the bench; write first_end for the other "
                        "end, or made = aboard at both",
                        {},
                        std::string(made_field)});
    }
}

} // namespace

BoundEnds bind_ends(const Book& book, EndTable& table, const Rope* rope, Fit fit,
                    CellReader& cells) {
    const Length diameter = rope == nullptr ? Length() : rope->counting_diameter();
    BoundEnds ends;
    ends.first_end = static_cast<LineEnd>(cells.choice(Column::first_end, end_letters).value_or(0));
    std::array<EndCells, 2> read;
    for (const LineEnd end : both_ends) {
        auto& bound = ends.ends[static_cast<std::size_t>(end)];
        auto& cells_of_end = read[static_cast<std::size_t>(end)];
        bound.kind = find_kind(book, end, rope, cells);
        cells_of_end = read_cells(end, diameter, cells);
        bound.fitting = cells_of_end.fitting;
        bound.fitting_length = cells_of_end.fitting_length;
        bound.captive = cells_of_end.captive;
    }
    for (const LineEnd end : both_ends) {
        const auto at = static_cast<std::size_t>(end);
        ends.ends[at].aboard = is_aboard(ends, end, read[at].aboard, fit);
    }
    for (const LineEnd end : both_ends) {
        auto& bound = ends.ends[static_cast<std::size_t>(end)];
        auto& of_kind = read[static_cast<std::size_t>(end)].of_kind;
        if (bound.kind == nullptr || rope == nullptr) {
            continue; // said already
        }
        if (end == LineEnd::a) {
            add_strip(cells, *bound.kind, of_kind);
        }
        add_far_end(of_kind, *bound.kind, ends, end);
        const auto& allowance = table.find(*bound.kind, *rope, of_kind);
        if (!allowance) {
            add_fault(cells, end, allowance.error());
            continue;
        }
        bound.allowance = &*allowance;
        if (read[static_cast<std::size_t>(end)].to_pin_centre) {
            bound.pin_centre = to_pin_centre(end, *allowance, cells);
        }
    }
    close_line(ends, cells);
    check_aboard(ends, fit, cells);
    return ends;
}

} // namespace libsplice
