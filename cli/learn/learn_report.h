// What was learnt from measured pieces, as it is told and as a table.
#pragma once

#include "libsplice/allowance/learn.h"
#include "libsplice/base/output.h"
#include "libsplice/sheet/writer.h"

#include <string>
#include <string_view>
#include <vector>

namespace libsplice::cli {

/// The pieces of one kind in one rope, and what they say.
struct LearntPieces {
    const Kind* kind = nullptr;
    Rope rope;
    std::vector<double> used; ///< in counting diameters
    std::vector<Place> places;
    Learnt learnt;
};

/// What the whole file says.
struct LearntFile {
    std::string file;
    double risk = 0.01;
    std::vector<LearntPieces> all;
    std::size_t rows = 0;
    std::size_t left_out = 0; ///< rows at fault
    std::string table;        ///< where the table was written; empty: nowhere
};

void write_learnt(const LearntFile& learnt, Format format, UnitSystem units, Output& output);

/// How a table that learning wrote begins.
inline constexpr std::string_view first_line_of_shop_table =
    "# Learnt from measured pieces by splice learn.";

/// The shop table: a rule for each kind and rope, with status `shop` and the count of pieces.
void write_shop_table(const LearntFile& file, Output& output);

} // namespace libsplice::cli
