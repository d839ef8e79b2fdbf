// Lines too short for what is to be made in them: refused, with a length that works.
#include "libsplice/units/show.h"

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
    // Between the throats lie L - 2 x 36 + 2 x 23.1550892, and both buries need 2 x 407.3094766
    // when they are spliced: L = 2 (407.3094766 + 36 - 23.1550892) = 840.3 mm.
    EXPECT_EQ(refuse_one(with(two_eyes, {{"length", "840 mm"}})).code, Code::buries_overlap);
    cut_one(with(two_eyes, {{"length", "841 mm"}}));
}

TEST(Room, ShorterPublishedBuryThatFitsIsNamedWithItsField) {
    // 72 D need 840.3 mm, 60 D 2 (339.42 + 36 - 19.30) = 712.3.
    const Line strop = with(two_eyes, {{"length", "720 mm"}});
    const auto fault = refuse_one(strop);
    EXPECT_TRUE(says(fault, "end_a.rule = 60-diameters and end_b.rule = 60-diameters"))
        << fault.text;
    const auto advised =
        cut_one(with(strop, {{"end_a.rule", "60-diameters"}, {"end_b.rule", "60-diameters"}}));
    EXPECT_TRUE(says(fault, "(cut " + show_length(advised.piece().cut, UnitSystem::metric) + ")"))
        << fault.text;
    // 560 mm leave room for 45 D only: 2 (254.57 + 36 - 14.47) = 552.2 mm.
    EXPECT_TRUE(says(refuse_one(with(two_eyes, {{"length", "560 mm"}})), "rule = 45-diameters"));
}

TEST(Room, LoopOfSeveralTurnsIsNamedWithItsLength) {
    // 300 mm over pins of 12 mm: centres 288 apart, once round 2 x 288 + pi (12 + 5) = 629.41 mm;
    // twice 1258.81. Tails of 72 D each need 2 x 407.3.
    const auto fault = refuse_one(with(two_eyes, {{"length", "300 mm"}}));
    EXPECT_TRUE(says(fault, "end_a = endless-loop alone, length = 1.259 m and lay it twice"))
        << fault.text;
    EXPECT_TRUE(says(fault, "end_b = lashing") && says(fault, "end_b.gap = 276 mm")) << fault.text;
    const Line loop = with(plain_line, {{"end_a", "endless-loop"}, {"length", "1258.81 mm"}});
    cut_one(loop);
}

TEST(Room, LineIsNeverToldToDoWhatItDoes) {
    const Line loop = with(plain_line, {{"end_a", "endless-loop"}, {"length", "500 mm"}});
    const auto fault = refuse_one(loop);
    EXPECT_EQ(fault.code, Code::buries_overlap);
    EXPECT_TRUE(says(fault, "end_a.rule = 45-diameters")) << fault.text;
    EXPECT_FALSE(says(fault, "rule = 72-diameters")) << fault.text;
    EXPECT_TRUE(says(fault, "length = 1.000 m and lay it twice")) << fault.text;
    EXPECT_FALSE(says(fault, "length = 500 mm")) << fault.text;
}

TEST(Room, PersonIsNotOfferedAShortBury) {
    const auto fault =
        refuse_one(with(two_eyes, {{"length", "720 mm"}, {"carries_person", "yes"}}));
    EXPECT_FALSE(says(fault, "60-diameters")) << fault.text;
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
