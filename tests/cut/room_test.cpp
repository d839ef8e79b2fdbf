// Lines too short for what is to be made in them: refused, with a length that works.
#include "jobs.h"

namespace libsplice::testing {
namespace {

/// The length that a fault names after some words.
Length length_after(const Fault& fault, std::string_view words) {
    const auto start = fault.text.find(words);
    if (start == std::string::npos) {
        ADD_FAILURE() << fault.text;
        return {};
    }
    const std::string rest = fault.text.substr(start + words.size());
    const auto after_number = rest.find(' ');
    const auto read = read_length(rest.substr(0, rest.find_first_of(" .,;", after_number + 1)));
    EXPECT_TRUE(read) << rest;
    return read ? read->length : Length();
}

Line of_length(const Line& line, Length length) {
    return with(line, {{"length", std::to_string(to_nanometres(length) / 1000) + "e-3 mm"}});
}

/// A job with the reported length can be cut, one 2 mm shorter cannot.
void expect_least(const Line& line, Code code, std::string_view words,
                  const CutSettings& settings = {}) {
    const auto fault = refuse_one(line, settings);
    EXPECT_EQ(fault.code, code) << fault.text;
    EXPECT_EQ(fault.field, "length");
    const Length least = length_after(fault, words);
    cut_one(of_length(line, least), settings);
    EXPECT_EQ(refuse_one(of_length(line, least - millimetres(2.0)), settings).code, code)
        << fault.text;
}

const Line two_eyes = with(with(plain_line, eye_at("end_a", "buried-eye", "36 mm", "12 mm")),
                           eye_at("end_b", "buried-eye", "36 mm", "12 mm"));

TEST(Room, BuriesThatMeetNameALengthThatWorks) {
    constexpr std::string_view words = "the line must be ";
    const Line strop = with(two_eyes, {{"length", "500 mm"}});
    expect_least(strop, Code::buries_overlap, words);
    expect_least(with(strop, {{"fit", "exact"}}), Code::buries_overlap, words);
    expect_least(with(strop, {{"prestretched", "no"}}), Code::buries_overlap, words);
    expect_least(with(strop, {{"end_b", "locked-eye"}}), Code::buries_overlap, words);
    expect_least(with(strop, {{"rope", "demo-b12-hmpe-5"}, {"tension", "40 %"}}),
                 Code::buries_overlap, words);
    expect_least(with(strop, {{"end_a.fitting_length", "120 mm"}}), Code::buries_overlap, words);
    expect_least(with(strop, {{"end_a.measured", "pin-centre"}}), Code::buries_overlap, words);
    CutSettings slack;
    slack.marking_tension.basis = MarkingTension::Basis::slack;
    expect_least(strop, Code::buries_overlap, words, slack);
}

TEST(Room, TwoEyesNeedTheirBuriesByHand) {
    // Between the throats lie L - 2 x 36 + 2 (23.9890345 - 7.2) and both buries need
    // 2 x 383.9890345: L = 2 (383.9890345 + 36 - 16.7890345) = 806.4 mm.
    EXPECT_EQ(refuse_one(with(two_eyes, {{"length", "806 mm"}})).code, Code::buries_overlap);
    cut_one(with(two_eyes, {{"length", "807 mm"}}));
}

TEST(Room, OtherWaysAreNamed) {
    const auto fault = refuse_one(with(two_eyes, {{"length", "500 mm"}}));
    EXPECT_TRUE(says(fault, "endless loop") && says(fault, "thinner rope")) << fault.text;
}

TEST(Room, OneBuryHasToFitToo) {
    const Line one_eye = with(plain_line, {{"end_a", "buried-eye"}, {"length", "100 mm"}});
    expect_least(one_eye, Code::buries_overlap, "the line must be ");
}

TEST(Room, FittingsThatUpTheLengthLeaveNothing) {
    const Line fitted = with(plain_line, {{"length", "80 mm"},
                                          {"end_a.fitting_length", "60 mm"},
                                          {"end_b.fitting_length", "50 mm"}});
    expect_least(fitted, Code::nothing_left, "need at least ");
    const Line loops{{"name", "strop"},
                     {"rope", "double-braid polyester 8 mm"},
                     {"length", "100 mm"},
                     {"end_a", "bowline"},
                     {"end_b", "bowline"}};
    expect_least(loops, Code::nothing_left, "need at least ");
}

} // namespace
} // namespace libsplice::testing
