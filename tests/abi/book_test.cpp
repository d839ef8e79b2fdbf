// Opening a book through the C library, and all that a form needs of it.
#include "c_host.h"

#include <cmath>
#include <cstring>
#include <map>

namespace libsplice::testing {
namespace {

std::uint64_t find_kind(const char* name) {
    std::uint64_t index = 0;
    EXPECT_EQ(splice_book_find_kind(shipped(), name, &index, nullptr), 0);
    return index;
}

std::map<std::string, splice_field> fields_of(std::uint64_t kind_index) {
    auto kind = record<splice_kind>();
    EXPECT_EQ(splice_book_kind(shipped(), kind_index, &kind, nullptr), 0);
    std::map<std::string, splice_field> fields;
    for (std::uint32_t i = 0; i < kind.field_count; ++i) {
        auto field = record<splice_field>();
        EXPECT_EQ(splice_book_field(shipped(), kind_index, i, &field, nullptr), 0);
        fields[field.name] = field;
    }
    return fields;
}

TEST(Book, FindsItsOwnTablesBesideTheLibrary) {
    splice_book* book = nullptr;
    auto fault = record<splice_fault>();
    ASSERT_EQ(splice_book_open(nullptr, &book, &fault), 0) << fault.text;
    EXPECT_STREQ(splice_book_tables(book), splice_book_tables(shipped()));
    splice_book_close(book);
}

TEST(Book, SaysItsVersions) {
    EXPECT_STREQ(splice_version(), LIBSPLICE_VERSION);
    EXPECT_GT(std::strlen(splice_book_tables(shipped())), 0U);
}

TEST(Book, ListsEveryKindWithItsForm) {
    const auto count = splice_book_kind_count(shipped());
    EXPECT_GE(count, 40U);
    for (std::uint64_t i = 0; i < count; ++i) {
        auto kind = record<splice_kind>();
        ASSERT_EQ(splice_book_kind(shipped(), i, &kind, nullptr), 0);
        EXPECT_EQ(find_kind(kind.name), i);
        EXPECT_GT(kind.construction_count, 0U) << kind.name;
        EXPECT_EQ(fields_of(i).size(), kind.field_count) << kind.name;
        EXPECT_EQ(kind.field_count, kind.own_field_count + 6) << kind.name;
    }
}

TEST(Book, AFieldHasItsSortUnitLimitsAndDefault) {
    const auto fields = fields_of(find_kind("tucked-eye"));
    const splice_field& eye = fields.at("eye");
    EXPECT_EQ(eye.dimension, static_cast<std::uint32_t>(SPLICE_DIMENSION_LENGTH));
    EXPECT_STREQ(eye.unit, "m");
    EXPECT_LT(eye.lowest, eye.highest);
    EXPECT_GT(std::strlen(eye.meaning), 0U);
    EXPECT_EQ(fields.at("tucks").dimension, static_cast<std::uint32_t>(SPLICE_DIMENSION_COUNT));
    const splice_field& measured = fields.at("measured");
    EXPECT_EQ(measured.dimension, static_cast<std::uint32_t>(SPLICE_DIMENSION_CHOICE));
    EXPECT_TRUE(std::isnan(measured.lowest));
    ASSERT_EQ(measured.choice_count, 2U);
    EXPECT_STREQ(measured.choices[1], "pin-centre");
}

TEST(Book, ListsRopesAndSources) {
    bool found = false;
    for (std::uint64_t i = 0; i < splice_book_rope_count(shipped()); ++i) {
        auto rope = record<splice_rope>();
        ASSERT_EQ(splice_book_rope(shipped(), i, &rope, nullptr), 0);
        EXPECT_EQ(std::isnan(rope.breaking_n), std::strlen(rope.breaking_source) == 0) << rope.id;
        if (std::strcmp(rope.id, "demo-b12-hmpe-3") == 0) {
            found = true;
            EXPECT_STREQ(rope.construction, "12-strand");
            EXPECT_STREQ(rope.fibre, "HMPE");
            EXPECT_DOUBLE_EQ(rope.diameter_m, 0.003);
        }
    }
    EXPECT_TRUE(found);
    for (std::uint64_t i = 0; i < splice_book_source_count(shipped()); ++i) {
        auto source = record<splice_source>();
        ASSERT_EQ(splice_book_source(shipped(), i, &source, nullptr), 0);
        EXPECT_GT(std::strlen(source.title), 0U) << source.key;
    }
}

TEST(Book, AnUnknownKindNamesTheNearest) {
    auto fault = record<splice_fault>();
    std::uint64_t index = 0;
    EXPECT_EQ(splice_book_find_kind(shipped(), "burried-eye", &index, &fault), 209);
    EXPECT_EQ(fault.code, 209);
    EXPECT_TRUE(says(fault, "buried-eye")) << fault.text;
    EXPECT_EQ(splice_book_find_kind(shipped(), nullptr, &index, &fault), 209);
}

TEST(Book, TablesThatAreNotThereAreAFault) {
    auto fault = record<splice_fault>();
    const char* const folder = LIBSPLICE_TABLES_DIR "/no-such-folder";
    auto options = record<splice_book_options>();
    options.folders = &folder;
    options.folder_count = 1;
    splice_book* book = nullptr;
    const splice_status status = splice_book_open(&options, &book, &fault);
    EXPECT_GE(status, 200);
    EXPECT_LT(status, 300);
    EXPECT_EQ(book, nullptr);
    EXPECT_NE(std::string_view(fault.at).find("no-such-folder"), std::string_view::npos)
        << fault.at;
}

TEST(Book, WrongCallsAreFaults) {
    auto fault = record<splice_fault>();
    EXPECT_EQ(splice_book_open(nullptr, nullptr, &fault), 801);
    EXPECT_EQ(splice_book_open(nullptr, nullptr, nullptr), 801);

    splice_book* book = nullptr;
    splice_book_options options{};
    EXPECT_EQ(splice_book_open(&options, &book, &fault), 801) << "no size";
    options = record<splice_book_options>();
    options.folder_count = 1;
    EXPECT_EQ(splice_book_open(&options, &book, &fault), 801) << "no list";
    const char* const nothing = nullptr;
    options.folders = &nothing;
    EXPECT_EQ(splice_book_open(&options, &book, &fault), 801) << "no folder";
    EXPECT_EQ(book, nullptr);

    auto kind = record<splice_kind>();
    auto field = record<splice_field>();
    auto rope = record<splice_rope>();
    auto source = record<splice_source>();
    std::uint64_t index = 0;
    EXPECT_EQ(splice_book_kind(nullptr, 0, &kind, &fault), 801);
    EXPECT_EQ(splice_book_kind(shipped(), 0, nullptr, &fault), 801);
    EXPECT_EQ(splice_book_kind(shipped(), 100'000, &kind, &fault), 801);
    EXPECT_TRUE(says(fault, "100000")) << fault.text;
    EXPECT_EQ(splice_book_field(nullptr, 0, 0, &field, &fault), 801);
    EXPECT_EQ(splice_book_field(shipped(), 100'000, 0, &field, &fault), 801);
    EXPECT_EQ(splice_book_field(shipped(), 0, 100'000, &field, &fault), 801);
    EXPECT_EQ(splice_book_field(shipped(), 0, 0, nullptr, &fault), 801);
    EXPECT_EQ(splice_book_rope(nullptr, 0, &rope, &fault), 801);
    EXPECT_EQ(splice_book_rope(shipped(), 100'000, &rope, &fault), 801);
    EXPECT_EQ(splice_book_source(nullptr, 0, &source, &fault), 801);
    EXPECT_EQ(splice_book_source(shipped(), 100'000, &source, &fault), 801);
    EXPECT_EQ(splice_book_find_kind(nullptr, "bowline", &index, &fault), 801);
    EXPECT_EQ(splice_book_find_kind(shipped(), "bowline", nullptr, &fault), 801);
    EXPECT_EQ(splice_book_kind_count(nullptr), 0U);
    EXPECT_EQ(splice_book_rope_count(nullptr), 0U);
    EXPECT_EQ(splice_book_source_count(nullptr), 0U);
    EXPECT_EQ(splice_book_tables(nullptr), nullptr);
    splice_book_close(nullptr);
}

} // namespace
} // namespace libsplice::testing
