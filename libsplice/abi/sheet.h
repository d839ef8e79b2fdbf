// What stands behind the host's `splice_sheet`.
#pragma once

#include "libsplice/abi/book.h"
#include "libsplice/abi/guard.h"
#include "libsplice/abi/parts.h"
#include "libsplice/cut/cutter.h"

#include <optional>
#include <vector>

namespace libsplice::abi {

/// A piece with what a host may ask of it. Its parts are a stretch of the sheet's.
struct KeptPiece {
    splice_piece record{};
    std::size_t first_row = 0;
    std::size_t first_mark = 0;
    std::size_t first_caution = 0;
    std::size_t first_step = 0;
    std::optional<std::size_t> fault; ///< in Sheet::refusals()
};

/// Cuts lines and keeps the pieces.
class Sheet {
  public:
    /// The book must outlive this.
    Sheet(const splice_book& book, const CutSettings& settings, bool with_steps)
        : book_(book), cutter_(book.book, settings), with_steps_(with_steps) {}

    using Reader = Result<bool> (*)(Input&, std::span<const std::string_view>, FaultSink&,
                                    const OnRow&);
    /// Cuts every line that `read` finds in the text; the fault of a job that cannot be read.
    [[nodiscard]] std::optional<Fault> add(Reader read, std::string_view text, std::string name);

    /// Cuts a line given cell by cell. Its faults have no place.
    [[nodiscard]] std::optional<Fault> add_line(std::span<const splice_cell> cells);

    void clear();

    [[nodiscard]] const std::vector<KeptPiece>& pieces() const { return pieces_; }
    [[nodiscard]] const Parts& parts() const { return parts_; }
    [[nodiscard]] const std::vector<Fault>& refusals() const { return refusals_; }
    [[nodiscard]] const std::vector<Fault>& faults() const { return faults_.kept(); }
    [[nodiscard]] const Counts& counts() const { return cutter_.counts(); }

  private:
    /// Takes rows, cuts each and keeps the piece; this sheet and `faults` outlive it.
    [[nodiscard]] OnRow cut_into(FaultSink& faults);
    [[nodiscard]] std::optional<Fault> cut_all(Reader read, Input input, FaultSink& faults);
    void keep(const Piece& piece);
    void keep_texts(const Piece& piece, splice_piece& record);
    void keep_parts(const Piece& piece, PartsWriter& writer);

    const splice_book& book_;
    Cutter cutter_;
    bool with_steps_;
    FaultSink faults_;
    Texts texts_;
    Parts parts_;
    std::vector<KeptPiece> pieces_;
    std::vector<Fault> refusals_;
};

[[nodiscard]] inline Fault no_sheet() {
    return wrong_call("the sheet is null");
}

} // namespace libsplice::abi

struct splice_sheet { // NOLINT(readability-identifier-naming): named by the C header
    libsplice::abi::Sheet sheet;
};
