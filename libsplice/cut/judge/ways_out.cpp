// Makes a line that is too short in other ways, one after the other, and keeps those that work.
#include "libsplice/cut/judge/ways_out.h"

#include "libsplice/cut/layout.h"
#include "libsplice/cut/work_out_piece.h"
#include "libsplice/units/show.h"

#include <algorithm>
#include <numbers>
#include <vector>

namespace libsplice {

namespace {

constexpr std::size_t most_ways = 3;
constexpr int most_turns = 3;

/// The line as it would be written in another way.
class OtherLine {
  public:
    explicit OtherLine(const JobLine& job)
        : job_(job), fields_(job.fields.begin(), job.fields.end()) {}

    void set_kind(LineEnd end, std::string_view kind) {
        job_.cells[static_cast<std::size_t>(end == LineEnd::a ? Column::end_a : Column::end_b)]
            .text = kind;
    }
    void drop_fields(LineEnd end) {
        std::erase_if(fields_, [&](const EndFieldCell& given) { return given.end == end; });
    }
    void drop_field(LineEnd end, std::string_view field) {
        std::erase_if(fields_, [&](const EndFieldCell& given) {
            return given.end == end && given.field == field;
        });
    }
    void set_field(LineEnd end, std::string_view field, std::string_view text) {
        drop_field(end, field);
        fields_.push_back({end, field, Cell{.text = text}});
    }

    /// The rope that it takes at a finished length; nothing where it cannot be made.
    [[nodiscard]] std::optional<Nanometres> cut_at(LineBinder& binder, Nanometres finished) {
        std::vector<Fault> faults;
        job_.fields = fields_;
        CellReader cells(job_, faults);
        const auto line = binder.bind(cells);
        if (line == nullptr) {
            return std::nullopt;
        }
        Piece piece;
        return work_out_piece(*line, finished, piece) ? std::nullopt : std::optional(piece.cut);
    }

  private:
    JobLine job_;
    std::vector<EndFieldCell> fields_;
};

std::string shown(Nanometres length) {
    return show_length(length, UnitSystem::metric);
}

std::string field_at(LineEnd end, std::string_view field) {
    return std::string(column_name(end == LineEnd::a ? Column::end_a : Column::end_b)) + '.' +
           std::string(field);
}

/// The ends of a line as the job has them, and the rope that they are made in.
struct Asked {
    const Book& book;
    LineBinder& binder;
    const JobLine& job;
    const BoundEnds& ends;
    const Rope& rope;
    Nanometres finished = 0;
};

bool is_buried(const Asked& asked, LineEnd end) {
    return asked.ends.counts(end) && asked.ends.at(end).allowance->bury_reach > 0;
}

/// A named rule of an end's kind that has a shorter tail than the end has.
struct ShorterTail {
    const Rule* rule = nullptr;
    Length tail;
};

bool names(const Rule& rule, const KindDeclaration& kind) {
    return std::ranges::any_of(rule.kinds,
                               [&](const std::string& name) { return kind.is_named_by(name); });
}

std::vector<ShorterTail> shorter_tails(const Asked& asked, LineEnd end) {
    const BoundEnd& bound = asked.ends.at(end);
    const Length diameter = asked.rope.counting_diameter();
    std::vector<ShorterTail> found;
    for (const Rule& rule : asked.book.catalogue().rules()) {
        const Figure* tail = rule.find(FigureId::tail);
        if (tail != nullptr && names(rule, bound.kind->declaration) &&
            rule.applies_to(asked.rope)) {
            found.push_back({&rule, tail->length(diameter)});
        }
    }
    std::ranges::stable_sort(found, std::ranges::greater{}, &ShorterTail::tail);
    return found;
}

/// The longest published bury that fits, at every end that is buried.
std::optional<std::string> shorter_bury(const Asked& asked) {
    const LineEnd of = is_buried(asked, LineEnd::a) ? LineEnd::a : LineEnd::b;
    for (const auto& [rule, tail] : shorter_tails(asked, of)) {
        OtherLine other_line(asked.job);
        std::string fields;
        for (const LineEnd end : both_ends) {
            if (!is_buried(asked, end)) {
                continue;
            }
            for (const std::string_view field : {"tail", "taper", "exit"}) {
                other_line.drop_field(end, field);
            }
            other_line.set_field(end, "rule", rule->name);
            fields += (fields.empty() ? "" : " and ") + field_at(end, "rule") + " = " + rule->name;
        }
        if (const auto cut = other_line.cut_at(asked.binder, asked.finished)) {
            return "write " + fields + ", tails of " + shown(to_nanometres(tail)) +
                   ", lock-stitched (cut " + shown(*cut) + ")";
        }
    }
    return std::nullopt;
}

Length pin_at(const Asked& asked, LineEnd end) {
    return asked.ends.at(end).allowance->pin.value_or(Length());
}

/// The round length of a loop that bears where the line's two ends bear, along the middle of its
/// rope: twice the distance of the pins' centres, and once round a circle of pin and rope.
Nanometres round_length(const Asked& asked) {
    if (asked.ends.closing) {
        return asked.finished;
    }
    const Length pins = pin_at(asked, LineEnd::a) + pin_at(asked, LineEnd::b);
    const Length centres = from_nanometres(asked.finished) - pins / 2.0;
    return to_nanometres(2.0 * centres +
                         std::numbers::pi * (pins / 2.0 + asked.rope.counting_diameter()));
}

/// A loop that lies over both bearing points, of as few turns as can be made.
std::optional<std::string> loop_of_turns(const Asked& asked) {
    constexpr std::string_view kind = "endless-loop";
    const bool is_loop =
        asked.ends.closing && asked.ends.at(*asked.ends.closing).kind->declaration.name == kind;
    const Nanometres once = round_length(asked);
    for (int turns = is_loop ? 2 : 1; turns <= most_turns && once > 0; ++turns) {
        OtherLine loop(asked.job);
        for (const LineEnd end : both_ends) {
            loop.drop_fields(end);
            loop.set_kind(end, end == LineEnd::a ? kind : std::string_view());
        }
        if (const auto cut = loop.cut_at(asked.binder, once * turns)) {
            const std::string laid = turns == 1   ? std::string()
                                     : turns == 2 ? " and lay it twice round"
                                                  : " and lay it three times round";
            return "write end_a = " + std::string(kind) +
                   " alone, length = " + shown(once * turns) + laid + " (cut " + shown(*cut) + ")";
        }
    }
    return std::nullopt;
}

/// Turns through both fittings, in place of a strop between them.
std::optional<std::string> lashed(const Asked& asked) {
    if (asked.ends.closing || !is_buried(asked, LineEnd::a) || !is_buried(asked, LineEnd::b)) {
        return std::nullopt;
    }
    const Length pin_a = pin_at(asked, LineEnd::a);
    const Length pin_b = pin_at(asked, LineEnd::b);
    const Length gap = from_nanometres(asked.finished) - pin_a - pin_b;
    const auto kind = asked.book.kind("lashing");
    if (!kind || !(pin_a > Length()) || !(pin_b > Length()) || !(gap > Length())) {
        return std::nullopt;
    }
    const auto exact = [](Length length) {
        return show_number(length.si() * 1000.0, 6) + " mm";
    };
    const std::string spar_text = exact(pin_a);
    const std::string pin_text = exact(pin_b);
    const std::string gap_text = exact(gap);
    const std::array<FieldText, 3> fields{
        FieldText{"spar", spar_text}, {"pin", pin_text}, {"gap", gap_text}};
    const auto lashing = asked.book.work_out(**kind, asked.rope, fields);
    if (!lashing) {
        return std::nullopt;
    }
    return "or lash it: end_b = lashing, end_b.spar = " + shown(to_nanometres(pin_a)) +
           ", end_b.pin = " + shown(to_nanometres(pin_b)) +
           ", end_b.gap = " + shown(to_nanometres(gap)) + " (" + shown(lashing->total()) +
           " of rope in its turns)";
}

} // namespace

std::string ways_out(const Book& book, LineBinder& binder, const JobLine& job,
                     const BoundLine& line, Nanometres finished) {
    const Asked asked{book, binder, job, line.ends, *line.rope, finished};
    std::vector<std::string> ways;
    for (const auto& way : {shorter_bury(asked), loop_of_turns(asked), lashed(asked)}) {
        if (way && ways.size() < most_ways) {
            ways.push_back(*way);
        }
    }
    std::string text;
    for (const std::string& way : ways) {
        text += (text.empty() ? ". Else " : "; ") + way;
    }
    return text.empty() ? ". Else use thinner rope" : text;
}

} // namespace libsplice
