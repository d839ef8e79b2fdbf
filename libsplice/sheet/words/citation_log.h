// Citations as text, and the documents that a sheet has used so far.
#pragma once

#include "libsplice/catalogue/source.h"
#include "libsplice/cut/bound_line.h"
#include "libsplice/cut/credits.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice {

/// Gives citations their text and remembers whose documents were used, each once, in order of
/// first use.
class CitationLog {
  public:
    /// The book that gets the credit must outlive this.
    explicit CitationLog(Credits credits);

    /// The citation as text; its document counts as used. The text lives as long as this.
    std::string_view text(CitationId id);
    /// The rule that a caution rests on, as text; empty where it rests on no more than the job, or
    /// on plain geometry.
    std::string_view rule(CitationId id);
    /// The document counts as used.
    void use(CitationId id) { (void)text(id); }

    [[nodiscard]] std::span<const Source* const> used() const { return used_; }
    /// The words for rows, marks and values.
    [[nodiscard]] const Names& names() const { return credits_.names(); }

  private:
    Credits credits_;
    std::vector<std::string> texts_; ///< by id; empty: not used yet
    std::vector<const Source*> used_;
};

} // namespace libsplice
