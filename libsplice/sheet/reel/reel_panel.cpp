// A plan of reels for people: what to cut from what, what to order, and the rope's
// ledger.
#include "libsplice/sheet/reel/reel_panel.h"

#include "libsplice/sheet/panel/panel_facts.h"

#include <array>

namespace libsplice {

namespace {

class ReelPanel {
  public:
    ReelPanel(const ReelSheet& sheet, Page& page, UnitSystem units)
        : question_(sheet.question), plan_(sheet.plan), sheet_(sheet), page_(page), units_(units) {}

    void write() {
        write_result();
        write_cuts();
        write_order();
        write_unplaced();
        write_ledgers();
        page_.blank();
        write_care(page_);
    }

  private:
    [[nodiscard]] std::string show(Nanometres length) const {
        return show_length(from_nanometres(length), units_);
    }
    [[nodiscard]] static std::string show(Money money, bool priced) {
        return priced ? show_number(to_money(money), 2) : "price not known";
    }

    [[nodiscard]] std::string show_amount(Amount amount) const {
        switch (question_.objective) {
        case Objective::cost:
            return show_number(to_money(amount), 2) + (sheet_.priced ? "" : " (a metre is 1)");
        case Objective::waste:
            return show(amount);
        case Objective::new_reels:
            break;
        }
        return std::to_string(amount);
    }

    /// How far this plan may lie over the best one; nothing to say where the bound is 0.
    [[nodiscard]] std::string over_the_best() const {
        if (plan_.bound <= 0 || plan_.value <= plan_.bound) {
            return {};
        }
        const double over =
            static_cast<double>(plan_.value - plan_.bound) / static_cast<double>(plan_.bound);
        return "; at most " + show_number(100.0 * over, 3) + " % over the best";
    }

    void write_result() {
        page_.blank();
        page_.fact("Objective", sheet_.objective);
        page_.fact("Value", show_amount(plan_.value));
        if (!plan_.unplaced.empty()) {
            std::int64_t pieces = 0;
            for (const Unplaced& unplaced : plan_.unplaced) {
                pieces += unplaced.count;
            }
            page_.fact("NOT PLACED", std::to_string(pieces) + (pieces == 1 ? " piece" : " pieces") +
                                         "; see the end. What follows is of the rest");
        }
        const std::string bound = "no plan can be under " + show_amount(plan_.bound);
        page_.fact("How good", plan_.proved
                                   ? "proved best: " + bound
                                   : bound + over_the_best() +
                                         (sheet_.stopped ? ", as the search was stopped" : ""));
        page_.fact("First fit", "the longest piece first into the first stock that holds it would "
                                "cut into " +
                                    show(plan_.first_fit) + "; this plan cuts into " +
                                    show(plan_.cut_into));
    }

    void write_cuts() {
        // Feet, inches and sixteenths take more room.
        const std::size_t length = units_ == UnitSystem::metric ? 12 : 18;
        const std::array columns{PageColumn{length, true}, PageColumn{length, true},
                                 PageColumn{38 - length}, PageColumn{32 - length}};
        for (const ReelCut& cut : plan_.cuts) {
            const ReelStock& stock = question_.stock[cut.stock];
            page_.section(stock.rope + ": " + std::string(stock_kind_word(stock.kind)) + ' ' +
                          stock.id + ", " + show(cut.length) +
                          (stock.lot.empty() ? "" : ", lot " + stock.lot) +
                          (cut.times > 1 ? ", " + std::to_string(cut.times) + " times" : ""));
            if (!cut.pieces.empty()) {
                page_.head(columns, std::array<std::string, 4>{"starts at", "cut", "line", "boat"});
            }
            for (const PlacedPiece& piece : cut.pieces) {
                const Demand& demand = question_.demands[piece.demand];
                page_.row(columns, std::array<std::string, 4>{show(piece.at), show(demand.length),
                                                              demand.name, demand.boat});
            }
            page_.fact("Left", cut.left == 0
                                   ? "nothing"
                                   : show(cut.left) + ", " + std::string(left_word(cut.left_is)));
        }
    }

    void write_order() {
        if (plan_.order.empty()) {
            return;
        }
        static constexpr std::array<PageColumn, 4> columns{
            PageColumn{30}, PageColumn{8, true}, PageColumn{14, true}, PageColumn{14, true}};
        page_.section("ORDER");
        page_.head(columns, std::array<std::string, 4>{"rope", "count", "length", "cost"});
        Money sum = 0;
        for (const OrderLine& line : plan_.order) {
            page_.row(columns, std::array<std::string, 4>{
                                   question_.stock[line.stock].rope, std::to_string(line.count),
                                   show(line.length), show(line.cost, sheet_.priced)});
            sum += line.cost;
        }
        page_.fact("To pay", show(sum, sheet_.priced));
    }

    void write_unplaced() {
        if (plan_.unplaced.empty() && sheet_.refused.empty()) {
            return;
        }
        page_.section("NOT PLACED");
        for (const RefusedLine& line : sheet_.refused) {
            page_.paragraph(line.name + (line.boat.empty() ? "" : ", " + line.boat) + ": " +
                                line.fault.text,
                            4, 2);
        }
        for (const Unplaced& unplaced : plan_.unplaced) {
            const Demand& demand = question_.demands[unplaced.demand];
            page_.paragraph(demand.name + (demand.boat.empty() ? "" : ", " + demand.boat) + ": " +
                                std::to_string(unplaced.count) + " not placed; " +
                                unplaced.fault.text,
                            4, 2);
        }
    }

    void write_ledgers() {
        page_.section("LEDGER OF ROPE");
        for (const RopeLedger& ledger : plan_.ledger) {
            page_.paragraph(ledger.rope + ": stock " + show(ledger.stock) + " + ordered " +
                                show(ledger.ordered) + " = pieces " + show(ledger.pieces) +
                                " + cut_loss " + show(ledger.cut_loss) + " + offcuts " +
                                show(ledger.offcuts) + " + waste " + show(ledger.waste),
                            4, 2);
        }
    }

    const ReelQuestion& question_;
    const ReelPlan& plan_;
    const ReelSheet& sheet_;
    Page& page_;
    UnitSystem units_;
};

} // namespace

void write_reel_plan(Page& page, const ReelSheet& sheet, UnitSystem units) {
    ReelPanel(sheet, page, units).write();
}

} // namespace libsplice
