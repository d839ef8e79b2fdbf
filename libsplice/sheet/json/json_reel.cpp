// A plan of reels as JSON.
#include "libsplice/sheet/json/json_format.h"
#include "libsplice/sheet/json/json_parts.h"

namespace libsplice {

namespace {

class ReelJson {
  public:
    ReelJson(const ReelSheet& sheet, Output& output)
        : question_(sheet.question), plan_(sheet.plan), sheet_(sheet), json_(output) {}

    void write() {
        json_.begin_answer();
        write_head();
        list("cuts", plan_.cuts, [this](const ReelCut& cut) { write_cut(cut); });
        list("order", plan_.order, [this](const OrderLine& line) { write_order(line); });
        list("ledger", plan_.ledger, [this](const RopeLedger& ledger) { write_ledger(ledger); });
        write_unplaced();
        json_.new_line();
        json_.end_object();
    }

  private:
    template <class Things, class Write>
    void list(std::string_view name, const Things& things, Write write) {
        json_.new_line();
        json_.key(name);
        json_.begin_array();
        for (const auto& thing : things) {
            json_.new_line();
            json_.begin_object();
            write(thing);
            json_.end_object();
        }
        json_.end_array();
    }

    /// The first thing that the objective makes small, in units of its own: money, metres or reels.
    void amount(std::string_view name, Amount value) {
        json_.key(name);
        if (question_.objective == Objective::cost) {
            json_.number(to_money(value));
        } else if (question_.objective == Objective::waste) {
            json_.metres(value);
        } else {
            json_.whole(value);
        }
    }

    /// Without a price for any rope there is no money to speak of.
    void write_head() {
        json_.text("minimised", name_of(question_.objective));
        if (has_value(plan_, question_.objective)) {
            amount("bound", plan_.quality.bound);
            amount("value", plan_.quality.value);
        } else {
            json_.key("bound");
            json_.null();
            json_.key("value");
            json_.null();
        }
        json_.number("gap", gap_of(plan_));
        json_.key("proved");
        json_.boolean(plan_.proved);
    }

    void write_cut(const ReelCut& cut) {
        const ReelStock& stock = plan_.stock[cut.stock];
        if (stock.id.empty()) { // bought, because the stock lacks it
            json_.key("stock");
            json_.null();
        } else {
            json_.text("stock", stock.id);
        }
        json_.text("rope", stock.rope);
        json_.text("lot", stock.lot);
        json_.text("kind", name_of(stock.kind));
        json_.metres("length_m", cut.length);
        json_.key("times");
        json_.whole(cut.times);
        json_.metres("cut_loss_m", cut.cut_loss);
        json_.metres("left_m", cut.left);
        json_.text("left_is", left_word(cut.left_is));
        json_.key("pieces");
        json_.begin_array();
        for (const PlacedPiece& piece : cut.pieces) {
            const Demand& demand = question_.demands[piece.demand];
            json_.begin_object();
            json_.text("name", demand.name);
            json_.text("boat", demand.boat);
            json_.metres("cut_m", demand.length);
            json_.metres("at_m", piece.at);
            json_.end_object();
        }
        json_.end_array();
    }

    void write_order(const OrderLine& line) {
        const ReelStock& stock = plan_.stock[line.stock];
        json_.text("rope", stock.rope);
        json_.text("title", stock.title);
        json_.metres("length_m", line.length);
        json_.key("pieces");
        json_.whole(line.pieces);
        json_.metres("longest_m", line.longest);
        json_.key("count");
        json_.whole(line.count);
        json_.number("cost", line.cost ? std::optional(to_money(*line.cost)) : std::nullopt);
    }

    void write_unplaced() {
        json_.new_line();
        json_.key("unplaced");
        json_.begin_array();
        for (const RefusedLine& line : sheet_.refused) {
            write_missing(line.name, line.fault);
        }
        for (const Unplaced& unplaced : plan_.unplaced) {
            write_missing(question_.demands[unplaced.demand].name, unplaced.fault);
        }
        json_.end_array();
    }

    void write_missing(std::string_view name, const Fault& fault) {
        json_.new_line();
        json_.begin_object();
        json_.text("name", name);
        json_.key("error");
        write_error(json_, fault);
        json_.end_object();
    }

    void write_ledger(const RopeLedger& ledger) {
        json_.text("rope", ledger.rope);
        json_.metres("stock_m", ledger.stock);
        json_.metres("ordered_m", ledger.ordered);
        json_.metres("pieces_m", ledger.pieces);
        json_.metres("cut_loss_m", ledger.cut_loss);
        json_.metres("offcuts_m", ledger.offcuts);
        json_.metres("waste_m", ledger.waste);
    }

    const ReelQuestion& question_;
    const ReelPlan& plan_;
    const ReelSheet& sheet_;
    JsonText json_;
};

} // namespace

void write_reel_as_json(const ReelSheet& sheet, Output& output, UnitSystem /*units*/) {
    ReelJson(sheet, output).write();
    output.write('\n');
}

} // namespace libsplice
