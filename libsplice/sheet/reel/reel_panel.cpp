// A plan of reels for people: what to cut from what, what to order, and the rope's ledger.
#include "libsplice/sheet/reel/reel_panel.h"

#include "libsplice/sheet/panel/panel_facts.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

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
    [[nodiscard]] static std::string show(const std::optional<Money>& cost) {
        return cost ? show_number(to_money(*cost), 2) : "price not known";
    }

    [[nodiscard]] std::string show_amount(Amount amount) const {
        switch (question_.objective) {
        case Objective::cost:
            return show_number(to_money(amount), 2);
        case Objective::waste:
            return show(amount);
        case Objective::new_reels:
            break;
        }
        return std::to_string(amount);
    }

    /// How far this plan may lie over the best one; nothing to say where the bound is 0.
    [[nodiscard]] std::string over_the_best() const {
        const Quality& quality = plan_.quality;
        if (quality.bound <= 0 || quality.value <= quality.bound) {
            return {};
        }
        const double over =
            static_cast<double>(quality.value - quality.bound) / static_cast<double>(quality.bound);
        return "; at most " + show_number(100.0 * over, 3) + " % over the best";
    }

    void write_result() {
        page_.blank();
        page_.fact("Objective", name_of(question_.objective));
        if (has_value(plan_, question_.objective)) {
            page_.fact("Value", show_amount(plan_.quality.value));
        }
        if (!plan_.unplaced.empty()) {
            std::int64_t pieces = 0;
            for (const Unplaced& unplaced : plan_.unplaced) {
                pieces += unplaced.count;
            }
            page_.fact("NOT PLACED", std::to_string(pieces) + (pieces == 1 ? " piece" : " pieces") +
                                         "; see the end. What follows is of the rest");
        }
        page_.fact("How good", how_good());
        if (plan_.bought > 0) {
            page_.fact("To buy", show(plan_.bought) + " that the stock does not have");
        }
        if (plan_.unpriced.value > 0) {
            page_.fact("No price", "some ropes have none, so they are planned by the metre and "
                                   "are not part of the value");
        }
        page_.fact("First fit", "the longest piece first into the first stock that holds it would "
                                "cut into " +
                                    show(plan_.first_fit) + "; this plan cuts into " +
                                    show(plan_.cut_into));
    }

    [[nodiscard]] std::string how_good() const {
        if (!has_value(plan_, question_.objective)) {
            return plan_.proved ? "proved best" : "not proved best";
        }
        const std::string bound = "no plan can be under " + show_amount(plan_.quality.bound);
        return plan_.proved ? "proved best: " + bound
                            : bound + over_the_best() +
                                  (sheet_.stopped ? ", as the search was stopped" : "");
    }

    void write_cuts() {
        // Feet, inches and sixteenths take more room.
        const std::size_t length = units_ == UnitSystem::metric ? 12 : 18;
        const std::array columns{PageColumn{length, true}, PageColumn{length, true},
                                 PageColumn{38 - length}, PageColumn{32 - length}};
        for (const ReelCut& cut : plan_.cuts) {
            const ReelStock& stock = plan_.stock[cut.stock];
            if (stock.id.empty()) {
                continue; // bought by the metre: the order list has it
            }
            page_.section(stock.title + ": " + std::string(name_of(stock.kind)) + ' ' + stock.id +
                          ", " + show(cut.length) +
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
        static constexpr std::array<PageColumn, 5> columns{
            PageColumn{34}, PageColumn{13, true}, PageColumn{7, true}, PageColumn{11, true},
            PageColumn{15, true}};
        page_.section("ORDER");
        page_.head(columns,
                   std::array<std::string, 5>{"rope", "to buy", "pieces", "longest", "cost"});
        Money sum = 0;
        std::vector<std::string> unpriced;
        for (const OrderLine& line : plan_.order) {
            const ReelStock& stock = plan_.stock[line.stock];
            const std::string count =
                stock.by_the_metre() ? "" : std::to_string(line.count) + " x ";
            page_.row(columns, std::array<std::string, 5>{stock.title, count + show(line.length),
                                                          std::to_string(line.pieces),
                                                          show(line.longest), show(line.cost)});
            sum += line.cost.value_or(0);
            if (!line.cost) {
                unpriced.push_back(stock.title);
            }
        }
        if (unpriced.size() < plan_.order.size()) {
            page_.fact("To pay", show_number(to_money(sum), 2));
        }
        for (const std::string& title : unpriced) {
            page_.fact("No price", title);
        }
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
            page_.paragraph(ledger.title + ": stock " + show(ledger.stock) + " + ordered " +
                                show(ledger.ordered) + " = pieces " + show(ledger.pieces) +
                                " + cut loss " + show(ledger.cut_loss) + " + offcuts " +
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
