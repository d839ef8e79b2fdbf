// What a sheet for people is made of: headings, facts, tables, steps. A page of text and a page for
// a browser lay them out in their own ways.
#pragma once

#include <cstddef>
#include <initializer_list>
#include <span>
#include <string>
#include <string_view>

namespace libsplice {

/// A column of a table.
struct PageColumn {
    std::size_t width = 0; ///< on a page of text
    bool right = false;    ///< set against its right edge
};

class Page {
  public:
    Page() = default;
    Page(const Page&) = delete;
    Page& operator=(const Page&) = delete;
    virtual ~Page() = default;

    virtual void blank() {}
    /// A line across the page.
    virtual void rule(char /*c*/) {}
    /// A paragraph; on a page of text, lines after the first are set in by `hanging` more.
    virtual void paragraph(std::string_view text, std::size_t indent, std::size_t hanging = 0) = 0;
    /// The name of the piece or of the sheet.
    virtual void title(std::string_view text) = 0;
    /// The heading of what follows.
    virtual void section(std::string_view text) = 0;
    /// The heading of one end of a piece.
    virtual void end_heading(std::string_view text) = 0;
    /// A fact with its label before it. Nothing is written where the text is empty.
    virtual void fact(std::string_view label, std::string_view text) = 0;
    /// Room to write what was measured.
    virtual void write_in(std::initializer_list<std::string_view> labels) = 0;
    /// A short figure with its label, so that the eye finds it first.
    virtual void large(std::string_view label, std::string_view text) = 0;
    /// The first row of a table, and those below it.
    virtual void head(std::span<const PageColumn> columns, std::span<const std::string> cells) = 0;
    virtual void row(std::span<const PageColumn> columns, std::span<const std::string> cells) = 0;
    /// What belongs to the row above.
    virtual void row_note(std::string_view text, std::size_t indent, std::size_t hanging = 0) = 0;
    virtual void step(std::size_t number, std::string_view text) = 0;
};

} // namespace libsplice
