// A book as the records that hosts are given, made once when it is opened.
#pragma once

#include "libsplice/abi/include/splice.h"
#include "libsplice/abi/texts.h"
#include "libsplice/allowance/book.h"

#include <deque>
#include <limits>
#include <string_view>
#include <vector>

namespace libsplice::abi {

/// What stands for a figure that is not known.
inline constexpr double not_known = std::numeric_limits<double>::quiet_NaN();

/// Kinds, fields, ropes and sources. Nothing changes after it is made.
class BookRecords {
  public:
    explicit BookRecords(const Book& book);
    BookRecords(const BookRecords&) = delete;
    BookRecords& operator=(const BookRecords&) = delete;

    [[nodiscard]] const std::vector<splice_kind>& kinds() const { return kinds_; }
    /// The fields of the kind at `kind`, its own first.
    [[nodiscard]] const std::vector<splice_field>& fields(std::size_t kind) const {
        return fields_[kind];
    }
    [[nodiscard]] const std::vector<splice_rope>& ropes() const { return ropes_; }
    [[nodiscard]] const std::vector<splice_source>& sources() const { return sources_; }
    [[nodiscard]] const char* tables() const { return tables_; }

    /// A citation as text.
    [[nodiscard]] const char* source(CitationId id) const { return at(citations_, id); }
    /// Likewise; empty where it rests on no more than the job, or on plain geometry.
    [[nodiscard]] const char* rule(CitationId id) const { return at(rules_, id); }

  private:
    using Words = std::vector<const char*>;

    template <class Id>
    [[nodiscard]] static const char* at(const Words& words, Id id) {
        return words.at(static_cast<std::size_t>(id));
    }
    [[nodiscard]] Words keep(std::span<const std::string_view> words);
    /// The list where it stays.
    [[nodiscard]] const Words& keep_list(std::span<const std::string_view> words);
    void add_kind(const KindDeclaration& kind);
    [[nodiscard]] splice_field record_of(const FieldDeclaration& field);
    void add_ropes(const Book& book);
    void add_sources(const Book& book);
    void add_citations(const Book& book);

    Texts texts_;
    std::deque<Words> lists_;
    std::vector<splice_kind> kinds_;
    std::vector<std::vector<splice_field>> fields_;
    std::vector<splice_rope> ropes_;
    std::vector<splice_source> sources_;
    Words citations_;
    Words rules_;
    const char* tables_;
};

} // namespace libsplice::abi
