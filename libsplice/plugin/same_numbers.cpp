// The numbers of the C headers are those of our own enumerations: whoever changes one of them
// learns of it here, when it is compiled.
#include "libsplice/abi/include/splice_plugin.h"
#include "libsplice/allowance/end.h"
#include "libsplice/allowance/kind.h"
#include "libsplice/allowance/names.h"

namespace libsplice {

namespace {

template <class Ours>
constexpr bool same(unsigned theirs, Ours ours) {
    return theirs == static_cast<unsigned>(ours);
}

// Ours count from 0.
constexpr unsigned first_dimension = SPLICE_DIMENSION_LENGTH;
static_assert(Dimension::length == Dimension{} &&
              same(SPLICE_DIMENSION_COUNT - first_dimension, Dimension::count) &&
              same(SPLICE_DIMENSION_RATIO - first_dimension, Dimension::ratio) &&
              same(SPLICE_DIMENSION_CHOICE - first_dimension, Dimension::choice));

static_assert(same(SPLICE_WEIGHT_ADVICE, Caution::Weight::advice) &&
              same(SPLICE_WEIGHT_REFUSED_FOR_PERSON, Caution::Weight::refused_for_person) &&
              same(SPLICE_WEIGHT_PERSON_ONLY, Caution::Weight::person_only));

static_assert(same(SPLICE_REACH_ONE_END, Reach::one_end) &&
              same(SPLICE_REACH_PLAIN, Reach::plain) &&
              same(SPLICE_REACH_BOTH_ENDS, Reach::both_ends));

static_assert(same(SPLICE_ORIGIN_NONE, SpreadOrigin::none) &&
              same(SPLICE_ORIGIN_MEASURED, SpreadOrigin::measured) &&
              same(SPLICE_ORIGIN_PRINTED_RANGE, SpreadOrigin::printed_range) &&
              same(SPLICE_ORIGIN_STATED_GUESS, SpreadOrigin::stated_guess));

static_assert(same(SPLICE_GROUP_OWN, Group::own) && same(SPLICE_GROUP_TAPE, Group::tape) &&
              same(SPLICE_GROUP_TAKE_UP, Group::take_up) &&
              same(SPLICE_GROUP_SETTLING, Group::settling) &&
              same(SPLICE_GROUP_HAND, Group::hand) && same(SPLICE_GROUP_ROPE, Group::rope));

using Form = Span::Form;
static_assert(same(SPLICE_FORM_STRAIGHT, Form::straight) && same(SPLICE_FORM_LOOP, Form::loop) &&
              same(SPLICE_FORM_BURIED, Form::buried) && same(SPLICE_FORM_TAPERED, Form::tapered) &&
              same(SPLICE_FORM_KNOT, Form::knot) && same(SPLICE_FORM_WHIPPED, Form::whipped) &&
              same(SPLICE_FORM_COVERED, Form::covered) && same(SPLICE_FORM_TURNS, Form::turns) &&
              same(SPLICE_FORM_HALF_HITCHES, Form::half_hitches) &&
              same(SPLICE_FORM_CROSSED, Form::crossed) && same(SPLICE_FORM_TUCKED, Form::tucked) &&
              same(SPLICE_FORM_NIPPED, Form::nipped) && same(SPLICE_FORM_DOUBLED, Form::doubled) &&
              same(SPLICE_FORM_STITCHED, Form::stitched) &&
              same(SPLICE_FORM_SEIZED, Form::seized) && same(SPLICE_FORM_CLIPPED, Form::clipped) &&
              same(SPLICE_FORM_PRESSED, Form::pressed) &&
              same(SPLICE_FORM_CRIMPED, Form::crimped) && same(SPLICE_FORM_SEALED, Form::sealed) &&
              same(SPLICE_FORM_CORE, Form::core) && same(SPLICE_FORM_BALL, Form::ball) &&
              SPLICE_FORM_BALL + 1 == Span::forms);

} // namespace

} // namespace libsplice
