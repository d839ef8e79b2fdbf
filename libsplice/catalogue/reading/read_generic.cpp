// Reads the cautious figures of generic ropes.
#include "libsplice/catalogue/reading/read_generic.h"

#include "libsplice/base/text.h"
#include "libsplice/catalogue/reading/read_figure.h"
#include "libsplice/catalogue/reading/read_rope.h"
#include "libsplice/catalogue/reading/read_rule.h"

#include <array>
#include <utility>

namespace libsplice {

namespace {

constexpr std::array strength_units{Unit{"kN/mm2", 1e9}};
constexpr std::array mass_units_of_section{Unit{"g/m/mm2", 1e3}};

FibreGrade read_grade(TableContext& context, const Node& table) {
    const std::string text = optional_text(context, table, "grade");
    if (text == "lower") {
        return FibreGrade::lower;
    }
    if (text == "higher") {
        return FibreGrade::higher;
    }
    if (!text.empty()) {
        push_fault(context, Code::table_value_wrong, *table.find("grade"), "grade",
                   '"' + text + "\" is none of lower and higher");
    }
    return FibreGrade::unknown;
}

PrintedSize need_size(TableContext& context, const Node& table, std::string_view key) {
    static_cast<void>(require_text(context, table, key));
    return read_printed_size(context, table, key).value_or(PrintedSize{});
}

} // namespace

std::optional<GenericRope> read_generic(TableContext& context, const Node& table) {
    const std::size_t faults_before = context.faults.count();
    check_keys(context, table,
               std::array<std::string_view, 9>{"id", "construction", "fibre", "grade", "from",
                                               "up_to", "breaking", "mass", "note"});
    GenericRope generic;
    generic.id = require_text(context, table, "id");
    generic.construction =
        read_word(context, table, "construction", read_construction, construction_names())
            .value_or(Construction{});
    generic.fibre = read_word(context, table, "fibre", read_fibre, fibre_names()).value_or(Fibre{});
    generic.grade = read_grade(context, table);
    generic.from = need_size(context, table, "from");
    generic.up_to = need_size(context, table, "up_to");
    static_cast<void>(optional_text(context, table, "note"));
    generic.breaking = read_rope_value(context, table, "breaking", strength_units);
    generic.mass = read_rope_value(context, table, "mass", mass_units_of_section);
    if (generic.from.length > generic.up_to.length) {
        push_fault(context, Code::table_value_wrong, *table.find("from"), "from",
                   "\"from\" must not be larger than \"up_to\"");
    }
    return context.faults.count() == faults_before ? std::optional(std::move(generic))
                                                   : std::nullopt;
}

} // namespace libsplice
