// The formats by name, and the writer of each.
#include "libsplice/sheet/writer.h"

#include "libsplice/sheet/writers.h"

#include <gsl/assert>

#include <algorithm>
#include <array>

namespace libsplice {

namespace {

constexpr std::array<std::string_view, 4> formats{"text", "csv", "json", "html"};
static_assert(formats.size() == static_cast<std::size_t>(Format::html) + 1);

} // namespace

std::span<const std::string_view> format_names() {
    return formats;
}

std::optional<Format> read_format(std::string_view name) {
    const auto found = std::ranges::find(formats, name);
    return found == formats.end() ? std::nullopt
                                  : std::optional(static_cast<Format>(found - formats.begin()));
}

std::unique_ptr<SheetWriter> sheet_writer(Format format, Output& output, const Book& book,
                                          const SheetOptions& options) {
    switch (format) {
    case Format::text:
        return text_sheet(output, book, options);
    case Format::csv:
        return csv_sheet(output, book, options);
    case Format::json:
        return json_sheet(output, book, options);
    case Format::html:
        return html_sheet(output, book, options);
    }
    Expects(false);
    return nullptr;
}

std::vector<LedgerRow> ledger_of(const Allowance& allowance) {
    std::vector<LedgerRow> ledger;
    for (const Row& row : allowance.rows) {
        ledger.push_back({row, std::nullopt});
    }
    return ledger;
}

void write_end(const EndSheet& sheet, Format format, Output& output, const Book& book,
               const SheetOptions& options) {
    switch (format) {
    case Format::text:
        write_end_as_text(sheet, output, book, options);
        return;
    case Format::csv:
        write_end_as_csv(sheet, output, book, options);
        return;
    case Format::json:
        write_end_as_json(sheet, output, book);
        return;
    case Format::html:
        write_end_as_html(sheet, output, book, options);
        return;
    }
}

} // namespace libsplice
