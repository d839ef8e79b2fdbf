// tucked-eye: strands unlaid and tucked back into the standing part, over one and under one.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/eye_part.h"
#include "libsplice/allowance/parts.h"
#include "libsplice/units/show.h"

namespace libsplice {

namespace {

constexpr FieldDeclaration tucks_field{"tucks", "full tucks of every strand", Dimension::count, 1.0,
                                       20.0,    "the rule's number of tucks"};
constexpr FieldDeclaration stub_field{"stub",
                                      "what is left of each strand past the last full tuck",
                                      Dimension::length,
                                      0.0,
                                      2.0,
                                      "the published minimum"};
constexpr FieldDeclaration pick_field{"pick",
                                      "length of one pick along the rope, for a plait",
                                      Dimension::length,
                                      0.0005,
                                      0.5,
                                      "the table's multiple of D"};

enum Field : std::size_t { eye, pin, tucks, stub, pick };
constexpr std::array fields{field::eye, field::pin, tucks_field, stub_field, pick_field};

constexpr std::array<std::string_view, 7> steps_laid{
    "Whip or tape the rope at the unlay mark, tape each strand's end, and unlay the strands down "
    "to it.",
    "Lay the eye so that the unlay mark meets the far throat, with the eye {eye} from crown to "
    "throat.",
    "Tuck the middle strand under the strand of the standing part nearest to it, against the lay.",
    "Tuck the left strand under the next one to the left. Turn the splice over and tuck the last "
    "strand "
    "under the one that is left, also against the lay: one strand out of every gap.",
    "Draw each strand up along its lay. That is one full tuck; go on, over one and under one, "
    "until there "
    "are {tucks}.",
    "Leave {stub} of each strand past the last tuck. Roll the splice and load it before anything "
    "is "
    "trimmed.",
    "Load the eye, then measure it again.",
};

constexpr std::array<std::string_view, 7> steps_plait{
    "Tape the rope at the unlay mark and tape the strands' ends in their four pairs, each pair of "
    "one "
    "hand.",
    "Lay the eye so that the unlay mark meets the far throat, with the eye {eye} from crown to "
    "throat.",
    "Tuck the two pairs of one hand under pairs of the same hand in the standing part, following "
    "them.",
    "Turn the rope over and tuck the two pairs of the other hand likewise; draw all four up "
    "evenly.",
    "That is one full tuck. Go on, each pair following its own hand down the rope, until there are "
    "{tucks}.",
    "Leave {stub} past the last tuck; drop one strand of each pair in the last tucks if the splice "
    "must "
    "be slim.",
    "Load the eye, then measure it again.",
};

Result<double> count_of_tucks(const Request& request) {
    double count = 0.0;
    if (request.fields.has(tucks)) {
        count = request.fields.at(tucks);
    } else {
        const auto figure = request.rules.need(FigureId::tucks);
        if (!figure) {
            return Unexpected(figure.error());
        }
        count = figure->number();
    }
    const auto least = request.rules.find(FigureId::minimum_tucks);
    if (least != nullptr && count < least->number()) {
        Fault fault{Code::below_published_minimum,
                    show_number(count, 0) + " tucks are below the published minimum of " +
                        show_number(least->number(), 0) + " for " +
                        std::string(name_of(request.rope.fibre))};
        fault.field = "tucks";
        fault.rule = to_text(request.citations.at(least->source));
        return Unexpected(std::move(fault));
    }
    return count;
}

/// Strand length that one full tuck needs.
Result<SourcedLength> rope_for_a_tuck(const Request& request) {
    const Length rope = request.rope.counting_diameter();
    if (request.rope.construction == Construction::laid_3) {
        const auto figure = request.rules.need(FigureId::per_tuck);
        if (!figure) {
            return Unexpected(figure.error());
        }
        return from_figure(*figure, rope);
    }
    const auto picks = request.rules.need(FigureId::picks_per_tuck);
    const auto length = field_or_figure(request, pick, FigureId::pick, rope);
    if (!picks || !length) {
        return Unexpected(picks ? length.error() : picks.error());
    }
    const double count = picks->number();
    return SourcedLength{length->length * count, length->sd * count, length->origin,
                         length->source};
}

Result<Allowance> work_out(const Request& request) {
    const Length rope = request.rope.counting_diameter();
    const auto eye_part = read_eye(request, {eye, pin}, rope);
    const auto count = count_of_tucks(request);
    const auto a_tuck = rope_for_a_tuck(request);
    const auto left = field_or_figure(request, stub, FigureId::stub, rope);
    for (const auto* part :
         {eye_part ? nullptr : &eye_part.error(), count ? nullptr : &count.error(),
          a_tuck ? nullptr : &a_tuck.error(), left ? nullptr : &left.error()}) {
        if (part != nullptr) {
            return Unexpected(*part);
        }
    }
    if (auto fault = check_minimum(request, FigureId::minimum_stub, "stub", left->length, rope)) {
        return Unexpected(*std::move(fault));
    }
    const SourcedLength unlaid{a_tuck->length * *count, a_tuck->sd * *count, a_tuck->origin,
                               a_tuck->source};
    Allowance allowance;
    add_eye_rows(allowance, *eye_part);
    allowance.add(row_of(Item::tucks, unlaid));
    allowance.add(row_of(Item::stub, *left));
    const Nanometres tail_end = add_cutting_loss(allowance, request, Cut::shears);
    const Nanometres near_throat =
        tail_end + to_nanometres(left->length) + to_nanometres(unlaid.length);
    add_eye_marks(allowance, *eye_part, near_throat);
    allowance.marks.begin()->name = MarkName::unlay; // the near throat is where the unlaying stops
    allowance.add(Value{ValueName::tucks, *count});
    allowance.add(Value{ValueName::unlay_m, unlaid.length.si()});
    allowance.add(Value{ValueName::stub_m, left->length.si()});
    allowance.add(Value{ValueName::tail_m, (unlaid.length + left->length).si()});
    allowance.add(Span{Span::Form::tapered, tail_end, near_throat, to_nanometres(rope)});
    add_eye_facts(allowance, *eye_part, request, near_throat);
    add_retained(allowance, request);
    allowance.steps = request.rope.construction == Construction::laid_3
                          ? std::span<const std::string_view>(steps_laid)
                          : std::span<const std::string_view>(steps_plait);
    return allowance;
}

} // namespace

Kind tucked_eye() {
    return {{"tucked-eye", "eye splice, strands tucked back into the standing part",
             "inside of the eye's crown",
             Constructions(Construction::laid_3, Construction::plait_8), fields},
            work_out};
}

} // namespace libsplice
