// long-splice: a join of laid rope no thicker than the rope, each strand laid in for another.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/parts.h"
#include "libsplice/units/show.h"

namespace libsplice {

namespace {

constexpr FieldDeclaration crowns_field{
    "crowns",
    "crowns that each end is unlaid; a crown is one bulge of a strand along the rope",
    Dimension::count,
    12.0,
    200.0,
    "the rule's number"};
constexpr FieldDeclaration crown_field{
    "crown", "length of one crown along the rope", Dimension::length, 0.0005,
    0.5,     "the table's multiple of D"};

enum Field : std::size_t { crowns, crown };
constexpr std::array fields{crowns_field, crown_field};

constexpr std::array steps{
    Step{Action::fit_first, {}, "Put on the line what has to be there before it is closed."},
    Step{Action::mark,
         {MarkName::unlay, MarkName::strand_unlay},
         "Mark both ends at their unlay marks, {crowns} crowns from where they end, and "
         "{strand_unlay} further on."},
    Step{Action::tape, {MarkName::unlay}, "Put a turn of tape on both ends at the unlay marks."},
    Step{Action::unlay,
         {MarkName::unlay},
         "Unlay all three strands to the marks, and keep the turn in them."},
    Step{Action::bring_together,
         {MarkName::unlay},
         "Marry the two ends, strand between strand, until the marks meet, and tie twine round the "
         "place."},
    Step{Action::unlay,
         {MarkName::strand_unlay},
         "Unlay one strand of the first end on into its own rope, {strand_unlay} or more. Lay the "
         "strand of the other end that faces it into the groove, turn by turn."},
    Step{Action::unlay,
         {MarkName::strand_unlay},
         "Do the same the other way with a strand of the other end, but stop after two turns. Draw "
         "the two strands that stay in the middle up until they carry evenly with the rest, then "
         "go on: a long splice in which they do not is worthless."},
    Step{Action::plain,
         {},
         "At each of the three places cut the two strands that meet there to equal tails."},
    Step{Action::tuck,
         {MarkName::unlay},
         "Knot the two at each place with an overhand that turns with the lay, so that it sinks "
         "into the rope; turned the other way it makes a lump."},
    Step{Action::tuck,
         {MarkName::unlay},
         "Tuck each strand twice, take a third of its yarns out, tuck, take out another third, and "
         "tuck it a fourth time."},
    Step{Action::load,
         {},
         "Load the closed line, measure round it, then cut the yarns off. It has to run through "
         "its block by hand, both ways."}};

double count_of_crowns(Figures& need, const Request& request) {
    const Figure printed = need.figure(FigureId::crowns);
    if (!request.fields.has(crowns)) {
        return printed.number();
    }
    const double count = request.fields.at(crowns);
    if (count < printed.number()) {
        Fault fault{Code::below_published_minimum,
                    show_number(count, 0) + " crowns a side are fewer than the " +
                        show_number(printed.number(), 0) + " that are printed",
                    {},
                    "crowns"};
        fault.rule = to_text(request.citations.at(printed.source));
        need.check(std::move(fault));
    }
    return count;
}

Result<End> work_out(const Request& request) {
    const Length diameter = request.rope.counting_diameter();
    Figures need(request);
    const double count = count_of_crowns(need, request);
    const double of_one_strand = need.number(FigureId::strand_crowns);
    const auto a_crown = need.field_or(crown, FigureId::crown, diameter);
    if (need.failed()) {
        return need.fault();
    }
    const auto unlaid = times(count, a_crown);
    const Length one_strand = a_crown.length * of_one_strand;

    End side;
    side.add(row_of(Item::unlaid, unlaid));
    const Nanometres tail_end = add_cutting_loss(side, request, Cut::shears);
    side.standing_mark = tail_end + to_nanometres(unlaid.length);
    side.add(Mark{MarkName::unlay, side.standing_mark});
    side.add(Mark{MarkName::strand_unlay, side.standing_mark + to_nanometres(one_strand)});
    side.bury_reach = to_nanometres(one_strand);
    side.add(Value{ValueName::crowns, count});
    side.add(Value{ValueName::crown_m, a_crown.length.si()});
    side.add(Value{ValueName::unlay_m, unlaid.length.si()});
    side.add(Value{ValueName::strand_unlay_m, one_strand.si()});
    side.add(
        Span{Span::Form::crossed, tail_end, side.standing_mark, to_nanometres(diameter), count});
    add_retained(side, request);
    side.steps = steps;
    count_both_sides(side);
    return side;
}

} // namespace

Kind long_splice() {
    return {{"long-splice",
             "laid rope joined without growing thicker, for lines that run in blocks",
             "round the closed line, in use; the ends meet where their strands part",
             Constructions(Construction::three_strand), fields, Reach::both_ends},
            work_out};
}

} // namespace libsplice
