// A page of plain text, 80 columns wide, on which nothing is cut off.
#pragma once

#include "libsplice/base/output.h"
#include "libsplice/sheet/panel/page.h"

namespace libsplice {

/// Every text is wrapped, control bytes are shown as `\x1b`, a number stays with its unit, and
/// characters are counted, not bytes.
class TextPage : public Page {
  public:
    static constexpr std::size_t width = 80;

    explicit TextPage(Output& output) : output_(output) {}

    void blank() override { output_.write('\n'); }
    void rule(char c) override;
    void paragraph(std::string_view text, std::size_t indent, std::size_t hanging = 0) override;
    void title(std::string_view text) override { paragraph(text, 0, 2); }
    void section(std::string_view text) override;
    void end_heading(std::string_view text) override;
    void fact(std::string_view label, std::string_view text) override;
    void write_in(std::initializer_list<std::string_view> labels) override {
        for (const std::string_view label : labels) {
            fact(label, "______________");
        }
    }
    void large(std::string_view label, std::string_view text) override;
    void head(std::span<const PageColumn> columns, std::span<const std::string> cells) override {
        row(columns, cells);
    }
    void row(std::span<const PageColumn> columns, std::span<const std::string> cells) override;
    void row_note(std::string_view text, std::size_t indent, std::size_t hanging = 0) override {
        paragraph(text, indent, hanging);
    }
    void step(std::size_t number, std::string_view text) override;

  private:
    Output& output_;
};

} // namespace libsplice
