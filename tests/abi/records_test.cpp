// Records as they cross the border: their pinned layout, and hosts that know less or more than we
// do.
#include "c_host.h"

#include <array>
#include <cstddef>
#include <cstring>

namespace libsplice::testing {
namespace {

/// Where a record's last member lies, and how long the record is, in the first release. A record
/// may grow at its end, which is an entry more; an entry that stands is never changed.
struct Layout {
    const char* record;
    std::size_t size;
    std::size_t last;
    std::size_t pinned_size;
    std::size_t pinned_last;
};

#define LAYOUT(record, last, pinned_size, pinned_last)                                             \
    Layout {                                                                                       \
#record, sizeof(record), offsetof(record, last), pinned_size, pinned_last                  \
    }

TEST(Records, LieInMemoryAsInTheFirstRelease) {
    const std::array layouts{
        LAYOUT(splice_fault, rule, 968, 840),
        LAYOUT(splice_book_options, plug_ins, 32, 24),
        LAYOUT(splice_kind, own_field_count, 48, 44),
        LAYOUT(splice_field, choices, 80, 72),
        LAYOUT(splice_rope, breaking_n, 64, 56),
        LAYOUT(splice_source, terms, 32, 24),
        LAYOUT(splice_row, length_nm, 56, 48),
        LAYOUT(splice_mark, from_end_m, 24, 16),
        LAYOUT(splice_caution, rule, 24, 16),
        LAYOUT(splice_step, text, 16, 8),
        LAYOUT(splice_value, value, 24, 16),
        LAYOUT(splice_settings, marking_tension, 32, 24),
        LAYOUT(splice_cell, text, 16, 8),
        LAYOUT(splice_counts, refused, 32, 24),
        LAYOUT(splice_piece, step_count, 200, 192),
        LAYOUT(splice_end_facts, caution_count, 48, 44),
        LAYOUT(splice_field_column, values, 16, 8),
        LAYOUT(splice_value_column, values, 16, 8),
        LAYOUT(splice_batch, value_count, 80, 72),
    };
    for (const Layout& layout : layouts) {
        EXPECT_EQ(layout.size, layout.pinned_size) << layout.record;
        EXPECT_EQ(layout.last, layout.pinned_last) << layout.record;
    }
}

TEST(Records, AShorterRecordIsFilledAsFarAsItReaches) {
    const auto sheet = open_sheet();
    ASSERT_EQ(add(sheet.get(), outhaul), 0);
    splice_piece piece;
    std::memset(&piece, 0x5A, sizeof piece);
    piece.size = offsetof(splice_piece, finished_m);
    ASSERT_EQ(splice_sheet_piece(sheet.get(), 0, &piece, nullptr), 0);
    EXPECT_EQ(piece.size, offsetof(splice_piece, finished_m));
    EXPECT_DOUBLE_EQ(piece.cut_m, 2.685);
    const auto* beyond = reinterpret_cast<const unsigned char*>(&piece.finished_m);
    for (std::size_t i = 0; i < sizeof piece - piece.size; ++i) {
        ASSERT_EQ(beyond[i], 0x5A) << "byte " << i << " beyond the record was written";
    }
}

TEST(Records, OfAShorterRecordTheRestCountsAsNotGiven) {
    auto settings = record<splice_settings>();
    settings.size = offsetof(splice_settings, step_m);
    settings.step_m = -1.0; // beyond the record: never read
    settings.marking_tension = "hard";
    const auto sheet = open_sheet(&settings);
    ASSERT_EQ(add(sheet.get(), outhaul), 0);
    EXPECT_DOUBLE_EQ(piece_of(sheet.get()).cut_m, 2.685);
}

struct LongerSettings {
    splice_settings known = record<splice_settings>();
    double of_a_later_release = 0.0;
};

TEST(Records, ALongerRecordIsTakenWhereItAsksForNothingNew) {
    LongerSettings settings;
    settings.known.size = sizeof settings;
    splice_sheet* sheet = nullptr;
    ASSERT_EQ(splice_sheet_open(shipped(), &settings.known, &sheet, nullptr), 0);
    splice_sheet_close(sheet);
    settings.of_a_later_release = 1.0;
    auto fault = record<splice_fault>();
    EXPECT_EQ(splice_sheet_open(shipped(), &settings.known, &sheet, &fault), 801);
    EXPECT_TRUE(says(fault, "newer library")) << fault.text;
}

TEST(Records, AShorterFaultIsFilledAsFarAsItReaches) {
    splice_fault fault;
    std::memset(&fault, 0x5A, sizeof fault);
    fault.size = offsetof(splice_fault, at);
    std::uint64_t index = 0;
    EXPECT_EQ(splice_book_find_kind(shipped(), "no-such-kind", &index, &fault), 209);
    EXPECT_EQ(fault.code, 209);
    EXPECT_TRUE(says(fault, "no-such-kind"));
    EXPECT_EQ(fault.at[0], 0x5A);
    fault.size = 0;
    fault.code = 5;
    EXPECT_EQ(splice_book_find_kind(shipped(), "no-such-kind", &index, &fault), 209);
    EXPECT_EQ(fault.code, 5) << "a record without a size is left alone";
}

TEST(Records, ALongTextIsCutOffBetweenCharacters) {
    std::string name(509, 'x');
    name += "\u00e9\u00e9\u00e9";
    auto fault = record<splice_fault>();
    const std::vector<splice_cell> cells{{"name", "a"}, {name.c_str(), "x"}};
    EXPECT_EQ(add(open_sheet().get(), cells, &fault), 107);
    const std::string_view text(fault.text);
    EXPECT_LT(text.size(), sizeof fault.text);
    EXPECT_NE(static_cast<unsigned char>(text.back()), 0xC3U) << "half a character is left";
}

} // namespace
} // namespace libsplice::testing
