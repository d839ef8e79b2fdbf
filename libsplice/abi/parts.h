// Rows, marks, cautions and steps as the records that hosts are given.
#pragma once

#include "libsplice/abi/book.h"
#include "libsplice/cut/piece.h"
#include "libsplice/sheet/words/fill_text.h"

#include <optional>
#include <span>
#include <vector>

namespace libsplice::abi {

/// The parts of one answer after the other.
struct Parts {
    std::vector<splice_row> rows;
    std::vector<splice_mark> marks;
    std::vector<splice_caution> cautions;
    std::vector<splice_step> steps;

    void clear();
};

/// SPLICE_END_A and so on.
[[nodiscard]] std::uint32_t number_of(std::optional<LineEnd> end);

/// Turns what the library works out into records.
class PartsWriter {
  public:
    PartsWriter(const splice_book& book, Texts& texts, Parts& parts)
        : names_(book.book.names()), book_(book.records), texts_(texts), parts_(parts) {}

    /// `whole` names what a row without an end belongs to, as in group_of().
    void add_ledger(std::span<const LedgerRow> ledger, std::string_view whole);
    void add_mark(LineEnd end, MarkName name, Nanometres from_end);
    /// `filling` is null where the text holds no figures.
    void add_caution(const Caution& caution, std::optional<LineEnd> end,
                     const TemplateContext* filling);
    void add_steps(LineEnd end, const TemplateContext& filling);
    void add_step(std::optional<LineEnd> end, std::string_view text);

  private:
    [[nodiscard]] const char* filled(std::string_view text, const TemplateContext* filling);

    const Names& names_;
    const BookRecords& book_;
    Texts& texts_;
    Parts& parts_;
    std::string text_;
};

} // namespace libsplice::abi
