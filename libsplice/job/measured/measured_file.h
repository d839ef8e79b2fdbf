// What a shop measured of its own splices and knots, as a CSV file.
#pragma once

#include "libsplice/base/fault.h"
#include "libsplice/units/quantity.h"

#include <optional>
#include <string>
#include <vector>

namespace libsplice {

/// One piece of rope that was spliced or knotted and measured.
struct MeasuredPiece {
    std::string kind;
    std::string rope;
    Length used;                                    ///< rope taken up by it
    std::optional<double> diameters = std::nullopt; ///< where that is counted in rope diameters
    Place kind_at;                                  ///< where the kind stands in the file
    Place rope_at;
    Place used_at;
};

/// What a file of measured pieces holds.
struct MeasuredPieces {
    std::vector<MeasuredPiece> pieces; ///< those of rows without a fault
    std::vector<Fault> file_faults;    ///< with any, the file has no usable structure
    std::vector<Fault> row_faults;     ///< of rows that are left out
    std::size_t rows = 0;
};

/// Reads the file `path`: columns `kind`, `rope` and either `used`, or `before` and `after`, the
/// length of the same rope before and after it was spliced or knotted. A heading may give a unit of
/// length, as in `used [mm]`; a cell may count rope diameters, as in `7.1 D`. A row's fault is
/// Code::cell_missing, not_a_length or value_out_of_range, with its place.
[[nodiscard]] MeasuredPieces read_measured_file(const std::string& path);

} // namespace libsplice
