// The first of an end at true size, to lay the rope along.
#include "libsplice/sheet/drawing/strip.h"

#include "libsplice/sheet/words/words.h"

#include <algorithm>

namespace libsplice {

namespace {

// Millimetres, as are all measures here.
constexpr double thickest_drawn = 8.0;
constexpr double least_between_strip_numbers = 3.6;
constexpr double check_bar = 100.0;
constexpr double base_of_numbers = 2.9;
constexpr double top_of_rope = 4.4;
constexpr double beyond_rope = 1.0;  ///< how far the lines of the marks run
constexpr double room_for_bar = 4.4; ///< below the rope

std::string in_figures(double value) {
    return show_number(value, 3);
}

double millimetres_of(Nanometres length) {
    return static_cast<double>(length) / 1e6;
}

} // namespace

double append_strip(std::string& into, const CardEnd& end, Length diameter) {
    const auto near = [](double at) {
        return at > 0.0 && at <= strip_millimetres;
    };
    const auto near_marks = std::ranges::count_if(end.marks, [&](const CardMark& mark) {
        return std::ranges::any_of(mark.places,
                                   [&](Nanometres at) { return near(millimetres_of(at)); });
    });
    if (near_marks < 2) {
        return 0.0;
    }
    const std::string letter(letter_of(end.end));
    const double thick = std::min(diameter.si() * 1000.0, thickest_drawn);
    const double height = top_of_rope + thick + room_for_bar;
    const double bar_at = height - 1.6;
    into += "<svg class=\"strip\" width=\"190mm\" height=\"" + in_figures(height) +
            "mm\" viewBox=\"0 0 190 " + in_figures(height) +
            "\" role=\"img\" aria-label=\"The first 190 mm of end " + letter +
            " at true size, marks numbered, and a bar of 100 mm\">";
    into += "<path class=\"w\" d=\"M190 " + in_figures(top_of_rope) + "H0.15V" +
            in_figures(top_of_rope + thick) + "H190\"/>";
    double last_number = -least_between_strip_numbers;
    for (const CardMark& mark : end.marks) {
        bool named = false;
        for (const Nanometres place : mark.places) {
            const double at = millimetres_of(place);
            if (!near(at)) {
                continue;
            }
            into += "<path class=\"t\" data-strip=\"" + letter + "\" data-at=\"" + in_figures(at) +
                    "\" d=\"M" + in_figures(at) + ' ' + in_figures(top_of_rope - beyond_rope) +
                    "V" + in_figures(top_of_rope + thick + beyond_rope) + "\"/>";
            if (!named && at - last_number >= least_between_strip_numbers) {
                into += "<text x=\"" + in_figures(std::min(at, strip_millimetres - 2.5)) +
                        "\" y=\"" + in_figures(base_of_numbers) + "\" text-anchor=\"middle\">" +
                        std::to_string(mark.number) + "</text>";
                last_number = at;
                named = true;
            }
        }
    }
    into += "<path class=\"w\" d=\"M0.15 " + in_figures(bar_at - 1.2) + "V" +
            in_figures(bar_at + 1.2) + "M0 " + in_figures(bar_at) + "H" + in_figures(check_bar) +
            "M" + in_figures(check_bar) + ' ' + in_figures(bar_at - 1.2) + "V" +
            in_figures(bar_at + 1.2) + "\"/><text x=\"" + in_figures(check_bar + 2.0) + "\" y=\"" +
            in_figures(bar_at + 1.2) + "\">100 mm: measure this bar first. End " + letter +
            ", true size.</text></svg>\n";
    return height;
}

} // namespace libsplice
