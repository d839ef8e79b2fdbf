// Whatever a plug-in answers wrongly is a fault of that end, and of nothing else.
#include "plug_ins.h"

namespace libsplice::testing {
namespace {

constexpr std::string_view rope = "12-strand HMPE 5 mm";

struct Answer {
    int does; ///< as unruly.c numbers it
    Code code;
    const char* words;
};

const std::vector<Answer> answers{
    {1, Code::plug_in_number, "row 1 is not a number"},
    {2, Code::plug_in_number, "row 1 is infinite"},
    {3, Code::plug_in_number, "row 1 is -0.001"},
    {4, Code::plug_in_number, "row 1 is 1000"},
    {5, Code::plug_in_row_without_source, "row 1 has no source"},
    {6, Code::plug_in_row_without_source, "does not declare"},
    {7, Code::plug_in_number, "the spread of row 1"},
    {8, Code::plug_in_answer, "spread without an origin"},
    {9, Code::plug_in_answer, "more than 15"},
    {10, Code::plug_in_answer, "no row of index 2"},
    {11, Code::plug_in_answer, "marks do not ascend"},
    {12, Code::plug_in_answer, "standing part"},
    {13, Code::plug_in_answer, "no list of steps of index 1"},
    {14, Code::plug_in_number, "the retained strength is 1.5"},
    {15, Code::plug_in_row_without_source, "the retained strength has no source"},
    {16, Code::plug_in_answer, "returned 207"},
    {17, Code::plug_in_answer, "without a reason"},
    {18, Code::plug_in_text, "not UTF-8"},
    {19, Code::plug_in_refused, "the shop does not make these on Sundays"},
    {20, Code::plug_in_size, "a row"},
    {21, Code::plug_in_size, "a row is null"},
    {22, Code::plug_in_number, "a value is not a number"},
    {23, Code::plug_in_number, "less than nothing"},
    {24, Code::plug_in_answer, "one value twice"},
    {25, Code::plug_in_answer, "the rule"},
    {26, Code::plug_in_answer, "group"},
    {27, Code::plug_in_number, "a span's end is 0.25"},
    {28, Code::plug_in_answer, "form of a span"},
    {29, Code::plug_in_number, "a span's count is -1"},
    {30, Code::plug_in_number, "what a span goes round is not a number"},
    {31, Code::plug_in_size, "a span"},
};

TEST(Answers, EveryWrongAnswerIsAFaultOfItsEnd) {
    const Book book = book_with({"unruly"});
    for (const auto& [does, code, words] : answers) {
        const std::string number = std::to_string(does);
        const auto end = work_out(book, "unruly-end", rope, {{"does", number}});
        ASSERT_FALSE(end) << does;
        EXPECT_EQ(end.error().code, code) << does << ": " << end.error().text;
        EXPECT_TRUE(says(end.error(), words)) << does << ": " << end.error().text;
        EXPECT_TRUE(says(end.error(), "the plug-in \"unruly\"")) << end.error().text;
    }
    EXPECT_TRUE(work_out(book, "unruly-end", rope, {}));
    EXPECT_TRUE(work_out(book, "bowline", "double-braid polyester 6 mm", {}));
}

TEST(Answers, AFieldThatNoMoreMisbehaviourHasIsOutOfRange) {
    const Book book = book_with({"unruly"});
    const auto end = work_out(book, "unruly-end", rope, {{"does", "32"}});
    ASSERT_FALSE(end);
    EXPECT_EQ(end.error().code, Code::field_out_of_range);
}

TEST(Answers, AnExceptionStaysInsideItsEnd) {
    const Book book = book_with({"thrower"});
    for (int time = 0; time < 2; ++time) {
        const auto end = work_out(book, "thrown-end", rope, {});
        ASSERT_FALSE(end);
        EXPECT_EQ(end.error().code, Code::plug_in_threw);
        EXPECT_TRUE(says(end.error(), "\"thrower\"")) << end.error().text;
    }
}

TEST(Answers, NamesOfItsOwnFollowOurs) {
    const Book book = book_with({"unruly"});
    const auto end = work_out(book, "unruly-end", rope, {});
    ASSERT_TRUE(end);
    EXPECT_EQ(book.names().of(end->rows[0].item), "shop's own row");
    EXPECT_EQ(book.names().of(end->marks[0].name), "shop's mark");
    EXPECT_EQ(book.names().of(end->others[0].name), "shop_length_m");
    EXPECT_EQ(end->marks[1].name, MarkName::far_throat); // our own word is our own id
    EXPECT_FALSE(lies_outside_tail(end->rows[0].item));
    EXPECT_EQ(to_text(book.citation(end->rows[0].source)), "shop: three test pieces");
}

} // namespace
} // namespace libsplice::testing
