// Plug-ins that a host names: their kinds through the C library.
#include "c_host.h"

namespace libsplice::testing {
namespace {

TEST(PlugIns, BringTheirKinds) {
    auto fault = record<splice_fault>();
    BookHandle book;
    ASSERT_EQ(open_with(wire_eye, book, fault), 0) << fault.text;
    EXPECT_EQ(splice_book_kind_count(book.get()), splice_book_kind_count(shipped()) + 1);
    const splice_cell fields[] = {{"eye", "40 mm"}, {"round", "105 mm"}};
    splice_end* opened = nullptr;
    ASSERT_EQ(splice_end_open(book.get(), "tucked-wire-eye", "wire galvanised-steel 1/8 in", fields,
                              2, &opened, &fault),
              0)
        << fault.text;
    const EndHandle end(opened);
    auto facts = record<splice_end_facts>();
    ASSERT_EQ(splice_end_describe(end.get(), &facts, nullptr), 0);
    EXPECT_EQ(facts.allowance_nm, 268'200'000); // 8 in + 105 mm - 40 mm
    auto row = record<splice_row>();
    ASSERT_EQ(splice_end_row(end.get(), 0, &row, nullptr), 0);
    EXPECT_STREQ(row.item, "free end for the tucks");
}

TEST(PlugIns, WorkOutBatches) {
    auto fault = record<splice_fault>();
    BookHandle book;
    ASSERT_EQ(open_with(wire_eye, book, fault), 0) << fault.text;
    const std::vector<double> eyes_m{0.040, 0.050};
    const std::vector<double> rounds_m{0.105, 0.105};
    const splice_field_column fields[] = {{"eye", eyes_m.data()}, {"round", rounds_m.data()}};
    std::vector<double> allowances_m(2);
    auto batch = record<splice_batch>();
    batch.kind = "tucked-wire-eye";
    batch.rope = "wire galvanised-steel 1/8 in";
    batch.fields = fields;
    batch.field_count = 2;
    batch.count = 2;
    batch.allowances_m = allowances_m.data();
    ASSERT_EQ(splice_work_out_batch(book.get(), &batch, &fault), 0) << fault.text;
    EXPECT_DOUBLE_EQ(allowances_m[0], 0.2682);
    EXPECT_DOUBLE_EQ(allowances_m[1], 0.2582);
}

TEST(PlugIns, ThatCannotBeLoadedAreFaults) {
    auto fault = record<splice_fault>();
    BookHandle book;
    EXPECT_EQ(open_with(LIBSPLICE_PLUG_INS_DIR "/no-such.so", book, fault), 601);
    EXPECT_EQ(book, nullptr);
    EXPECT_EQ(open_with(LIBSPLICE_TABLES_DIR "/sources.toml", book, fault), 601);
    EXPECT_EQ(open_with(nullptr, book, fault), 801);
}

} // namespace
} // namespace libsplice::testing
