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

constexpr std::array steps{
    Step{Action::tape,
         {},
         "Tape the end and thin its last diameter or two, so that it leaves no step."},
    Step{Action::bring_together,
         {MarkName::near_throat, MarkName::far_throat},
         "Lay the end back along the standing part so that near throat and far throat meet and the "
         "tail reaches its mark {overlap} beyond. Check the eye: {eye}. Tack the two parts at both "
         "ends of the overlap."},
    Step{Action::stitch,
         {MarkName::far_throat, MarkName::lap_end},
         "Start at the throat, where the load comes on first. In rope up to 6 mm stitch through "
         "the middle of both parts. In thicker rope stitch round both parts, which holds better. "
         "Make a pass for each half diameter, up to the tail's end."},
    Step{Action::stitch,
         {MarkName::lap_end, MarkName::far_throat},
         "Turn and stitch back to the throat, between the first passes. Draw each pass tight "
         "enough to dent the rope; bury the thread's ends under three passes."},
    Step{Action::whip,
         {MarkName::far_throat, MarkName::lap_end},
         "Whip both ends of the overlap, and sleeve or whip over all of it against chafe and sun."},
    Step{Action::load,
         {},
         "Load the eye, look for passes that have gone slack, then measure it again."}};

Result<End> work_out(const Request& request) {
    const Length diameter = request.rope.counting_diameter();
    Figures need(request);
    const auto eye_part = need.part(read_eye(request, {eye, pin}, diameter));
    const auto lap = need.field_or(overlap, FigureId::overlap, diameter);
    if (need.failed()) {
        return need.fault();
    }
    auto end = eye_with_lap(
        request, eye_part,
        {lap, lap.length, MarkName::lap_end, ValueName::overlap_m, Span::Form::stitched});
    if (end) {
        end->steps = steps;
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
