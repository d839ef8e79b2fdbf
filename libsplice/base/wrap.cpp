// Breaks lines at blanks, by the width that letters take and not by their bytes.
#include "libsplice/base/wrap.h"

#include "libsplice/base/text.h"

#include <gsl/assert>

#include <algorithm>

namespace libsplice {

namespace {

/// Byte offset up to which `text` fits into `columns`, after its first character at the least.
std::size_t bytes_that_fit(std::string_view text, std::size_t columns) {
    std::size_t fits = 0;
    for (std::size_t at = 0; at < text.size() && (fits == 0 || columns > 0);) {
        std::size_t end = at + 1;
        while (end < text.size() && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) {
            ++end;
        }
        const std::size_t width = display_width(text.substr(at, end - at));
        if (fits != 0 && width > columns) {
            break;
        }
        columns -= std::min(width, columns);
        fits = at = end;
    }
    return fits;
}

class Lines {
  public:
    Lines(std::size_t width, std::size_t first_indent, std::size_t rest_indent)
        : width_(width), rest_indent_(rest_indent), column_(first_indent) {}

    void add(std::string_view word) {
        const std::size_t blank = at_start_ ? 0 : 1;
        if (!at_start_ && column_ + blank + display_width(word) > width_) {
            break_line();
        } else if (!at_start_) {
            text_ += ' ';
            ++column_;
        }
        while (column_ + display_width(word) > width_) {
            const std::size_t fits = bytes_that_fit(word, width_ - column_);
            text_ += word.substr(0, fits);
            word.remove_prefix(fits);
            break_line();
        }
        text_ += word;
        column_ += display_width(word);
        at_start_ = false;
    }

    [[nodiscard]] std::string text() && { return std::move(text_); }

  private:
    void break_line() {
        text_ += '\n';
        text_.append(rest_indent_, ' ');
        column_ = rest_indent_;
        at_start_ = true;
    }

    std::size_t width_;
    std::size_t rest_indent_;
    std::size_t column_;
    bool at_start_ = true;
    std::string text_;
};

} // namespace

std::string wrapped(std::string_view text, std::size_t width, std::size_t first_indent,
                    std::size_t rest_indent) {
    Expects(width > first_indent && width > rest_indent);
    Lines lines(width, first_indent, rest_indent);
    while (!text.empty()) {
        const std::size_t start = text.find_first_not_of(' ');
        if (start == std::string_view::npos) {
            break;
        }
        text.remove_prefix(start);
        const std::size_t end = std::min(text.find(' '), text.size());
        lines.add(text.substr(0, end));
        text.remove_prefix(end);
    }
    return std::move(lines).text();
}

} // namespace libsplice
