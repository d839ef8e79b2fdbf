// Opening what a test needs through the C library, and the texts of its faults.
#pragma once

#include "libsplice/abi/include/splice.h"

#include <gtest/gtest.h>

#include <memory>
#include <string>
#include <vector>

namespace libsplice::testing {

struct CloseBook {
    void operator()(splice_book* book) const { splice_book_close(book); }
};
struct CloseSheet {
    void operator()(splice_sheet* sheet) const { splice_sheet_close(sheet); }
};
struct CloseEnd {
    void operator()(splice_end* end) const { splice_end_close(end); }
};
using BookHandle = std::unique_ptr<splice_book, CloseBook>;
using SheetHandle = std::unique_ptr<splice_sheet, CloseSheet>;
using EndHandle = std::unique_ptr<splice_end, CloseEnd>;

/// A record that gives its size.
template <class Record>
Record record() {
    Record made{};
    made.size = sizeof made;
    return made;
}

inline BookHandle open_book(const std::vector<const char*>& folders = {LIBSPLICE_TABLES_DIR}) {
    auto options = record<splice_book_options>();
    options.folders = folders.data();
    options.folder_count = static_cast<std::uint32_t>(folders.size());
    auto fault = record<splice_fault>();
    splice_book* book = nullptr;
    EXPECT_EQ(splice_book_open(&options, &book, &fault), 0) << fault.text;
    return BookHandle(book);
}

/// The example plug-in in C.
inline constexpr const char* wire_eye = LIBSPLICE_PLUG_INS_DIR "/tucked-wire-eye.so";

/// The shipped tables and one file of a plug-in.
inline splice_status open_with(const char* file, BookHandle& book, splice_fault& fault) {
    const char* const tables = LIBSPLICE_TABLES_DIR;
    auto options = record<splice_book_options>();
    options.folders = &tables;
    options.folder_count = 1;
    options.plug_ins = &file;
    options.plug_in_count = 1;
    splice_book* opened = nullptr;
    const splice_status status = splice_book_open(&options, &opened, &fault);
    book.reset(opened);
    return status;
}

/// The shipped tables, opened once.
inline const splice_book* shipped() {
    static const BookHandle book = open_book();
    return book.get();
}

inline SheetHandle open_sheet(const splice_settings* settings = nullptr) {
    auto fault = record<splice_fault>();
    splice_sheet* sheet = nullptr;
    EXPECT_EQ(splice_sheet_open(shipped(), settings, &sheet, &fault), 0) << fault.text;
    return SheetHandle(sheet);
}

/// The line that the page of buried-eye works out by hand: cut at 2.685 m.
inline const std::vector<splice_cell> outhaul{
    {"name", "outhaul"},    {"rope", "demo-b12-hmpe-3"}, {"length", "2.4 m"},
    {"fit", "trim-aboard"}, {"prestretched", "yes"},     {"end_a", "buried-eye"},
    {"end_a.eye", "30 mm"}, {"end_a.pin", "6 mm"},       {"end_b", "bare"}};

inline splice_status add(splice_sheet* sheet, const std::vector<splice_cell>& cells,
                         splice_fault* fault = nullptr) {
    return splice_sheet_add_line(sheet, cells.data(), static_cast<std::uint32_t>(cells.size()),
                                 fault);
}

inline splice_piece piece_of(const splice_sheet* sheet, std::uint64_t index = 0) {
    auto piece = record<splice_piece>();
    EXPECT_EQ(splice_sheet_piece(sheet, index, &piece, nullptr), 0);
    return piece;
}

inline bool says(const splice_fault& fault, std::string_view words) {
    return std::string_view(fault.text).find(words) != std::string_view::npos;
}

} // namespace libsplice::testing
