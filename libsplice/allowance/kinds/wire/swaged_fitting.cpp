// swaged-fitting: wire that ends inside the shank of a fork, eye or stud.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/parts.h"
#include "libsplice/units/show.h"

namespace libsplice {

namespace {

constexpr std::string_view from_its_sheet = "none: from the fitting's own sheet";
constexpr FieldDeclaration of_sheet(std::string_view name, std::string_view meaning,
                                    double lowest) {
    return {name, meaning, Dimension::length, lowest, 2.0, from_its_sheet, true};
}

enum Field : std::size_t { shank, insertion, growth };
constexpr std::array fields{
    of_sheet("shank", "pin centre to the mouth of the shank, before swaging", 0.002),
    of_sheet("insertion", "wire that goes into the shank", 0.002),
    of_sheet("growth", "how much longer shank and wire get in the swage; 0 if the sheet says so",
             0.0)};

constexpr std::array steps{
    Step{Action::mark,
         {MarkName::shank_mouth},
         "Mark where the shank's mouth will come: {insertion} goes into it."},
    Step{Action::cut, {}, "Cut the wire square and take off the burr."},
    Step{Action::fit_first, {}, "Put on what has to be on the wire before this fitting."},
    Step{Action::thread,
         {},
         "Push the dry wire, without sealant, into the shank until the mark lies at the mouth; a "
         "mark that stays outside means dirt or a burr inside."},
    Step{Action::press,
         {MarkName::shank_mouth},
         "Swage with the dies of the wire's size, in as many passes as the fitting's sheet says "
         "and no more."},
    Step{Action::measure,
         {},
         "Gauge the shank as the sheet says, and look for a bend: a bent shank is cut off, not "
         "straightened. The mark must still lie at the mouth, or the wire has backed out."},
    Step{Action::measure,
         {},
         "Measure to the pin's centre. A rigging screw takes up what the growth came out "
         "different."}};

Result<End> work_out(const Request& request) {
    const auto given = [&](std::size_t field) {
        return from_job(Length(request.fields.at(field)));
    };
    const SourcedLength inside = given(insertion);
    const SourcedLength to_mouth = given(shank);
    const SourcedLength grown = given(growth);
    if (inside.length > to_mouth.length) {
        return Unexpected(Fault{Code::field_out_of_range,
                                "the wire cannot go " +
                                    show_length(inside.length, UnitSystem::metric) +
                                    " into a shank whose mouth lies " +
                                    show_length(to_mouth.length, UnitSystem::metric) +
                                    " from its pin; give both from the fitting's own sheet",
                                {},
                                "insertion"});
    }
    End allowance;
    allowance.add(row_of(Item::shank, taken_off_by_job(to_mouth.length)));
    allowance.add(row_of(Item::insertion, inside));
    if (to_nanometres(grown.length) != 0) {
        allowance.add(row_of(Item::growth, taken_off_by_job(grown.length)));
    }
    allowance.standing_mark = to_nanometres(inside.length);
    allowance.add(Mark{MarkName::shank_mouth, allowance.standing_mark});
    allowance.add(Value{ValueName::shank_m, to_mouth.length.si()});
    allowance.add(Value{ValueName::insertion_m, inside.length.si()});
    allowance.add(Value{ValueName::growth_m, grown.length.si()});
    allowance.add(Span{Span::Form::pressed, 0, allowance.standing_mark,
                       to_nanometres(request.rope.diameter)});
    add_retained(allowance, request);
    allowance.steps = steps;
    return allowance;
}

} // namespace

Kind swaged_fitting() {
    return {{"swaged-fitting", "wire swaged into the shank of a fitting",
             "centre of the fitting's pin", Constructions(Construction::wire), fields},
            work_out};
}

} // namespace libsplice
