// Sheets of labels, by their own measures.
#pragma once

#include <span>
#include <string_view>

namespace libsplice {

/// Labels in rows and columns on a page; measures in millimetres.
struct LabelSheet {
    std::string_view name;
    std::string_view page; ///< as CSS names it
    int columns = 0;
    int rows = 0;
    double width = 0.0; ///< of a label
    double height = 0.0;
    double left = 0.0; ///< from the page's edge to the first label
    double top = 0.0;
    double across = 0.0; ///< from one label to the next
    double down = 0.0;
};

/// All sheets, the one that is taken unless another is asked for first. Their measures divide the
/// page evenly; they are ours, and stand for no maker's product.
[[nodiscard]] std::span<const LabelSheet> label_sheets();
[[nodiscard]] std::span<const std::string_view> label_sheet_names();
[[nodiscard]] const LabelSheet* find_label_sheet(std::string_view name);

} // namespace libsplice
