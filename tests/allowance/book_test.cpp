// The book finds kinds, rules and citations, and takes kinds from elsewhere.
#include "ends.h"

#include <set>

namespace libsplice::testing {
namespace {

Catalogue shipped_catalogue() {
    FaultSink faults;
    auto catalogue = Catalogue::load(std::vector{tables_folder()}, faults);
    return *std::move(catalogue);
}

/// A kind that needs one metre of rope, whatever the rope.
Kind one_metre(std::string_view name) {
    return {{name, "an end of one metre", "its own end", {}, {}},
            [](const Request&) -> Result<End> {
                End allowance;
                Row row;
                row.item = Item::tail;
                row.source = cited_job;
                row.length = nanometres_per_metre;
                allowance.add(row);
                return allowance;
            }};
}

TEST(Book, UnknownKindNamesTheNearest) {
    const auto kind = shipped_book().kind("burried-eye");
    ASSERT_FALSE(kind);
    EXPECT_EQ(kind.error().code, Code::unknown_kind);
    EXPECT_TRUE(says(kind.error(), "\"buried-eye\"")) << kind.error().text;
    EXPECT_FALSE(shipped_book().kind(""));
}

TEST(Book, KnowsEveryFieldNameOnce) {
    const auto names = shipped_book().field_names();
    for (const std::string_view name :
         {"eye",     "pin",     "tail",           "taper",      "exit",  "settled",
          "far_end", "core",    "cover_end",      "cover_tail", "tucks", "end_left",
          "pick",    "clips",   "turn_back",      "loop",       "set",   "length",
          "rule",    "fitting", "fitting_length", "measured"}) {
        EXPECT_EQ(std::ranges::count(names, name), 1) << name;
    }
    EXPECT_EQ(std::set(names.begin(), names.end()).size(), names.size());
}

TEST(Book, TakesKindsFromElsewhere) {
    auto book = Book::open(shipped_catalogue(), {.kinds = {one_metre("metre-end")}});
    ASSERT_TRUE(book);
    const auto kind = book->kind("metre-end");
    ASSERT_TRUE(kind);
    const auto end = book->work_out(**kind, rope_of("wire stainless-steel 4 mm"), {});
    ASSERT_TRUE(end);
    EXPECT_EQ(end->total(), nanometres_per_metre);
    EXPECT_EQ(book->kinds().size(), shipped_book().kinds().size() + 1);
}

TEST(Book, RefusesAKindThatStandsTwice) {
    const auto built_in = Book::open(shipped_catalogue(), {.kinds = {one_metre("bowline")}});
    ASSERT_FALSE(built_in);
    EXPECT_EQ(built_in.error().code, Code::duplicate_record);
    const auto twice =
        Book::open(shipped_catalogue(), {.kinds = {one_metre("x-end"), one_metre("x-end")}});
    ASSERT_FALSE(twice);
    EXPECT_EQ(twice.error().code, Code::duplicate_record);
}

TEST(Book, WorksTheSameEndOutTheSame) {
    const auto one = make_end("locked-eye", "12-strand HMPE 5 mm", {{"eye", "50 mm"}});
    const auto other = make_end("locked-eye", "12-strand HMPE 5 mm", {{"eye", "5 cm"}});
    EXPECT_EQ(one.total(), other.total());
    const auto third = make_end("locked-eye", "12-strand HMPE 5 mm", {{"eye", "10 D"}});
    EXPECT_EQ(one.total(), third.total());
}

TEST(Book, SizesInInchesAreNotSnapped) {
    const auto end = make_end("buried-eye", "12-strand HMPE 3/16 in");
    EXPECT_NEAR(value_of(end, ValueName::tail_m), 342.9, near); // 72 x 4.7625
}

} // namespace
} // namespace libsplice::testing
