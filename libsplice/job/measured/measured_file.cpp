// Reads what a shop measured of its own splices and knots.
#include "libsplice/job/measured/measured_file.h"

#include "libsplice/base/text.h"
#include "libsplice/job/csv/named_columns.h"
#include "libsplice/units/read.h"

#include <array>

namespace libsplice {

namespace {

enum MeasuredColumn : std::size_t {
    kind_column,
    rope_column,
    used_column,
    before_column,
    after_column
};
constexpr std::array measured_columns{FileColumn{"kind", CellSort::end},
                                      FileColumn{"rope", CellSort::rope}, FileColumn{"used"},
                                      FileColumn{"before"}, FileColumn{"after"}};
constexpr Length longest_piece = metres(10'000.0);
constexpr double most_diameters = 10'000.0;

class MeasuredRecords {
  public:
    MeasuredRecords(Input& input, MeasuredPieces& into)
        : into_(into), columns_(input, "a file of measured pieces", measured_columns, faults_) {}

    void read() {
        if (!columns_.read_heading() || !heading_is_complete()) {
            into_.file_faults = std::move(faults_);
            return;
        }
        while (columns_.next()) {
            ++into_.rows;
            if (auto piece = read_piece(); piece && faults_.empty()) {
                into_.pieces.push_back(*std::move(piece));
            }
            into_.row_faults.insert(into_.row_faults.end(), faults_.begin(), faults_.end());
            faults_.clear();
        }
        into_.file_faults = std::move(faults_);
    }

  private:
    bool heading_is_complete() {
        const bool by_difference = columns_.has(before_column) && columns_.has(after_column);
        const bool one_of_two = columns_.has(before_column) != columns_.has(after_column);
        if (columns_.has(kind_column) && columns_.has(rope_column) && !one_of_two &&
            (columns_.has(used_column) || by_difference)) {
            return true;
        }
        columns_.add({Code::no_heading, "a file of measured pieces has the columns kind, rope and "
                                        "used; or kind, rope, before and after"},
                     kind_column);
        return false;
    }

    std::optional<MeasuredPiece> read_piece() {
        MeasuredPiece piece{std::string(text_of(kind_column)),
                            std::string(text_of(rope_column)),
                            {},
                            std::nullopt,
                            columns_.place_of(kind_column),
                            columns_.place_of(rope_column),
                            columns_.place_of(used_column)};
        const bool has_used = !columns_.cell(used_column).empty();
        const bool has_difference =
            !columns_.cell(before_column).empty() || !columns_.cell(after_column).empty();
        if (has_used == has_difference) {
            columns_.add({Code::cell_missing, has_used
                                                  ? "a piece gives what it used, or its length "
                                                    "before and after; not both"
                                                  : "a piece needs what it used, or its length "
                                                    "before and after"},
                         columns_.has(used_column) ? used_column : before_column);
            return std::nullopt;
        }
        if (has_used) {
            return read_used(piece) ? std::optional(std::move(piece)) : std::nullopt;
        }
        const auto before = read_length_of(before_column);
        const auto after = read_length_of(after_column);
        if (!before || !after) {
            return std::nullopt;
        }
        piece.used = *before - *after;
        piece.used_at = columns_.place_of(after_column);
        return checked(piece, after_column);
    }

    std::string_view text_of(MeasuredColumn column) {
        if (columns_.cell(column).empty()) {
            columns_.add({Code::cell_missing,
                          "a piece needs its " + std::string(measured_columns.at(column).name)},
                         column);
        }
        return columns_.cell(column);
    }

    bool read_used(MeasuredPiece& piece) {
        const auto text = columns_.cell(used_column);
        if (text.ends_with('D')) {
            const auto count = read_number(trimmed(text.substr(0, text.size() - 1)));
            if (!count || !(*count > 0.0) || *count > most_diameters) {
                columns_.add({Code::value_out_of_range,
                              "what a piece used, counted in rope diameters, is over 0 and at most "
                              "10,000 D"},
                             used_column);
                return false;
            }
            piece.diameters = *count;
            return true;
        }
        const auto used = read_length_of(used_column);
        if (!used) {
            return false;
        }
        piece.used = *used;
        return checked(piece, used_column).has_value();
    }

    std::optional<Length> read_length_of(MeasuredColumn column) {
        const auto length = read_length(columns_.cell(column), columns_.unit(column));
        if (!length) {
            columns_.add(length.error(), column);
            return std::nullopt;
        }
        return length->length;
    }

    std::optional<MeasuredPiece> checked(const MeasuredPiece& piece, MeasuredColumn column) {
        if (piece.used > Length() && piece.used <= longest_piece) {
            return piece;
        }
        columns_.add({Code::value_out_of_range,
                      "a piece uses up rope: what it used, or its length before less that after, "
                      "is over 0 and at most 10 km"},
                     column);
        return std::nullopt;
    }

    MeasuredPieces& into_;
    std::vector<Fault> faults_;
    NamedColumns columns_;
};

} // namespace

MeasuredPieces read_measured_file(const std::string& path) {
    MeasuredPieces measured;
    auto input = Input::open(path);
    if (!input) {
        measured.file_faults.push_back(input.error());
        return measured;
    }
    MeasuredRecords(*input, measured).read();
    return measured;
}

} // namespace libsplice
