// How each form of span is named and drawn, a row of one table.
#include "libsplice/sheet/drawing/span_look.h"

#include "libsplice/sheet/drawing/motif.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace libsplice {

namespace {

/// The words, pattern and figures of one form.
struct Look {
    std::string_view plain;     ///< where nothing is counted
    std::string_view one = {};  ///< for a count of 1
    std::string_view many = {}; ///< for other counts, which stand at the `#`
    std::string_view pattern{}; ///< none: what is under it shows
    Motif motif = nullptr;      ///< one figure
    double pitch = 0.0;         ///< between figures that are not counted; 0: one for the whole
    std::string_view css = "w"; ///< of the figures: lines, or shapes that hide what is under them
};

// In the order of Span::Form.
constexpr std::array<Look, Span::forms> looks{{
    {"laid alongside", {}, {}, "p-straight"},
    {"round the eye", {}, {}, "p-loop", pin_motif},
    {"goes inside", "goes inside", "# tails inside", "p-inside"},
    {"thinned", {}, {}, "p-inside"},
    {"in the knot", "in the knot, 1 crossing", "in the knot, # crossings", "p-knot"},
    {"whipped", {}, {}, "p-whipped"},
    {"under cover", {}, {}, "p-covered"},
    {"in turns", "1 turn", "# turns", {}, turn_motif, 9.0, "o"},
    {"in half hitches", "1 half hitch", "# half hitches", {}, half_hitch_motif, 14.0},
    {"crosses over", "crosses once", "crosses # times", {}, crossing_motif, 12.0},
    {"tucked", "1 tuck", "# tucks", {}, tuck_motif, 12.0, "o"},
    {"held in turns", "held in 1 turn", "held in # turns", {}, nip_motif, 16.0},
    {"knot in doubled rope", "knot in doubled rope, 1 crossing",
     "knot in doubled rope, # crossings", "p-knot", doubled_crossing_motif, 14.0},
    {"stitched", {}, {}, {}, stitch_motif, 7.0},
    {"seized", {}, {}, {}, seizing_motif, 3.0},
    {"in clips", "1 clip", "# clips", "p-straight", clip_motif, 16.0, "o"},
    {"in a pressed sleeve", "in a pressed sleeve", "# pressed sleeves", {}, sleeve_motif, 0.0, "o"},
    {"crimped", {}, {}, {}, crimp_motif, 10.0},
    {"melted", {}, {}, {}, melted_motif, 0.0, "m"},
    {"bare core", {}, {}, {}, core_motif},
    {"in the ball", {}, {}, {}, ball_motif, 0.0, "o"},
}};

const Look& look_of(Span::Form form) {
    return looks.at(static_cast<std::size_t>(form));
}

std::string counted(const Look& look, double count) {
    if (!(count > 0.0) || look.many.empty()) {
        return std::string(look.plain);
    }
    if (show_number(count, 2) == "1") {
        return std::string(look.one);
    }
    std::string words(look.many);
    return words.replace(words.find('#'), 1, show_number(count, 2));
}

/// How many figures the span is given; none is drawn narrower than can be seen.
int figures_of(const Span& span, const Look& look, double length) {
    constexpr double narrowest = 2.0;
    const double wanted = span.count > 0.0 && !look.many.empty() ? std::ceil(span.count)
                          : look.pitch > 0.0                     ? length / look.pitch
                                                                 : 1.0;
    return std::max(1, static_cast<int>(std::min(wanted, length / narrowest)));
}

} // namespace

std::string words_of(const Span& span, UnitSystem units) {
    std::string words = counted(look_of(span.form), span.count);
    if (span.around > 0) {
        words += (span.form == Span::Form::loop ? ", on " : " round ") +
                 show_fine(from_nanometres(span.around), units);
    }
    return words;
}

void append_look(std::string& into, const Span& span, const OutlinePart& part, double y) {
    const Look& look = look_of(span.form);
    if (!look.pattern.empty()) {
        into += "<path fill=\"url(#" + std::string(look.pattern) + ")\" d=\"" +
                outline_path(std::span(&part, 1), y) + "\"/>";
    }
    // An eye whose pin is not known shows none.
    if (look.motif == nullptr || (span.form == Span::Form::loop && span.around <= 0)) {
        return;
    }
    const double from = std::min(part.from, part.to);
    const double length = std::abs(part.to - part.from);
    const int figures = figures_of(span, look, length);
    into += "<path class=\"" + std::string(look.css) + "\" d=\"";
    for (int i = 0; i < figures; ++i) {
        const double start = from + length * i / figures;
        into += look.motif({start, start + length / figures, y, part.half_width});
    }
    into += "\"/>";
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
