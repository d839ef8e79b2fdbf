// Opening a book and looking through it.
#include "libsplice/abi/book.h"
#include "libsplice/abi/records.h"
#include "libsplice/base/version.h"
#include "libsplice/catalogue/own_tables.h"
#include "libsplice/plugin/load_plug_in.h"

#include <memory>

using namespace libsplice;
using namespace libsplice::abi;

namespace {

Result<std::vector<std::string>> read_list(const char* const* texts, std::uint32_t count) {
    std::vector<std::string> list;
    for (std::uint32_t i = 0; i < count; ++i) {
        if (texts == nullptr || texts[i] == nullptr) {
            return Unexpected(wrong_call("a file or folder of the book's options is null"));
        }
        list.emplace_back(texts[i]);
    }
    return list;
}

Result<Book> open(const splice_book_options& options) {
    const auto given = read_list(options.folders, options.folder_count);
    if (!given) {
        return Unexpected(given.error());
    }
    const auto plug_ins = read_list(options.plug_ins, options.plug_in_count);
    if (!plug_ins) {
        return Unexpected(plug_ins.error());
    }
    FaultSink faults;
    auto catalogue = Catalogue::load(table_folders(library_path(), *given), faults);
    if (!catalogue) {
        return Unexpected(catalogue.error());
    }
    PluggedIn plugged_in;
    for (const std::string& file : *plug_ins) {
        if (auto fault = load_plug_in(file, *catalogue, plugged_in)) {
            return Unexpected(*std::move(fault));
        }
    }
    return Book::open(*std::move(catalogue), std::move(plugged_in));
}

Fault no_book() {
    return wrong_call("the book is null");
}

} // namespace

const char* splice_version() {
    return version().data(); // a literal, which ends in a zero byte
}

splice_status splice_book_open(const splice_book_options* options, splice_book** book,
                               splice_fault* fault) {
    return guarded(fault, [&]() -> Outcome {
        if (book == nullptr) {
            return wrong_call("there is no place for the book: the pointer is null");
        }
        *book = nullptr;
        const auto known = take_in(options);
        if (!known) {
            return known.error();
        }
        auto opened = open(*known);
        if (!opened) {
            return std::move(opened).error();
        }
        *book = std::make_unique<splice_book>(*std::move(opened)).release();
        return std::nullopt;
    });
}

void splice_book_close(splice_book* book) {
    const std::unique_ptr<splice_book> closed(book);
}

const char* splice_book_tables(const splice_book* book) {
    return book == nullptr ? nullptr : book->records.tables();
}

std::uint64_t splice_book_kind_count(const splice_book* book) {
    return book == nullptr ? 0 : book->records.kinds().size();
}

std::uint64_t splice_book_rope_count(const splice_book* book) {
    return book == nullptr ? 0 : book->records.ropes().size();
}

std::uint64_t splice_book_source_count(const splice_book* book) {
    return book == nullptr ? 0 : book->records.sources().size();
}

splice_status splice_book_kind(const splice_book* book, std::uint64_t index, splice_kind* kind,
                               splice_fault* fault) {
    return guarded(fault, [&]() -> Outcome {
        return book == nullptr ? no_book() : hand_out_at(book->records.kinds(), index, kind);
    });
}

splice_status splice_book_rope(const splice_book* book, std::uint64_t index, splice_rope* rope,
                               splice_fault* fault) {
    return guarded(fault, [&]() -> Outcome {
        return book == nullptr ? no_book() : hand_out_at(book->records.ropes(), index, rope);
    });
}

splice_status splice_book_source(const splice_book* book, std::uint64_t index,
                                 splice_source* source, splice_fault* fault) {
    return guarded(fault, [&]() -> Outcome {
        return book == nullptr ? no_book() : hand_out_at(book->records.sources(), index, source);
    });
}

splice_status splice_book_field(const splice_book* book, std::uint64_t kind_index,
                                std::uint64_t field_index, splice_field* field,
                                splice_fault* fault) {
    return guarded(fault, [&]() -> Outcome {
        if (book == nullptr) {
            return no_book();
        }
        if (kind_index >= book->records.kinds().size()) {
            return wrong_call("there is no kind " + std::to_string(kind_index));
        }
        return hand_out_at(book->records.fields(kind_index), field_index, field);
    });
}

splice_status splice_book_find_kind(const splice_book* book, const char* name, std::uint64_t* index,
                                    splice_fault* fault) {
    return guarded(fault, [&]() -> Outcome {
        if (book == nullptr || index == nullptr) {
            return wrong_call("the book, or the place for the index, is null");
        }
        const auto kind = book->book.kind(text_of(name));
        if (!kind) {
            return kind.error();
        }
        *index = static_cast<std::uint64_t>(*kind - book->book.kinds().data());
        return std::nullopt;
    });
}
