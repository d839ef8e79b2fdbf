// A man page as it is written: headings, paragraphs and items in the macros of man(7).
#pragma once

#include <string>
#include <string_view>

namespace libsplice::cli {

/// Text in a macro's line or in the page, so that nothing of it acts as a request.
[[nodiscard]] std::string escaped(std::string_view text);

/// One page. Texts are plain; they are escaped here.
class ManPage {
  public:
    /// The heading: `splice-cut`, its section and summary; the date is that of the tables, as
    /// 2026-11-01.
    ManPage(std::string_view name, int section, std::string_view summary, std::string_view date,
            std::string_view version);

    void section(std::string_view heading);
    void subsection(std::string_view heading);
    void paragraph(std::string_view text);
    /// A word in bold with an argument in italics after it, and its meaning beside them.
    void item(std::string_view word, std::string_view argument, std::string_view meaning);
    /// Lines as they stand.
    void literal(std::string_view text);
    /// Requests that something else has made.
    void raw(std::string_view requests);
    /// A command with its words.
    void command(std::string_view name, std::string_view words);

    [[nodiscard]] const std::string& text() const { return text_; }

  private:
    /// A paragraph begins; right after a heading that goes without saying.
    void begin_paragraph();

    bool after_heading_ = true;
    std::string text_;
};

} // namespace libsplice::cli
