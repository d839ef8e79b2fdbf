// A made end sketched in proportion, a dot on its bearing point.
#include "libsplice/sheet/drawing/bearing_sketch.h"

#include "libsplice/sheet/drawing/motif.h"
#include "libsplice/sheet/html/html_text.h"
#include "libsplice/units/show.h"

#include <algorithm>
#include <cmath>

namespace libsplice {

namespace {

using Form = Span::Form;

constexpr double sketch_width = 170.0;
constexpr double sketch_height = 64.0;
constexpr double middle_line = 0.5 * sketch_height;
constexpr double left_edge = 8.0;
constexpr double room_across = 52.0; ///< for eye and rope
constexpr double room_along = 84.0;
constexpr double rope_of_knots = 9.0; ///< where nothing else sets a scale

std::string place(double x, double y) {
    return show_number(x, 1) + ' ' + show_number(y, 1);
}

const Span* find_span(const End& allowance, std::initializer_list<Form> forms) {
    const auto found = std::ranges::find_if(allowance.shape, [&](const Span& span) {
        return std::ranges::count(forms, span.form) != 0;
    });
    return found == allowance.shape.end() ? nullptr : &*found;
}

/// Draws with one pen: rope as two strokes, things as outlines, the bearing point as a dot.
class Sketch {
  public:
    explicit Sketch(std::string& into) : into_(into) {}

    void rope(const std::string& path, double width) {
        stroke(path, width + 2.6, "#111");
        stroke(path, std::max(width - 0.2, 0.5), "#fff");
    }
    void ring(double x, double y, double radius) {
        into_ += "<circle class=\"o\" cx=\"" + show_number(x, 1) + "\" cy=\"" + show_number(y, 1) +
                 "\" r=\"" + show_number(radius, 1) + "\"/>";
    }
    void shape(const std::string& path) { into_ += "<path class=\"o\" d=\"" + path + "\"/>"; }
    void dot(double x, double y) {
        into_ += "<circle class=\"d\" cx=\"" + show_number(x, 1) + "\" cy=\"" + show_number(y, 1) +
                 "\" r=\"3.4\"/>";
    }

  private:
    void stroke(const std::string& path, double width, std::string_view colour) {
        into_ += "<path fill=\"none\" stroke=\"" + std::string(colour) + "\" stroke-width=\"" +
                 show_number(width, 1) + "\" d=\"" + path + "\"/>";
    }
    std::string& into_;
};

std::string straight(double from, double to, double y = middle_line) {
    return "M" + place(from, y) + "L" + place(to, y);
}

/// An eye in the units of the sketch.
struct Eye {
    double width;  ///< of the rope
    double radius; ///< of its centreline round the pin
    double pin;    ///< radius; 0: a soft eye, which stands a little open
    double throat; ///< along the sketch
    double crown;  ///< its inside
    double centre; ///< of the pin
    double scale;  ///< units per metre
};

Eye eye_of(const Span& loop, double inside_in_metres) {
    const double rope = from_nanometres(loop.width).si();
    const double pin = from_nanometres(loop.around).si();
    const double scale =
        std::min(room_along / (inside_in_metres + rope), room_across / (pin + 2.0 * rope));
    Eye eye{};
    eye.scale = scale;
    eye.width = rope * scale;
    eye.pin = 0.5 * pin * scale;
    eye.radius = std::max(eye.pin + 0.5 * eye.width, 0.8 * eye.width);
    eye.crown = left_edge + eye.width;
    eye.centre = left_edge + 0.5 * eye.width + eye.radius;
    eye.throat = eye.crown + inside_in_metres * scale;
    return eye;
}

void draw_eye(Sketch& sketch, const Eye& eye) {
    std::string path = straight(sketch_width, eye.throat);
    if (eye.throat - eye.centre > eye.radius) {
        const double angle = std::acos(eye.radius / (eye.throat - eye.centre));
        const double x = eye.centre + eye.radius * std::cos(angle);
        const double y = eye.radius * std::sin(angle);
        path += "L" + place(x, middle_line - y) + "A" + place(eye.radius, eye.radius) + " 0 1 0 " +
                place(x, middle_line + y) + "L" + place(eye.throat, middle_line);
    }
    sketch.rope(path, eye.width);
    if (eye.pin > 0.0) {
        sketch.ring(eye.centre, middle_line, eye.pin);
    }
}

/// What holds an eye beyond its throat: a swelling over what lies inside, a knot, or a part that
/// lies beside.
void draw_hold(Sketch& sketch, const Eye& eye, const End& allowance) {
    const double end = std::min(eye.throat + 52.0, sketch_width - 12.0);
    if (find_span(allowance, {Form::buried, Form::core, Form::tucked}) != nullptr) {
        sketch.rope(straight(eye.throat, end), 1.3 * eye.width);
    } else if (find_span(allowance, {Form::knot, Form::turns, Form::nipped, Form::doubled}) !=
               nullptr) {
        const double radius = std::clamp(1.3 * eye.width, 5.0, 16.0);
        sketch.ring(eye.throat + radius, middle_line, radius);
        sketch.ring(eye.throat + 2.2 * radius, middle_line, radius);
    } else {
        sketch.rope(straight(eye.throat, end, middle_line + eye.width + 1.0), eye.width);
    }
}

/// Turns round a spar, seen along it; the load comes from the right.
void draw_turns(Sketch& sketch, const Span& turns) {
    const double rope = from_nanometres(turns.width).si();
    const double around = std::max(from_nanometres(turns.around).si(), rope);
    const double scale = room_across / (around + 2.0 * rope);
    const double width = std::min(rope * scale, 10.0);
    const double radius = 0.5 * around * scale;
    const double centre = left_edge + width + radius;
    const double line = middle_line - radius - 0.5 * width;
    const double ring = radius + 0.5 * width;
    sketch.rope(straight(sketch_width, centre, line) + "A" + place(ring, ring) + " 0 1 0 " +
                    place(centre + ring, middle_line),
                width);
    sketch.ring(centre, middle_line, radius);
    sketch.dot(centre + radius, middle_line);
}

/// A knot behind a plate with a hole, and a ball between them if there is one.
void draw_stopper(Sketch& sketch, bool ball) {
    const double radius = 1.1 * rope_of_knots;
    const double face = left_edge + 14.0 + 3.4 * radius + (ball ? 22.0 : 0.0);
    sketch.rope(straight(left_edge, sketch_width), rope_of_knots);
    double knot = face - 2.2 * radius;
    if (ball) {
        sketch.ring(face - 11.0, middle_line, 15.0);
        knot -= 22.0;
    }
    sketch.ring(knot, middle_line, radius);
    sketch.ring(knot + 1.2 * radius, middle_line, radius);
    sketch.shape("M" + place(face, 4.0) + "v18h4v-18ZM" + place(face, sketch_height - 4.0) +
                 "v-18h4v18Z");
    sketch.dot(face, middle_line);
}

/// Rope in a fitting, the dot `beyond` metres from its mouth; beyond the rope's end lies a pin.
void draw_fitting(Sketch& sketch, const Span& fitting, double beyond) {
    constexpr double mouth = 78.0;
    const double inside = from_nanometres(fitting.to - fitting.from).si();
    const double reach = std::max({inside, beyond, 1e-3});
    const double scale = (mouth - left_edge - 8.0) / reach;
    const double dot = mouth - beyond * scale;
    sketch.rope(straight(mouth - inside * scale, sketch_width), rope_of_knots);
    sketch.shape(sleeve_motif({mouth - reach * scale, mouth, middle_line, 10.0}));
    if (beyond > inside) {
        sketch.ring(dot, middle_line, 7.0);
    }
    sketch.dot(dot, middle_line);
}

/// Rope that is only cut, or that goes on into the other piece of a join.
void draw_plain(Sketch& sketch, bool goes_on) {
    const double dot = goes_on ? 78.0 : 2.0 * left_edge;
    sketch.rope(straight(goes_on ? left_edge : dot, sketch_width), rope_of_knots);
    sketch.dot(dot, middle_line);
}

/// Turns round something that is not the rope itself.
const Span* find_spar(const End& allowance) {
    const auto found = std::ranges::find_if(allowance.shape, [](const Span& span) {
        return span.form == Form::turns && span.around > 0;
    });
    return found == allowance.shape.end() ? nullptr : &*found;
}

void draw(Sketch& sketch, const End& allowance) {
    if (const Span* spar = find_spar(allowance)) {
        draw_turns(sketch, *spar);
    } else if (const Span* loop = find_span(allowance, {Form::loop})) {
        const double round = from_nanometres(loop->to - loop->from).si();
        const double inside = allowance.eye ? allowance.eye->inside.si() : 0.5 * round;
        const double to_bearing = allowance.eye ? allowance.eye->bearing.si() : inside;
        const Eye eye = eye_of(*loop, inside);
        draw_eye(sketch, eye);
        draw_hold(sketch, eye, allowance);
        sketch.dot(eye.throat - to_bearing * eye.scale, middle_line);
    } else if (find_span(allowance, {Form::knot, Form::doubled, Form::turns}) != nullptr) {
        draw_stopper(sketch, find_span(allowance, {Form::ball}) != nullptr);
    } else if (const Span* fitting = find_span(allowance, {Form::pressed, Form::crimped})) {
        draw_fitting(sketch, *fitting,
                     from_nanometres(allowance.standing_mark - allowance.total()).si());
    } else {
        draw_plain(sketch, find_span(allowance, {Form::buried, Form::tapered, Form::covered,
                                                 Form::core}) != nullptr &&
                               allowance.made);
    }
}

} // namespace

void append_bearing_sketch(std::string& into, const KindDeclaration& kind, const End& allowance,
                           LineEnd end) {
    const std::string datum = html_text(kind.datum);
    into += "<figure><svg class=\"bearing\" viewBox=\"0 0 " + show_number(sketch_width, 0) + ' ' +
            show_number(sketch_height, 0) + "\" role=\"img\" aria-label=\"" + html_text(kind.name) +
            ": a dot on the bearing point, " + datum + "\">";
    into += end == LineEnd::a
                ? "<g>"
                : "<g transform=\"matrix(-1 0 0 1 " + show_number(sketch_width, 0) + " 0)\">";
    Sketch sketch(into);
    draw(sketch, allowance);
    into += "</g></svg><figcaption>the dot: " + datum + "</figcaption></figure>\n";
}

} // namespace libsplice
