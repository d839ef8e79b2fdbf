// Words for needs, and the sentence that compares the cheaper rope with the chosen one.
#include "libsplice/sheet/choice/choice_sheet.h"

#include "libsplice/catalogue/vocabulary.h"
#include "libsplice/sheet/panel/working.h"

#include <vector>

namespace libsplice {

namespace {

template <class Words, class Word>
std::string word_of(const Words& words, Word word) {
    return std::string(words.at(static_cast<std::size_t>(word)));
}

std::string holders_in_words(const std::vector<Holder>& holders) {
    std::string text;
    for (const Holder holder : holders) {
        text += (text.empty() ? "" : ", ") + word_of(holder_words, holder);
    }
    return text;
}

std::string load_in_words(const Needs& needs, UnitSystem units) {
    if (!needs.load) {
        return {};
    }
    const std::string force = show_force(*needs.load, units);
    return needs.load_working ? force + " = " + show_working(needs.load_working->working, units)
                              : force;
}

std::string tension_in_words(const Tension& tension, UnitSystem units) {
    return tension.basis == Tension::Basis::share
               ? show_number(100.0 * tension.value, 1) + " % of its strength"
               : show_force(Force(tension.value), units);
}

} // namespace

std::string usual_in_words(const Needs& needs) {
    std::string text;
    for (const Fibre fibre : needs.usual.value) {
        text += (text.empty() ? "" : ", ") +
                std::string(fibre_names()[static_cast<std::size_t>(fibre)]);
    }
    return text;
}

std::string need_in_words(const Needs& needs, std::size_t need, UnitSystem units) {
    const auto length = [&](const std::optional<Length>& value) {
        return value ? show_length(*value, units) : std::string();
    };
    switch (need_columns.at(need)) {
    case Column::carries_person:
        return needs.carries_person ? "yes" : "";
    case Column::load:
        return load_in_words(needs, units);
    case Column::set_tension:
        return needs.set ? tension_in_words(*needs.set, units) : "";
    case Column::most_give:
        return length(needs.most_give);
    case Column::standing:
        return needs.standing ? word_of(standing_words, *needs.standing) : "";
    case Column::held_by:
        return holders_in_words(needs.held_by);
    case Column::held_range:
        return needs.held_range ? show_length(needs.held_range->from, units) + " to " +
                                      show_length(needs.held_range->up_to, units)
                                : "";
    case Column::sheave:
        return length(needs.sheave);
    case Column::smallest_hole:
        return length(needs.smallest_hole);
    case Column::hand:
        return needs.hand ? word_of(handling_words, *needs.hand) : "";
    case Column::runs:
        return needs.runs ? word_of(running_words, *needs.runs) : "";
    case Column::floats:
        return needs.floats ? "yes" : "";
    case Column::price_limit:
        return needs.price_limit ? show_number(*needs.price_limit, 2) + " a metre" : "";
    default:
        return {};
    }
}

std::string what_is_not_known(const LineChoice& line, Preference preference) {
    std::string text;
    if (!line.needs.load) {
        text = "No load is given, so strength is not looked at. ";
        if (!line.needs.held_range && !line.needs.hand) {
            text += "Nothing says how thick the rope must be: give load or held_range. ";
        }
    }
    if (preference == Preference::cost && line.chosen && !line.ropes[*line.chosen].verdict.price) {
        text += "No price is known of the ropes that serve: those of a dear fibre come last, and "
                "the thinner ones first. A list of ropes, a stock or rope_price gives prices.";
    }
    return text;
}

std::string ropes_that_are_out(const LineChoice& line) {
    std::string text;
    for (const RopesOut& out : line.out) {
        text += (text.empty() ? "" : ", ") + out.need + ' ' + std::to_string(out.ropes);
    }
    return text;
}

std::string what_cheaper_gives_up(const LineChoice& line, UnitSystem units) {
    if (!line.chosen || !line.ropes[*line.chosen].verdict.price) {
        return {};
    }
    const TriedRope& chosen = line.ropes[*line.chosen];
    const TriedRope* cheapest = nullptr;
    for (const TriedRope& rope : line.ropes) {
        if (rope.shown_as != ShownAs::hybrid && rope.verdict.price &&
            *rope.verdict.price < *chosen.verdict.price - 0.005 &&
            (cheapest == nullptr || *rope.verdict.price < *cheapest->verdict.price)) {
            cheapest = &rope;
        }
    }
    if (cheapest == nullptr) {
        return {};
    }
    std::string text = cheapest->rope->title + " costs " +
                       show_number(*chosen.verdict.price - *cheapest->verdict.price, 2) +
                       " less than " + chosen.rope->title;
    if (chosen.verdict.give && cheapest->verdict.give) {
        const Length more = *cheapest->verdict.give - *chosen.verdict.give;
        text += more < Length() ? " and gives " + show_length(-more, units) + " less"
                                : " and gives " + show_length(more, units) + " more";
        text += " from set to load";
    }
    return text + (cheapest->verdict.fails ? "; " + cheapest->verdict.fails->text : "") + '.';
}

} // namespace libsplice
