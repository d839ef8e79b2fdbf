// The plug-ins of the page, and one of the first layout, by hand arithmetic.
#include "libsplice/allowance/values.h"

#include "plug_ins.h"

namespace libsplice::testing {
namespace {

Nanometres mm(double length) {
    return to_nanometres(millimetres(length));
}

std::vector<std::pair<std::string, Nanometres>> rows_of(const Book& book, const End& end) {
    std::vector<std::pair<std::string, Nanometres>> rows;
    for (const Row& row : end.rows) {
        rows.emplace_back(book.names().of(row.item), row.length);
    }
    return rows;
}

using Rows = std::vector<std::pair<std::string, Nanometres>>;

// 8 in = 203.2 mm; 203.2 + 105 - 40 = 268.2; the far throat lies at 203.2 + 105 = 308.2.
TEST(TuckedWireEye, AddsUp) {
    const Book book = book_with({"tucked-wire-eye"});
    const auto end = work_out(book, "tucked-wire-eye", "wire galvanised-steel 1/8 in",
                              {{"eye", "40 mm"}, {"round", "105 mm"}});
    ASSERT_TRUE(end) << end.error().text;
    EXPECT_EQ(rows_of(book, *end), (Rows{{"free end for the tucks", mm(203.2)},
                                         {"wire round the thimble", mm(105)},
                                         {"throat to bearing point", mm(-40)}}));
    EXPECT_EQ(end->total(), mm(268.2));
    EXPECT_EQ(end->standing_mark, mm(308.2));
    ASSERT_TRUE(end->retained);
    EXPECT_NEAR(end->retained->share, 0.86, 1e-12);
    EXPECT_EQ(end->cautions.size(), 1U);
}

TEST(TuckedWireEye, StainlessKeepsLess) {
    const Book book = book_with({"tucked-wire-eye"});
    const auto end = work_out(book, "tucked-wire-eye", "wire stainless-steel 1/8 in",
                              {{"eye", "40 mm"}, {"round", "105 mm"}});
    ASSERT_TRUE(end && end->retained);
    EXPECT_NEAR(end->retained->share, 0.76, 1e-12);
}

TEST(TuckedWireEye, RefusesAShortFreeEndAndNamesTheRule) {
    const Book book = book_with({"tucked-wire-eye"});
    const auto end = work_out(book, "tucked-wire-eye", "wire galvanised-steel 1/8 in",
                              {{"eye", "40 mm"}, {"round", "105 mm"}, {"tail", "203 mm"}});
    ASSERT_FALSE(end);
    EXPECT_EQ(end.error().code, Code::below_published_minimum);
    EXPECT_EQ(end.error().field, "tail");
    EXPECT_NE(end.error().rule.find("army-tm-1-1500-204-23-1"), std::string::npos);
}

TEST(TuckedWireEye, ItsFieldsAreBoundAsOurs) {
    const Book book = book_with({"tucked-wire-eye"});
    const auto missing =
        work_out(book, "tucked-wire-eye", "wire galvanised-steel 1/8 in", {{"eye", "40 mm"}});
    ASSERT_FALSE(missing);
    EXPECT_EQ(missing.error().code, Code::field_missing);
    const auto rope = work_out(book, "tucked-wire-eye", "3-strand manila 10 mm", {});
    ASSERT_FALSE(rope);
    EXPECT_EQ(rope.error().code, Code::wrong_construction);
}

// Rope 10 mm, pin 20 mm, eye 60 mm: R = 15, h = 50, w = 5; away = sqrt(2525) = 50.249378;
// leg = sqrt(2525 - 225) = 47.958315; beta = asin(15/50.249378) - atan(5/50)
// = 0.303132 - 0.099669 = 0.203464; round = 15 (pi + 0.406927) + 95.916630 = 149.144430.
// Tail by 7 circumferences: 70 pi = 219.911486; by one full fid: 210. Shears cost 2 mm.
TEST(TuckedBraidEye, FollowsEitherRule) {
    const Book book = book_with({"tucked-braid-eye"});
    const auto longer = work_out(book, "tucked-braid-eye", "12-strand polyester 10 mm",
                                 {{"eye", "60 mm"}, {"pin", "20 mm"}});
    const auto shorter = work_out(book, "tucked-braid-eye", "12-strand polyester 10 mm",
                                  {{"eye", "60 mm"}, {"pin", "20 mm"}, {"after", "ner"}});
    ASSERT_TRUE(longer && shorter);
    constexpr double micrometre = 1e3;
    EXPECT_NEAR(static_cast<double>(longer->total()),
                static_cast<double>(mm(2 + 219.911486 + 149.144430 - 60)), micrometre);
    EXPECT_NEAR(static_cast<double>(shorter->total()),
                static_cast<double>(mm(2 + 210 + 149.144430 - 60)), micrometre);
    EXPECT_NEAR(static_cast<double>(shorter->standing_mark),
                static_cast<double>(mm(2 + 210 + 149.144430)), micrometre);
    EXPECT_NEAR(*find_value(*longer, ValueName::throat_angle_deg), 23.3152, 1e-3);
}

TEST(TuckedBraidEye, HmpeIsRefusedForAPerson) {
    const Book book = book_with({"tucked-braid-eye"});
    const auto end = work_out(book, "tucked-braid-eye", "12-strand HMPE 10 mm", {{"pin", "20 mm"}});
    ASSERT_TRUE(end);
    ASSERT_EQ(end->cautions.size(), 1U);
    EXPECT_EQ(end->cautions[0].weight, Caution::Weight::refused_for_person);
}

TEST(TuckedBraidEye, BringsRopesWithTheirSources) {
    const Book book = book_with({"tucked-braid-eye"});
    const auto cord = book.catalogue().rope("accessory-cord-6-mm");
    ASSERT_TRUE(cord && cord->breaking);
    EXPECT_NEAR(cord->breaking->value.si(), 7200.0, 1e-9);
    EXPECT_EQ(book.citation(cord->breaking->source).key, "en-564-maker-page");
    EXPECT_NE(book.catalogue().find_source("en-564-maker-page"), nullptr);
}

// Three turns of ten diameters of 6 mm and a tail of 50 mm, and 2 mm of the shears.
TEST(OldLayout, StillWorks) {
    const Book book = book_with({"old-layout", "tucked-braid-eye"});
    const auto end =
        work_out(book, "old-end-2", "3-strand manila 6 mm", {{"turns", "3"}, {"tail", "50 mm"}});
    ASSERT_TRUE(end) << end.error().text;
    EXPECT_EQ(end->total(), mm(3 * 60 + 50 + 2));
    EXPECT_EQ(end->standing_mark, end->total());
    ASSERT_EQ(end->shape.size(), 1U);
    EXPECT_EQ(end->shape[0].form, Span::Form::loop);
    EXPECT_EQ(end->shape[0].to - end->shape[0].from, mm(3 * 60));
    EXPECT_EQ(end->shape[0].count, 0.0);
    EXPECT_EQ(end->shape[0].around, 0);
}

// Five tucks in the free end of eight inches, then the wire round its thimble.
TEST(TuckedWireEye, SaysHowItIsDrawn) {
    const Book book = book_with({"tucked-wire-eye"});
    const auto end = work_out(book, "tucked-wire-eye", "wire galvanised-steel 1/8 in",
                              {{"eye", "40 mm"}, {"round", "105 mm"}});
    ASSERT_TRUE(end) << end.error().text;
    ASSERT_EQ(end->shape.size(), 2U);
    EXPECT_EQ(end->shape[0].form, Span::Form::tucked);
    EXPECT_EQ(end->shape[0].count, 5.0);
    EXPECT_EQ(end->shape[0].to, 203'200'000);
    EXPECT_EQ(end->shape[1].form, Span::Form::loop);
    EXPECT_EQ(end->shape[1].to, 308'200'000);
}

TEST(Book, KeepsItsPlugInsWhenItMoves) {
    auto moved = std::make_unique<Book>(book_with({"tucked-wire-eye", "tucked-braid-eye"}));
    const Book book = std::move(*moved);
    moved.reset();
    ASSERT_EQ(book.plug_ins().size(), 2U);
    EXPECT_EQ(book.plug_ins()[1].name, "tucked-braid");
    EXPECT_EQ(book.plug_ins()[1].ropes.size(), 2U);
    const auto end = work_out(book, "tucked-wire-eye", "wire galvanised-steel 1/8 in",
                              {{"eye", "40 mm"}, {"round", "105 mm"}});
    ASSERT_TRUE(end);
    EXPECT_EQ(book.names().of(end->rows[0].item), "free end for the tucks");
}

} // namespace
} // namespace libsplice::testing
