// A rope's ends laid out straight, to one scale, every mark on its place.
#include "libsplice/sheet/drawing/drawing.h"

#include "libsplice/base/text.h"
#include "libsplice/cut/layout.h"
#include "libsplice/sheet/drawing/outline.h"
#include "libsplice/sheet/drawing/span_look.h"
#include "libsplice/sheet/drawing/stacking.h"
#include "libsplice/sheet/html/html_text.h"
#include "libsplice/sheet/words/words.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace libsplice {

namespace {

constexpr double width = 720.0;
constexpr double margin = 26.0;
constexpr double break_width = 40.0;
constexpr double room_for_names = 190.0; // beside the last mark of an end drawn by itself
constexpr double half_rope = 8.0;
constexpr double width_of_letter = 6.6; // of the names' letters, on the safe side of most faces
constexpr double row_height = 15.0;
constexpr double gap = 10.0;
constexpr double gap_on_card = 3.0; // where marks are numbered
constexpr double least_between_names = 24.0;
constexpr double least_between_numbers = 13.0;

/// One end, its distances from the cut end.
struct DrawnEnd {
    std::string_view letter;
    const End* allowance = nullptr;
    std::vector<PieceMark> marks;
    Nanometres over = 0;  ///< rope outside the tail
    bool checked = false; ///< whether that is trimmed only after a check
    /// Of the marks, the last one first; none where it stands too close to the one before, whose
    /// names would run into a column of their own. The tables name them all.
    std::vector<std::optional<std::size_t>> rows_of_names{};
    std::vector<std::size_t> rows_of_brackets{}; ///< of the rope outside the tail, then the spans
};

/// Where a distance from an end's cut end lies in the drawing.
struct Scale {
    double at = 0.0; ///< the cut end
    double units_per_nanometre = 0.0;

    [[nodiscard]] double x(Nanometres distance) const {
        return at + units_per_nanometre * static_cast<double>(distance);
    }
};

Nanometres shown_length(const DrawnEnd& end) {
    Nanometres length = end.over;
    for (const PieceMark& mark : end.marks) {
        length = std::max(length, mark.from_end);
    }
    for (const Span& span : end.allowance->shape) {
        length = std::max(length, end.over + span.to);
    }
    return length + length / 20;
}

OutlinePart part_of(const Span& span, const Scale& scale, Nanometres over, double units_of_width) {
    OutlinePart part{OutlinePart::Form::even, scale.x(over + span.from), scale.x(over + span.to),
                     std::clamp(0.5 * units_of_width * static_cast<double>(span.width),
                                0.4 * half_rope, 2.0 * half_rope)};
    if (span.form == Span::Form::tapered) {
        part.form = OutlinePart::Form::pointed;
    } else if (span.form == Span::Form::knot || span.form == Span::Form::doubled) {
        part.form = OutlinePart::Form::bulging;
        part.lumps = static_cast<int>(std::lround(span.count));
    }
    return part;
}

std::string number(double value) {
    return show_number(value, 2);
}

/// Draws ends on one line: names of marks on one side of the rope, brackets on the other.
class Drawing {
  public:
    /// With `numbered`, marks bear their numbers, which a table explains; else their names.
    Drawing(std::string& into, const Names& names, UnitSystem units, Nanometres rope, bool numbered)
        : into_(into),
          names_(names),
          units_(units),
          numbered_(numbered),
          units_of_width_(2.0 * half_rope / static_cast<double>(std::max<Nanometres>(rope, 1))) {}

    /// Returns the height over the width.
    double draw(DrawnEnd left, std::optional<DrawnEnd> right, const std::string& title) {
        const Nanometres a = shown_length(left);
        const Nanometres b = !right ? 0 : shown_length(*right);
        // An end that is only cut still shows some rope.
        const Nanometres least = std::max<Nanometres>({a / 4, b / 4, nanometres_per_metre / 20});
        const double room = width - 2 * margin - (!right ? room_for_names : break_width);
        const auto length = static_cast<double>(std::max(a, least)) +
                            (!right ? 0.0 : static_cast<double>(std::max(b, least)));
        const Scale of_a{margin, room / length};
        const Scale of_b{width - margin, -room / length};
        lay_out(left, of_a, above_, below_);
        if (right) {
            lay_out(*right, of_b, below_, above_);
        }
        rope_ = edge() + height(above_);
        const double total = rope_ + height(below_) + edge();
        into_ += "<svg class=\"rope\" viewBox=\"0 0 " + number(width) + ' ' + number(total) +
                 "\" role=\"img\" aria-label=\"" + html_text(title) + "\"><title>" +
                 html_text(title) + "</title>";
        const double end_of_a = of_a.x(std::max(a, least));
        draw_end(left, of_a, end_of_a, -1.0);
        if (right) {
            draw_end(*right, of_b, of_b.x(std::max(b, least)), 1.0);
        }
        draw_break(end_of_a);
        into_ += "</svg>";
        return total / width;
    }

  private:
    [[nodiscard]] double edge() const { return numbered_ ? gap_on_card : gap; }

    double height(const Stacking& side) const {
        return half_rope * (numbered_ && side.rows() == 0 ? 1.4 : 2.5) +
               static_cast<double>(side.rows()) * row_height + edge();
    }

    std::string label_of_mark(const PieceMark& mark) const {
        return numbered_
                   ? std::to_string(mark.number)
                   : std::string(names_.of(mark.name)) + ' ' + show_length(mark.from_end, units_);
    }

    /// The same in HTML, the figure in bold.
    std::string label_in_html(const PieceMark& mark) const {
        return numbered_ ? "<tspan class=\"n\">" + std::to_string(mark.number) + "</tspan>"
                         : html_text(names_.of(mark.name)) + " <tspan class=\"n\">" +
                               html_text(show_length(mark.from_end, units_)) + "</tspan>";
    }

    std::string caption(const DrawnEnd& end, std::size_t span) const {
        const Span& of = end.allowance->shape[span];
        return words_of(of, units_) + ": " + show_length(of.to - of.from, units_);
    }

    /// Where numbers refer to a table, that says what the spans are.
    [[nodiscard]] std::size_t captions_of(const DrawnEnd& end) const {
        return numbered_ ? 0 : end.allowance->shape.size();
    }

    static std::string over_caption(const DrawnEnd& end) {
        return end.checked ? "trim only after the check" : "trim last";
    }

    /// Finds the row of every name and bracket. A name starts at its mark and runs away from the
    /// cut end, so the one farthest from it comes first: no line to a name then crosses another.
    void lay_out(DrawnEnd& end, const Scale& scale, Stacking& of_names,
                 Stacking& of_brackets) const {
        double last_named = 0.0;
        for (auto mark = end.marks.rbegin(); mark != end.marks.rend(); ++mark) {
            const double x = scale.x(mark->from_end);
            const double least = numbered_ ? least_between_numbers : least_between_names;
            const bool crowded = !end.rows_of_names.empty() &&
                                 (numbered_ || mark + 1 != end.marks.rend()) &&
                                 std::abs(x - last_named) < least;
            if (crowded) {
                end.rows_of_names.emplace_back();
                continue;
            }
            last_named = x;
            end.rows_of_names.emplace_back(
                of_names.place(x, length_of(label_of_mark(*mark)), runs_left(scale)));
        }
        const auto place = [&](Nanometres from, Nanometres to, const std::string& text) {
            const double length = std::abs(scale.x(to) - scale.x(from));
            end.rows_of_brackets.push_back(of_brackets.place(
                scale.x(from), std::max(length, length_of(text)), runs_left(scale)));
        };
        if (end.over > 0) {
            place(0, end.over, over_caption(end));
        }
        for (std::size_t i = 0; i < captions_of(end); ++i) {
            const Span& span = end.allowance->shape[i];
            place(end.over + span.from, end.over + span.to, caption(end, i));
        }
    }

    static double length_of(const std::string& text) {
        return 8.0 + width_of_letter * static_cast<double>(character_count(text));
    }
    static bool runs_left(const Scale& scale) { return scale.units_per_nanometre < 0.0; }

    void draw_end(const DrawnEnd& end, const Scale& scale, double break_at, double names_down) {
        std::vector<OutlinePart> parts{
            {OutlinePart::Form::even, scale.x(first_of_rope(end)), break_at, half_rope}};
        for (const Span& span : end.allowance->shape) {
            parts.push_back(part_of(span, scale, end.over, units_of_width_));
        }
        if (end.over > 0) {
            parts.push_back({OutlinePart::Form::even, scale.x(0), scale.x(end.over), half_rope});
        }
        into_ += "<path class=\"o\" d=\"" + outline_path(parts, rope_) + "\"/>";
        for (const Span& span : end.allowance->shape) {
            append_look(into_, span, part_of(span, scale, end.over, units_of_width_), rope_);
        }
        if (end.over > 0) {
            const OutlinePart over{OutlinePart::Form::even, scale.x(0), scale.x(end.over),
                                   half_rope};
            into_ += "<path fill=\"url(#p-over)\" d=\"" + outline_path(std::span(&over, 1), rope_) +
                     "\"/>";
        }
        draw_names(end, scale, names_down);
        draw_brackets(end, scale, -names_down);
        into_ += "<text class=\"e\" x=\"" + number(scale.at + (runs_left(scale) ? 8.0 : -18.0)) +
                 "\" y=\"" + number(rope_ + 5.0) + "\">" + std::string(end.letter) + "</text>";
    }

    /// Where the rope is whole: beyond what is thinned out at its end.
    static Nanometres first_of_rope(const DrawnEnd& end) {
        for (const Span& span : end.allowance->shape) {
            if (span.form == Span::Form::tapered && span.from == 0) {
                return end.over + span.to;
            }
        }
        return end.over;
    }

    static std::string anchor(const Scale& scale) {
        return runs_left(scale) ? " text-anchor=\"end\"" : "";
    }

    void draw_names(const DrawnEnd& end, const Scale& scale, double down) {
        std::size_t placed = 0;
        for (auto mark = end.marks.rbegin(); mark != end.marks.rend(); ++mark) {
            const double x = scale.x(mark->from_end);
            const auto row = end.rows_of_names[placed++];
            const double y = row ? height_of_row(*row, down) : rope_ + down * half_rope * 1.9;
            const std::string name(names_.of(mark->name));
            into_ += "<rect class=\"m\" data-end=\"" + std::string(end.letter) + "\" data-mark=\"" +
                     html_text(name) + "\" x=\"" + number(x) + "\" y=\"" +
                     number(std::min(y, rope_ - half_rope * 1.4)) + "\" width=\"1\" height=\"" +
                     number(std::abs(y - rope_) + half_rope * 1.4) + "\"/>";
            if (!row) {
                continue;
            }
            into_ += "<text x=\"" + number(x + (runs_left(scale) ? -3.0 : 4.0)) + "\" y=\"" +
                     number(y + 3.5) + "\"" + anchor(scale) + ">" + label_in_html(*mark) +
                     "</text>";
        }
    }

    /// The middle of the texts in a row, counted away from the rope.
    double height_of_row(std::size_t row, double down) const {
        return rope_ + down * (half_rope * 2.5 + row_height * (static_cast<double>(row) + 0.5));
    }

    void draw_brackets(const DrawnEnd& end, const Scale& scale, double down) {
        std::size_t placed = 0;
        if (end.over > 0) {
            draw_bracket(scale, 0, end.over, over_caption(end),
                         height_of_row(end.rows_of_brackets[placed++], down), down);
        }
        for (std::size_t i = 0; i < captions_of(end); ++i) {
            const Span& span = end.allowance->shape[i];
            draw_bracket(scale, end.over + span.from, end.over + span.to, caption(end, i),
                         height_of_row(end.rows_of_brackets[placed++], down), down);
        }
    }

    /// A line along the stretch, open towards the rope, with its text beyond.
    void draw_bracket(const Scale& scale, Nanometres from, Nanometres to, const std::string& text,
                      double y, double down) {
        const double at = y - down * 0.47 * row_height;
        into_ += "<path class=\"b\" d=\"M" + number(scale.x(from)) + ' ' + number(at - down * 3.0) +
                 "V" + number(at) + "H" + number(scale.x(to)) + "V" + number(at - down * 3.0) +
                 "\"/><text x=\"" + number(scale.x(from)) + "\" y=\"" + number(y + 3.5) + "\"" +
                 anchor(scale) + ">" + html_text(text) + "</text>";
    }

    /// Two strokes where the rope is broken out.
    void draw_break(double x) {
        for (const double at : {x + 8.0, x + 14.0}) {
            into_ += "<path class=\"b\" d=\"M" + number(at + 4.0) + ' ' +
                     number(rope_ - half_rope * 1.5) + "L" + number(at - 4.0) + ' ' +
                     number(rope_ + half_rope * 1.5) + "\"/>";
        }
    }

    std::string& into_;
    const Names& names_;
    UnitSystem units_;
    bool numbered_;
    double units_of_width_;
    Stacking above_{gap};
    Stacking below_{gap};
    double rope_ = 0.0; ///< the height of the rope's centreline
};

DrawnEnd drawn_end(const Piece& piece, LineEnd end) {
    DrawnEnd drawn{letter_of(end), &*piece.line->end(end).allowance, {}, 0, false, {}, {}};
    for (const PieceMark& mark : piece.marks) {
        if (mark.end == end) {
            drawn.marks.push_back(mark);
        }
    }
    drawn.over = piece.outside(end);
    drawn.checked = piece.check.has_value();
    return drawn;
}

} // namespace

double append_drawing(std::string& into, const Piece& piece, UnitSystem units) {
    const BoundLine& plan = *piece.line;
    Drawing drawing(into, *plan.names, units, to_nanometres(plan.rope->counting_diameter()), true);
    return drawing.draw(drawn_end(piece, LineEnd::a), drawn_end(piece, LineEnd::b),
                        "The rope laid straight, end a on the left, end b on the right, what lies "
                        "between broken out. Along the rope to scale; drawn thicker than it is. "
                        "Every mark is in the tables of the two ends.");
}

double append_drawing(std::string& into, const KindDeclaration& kind, const End& allowance,
                      Length diameter, const Names& names, UnitSystem units) {
    const auto side = [&](LineEnd end) {
        DrawnEnd drawn{letter_of(end), &allowance, {}, 0, false, {}, {}};
        for (const Mark& mark : allowance.marks) {
            drawn.marks.push_back({end, mark.name, mark.from_tail_end});
        }
        return drawn;
    };
    const bool both = kind.reach == Reach::both_ends;
    std::string title(kind.name);
    title += both ? ": the rope laid straight, both its ends, what lies between broken out."
                  : ": the rope laid straight, its end on the left.";
    title += " Along the rope to scale; drawn thicker than it is.";
    return Drawing(into, names, units, to_nanometres(diameter), false)
        .draw(side(LineEnd::a), both ? std::optional(side(LineEnd::b)) : std::nullopt, title);
}

} // namespace libsplice
