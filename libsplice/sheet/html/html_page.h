// A page for a browser, on screen and on paper: one file that needs nothing else.
#pragma once

#include "libsplice/sheet/panel/page.h"

#include <string>

namespace libsplice {

/// Lays out what a sheet is made of as HTML. What belongs together, facts, rows or steps, is put
/// into one list or table; whatever follows it ends that.
class HtmlPage : public Page {
  public:
    explicit HtmlPage(std::string& into) : into_(into) {}
    ~HtmlPage() override { close(); }

    void paragraph(std::string_view text, std::size_t indent, std::size_t hanging = 0) override;
    void title(std::string_view text) override;
    void section(std::string_view text) override;
    void end_heading(std::string_view text) override;
    void fact(std::string_view label, std::string_view text) override;
    void write_in(std::initializer_list<std::string_view> labels) override;
    void large(std::string_view label, std::string_view text) override;
    void head(std::span<const PageColumn> columns, std::span<const std::string> cells) override;
    void row(std::span<const PageColumn> columns, std::span<const std::string> cells) override;
    void row_note(std::string_view text, std::size_t indent, std::size_t hanging = 0) override;
    void step(std::size_t number, std::string_view text) override;

    /// Ends what is open, so that other HTML may follow.
    void close();

  private:
    enum class Open : unsigned char { nothing, facts, table, steps };
    void open(Open what);

    std::string& into_;
    Open open_ = Open::nothing;
    std::size_t columns_ = 0; ///< of the open table
};

/// From the first line of the file to where the sheet's own contents begin, and the last lines.
/// `style` comes after the style of every page.
[[nodiscard]] std::string html_start(std::string_view title, std::string_view style = {});
[[nodiscard]] std::string_view html_finish();

} // namespace libsplice
