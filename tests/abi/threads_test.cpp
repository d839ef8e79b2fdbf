// One book, many threads: each cuts its own sheet and comes to what one thread alone comes to.
#include "c_host.h"

#include <algorithm>
#include <thread>

namespace libsplice::testing {
namespace {

constexpr int thread_count = 8;
constexpr int parts = LIBSPLICE_THREAD_PIECES / 1000;

/// A thousand lines, a few hundred different ends among them, some of which cannot be made; every
/// fourth is of the plug-in's kind.
std::string job_of(int part) {
    std::string csv = "name,rope,length,prestretched,end_a,end_a.eye,end_a.pin,end_a.round,end_b\n";
    for (int i = 0; i < 1000; ++i) {
        const std::string length = std::to_string(1500 + (part * 1000 + i) * 7 % 9000) + " mm";
        const std::string eye = std::to_string(5 + i * 3 % 400) + " mm";
        csv += "line " + std::to_string(i);
        csv += i % 4 == 0 ? ",wire galvanised-steel 1/8 in," + length + ",,tucked-wire-eye," + eye +
                                ",,105 mm,bare\n"
                          : ",demo-b12-hmpe-4," + length + ",yes,buried-eye," + eye +
                                ",12 mm,,figure-eight\n";
    }
    return csv;
}

/// The cut lengths of every part, in nanometres; 0 where a line is refused. The book is shared,
/// single ends and lists are asked for in between.
std::vector<std::int64_t> cut_all(const splice_book* book) {
    std::vector<std::int64_t> lengths;
    splice_sheet* opened = nullptr;
    if (splice_sheet_open(book, nullptr, &opened, nullptr) != 0) {
        return lengths;
    }
    const SheetHandle sheet(opened);
    for (int part = 0; part < parts; ++part) {
        const std::string job = job_of(part);
        splice_sheet_add_csv(sheet.get(), job.data(), job.size(), "job", nullptr);
        for (std::uint64_t i = 0; i < splice_sheet_piece_count(sheet.get()); ++i) {
            auto piece = record<splice_piece>();
            splice_sheet_piece(sheet.get(), i, &piece, nullptr);
            lengths.push_back(piece.cut_nm);
        }
        splice_sheet_clear(sheet.get(), nullptr);
        splice_end* end = nullptr;
        const splice_cell eye{"eye", "60 mm"};
        splice_end_open(book, "buried-eye", "12-strand HMPE 5 mm", &eye, 1, &end, nullptr);
        splice_end_close(end);
        auto kind = record<splice_kind>();
        splice_book_kind(book, static_cast<std::uint64_t>(part) % 40, &kind, nullptr);
    }
    return lengths;
}

TEST(Threads, ShareOneBook) {
    auto fault = record<splice_fault>();
    BookHandle book;
    ASSERT_EQ(open_with(wire_eye, book, fault), 0) << fault.text;
    const auto alone = cut_all(book.get());
    ASSERT_EQ(alone.size(), std::size_t{parts} * 1000);
    for (const std::size_t first :
         {std::size_t{0}, std::size_t{1}}) { // some of either kind are cut, some refused
        std::size_t refused = 0;
        for (std::size_t i = first; i < 1000; i += 4) {
            if (alone[i] == 0) {
                ++refused;
            }
        }
        EXPECT_GT(refused, 0U);
        EXPECT_LT(refused, 250U);
    }
    std::vector<std::vector<std::int64_t>> answers(thread_count);
    std::vector<std::thread> threads;
    for (auto& answer : answers) {
        threads.emplace_back([&answer, &book] { answer = cut_all(book.get()); });
    }
    for (std::thread& thread : threads) {
        thread.join();
    }
    for (const auto& answer : answers) {
        EXPECT_EQ(answer, alone);
    }
}

} // namespace
} // namespace libsplice::testing
