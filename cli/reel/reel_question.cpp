// Prices, names and kinds of stock as the planner counts them.
#include "cli/reel/reel_question.h"

#include "libsplice/cut/ropes/rope_words.h"
#include "libsplice/job/read_job.h"

#include <cmath>
#include <set>

namespace libsplice::cli {

namespace {

/// A remainder from here on is worth keeping, where a stock does not say. Common practice.
constexpr Nanometres usually_usable = nanometres_per_metre;

Money to_micro(double price) {
    return std::llround(price * static_cast<double>(money_unit));
}

std::optional<Money> price_of(const Rope& rope) {
    return rope.price ? std::optional(to_micro(rope.price->value)) : std::nullopt;
}

void set_price(const StockRow& row, const Rope& rope, ReelStock& stock) {
    if (row.price && row.price->whole) {
        stock.per_reel = to_micro(row.price->value);
    } else if (row.price) {
        stock.per_metre = to_micro(row.price->value);
    } else if (const auto price = price_of(rope)) {
        stock.per_metre = *price;
    } else {
        stock.priced = false;
    }
}

} // namespace

void PieceGatherer::keep(const Piece& piece) {
    if (piece.fault != nullptr) {
        refused.push_back({std::string(piece.name), std::string(piece.boat), *piece.fault});
        return;
    }
    demands.push_back({.rope = one_name_of(*piece.line->rope),
                       .length = piece.cut,
                       .count = piece.quantity,
                       .name = std::string(piece.name),
                       .boat = std::string(piece.boat),
                       .lot = std::string(piece.lot),
                       .colour = std::string(piece.colour),
                       .pair = std::string(piece.pair),
                       .title = title_with_size(*piece.line->rope, piece.colour),
                       .per_metre = price_of(*piece.line->rope)});
}

bool PieceGatherer::gather(const std::string& job, FaultSink& faults, Progress& progress) {
    auto input = Input::open(job);
    if (!input) {
        faults.push(input.error());
        return false;
    }
    return read_job(*input, book_.field_names(), faults,
                    [&](const JobRow& row) {
                        keep(cutter_.cut(row, faults));
                        progress.at(cutter_.counts().lines);
                        return true;
                    })
        .has_value();
}

std::vector<ReelStock> stock_of(std::span<const StockRow> rows, const Book& book,
                                FaultSink& faults) {
    std::vector<ReelStock> stock;
    std::set<std::string> unpriced;
    for (const StockRow& row : rows) {
        const auto rope = book.catalogue().rope(row.rope);
        if (!rope) {
            Fault fault = rope.error();
            fault.at = row.place;
            faults.push(fault);
            continue;
        }
        ReelStock one{.id = row.id,
                      .rope = one_name_of(*rope),
                      .length = row.length,
                      .count = row.count,
                      .kind = row.kind,
                      .usable = row.usable.value_or(usually_usable),
                      .lot = row.lot,
                      .colour = row.colour,
                      .title = title_with_size(*rope, row.colour),
                      .per_reel = {},
                      .least_count = row.least_count,
                      .least_length = row.least_length};
        set_price(row, *rope, one);
        if (!one.priced) {
            unpriced.insert(one.rope);
        }
        stock.push_back(std::move(one));
    }
    for (ReelStock& one : stock) {
        if (unpriced.contains(one.rope)) {
            one.per_metre = money_unit;
            one.per_reel.reset();
            one.priced = false;
        }
    }
    return stock;
}

} // namespace libsplice::cli
