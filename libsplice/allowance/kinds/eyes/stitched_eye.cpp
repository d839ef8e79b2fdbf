// stitched-eye: the end laid back along the standing part and the two stitched together.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/laid_back_part.h"

namespace libsplice {

namespace {

constexpr FieldDeclaration overlap_field{
    "overlap",
    "from the throat to the tail's end, where it lies along the standing part and is stitched",
    Dimension::length,
    0.005,
    5.0,
    "the table's multiple of D"};

enum Field : std::size_t { eye, pin, overlap };
constexpr std::array fields{field::eye, field::pin, overlap_field};

constexpr Step thin_end{
    Action::taper,
    {},
    "Tape the end. Thin its last diameter or two, of covered rope its core, so that it leaves no "
    "step."};
constexpr Step lay_back{
    Action::bring_together,
    {MarkName::near_throat, MarkName::far_throat},
    "Lay the end back along the standing part so that near throat and far throat meet and the tail "
    "reaches its mark {overlap} beyond. Check the eye: {eye}. Tack the two parts at both ends of "
    "the overlap."};
constexpr Step load{
    Action::load, {}, "Load the eye, look for passes that have gone slack, then measure it again."};

constexpr std::array steps_round{
    thin_end,
    lay_back,
    Step{Action::stitch,
         {MarkName::far_throat, MarkName::lap_end},
         "Start at the throat, where the load comes on first. Stitch round both parts and through "
         "the side of each, one pass for each half diameter, up to the tail's end."},
    Step{Action::stitch,
         {MarkName::lap_end, MarkName::far_throat},
         "Turn and stitch back round both, across the first passes, to the throat. Draw each pass "
         "tight enough to dent the rope; bury the thread's ends under three passes."},
    Step{Action::whip,
         {MarkName::far_throat, MarkName::lap_end},
         "Cover the stitches with a sleeve or a whipping against chafe and sun."},
    load};

constexpr std::array steps_basted{
    thin_end,
    lay_back,
    Step{Action::stitch,
         {MarkName::far_throat, MarkName::lap_end},
         "Start at the throat, where the load comes on first. Stitch through the middle of both "
         "parts, not round them, one pass for each half diameter, up to the tail's end."},
    Step{
        Action::stitch,
        {MarkName::lap_end, MarkName::far_throat},
        "Turn and stitch back between the first passes, at right angles to them, to the throat. "
        "Draw each pass tight enough to dent the rope; bury the thread's ends under three passes."},
    Step{Action::whip,
         {MarkName::far_throat, MarkName::lap_end},
         "Put a whipping on both parts at each end of the stitches, so that they do not run open."},
    load};

/// Thin rope is basted; in thicker rope stitches go round.
bool is_basted(const Request& request) {
    const Figure* thickest = request.rules.find(FigureId::basting_size);
    const Length diameter = request.rope.diameter;
    return thickest != nullptr &&
           to_nanometres(diameter) <= to_nanometres(thickest->length(diameter));
}

void finish_basted(End& end, const Request& request, Length overlap) {
    end.steps = steps_basted;
    if (const Figure* kept = request.rules.find(FigureId::retained_basted)) {
        end.retained = Retained{kept->number(), kept->source};
    }
    const Figure* longest = request.rules.find(FigureId::basting_limit);
    if (longest != nullptr &&
        to_nanometres(overlap) > to_nanometres(longest->length(request.rope.diameter))) {
        end.add(Caution{"basting of {overlap} is longer than the longest that is published as "
                        "sound; it runs open from the throat: shorten it, or use a splice",
                        longest->source});
    }
}

/// The field, or the tables' overlap, which is no longer than basting may be.
SourcedLength read_overlap(Figures& need, const Request& request) {
    const Length diameter = request.rope.counting_diameter();
    SourcedLength usual = need.field_or(overlap, FigureId::overlap, diameter);
    usual.sd = Length(); // the bench measures it off
    usual.origin = SpreadOrigin::none;
    const Figure* longest = request.rules.find(FigureId::basting_limit);
    const bool cut_down = is_basted(request) && longest != nullptr &&
                          !request.fields.has(overlap) && usual.length > longest->length(diameter);
    return cut_down ? from_figure(*longest, diameter) : usual;
}

Result<End> work_out(const Request& request) {
    const Length diameter = request.rope.counting_diameter();
    Figures need(request);
    const auto eye_part = need.part(read_eye(request, {eye, pin}, diameter));
    const SourcedLength lap = read_overlap(need, request);
    if (need.failed()) {
        return need.fault();
    }
    auto end = eye_with_lap(
        request, eye_part,
        {lap, lap.length, MarkName::lap_end, ValueName::overlap_m, Span::Form::stitched});
    if (!end) {
        return end;
    }
    if (is_basted(request)) {
        finish_basted(*end, request, lap.length);
    } else {
        end->steps = steps_round;
    }
    return end;
}

} // namespace

Kind stitched_eye() {
    return {{"stitched-eye", "eye, the end stitched along the standing part",
             "inside of the eye's crown", fibre_ropes, fields},
            work_out};
}

} // namespace libsplice
