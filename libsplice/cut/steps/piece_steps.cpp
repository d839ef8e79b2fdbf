// Puts a piece's own figures into the steps of its line.
#include "libsplice/cut/steps/piece_steps.h"

#include "libsplice/cut/layout.h"

#include <algorithm>

namespace libsplice {

namespace {

constexpr std::string_view read_settled_check =
    "With the line at its pull to mark at, from the bearing point of the end made first to the "
    "{named} mark of the other end, it must read {1}. Write down what it reads.";
constexpr std::string_view cut_aboard_leaving =
    "Aboard, once the line has been tried, cut it where it fits, not inside the bearing-point "
    "mark, and leave {1} for wear on beyond that.";

/// What a trim cuts off, by which of milked-out cover, spare and rounding there is: 1, 2 and 4.
constexpr std::array<std::string_view, 8> trims{
    "",
    "Trim at the {named} mark: {1} is over, all of it milk-out.",
    "Trim at the {named} mark: {1} is over, all of it spare.",
    "Trim at the {named} mark: {1} is over, milk-out {2} and spare {3}.",
    "Trim at the {named} mark: {1} is over, all of it rounding.",
    "Trim at the {named} mark: {1} is over, milk-out {2} and rounding {3}.",
    "Trim at the {named} mark: {1} is over, spare {2} and rounding {3}.",
    "Trim at the {named} mark: {1} is over, milk-out {2}, spare {3} and rounding {4}.",
};
constexpr std::array surplus_items{Item::milk_out, Item::spare, Item::rounding};

/// What a trim at this end cuts off; false if it is nothing.
bool fill_trim(const Piece& piece, LineEnd end, PieceStep& step) {
    std::size_t there = 0;
    Nanometres over = 0;
    TextAmounts parts;
    for (std::size_t i = 0; i < surplus_items.size(); ++i) {
        Nanometres length = 0;
        for (const LedgerRow& entry : piece.ledger) {
            if (entry.end == end && entry.row.item == surplus_items.at(i)) {
                length += entry.row.length;
            }
        }
        if (length > 0) {
            there += std::size_t{1} << i;
            over += length;
            parts.push_back(amount_of(from_nanometres(length)));
        }
    }
    step.text = trims.at(there);
    step.amounts.push_back(amount_of(from_nanometres(over)));
    for (const TextAmount& part : parts) {
        step.amounts.push_back(part);
    }
    return there != 0;
}

/// Numbers the steps' marks without one that lies on the very end. False for a step whose marks are
/// all gone with it.
bool leave_out_mark_on_end(PieceStep& step, LineEnd end) {
    if (step.end != end || step.at.empty()) {
        return true;
    }
    const auto numbered = step.at;
    step.at = {};
    for (const std::uint8_t number : numbered) {
        if (number > 1) {
            step.at.push_back(static_cast<std::uint8_t>(number - 1));
        }
    }
    return !step.at.empty();
}

void fill_check(const Check& check, PieceStep& step) {
    step.amounts.push_back(amount_of(from_nanometres(check.reads)));
    step.amounts.push_back(amount_of(from_nanometres(check.reads_loaded)));
    if (check.reads == check.reads_loaded) {
        step.text = read_settled_check;
    }
}

} // namespace

void add_steps(const BoundLine& line, Piece& piece) {
    const OrderOfWork& work = line.work;
    piece.steps.assign(work.steps.begin(), work.steps.end());
    std::array<std::optional<std::size_t>, 3> dropped;
    if (work.check && piece.check) {
        fill_check(*piece.check, piece.steps[*work.check]);
    }
    for (const LineEnd end : both_ends) {
        const auto at = static_cast<std::size_t>(end);
        if (work.trim[at] && !fill_trim(piece, end, piece.steps[*work.trim[at]])) {
            dropped[at] = work.trim[at];
        }
        if (work.cut_raw[at]) {
            piece.steps[*work.cut_raw[at]].amounts.push_back(
                amount_of(from_nanometres(piece.outside(end))));
        }
        if (work.aboard[at] && line.fit.wear > 0 && end == line.fit.kept_at) {
            PieceStep& step = piece.steps[*work.aboard[at]];
            step.text = cut_aboard_leaving;
            step.amounts.push_back(amount_of(from_nanometres(line.fit.wear)));
        }
    }
    if (work.fit_first) {
        piece.steps[*work.fit_first].named = piece.fit_first;
        dropped[2] = piece.fit_first.empty() ? work.fit_first : std::nullopt;
    }
    std::ranges::sort(dropped, std::ranges::greater{});
    for (const auto& at : dropped) {
        if (at) {
            piece.steps.erase(piece.steps.begin() + static_cast<std::ptrdiff_t>(*at));
        }
    }
    for (const LineEnd end : both_ends) {
        if (marks_on_the_very_end(line, piece, end) > 0) {
            auto kept = piece.steps.begin();
            for (PieceStep& step : piece.steps) {
                if (leave_out_mark_on_end(step, end)) {
                    *kept++ = step;
                }
            }
            piece.steps.erase(kept, piece.steps.end());
        }
    }
}

} // namespace libsplice
