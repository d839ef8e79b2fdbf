#include "libsplice/sheet/drawing.h"

#include "libsplice/base/text.h"
#include "libsplice/cut/layout.h"
#include "libsplice/sheet/html_text.h"
#include "libsplice/sheet/outline.h"
#include "libsplice/sheet/stacking.h"
#include "libsplice/sheet/words.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace libsplice {

namespace {

constexpr double width = 720.0;
constexpr double margin = 14.0;
constexpr double break_width = 40.0;
constexpr double room_for_names = 190.0; // beside the last mark of an end drawn by itself
constexpr double half_rope = 8.0;
constexpr double letter = 6.4; // of the names' letters, on the safe side of most faces
constexpr double row_height = 19.0;
constexpr double gap = 10.0;

/// One end, its distances from the cut end.
struct DrawnEnd {
    std::string_view letter;
    const Allowance* allowance = nullptr;
    std::vector<PieceMark> marks;
    Nanometres over = 0;                         ///< rope outside the tail
    bool checked = false;                        ///< whether that is trimmed only after a check
    std::vector<std::size_t> rows_of_names{};    ///< of the marks, the last one first
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

std::string_view caption_of(Span::Form form) {
    switch (form) {
    case Span::Form::loop:
        return "round the eye or turns";
    case Span::Form::buried:
        return "goes inside";
    case Span::Form::tapered:
        return "thinned";
    case Span::Form::knot:
        return "in the knot";
    case Span::Form::whipped:
        return "whipped";
    case Span::Form::covered:
        return "under cover";
    case Span::Form::straight:
        break;
    }
    return "laid alongside";
}

std::string_view pattern_of(Span::Form form) {
    switch (form) {
    case Span::Form::loop:
        return "p-loop";
    case Span::Form::buried:
    case Span::Form::tapered:
        return "p-inside";
    case Span::Form::knot:
        return "p-knot";
    case Span::Form::whipped:
        return "p-whipped";
    case Span::Form::covered:
        return "p-covered";
    case Span::Form::straight:
        break;
    }
    return "p-straight";
}

OutlinePart part_of(const Span& span, const Scale& scale, Nanometres over, double units_of_width) {
    OutlinePart part{OutlinePart::Form::even, scale.x(over + span.from), scale.x(over + span.to),
                     std::clamp(0.5 * units_of_width * static_cast<double>(span.width),
                                0.4 * half_rope, 2.0 * half_rope)};
    if (span.form == Span::Form::tapered) {
        part.form = OutlinePart::Form::pointed;
    } else if (span.form == Span::Form::knot) {
        part.form = OutlinePart::Form::bulging;
    }
    return part;
}

std::string number(double value) {
    return show_number(value, 2);
}

/// Draws ends on one line: names of marks on one side of the rope, brackets on the other.
class Drawing {
  public:
    Drawing(std::string& into, const Names& names, UnitSystem units, Nanometres rope)
        : into_(into),
          names_(names),
          units_(units),
          units_of_width_(2.0 * half_rope / static_cast<double>(std::max<Nanometres>(rope, 1))) {}

    void draw(DrawnEnd left, std::optional<DrawnEnd> right, const std::string& title) {
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
        rope_ = gap + height(above_);
        const double total = rope_ + height(below_) + gap;
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
    }

  private:
    static double height(const Stacking& side) {
        return half_rope * 2.5 + static_cast<double>(side.rows()) * row_height + gap;
    }

    std::string name_of_mark(const PieceMark& mark) const {
        return std::string(names_.of(mark.name)) + ' ' + show_length(mark.from_end, units_);
    }

    std::string caption(const DrawnEnd& end, std::size_t span) const {
        const Span& of = end.allowance->shape[span];
        return std::string(caption_of(of.form)) + ' ' + show_length(of.to - of.from, units_);
    }

    static std::string over_caption(const DrawnEnd& end) {
        return end.checked ? "trim only after the check" : "trim last";
    }

    /// Finds the row of every name and bracket. A name starts at its mark and runs away from the
    /// cut end, so the one farthest from it comes first: no line to a name then crosses another.
    void lay_out(DrawnEnd& end, const Scale& scale, Stacking& of_names,
                 Stacking& of_brackets) const {
        for (auto mark = end.marks.rbegin(); mark != end.marks.rend(); ++mark) {
            end.rows_of_names.push_back(of_names.place(
                scale.x(mark->from_end), length_of(name_of_mark(*mark)), runs_left(scale)));
        }
        const auto place = [&](Nanometres from, Nanometres to, const std::string& text) {
            const double length = std::abs(scale.x(to) - scale.x(from));
            end.rows_of_brackets.push_back(of_brackets.place(
                scale.x(from), std::max(length, length_of(text)), runs_left(scale)));
        };
        if (end.over > 0) {
            place(0, end.over, over_caption(end));
        }
        for (std::size_t i = 0; i < end.allowance->shape.size(); ++i) {
            const Span& span = end.allowance->shape[i];
            place(end.over + span.from, end.over + span.to, caption(end, i));
        }
    }

    static double length_of(const std::string& text) {
        return 8.0 + letter * static_cast<double>(character_count(text));
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
            fill(part_of(span, scale, end.over, units_of_width_), pattern_of(span.form));
        }
        if (end.over > 0) {
            fill({OutlinePart::Form::even, scale.x(0), scale.x(end.over), half_rope}, "p-over");
        }
        draw_names(end, scale, names_down);
        draw_brackets(end, scale, -names_down);
        into_ += "<text class=\"e\" x=\"" + number(scale.at) + "\" y=\"" +
                 number(rope_ - names_down * half_rope * 2.2 + 4.0) + "\"" + anchor(scale) + ">" +
                 std::string(end.letter) + "</text>";
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

    void fill(const OutlinePart& part, std::string_view pattern) {
        into_ += "<path fill=\"url(#" + std::string(pattern) + ")\" d=\"" +
                 outline_path(std::span(&part, 1), rope_) + "\"/>";
    }

    static std::string anchor(const Scale& scale) {
        return runs_left(scale) ? " text-anchor=\"end\"" : "";
    }

    void draw_names(const DrawnEnd& end, const Scale& scale, double down) {
        std::size_t placed = 0;
        for (auto mark = end.marks.rbegin(); mark != end.marks.rend(); ++mark) {
            const double x = scale.x(mark->from_end);
            const double y = height_of_row(end.rows_of_names[placed++], down);
            const std::string name(names_.of(mark->name));
            into_ += "<rect class=\"m\" data-end=\"" + std::string(end.letter) + "\" data-mark=\"" +
                     html_text(name) + "\" x=\"" + number(x) + "\" y=\"" +
                     number(std::min(y, rope_ - half_rope * 1.4)) + "\" width=\"1\" height=\"" +
                     number(std::abs(y - rope_) + half_rope * 1.4) + "\"/><text x=\"" +
                     number(x + (runs_left(scale) ? -3.0 : 4.0)) + "\" y=\"" + number(y + 4.0) +
                     "\"" + anchor(scale) + ">" + html_text(name) + " <tspan class=\"n\">" +
                     html_text(show_length(mark->from_end, units_)) + "</tspan></text>";
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
        for (std::size_t i = 0; i < end.allowance->shape.size(); ++i) {
            const Span& span = end.allowance->shape[i];
            draw_bracket(scale, end.over + span.from, end.over + span.to, caption(end, i),
                         height_of_row(end.rows_of_brackets[placed++], down), down);
        }
    }

    /// A line along the stretch, open towards the rope, with its text beyond.
    void draw_bracket(const Scale& scale, Nanometres from, Nanometres to, const std::string& text,
                      double y, double down) {
        const double at = y - down * 0.45 * row_height;
        into_ += "<path class=\"b\" d=\"M" + number(scale.x(from)) + ' ' + number(at - down * 4.0) +
                 "V" + number(at) + "H" + number(scale.x(to)) + "V" + number(at - down * 4.0) +
                 "\"/><text x=\"" + number(scale.x(from)) + "\" y=\"" +
                 number(y + (down < 0.0 ? 3.0 : 6.0)) + "\"" + anchor(scale) + ">" +
                 html_text(text) + "</text>";
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
    double units_of_width_;
    Stacking above_{gap};
    Stacking below_{gap};
    double rope_ = 0.0; ///< the height of the rope's centreline
};

DrawnEnd drawn_end(const Piece& piece, End end) {
    DrawnEnd drawn{letter_of(end), &*piece.plan->end(end).allowance, {}, 0, false, {}, {}};
    for (const PieceMark& mark : piece.marks) {
        if (mark.end == end) {
            drawn.marks.push_back(mark);
        }
    }
    drawn.over = outside_tail(piece.ledger, end);
    drawn.checked = piece.check.has_value();
    return drawn;
}

} // namespace

void append_drawing(std::string& into, const Piece& piece, UnitSystem units) {
    const LinePlan& plan = *piece.plan;
    Drawing drawing(into, *plan.names, units, to_nanometres(plan.rope->counting_diameter()));
    drawing.draw(drawn_end(piece, End::a), drawn_end(piece, End::b),
                 "The rope laid straight, end a on the left, end b on the right, what lies between "
                 "broken out. Along the rope to scale; drawn thicker than it is. Every mark stands "
                 "in the tables of the two ends.");
}

void append_drawing(std::string& into, std::string_view kind, const Allowance& allowance,
                    Length rope, const Names& names, UnitSystem units) {
    DrawnEnd end{"a", &allowance, {}, 0, false, {}, {}};
    for (const Mark& mark : allowance.marks) {
        end.marks.push_back({End::a, mark.name, mark.from_tail_end});
    }
    Drawing(into, names, units, to_nanometres(rope))
        .draw(std::move(end), std::nullopt,
              std::string(kind) + ": the rope laid straight, its end on the left. Along the rope "
                                  "to scale; drawn thicker than it is.");
}

std::string_view drawing_patterns() {
    return R"svg(<svg width="0" height="0" aria-hidden="true"><defs>
<pattern id="p-inside" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V6" stroke="#222" stroke-width="1.2"/></pattern>
<pattern id="p-loop" width="6" height="6" patternUnits="userSpaceOnUse"><circle cx="2" cy="2" r="1" fill="#222"/></pattern>
<pattern id="p-knot" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0H7M0 0V7" stroke="#222" stroke-width="1"/></pattern>
<pattern id="p-whipped" width="3" height="8" patternUnits="userSpaceOnUse"><path d="M0 0V8" stroke="#222" stroke-width="1.6"/></pattern>
<pattern id="p-covered" width="8" height="4" patternUnits="userSpaceOnUse"><path d="M0 2H8" stroke="#222" stroke-width="1"/></pattern>
<pattern id="p-straight" width="9" height="9" patternUnits="userSpaceOnUse"><path d="M0 9L9 0" stroke="#777" stroke-width="0.8"/></pattern>
<pattern id="p-over" width="10" height="10" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)"><path d="M0 0V10" stroke="#222" stroke-width="3"/></pattern>
</defs></svg>)svg";
}

} // namespace libsplice
