// A choice of ropes as JSON.
#include "libsplice/sheet/choice/choice_sheet.h"
#include "libsplice/sheet/json/json_format.h"
#include "libsplice/sheet/json/json_parts.h"
#include "libsplice/sheet/panel/working.h"

namespace libsplice {

namespace {

class ChoiceJson {
  public:
    explicit ChoiceJson(Output& output) : json_(output) {}

    void write(const JobChoice& choice) {
        json_.begin_answer();
        json_.key("lines");
        json_.begin_array();
        for (const LineChoice& line : choice.lines) {
            json_.new_line();
            write_line(line, choice.preference);
        }
        json_.end_array();
        json_.new_line();
        json_.key("together");
        if (choice.together) {
            write_together(choice, *choice.together);
        } else {
            json_.null();
        }
        json_.end_object();
    }

  private:
    void optional_length(std::string_view name, const std::optional<Length>& length) {
        json_.metres(name, length ? std::optional(to_nanometres(*length)) : std::nullopt);
    }

    void optional_word(std::string_view name, std::optional<std::string_view> word) {
        if (word) {
            json_.text(name, *word);
        } else {
            json_.key(name);
            json_.null();
        }
    }

    template <class Words, class Word>
    void optional_word_of(std::string_view name, const Words& words,
                          const std::optional<Word>& word) {
        optional_word(name, word ? std::optional(words.at(static_cast<std::size_t>(*word)))
                                 : std::nullopt);
    }

    void optional_yes(std::string_view name, std::optional<bool> yes) {
        json_.key(name);
        if (yes) {
            json_.boolean(*yes);
        } else {
            json_.null();
        }
    }

    void write_line(const LineChoice& line, Preference preference) {
        json_.begin_object();
        json_.text("name", line.name);
        json_.text("boat", line.boat);
        json_.key("needs");
        write_needs(line.needs);
        json_.key("candidates");
        json_.begin_array();
        for (const TriedRope& rope : line.ropes) {
            json_.new_line();
            write_rope(rope);
        }
        json_.end_array();
        optional_word("chosen", line.chosen ? std::optional<std::string_view>(
                                                  line.ropes[*line.chosen].rope->id)
                                            : std::nullopt);
        write_out(line);
        json_.text("cheaper", what_cheaper_gives_up(line, UnitSystem::metric));
        json_.text("not_known", what_is_not_known(line, preference));
        optional_word("caution", line.needs.carries_person
                                     ? std::optional<std::string_view>(no_rule_for_a_person)
                                     : std::nullopt);
        json_.key("error");
        if (line.fault) {
            write_error(json_, *line.fault);
        } else {
            json_.null();
        }
        json_.end_object();
    }

    void write_together(const JobChoice& choice, const Together& together) {
        json_.begin_object();
        json_.number("cost", together.cost);
        json_.number("bound", together.bound);
        json_.number("gap", together.gap());
        json_.key("proved");
        json_.boolean(together.proved);
        json_.number("line_by_line", together.line_by_line);
        json_.key("sorts");
        json_.whole(static_cast<long long>(together.sorts));
        json_.key("sorts_line_by_line");
        json_.whole(static_cast<long long>(together.sorts_line_by_line));
        json_.key("fewer");
        json_.begin_array();
        for (const FewerSorts& fewer : together.fewer) {
            json_.begin_object();
            json_.key("sorts");
            json_.whole(static_cast<long long>(fewer.sorts));
            json_.number("cost", fewer.cost);
            json_.number("extra", fewer.cost - together.cost);
            json_.key("ropes");
            json_.begin_array();
            for (const std::string& rope : fewer.ropes) {
                json_.text(rope);
            }
            json_.end_array();
            json_.end_object();
        }
        json_.end_array();
        json_.key("left_out");
        json_.begin_array();
        for (const std::size_t line : together.left_out) {
            json_.text(choice.lines[line].name);
        }
        json_.end_array();
        json_.end_object();
    }

    void write_out(const LineChoice& line) {
        json_.key("out");
        json_.begin_object();
        for (const RopesOut& out : line.out) {
            json_.key(out.need);
            json_.whole(static_cast<long long>(out.ropes));
        }
        json_.end_object();
    }

    void write_needs(const Needs& needs) {
        json_.begin_object();
        json_.text("place", needs.place);
        json_.key("carries_person");
        json_.boolean(needs.carries_person);
        json_.number("load_n", needs.load ? std::optional(needs.load->si()) : std::nullopt);
        json_.key("load_working");
        needs.load_working
            ? json_.text(show_working(needs.load_working->working, UnitSystem::metric))
            : json_.null();
        json_.number("set_tension_n", needs.set && needs.set->basis == Tension::Basis::force
                                          ? std::optional(needs.set->value)
                                          : std::nullopt);
        optional_length("most_give_m", needs.most_give);
        optional_word_of("standing", standing_words, needs.standing);
        json_.key("held_by");
        json_.begin_array();
        for (const Holder holder : needs.held_by) {
            json_.text(holder_words.at(static_cast<std::size_t>(holder)));
        }
        json_.end_array();
        const auto& range = needs.held_range;
        optional_length("held_from_m", range ? std::optional(range->from) : std::nullopt);
        optional_length("held_up_to_m", range ? std::optional(range->up_to) : std::nullopt);
        optional_length("sheave_m", needs.sheave);
        optional_length("smallest_hole_m", needs.smallest_hole);
        optional_word_of("hand", handling_words, needs.hand);
        optional_word_of("runs", running_words, needs.runs);
        json_.key("floats");
        json_.boolean(needs.floats);
        json_.number("price_limit", needs.price_limit);
        json_.text("usual", usual_in_words(needs));
        json_.key("source");
        json_.begin_object();
        json_.text("usual", to_text(needs.usual.source));
        for (std::size_t i = 0; i < need_columns.size(); ++i) {
            if (const std::string source = source_of_need(needs, i); !source.empty()) {
                json_.text(name_of_need(i), source);
            }
        }
        json_.end_object();
        json_.end_object();
    }

    void write_rope(const TriedRope& rope) {
        const Verdict& verdict = rope.verdict;
        json_.begin_object();
        json_.text("rope", rope.rope->id);
        json_.text("title", rope.rope->title);
        json_.metres("diameter_m", to_nanometres(rope.rope->diameter));
        json_.text("shown_as", shown_as_words.at(static_cast<std::size_t>(rope.shown_as)));
        json_.text("made", rope.made);
        optional_length("give_m", verdict.give);
        json_.number("factor", verdict.factor);
        json_.key("fits");
        json_.begin_object();
        optional_yes("ends", verdict.fits.ends);
        optional_yes("cleat", verdict.fits.cleat);
        optional_yes("sheave", verdict.fits.sheave);
        optional_yes("hole", verdict.fits.hole);
        optional_yes("hand", verdict.fits.hand);
        optional_yes("heat", verdict.fits.heat);
        json_.end_object();
        if (verdict.buy) {
            json_.metres("buy_m", *verdict.buy);
        } else {
            json_.key("buy_m");
            json_.null();
        }
        json_.number("price", verdict.price);
        json_.number("mass_kg", verdict.mass_kg);
        json_.key("fails");
        if (verdict.fails) {
            json_.begin_object();
            json_.text("need", verdict.fails->need);
            json_.text("text", verdict.fails->text);
            json_.end_object();
        } else {
            json_.null();
        }
        json_.end_object();
    }

    JsonText json_;
};

} // namespace

void write_choice_as_json(const JobChoice& choice, Output& output, UnitSystem /*units*/) {
    ChoiceJson(output).write(choice);
    output.write('\n');
}

} // namespace libsplice
