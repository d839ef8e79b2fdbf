// A plan of reels as CSV: a row a piece, in cutting order.
#include "libsplice/sheet/csv/csv_cells.h"
#include "libsplice/sheet/csv/csv_format.h"

namespace libsplice {

namespace {

class ReelCsv {
  public:
    ReelCsv(const ReelSheet& sheet, Output& output, UnitSystem units)
        : question_(sheet.question), sheet_(sheet), output_(output), units_(units) {}

    void write() {
        const std::string in(length_suffix(units_));
        output_.write("cut,stock,rope,lot,kind,length" + in + ",times,name,boat,cut" + in + ",at" +
                      in + ",cut_loss" + in + ",left" + in + ",left_is,error_code,error\n");
        std::int64_t number = 0;
        for (const ReelCut& cut : sheet_.plan.cuts) {
            write_cut(cut, ++number);
        }
        for (const RefusedLine& line : sheet_.refused) {
            write_missing(line.name, line.boat, {}, 1, line.fault);
        }
        for (const Unplaced& unplaced : sheet_.plan.unplaced) {
            const Demand& demand = question_.demands[unplaced.demand];
            write_missing(demand.name, demand.boat, demand.rope, unplaced.count, unplaced.fault);
        }
    }

  private:
    void text(std::string_view value) {
        append_text_cell(row_, value);
        row_ += ',';
    }
    void length(Nanometres value) {
        append_length_cell(row_, value, units_);
        row_ += ',';
    }
    void count(std::int64_t value) {
        append_number_cell(row_, value);
        row_ += ',';
    }

    /// What is left stands in the row of the last piece, where it lies.
    void write_cut(const ReelCut& cut, std::int64_t number) {
        const std::size_t rows = cut.pieces.empty() ? 1 : cut.pieces.size();
        for (std::size_t i = 0; i < rows; ++i) {
            const ReelStock& stock = sheet_.plan.stock[cut.stock];
            row_.clear();
            count(number);
            text(stock.id);
            text(stock.rope);
            text(stock.lot);
            text(name_of(stock.kind));
            length(cut.length);
            count(cut.times);
            if (cut.pieces.empty()) {
                row_ += ",,,,";
            } else {
                const Demand& demand = question_.demands[cut.pieces[i].demand];
                text(demand.name);
                text(demand.boat);
                length(demand.length);
                length(cut.pieces[i].at);
            }
            if (i + 1 == rows) {
                length(cut.cut_loss);
                length(cut.left);
                text(left_word(cut.left_is));
            } else {
                row_ += ",,,";
            }
            row_ += ",\n";
            output_.write(row_);
        }
    }

    void write_missing(std::string_view name, std::string_view boat, std::string_view rope,
                       std::int64_t times, const Fault& fault) {
        row_ = ",,";
        text(rope);
        row_ += ",,,";
        count(times);
        text(name);
        text(boat);
        row_ += ",,,,,";
        append_number_cell(row_, static_cast<std::int64_t>(fault.code));
        row_ += ',';
        append_text_cell(row_, fault.text);
        row_ += '\n';
        output_.write(row_);
    }

    const ReelQuestion& question_;
    const ReelSheet& sheet_;
    Output& output_;
    UnitSystem units_;
    std::string row_;
};

} // namespace

void write_reel_as_csv(const ReelSheet& sheet, Output& output, UnitSystem units) {
    ReelCsv(sheet, output, units).write();
}

} // namespace libsplice
