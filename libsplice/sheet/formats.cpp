// The table of formats: one row each, which all that is written goes through.
#include "libsplice/sheet/formats.h"

#include "libsplice/sheet/csv/csv_format.h"
#include "libsplice/sheet/html/html_format.h"
#include "libsplice/sheet/json/json_format.h"
#include "libsplice/sheet/text/text_format.h"

#include <algorithm>
#include <array>

namespace libsplice {

namespace {

constexpr std::array format_rows{
    FormatRow{"text", text_sheet, write_end_as_text, write_reel_as_text, write_stretch_as_text},
    FormatRow{.name = "csv",
              .cut = csv_sheet,
              .end = write_end_as_csv,
              .reel = write_reel_as_csv,
              .stretch = write_stretch_as_csv,
              .lengths_only = true},
    FormatRow{"json", json_sheet, write_end_as_json, write_reel_as_json, write_stretch_as_json},
    FormatRow{.name = "html",
              .cut = html_sheet,
              .end = write_end_as_html,
              .reel = write_reel_as_html,
              .stretch = write_stretch_as_html,
              .has_pages = true},
};
static_assert(format_rows.size() == format_count);
static_assert(format_rows[static_cast<std::size_t>(Format::text)].name == "text");
static_assert(format_rows[static_cast<std::size_t>(Format::csv)].name == "csv");
static_assert(format_rows[static_cast<std::size_t>(Format::json)].name == "json");
static_assert(format_rows[static_cast<std::size_t>(Format::html)].name == "html");

constexpr auto names_of_formats = [] {
    std::array<std::string_view, format_rows.size()> of_rows;
    std::ranges::transform(format_rows, of_rows.begin(), &FormatRow::name);
    return of_rows;
}();

} // namespace

std::span<const FormatRow> formats() {
    return format_rows;
}

const FormatRow& row_of(Format format) {
    return format_rows.at(static_cast<std::size_t>(format));
}

std::span<const std::string_view> format_names() {
    return names_of_formats;
}

std::optional<Format> read_format(std::string_view name) {
    const auto found = std::ranges::find(names_of_formats, name);
    return found == names_of_formats.end()
               ? std::nullopt
               : std::optional(static_cast<Format>(found - names_of_formats.begin()));
}

} // namespace libsplice
