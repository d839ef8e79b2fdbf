// A page of plain text, 80 columns wide, on which nothing is cut off.
#pragma once

#include "libsplice/base/output.h"

#include <span>
#include <string>
#include <string_view>

namespace libsplice {

/// A column of a table.
struct PageColumn {
    std::size_t width = 0;
    bool right = false; ///< set against its right edge
};

/// Writes paragraphs, labelled facts and table rows. Every text is wrapped, control bytes are shown
/// as `\x1b`, a number stays with its unit, and characters are counted, not bytes.
class Page {
  public:
    static constexpr std::size_t width = 80;

    explicit Page(Output& output) : output_(output) {}

    void blank() { output_.write('\n'); }
    /// A line across the page.
    void rule(char c);
    /// A paragraph; lines after the first are set in by `hanging` more.
    void paragraph(std::string_view text, std::size_t indent, std::size_t hanging = 0);
    /// The title of what follows, below a blank line.
    void section(std::string_view title) {
        blank();
        paragraph(title, 2);
    }
    /// A fact with its label before it. Nothing is written where the text is empty.
    void fact(std::string_view label, std::string_view text);
    /// A short figure with its label in spaced letters, between blank lines and underlined, so that
    /// the eye finds it first.
    void large(std::string_view label, std::string_view text);
    /// A row of a table; cells too long for their column go on below.
    void row(std::span<const PageColumn> columns, std::span<const std::string> cells);

  private:
    Output& output_;
};

} // namespace libsplice
