// Puts a bound line together from its parts, each of which is bound by a function of its own.
#include "libsplice/cut/bind/line_binder.h"

#include "libsplice/cut/bind/along_line.h"
#include "libsplice/cut/bind/ends.h"
#include "libsplice/cut/bind/fit.h"
#include "libsplice/cut/bind/load/load.h"
#include "libsplice/cut/bind/order.h"
#include "libsplice/cut/bind/person.h"
#include "libsplice/cut/bind/route.h"
#include "libsplice/cut/bind/states.h"
#include "libsplice/cut/bind/strength.h"
#include "libsplice/cut/judge/cautions.h"
#include "libsplice/cut/steps/order_of_work.h"

namespace libsplice {

LineBinder::LineBinder(const Book& book, const CutSettings& settings)
    : book_(book), settings_(settings), ropes_(book.catalogue()), ends_(book) {}

std::unique_ptr<const BoundLine> LineBinder::bind(CellReader& cells) {
    const std::size_t faults_before = cells.fault_count();
    auto line = std::make_unique<BoundLine>();
    line->citations = &book_.catalogue().citations();
    line->names = &book_.names();
    line->fit = bind_fit(settings_, cells);
    line->along = read_along_line(cells);
    StateAsked asked = read_state(cells);
    const auto load = read_load(book_.catalogue(), cells);
    const bool carries_person = cells.yes(Column::carries_person);
    line->rope = ropes_.find(cells);
    if (!cells.text(Column::middle).empty()) {
        cells.add(Fault{Code::not_a_choice, "items in the middle of a line are not worked out yet; "
                                            "leave the column empty"},
                  Column::middle);
    }
    line->ends = bind_ends(book_, ends_, line->rope, line->fit.fit, cells);
    line->route = bind_route(line->rope, cells);
    if (cells.fault_count() != faults_before) {
        return nullptr;
    }
    const Rope& rope = *line->rope;
    if (cells.text(Column::prestretched).empty()) {
        asked.prestretched = rope.prestretched;
    }
    const Rules rules = book_.common_rules(rope);
    line->states = bind_states({asked, rules, settings_, rope, line->ends, line->fit.fit,
                                line->route && line->route->eased},
                               cells);
    line->along = bind_along_line(line->along, rules, rope, line->ends, cells);
    line->strength =
        bind_strength({book_, rules, rope, line->ends, line->route, load, carries_person}, cells);
    line->person = bind_person(carries_person, book_, rope, line->ends, cells);
    bind_order(*line, cells);
    if (cells.fault_count() != faults_before) {
        return nullptr;
    }
    line->pulls = bind_pulls(rope, line->states, line->strength.load);
    line->work = order_of_work(*line);
    line->cautions = cautions_of_line(*line);
    return line;
}

} // namespace libsplice
