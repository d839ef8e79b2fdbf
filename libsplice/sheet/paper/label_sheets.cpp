// Sheets of labels, by their own measures.
#include "libsplice/sheet/paper/label_sheets.h"

#include <algorithm>
#include <array>

namespace libsplice {

namespace {

constexpr std::array sheets{
    LabelSheet{"a4-2x6", "210mm 297mm", 2, 6, 95.0, 46.0, 8.0, 8.0, 99.0, 47.0},
    LabelSheet{"a4-3x8", "210mm 297mm", 3, 8, 62.0, 34.0, 8.0, 8.0, 66.0, 35.5},
    LabelSheet{"letter-2x6", "8.5in 11in", 2, 6, 97.0, 43.0, 9.0, 9.0, 101.0, 44.0},
    LabelSheet{"letter-3x8", "8.5in 11in", 3, 8, 63.0, 31.5, 9.0, 9.0, 67.5, 33.0},
    LabelSheet{"strip", "100mm 50mm", 1, 1, 92.0, 42.0, 4.0, 4.0, 92.0, 42.0},
};

constexpr auto names = [] {
    std::array<std::string_view, sheets.size()> of_sheets;
    std::ranges::transform(sheets, of_sheets.begin(), &LabelSheet::name);
    return of_sheets;
}();

} // namespace

std::span<const LabelSheet> label_sheets() {
    return sheets;
}

std::span<const std::string_view> label_sheet_names() {
    return names;
}

const LabelSheet* find_label_sheet(std::string_view name) {
    const auto found = std::ranges::find(sheets, name, &LabelSheet::name);
    return found == sheets.end() ? nullptr : &*found;
}

} // namespace libsplice
