#include "libsplice/cut/bind/ends.h"

#include "libsplice/cut/layout.h"

#include <algorithm>

namespace libsplice {

namespace {

constexpr Nanometres longest_fitting = 5 * nanometres_per_metre;

Column column_of(LineEnd end) {
    return end == LineEnd::a ? Column::end_a : Column::end_b;
}

std::string field_of(LineEnd end, std::string_view field) {
    return std::string(column_name(column_of(end))) + '.' + std::string(field);
}

/// Adds a fault of an end's field at the cell that gives it, or at the end's own cell.
void add_fault(LineFields& fields, const JobLine& line, LineEnd end, Fault fault) {
    const auto cell = std::ranges::find_if(line.fields, [&](const EndFieldCell& given) {
        return given.end == end && given.field == fault.field;
    });
    fault.text = std::string(column_name(column_of(end))) + ": " + fault.text;
    if (cell == line.fields.end()) {
        fields.add(std::move(fault), line.cell(column_of(end)),
                   std::string(column_name(column_of(end))));
    } else {
        const std::string field = field_of(end, cell->field);
        fields.add(std::move(fault), cell->cell, field);
    }
}

const Kind* find_kind(const JobLine& line, LineEnd end, const Book& book, LineFields& fields) {
    const auto name = line.text(column_of(end));
    const auto kind = book.kind(name.empty() ? "bare" : name);
    if (!kind) {
        add_fault(fields, line, end, kind.error());
        return nullptr;
    }
    return *kind;
}

std::optional<Nanometres> read_fitting_length(const EndFieldCell& given, LineFields& fields) {
    const auto length = read_length(given.cell.text, given.cell.unit);
    const std::string field = field_of(given.end, given.field);
    if (!length) {
        Fault fault = length.error();
        fault.text = field + ": " + fault.text;
        fields.add(std::move(fault), given.cell, field);
        return std::nullopt;
    }
    const Nanometres count = to_nanometres(length->length);
    if (count < 0 || count > longest_fitting) {
        fields.add(Fault{Code::value_out_of_range, field + " may be 0 to 5 m"}, given.cell, field);
        return std::nullopt;
    }
    return count;
}

/// What the cells of one end say, sorted into what the line keeps and what the kind gets.
struct EndCells {
    std::vector<FieldText> of_kind;
    bool to_pin_centre = false;
};

EndCells sort_cells(const JobLine& line, LineEnd end, LineFields& fields, EndPlan& plan) {
    EndCells cells;
    for (const EndFieldCell& given : line.fields) {
        if (given.end != end) {
            continue;
        }
        if (given.field == "fitting") {
            plan.fitting = given.cell.text;
        } else if (given.field == "fitting_length") {
            plan.fitting_length = read_fitting_length(given, fields);
        } else if (given.field == "measured") {
            cells.to_pin_centre = given.cell.text == "pin-centre";
            if (!cells.to_pin_centre && given.cell.text != "bearing") {
                fields.add(Fault{Code::not_a_choice, field_of(end, given.field) + ": \"" +
                                                         std::string(given.cell.text) +
                                                         "\" is not one of bearing and pin-centre"},
                           given.cell, field_of(end, given.field));
            }
        } else {
            cells.of_kind.push_back({given.field, given.cell.text, given.cell.unit});
        }
    }
    return cells;
}

/// A fitting whose length is not given would leave the line wrong by it, and nobody would see.
void check_fitting(const JobLine& line, LineEnd end, LineFields& fields, const EndPlan& plan) {
    const bool length_given = std::ranges::any_of(line.fields, [&](const EndFieldCell& given) {
        return given.end == end && given.field == "fitting_length";
    });
    if (!plan.fitting.empty() && !length_given) {
        add_fault(
            fields, line, end,
            Fault{Code::field_missing,
                  "the fitting needs its fitting_length, from the rope's bearing point to the "
                  "fitting's working point",
                  {},
                  "fitting"});
    }
}

/// Whether the other end is finished, and so can no longer be passed through the rope.
bool far_end_is_fixed(const LinePlan& plan, LineEnd end) {
    const EndPlan& far = plan.end(other(end));
    const bool bulky = (far.kind != nullptr && far.kind->declaration.reach != Reach::plain) ||
                       !far.fitting.empty();
    return plan.first_end != end && bulky;
}

void add_far_end(std::vector<FieldText>& fields, const Kind& kind, const LinePlan& plan,
                 LineEnd end) {
    const bool declared =
        std::ranges::any_of(kind.declaration.fields,
                            [](const FieldDeclaration& field) { return field.name == "far_end"; });
    const bool given =
        std::ranges::any_of(fields, [](const FieldText& field) { return field.name == "far_end"; });
    if (declared && !given && far_end_is_fixed(plan, end)) {
        fields.push_back({"far_end", "fixed"});
    }
}

/// The column strip is the end a's own cover_end, measured from its bearing point.
void add_strip(const JobLine& line, LineFields& fields, const Kind& kind,
               std::vector<FieldText>& of_kind) {
    const Cell& strip = line.cell(Column::strip);
    if (strip.text.empty()) {
        return;
    }
    constexpr std::string_view cover_end = "cover_end";
    if (std::ranges::find(kind.declaration.fields, cover_end, &FieldDeclaration::name) ==
        kind.declaration.fields.end()) {
        fields.add(Fault{Code::strip_does_not_fit,
                         "cover can be taken off only behind a stripped-eye at end a, not a " +
                             std::string(kind.declaration.name)},
                   Column::strip);
        return;
    }
    if (std::ranges::find(of_kind, cover_end, &FieldText::name) != of_kind.end()) {
        fields.add(Fault{Code::cannot_be_both, "give strip or end_a.cover_end, not both"},
                   Column::strip);
        return;
    }
    of_kind.push_back({cover_end, strip.text, strip.unit});
}

void set_pin_centre(const JobLine& line, LineEnd end, LineFields& fields, EndPlan& plan) {
    const auto pin = plan.allowance->find(ValueName::pin_m);
    if (!pin || !(*pin > 0.0)) {
        add_fault(fields, line, end,
                  Fault{Code::field_missing,
                        "measured to the pin's centre needs the pin's diameter as pin",
                        {},
                        "measured"});
        return;
    }
    plan.pin_centre = to_nanometres(Length(*pin / 2.0));
}

bool closes(const EndPlan& end) {
    return end.kind != nullptr && end.kind->declaration.reach == Reach::both_ends;
}

/// A kind that accounts for both ends leaves nothing to make at the other.
void bind_closing(const JobLine& line, LineFields& fields, LinePlan& plan) {
    for (const LineEnd end : both_ends) {
        if (!closes(plan.end(end))) {
            continue;
        }
        const auto far = line.text(column_of(other(end)));
        if (!far.empty() && far != "bare") {
            add_fault(fields, line, other(end),
                      Fault{Code::cannot_be_both,
                            std::string(plan.end(end).kind->declaration.name) +
                                " accounts for both ends of its line; leave this end empty"});
            return;
        }
        plan.closing = end;
        plan.first_end = end;
        auto& far_side = plan.ends[static_cast<std::size_t>(other(end))];
        far_side.allowance = plan.end(end).allowance;
        far_side.pin_centre = plan.end(end).pin_centre;
        return;
    }
}

} // namespace

void bind_ends(const JobLine& line, const Book& book, EndTable& ends, LineFields& fields,
               LinePlan& plan) {
    std::array<EndCells, 2> cells;
    for (const LineEnd end : both_ends) {
        auto& end_plan = plan.ends[static_cast<std::size_t>(end)];
        end_plan.kind = find_kind(line, end, book, fields);
        cells[static_cast<std::size_t>(end)] = sort_cells(line, end, fields, end_plan);
        check_fitting(line, end, fields, end_plan);
    }
    for (const LineEnd end : both_ends) {
        auto& end_plan = plan.ends[static_cast<std::size_t>(end)];
        auto& end_cells = cells[static_cast<std::size_t>(end)];
        if (end_plan.kind == nullptr || plan.rope == nullptr) {
            continue; // said already
        }
        if (end == LineEnd::a) {
            add_strip(line, fields, *end_plan.kind, end_cells.of_kind);
        }
        add_far_end(end_cells.of_kind, *end_plan.kind, plan, end);
        const auto& allowance = ends.find(*end_plan.kind, *plan.rope, end_cells.of_kind);
        if (!allowance) {
            add_fault(fields, line, end, allowance.error());
            continue;
        }
        end_plan.allowance = &*allowance;
        if (end_cells.to_pin_centre) {
            set_pin_centre(line, end, fields, end_plan);
        }
    }
    bind_closing(line, fields, plan);
}

} // namespace libsplice
