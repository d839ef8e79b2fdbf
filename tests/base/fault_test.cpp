// Places, faults as text, and the sink that keeps the first of them.
#include "libsplice/base/fault.h"
#include "libsplice/base/fault_sink.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace libsplice::testing {
namespace {

TEST(PlaceText, LeavesOutWhatIsNotKnown) {
    EXPECT_EQ(to_text(Place{"job.csv", 3, 14}), "job.csv:3:14");
    EXPECT_EQ(to_text(Place{"job.csv", 3, 0}), "job.csv:3");
    EXPECT_EQ(to_text(Place{"job.csv", 0, 0}), "job.csv");
    EXPECT_EQ(to_text(Place{"", 3, 14}), "3:14");
    EXPECT_EQ(to_text(Place{}), "");
}

TEST(FaultText, HasPlaceCodeAndSentence) {
    const Fault fault{Code::not_a_length, "\"6,4 m\" is not a length", Place{"job.csv", 2, 9}};
    EXPECT_EQ(to_text(fault), "job.csv:2:9: error 112: \"6,4 m\" is not a length");
}

TEST(FaultText, StartsWithErrorWhereNoPlaceIsKnown) {
    EXPECT_EQ(to_text(Fault{Code::cannot_write, "no room"}), "error 701: no room");
}

TEST(FaultText, NamesTheBrokenRule) {
    const Fault fault{Code::below_published_minimum, "too short", {}, "end_a.tail", "key, p. 3"};
    EXPECT_EQ(to_text(fault), "error 307: too short [key, p. 3]");
}

TEST(FaultText, CannotDriveATerminal) {
    const Fault fault{Code::not_a_choice, "\x1b[2Jgone\n", Place{"a\x07.csv", 1, 1}};
    EXPECT_EQ(to_text(fault), "a\\x07.csv:1:1: error 115: \\x1b[2Jgone\\x0a");
}

TEST(Codes, KeepTheirNumbers) {
    EXPECT_EQ(static_cast<int>(Code::file_unreadable), 101);
    EXPECT_EQ(static_cast<int>(Code::tables_missing), 201);
    EXPECT_EQ(static_cast<int>(Code::wrong_construction), 301);
    EXPECT_EQ(static_cast<int>(Code::buries_overlap), 401);
    EXPECT_EQ(static_cast<int>(Code::cannot_write), 701);
}

TEST(Codes, AreListedOnceInOrderWithATitle) {
    unsigned last = 99;
    for (const auto& [code, title] : all_codes()) {
        EXPECT_GT(static_cast<unsigned>(code), last);
        EXPECT_FALSE(title.empty());
        last = static_cast<unsigned>(code);
    }
    EXPECT_EQ(last, 802U);
}

TEST(FaultSink, KeepsTheFirstAndCountsTheRest) {
    std::vector<std::string> seen;
    FaultSink sink(2, [&](const Fault& fault) { seen.push_back(fault.text); });
    EXPECT_TRUE(sink.empty());
    for (const char* text : {"one", "two", "three", "four"}) {
        sink.push(Fault{Code::not_a_number, text});
    }
    EXPECT_FALSE(sink.empty());
    EXPECT_EQ(sink.count(), 4U);
    ASSERT_EQ(sink.kept().size(), 2U);
    EXPECT_EQ(sink.kept()[0].text, "one");
    EXPECT_EQ(sink.kept()[1].text, "two");
    EXPECT_EQ(seen, (std::vector<std::string>{"one", "two"}));
}

TEST(FaultSink, KeepsTwoHundredUnlessToldOtherwise) {
    FaultSink sink;
    for (int i = 0; i < 1000; ++i) {
        sink.push(Fault{Code::not_a_number, "x"});
    }
    EXPECT_EQ(sink.kept().size(), 200U);
    EXPECT_EQ(sink.count(), 1000U);
}

} // namespace
} // namespace libsplice::testing
