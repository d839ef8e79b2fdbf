// Small figures, each a path, that stand for one turn, tuck, clip or crossing.
#include "libsplice/sheet/drawing/motif.h"

#include "libsplice/units/show.h"

#include <algorithm>

namespace libsplice {

namespace {

std::string coordinate(double value) {
    return show_number(value, 1);
}

/// Puts an SVG path together.
class Pen {
  public:
    Pen& move(double x, double y) { return command('M', x, y); }
    Pen& line(double x, double y) { return command('L', x, y); }
    Pen& curve(double x1, double y1, double x2, double y2, double x, double y) {
        return command('C', x1, y1).command(' ', x2, y2).command(' ', x, y);
    }
    Pen& ring(double x, double y, double half_width, double half_height) {
        const std::string radii =
            coordinate(half_width) + ' ' + coordinate(half_height) + " 0 1 0 ";
        move(x - half_width, y);
        path_ += 'a' + radii + coordinate(2.0 * half_width) + " 0a" + radii +
                 coordinate(-2.0 * half_width) + " 0Z";
        return *this;
    }
    Pen& box(double left, double top, double right, double bottom) {
        move(left, top).line(right, top).line(right, bottom).line(left, bottom);
        path_ += 'Z';
        return *this;
    }
    [[nodiscard]] const std::string& path() const { return path_; }

  private:
    Pen& command(char order, double x, double y) {
        path_ += order + coordinate(x) + ' ' + coordinate(y);
        return *this;
    }
    std::string path_;
};

double middle(const MotifRoom& room) {
    return 0.5 * (room.from + room.to);
}
/// Half the width of a figure that is as wide as its room, or as it looks well.
double half_width(const MotifRoom& room, double share_of_rope) {
    return std::min(0.45 * (room.to - room.from), share_of_rope * room.half);
}

void draw_cross(Pen& pen, const MotifRoom& room, double shift) {
    const double x = middle(room) + shift;
    const double across = half_width(room, 1.0);
    pen.move(x - across, room.y - room.half).line(x + across, room.y + room.half);
    pen.move(x - across, room.y + room.half).line(x + across, room.y - room.half);
}

} // namespace

std::string turn_motif(const MotifRoom& room) {
    return Pen().ring(middle(room), room.y, half_width(room, 0.7), 1.45 * room.half).path();
}

std::string half_hitch_motif(const MotifRoom& room) {
    const double x = middle(room);
    const double reach = half_width(room, 0.9);
    const double low = room.y + room.half;
    const double high = room.y - 2.3 * room.half;
    return Pen()
        .move(x - reach, low)
        .curve(x + 3.5 * reach, high, x - 3.5 * reach, high, x + reach, low)
        .path();
}

std::string crossing_motif(const MotifRoom& room) {
    Pen pen;
    draw_cross(pen, room, 0.0);
    return pen.path();
}

std::string doubled_crossing_motif(const MotifRoom& room) {
    Pen pen;
    const double apart = 0.18 * half_width(room, 1.0) * 2.0;
    draw_cross(pen, room, -0.5 * apart);
    draw_cross(pen, room, 0.5 * apart);
    return pen.path();
}

std::string tuck_motif(const MotifRoom& room) {
    const double x = middle(room);
    const double reach = std::min(0.5 * (room.to - room.from), 2.0 * room.half);
    return Pen()
        .box(x - reach, room.y - 1.2 * room.half, x, room.y)
        .box(x, room.y, x + reach, room.y + 1.2 * room.half)
        .path();
}

std::string nip_motif(const MotifRoom& room) {
    return Pen()
        .move(room.from, room.y)
        .line(room.to, room.y)
        .ring(middle(room), room.y, half_width(room, 0.9), 1.45 * room.half)
        .path();
}

std::string stitch_motif(const MotifRoom& room) {
    const double reach = 0.7 * room.half;
    return Pen()
        .move(room.from, room.y - reach)
        .line(middle(room), room.y + reach)
        .line(room.to, room.y - reach)
        .path();
}

std::string seizing_motif(const MotifRoom& room) {
    const double x = middle(room);
    return Pen().move(x, room.y - 1.3 * room.half).line(x, room.y + 1.3 * room.half).path();
}

std::string clip_motif(const MotifRoom& room) {
    const double x = middle(room);
    const double wide = half_width(room, 0.6);
    const double nut = 0.3 * room.half;
    const double high = room.y - 1.45 * room.half;
    return Pen()
        .box(x - wide, high, x + wide, room.y + 1.3 * room.half)
        .ring(x, high + 1.5 * nut, std::min(nut, wide), nut)
        .ring(x, room.y + 1.3 * room.half - 1.5 * nut, std::min(nut, wide), nut)
        .path();
}

std::string sleeve_motif(const MotifRoom& room) {
    const double reach = 1.4 * room.half;
    const double rim = std::min(3.0, 0.2 * (room.to - room.from));
    return Pen()
        .box(room.from, room.y - reach, room.to, room.y + reach)
        .move(room.from + rim, room.y - reach)
        .line(room.from + rim, room.y + reach)
        .move(room.to - rim, room.y - reach)
        .line(room.to - rim, room.y + reach)
        .path();
}

std::string crimp_motif(const MotifRoom& room) {
    const double out = 1.3 * room.half;
    const double in = 0.4 * room.half;
    return Pen()
        .move(room.from, room.y - out)
        .line(middle(room), room.y - in)
        .line(room.to, room.y - out)
        .move(room.from, room.y + out)
        .line(middle(room), room.y + in)
        .line(room.to, room.y + out)
        .path();
}

std::string melted_motif(const MotifRoom& room) {
    return Pen().ring(middle(room), room.y, 0.5 * (room.to - room.from), 1.05 * room.half).path();
}

std::string core_motif(const MotifRoom& room) {
    Pen pen;
    for (const double share : {-0.5, 0.0, 0.5}) {
        const double y = room.y + share * room.half;
        pen.move(room.from, y).line(room.to, y);
    }
    return pen.path();
}

std::string ball_motif(const MotifRoom& room) {
    const double reach = 0.5 * (room.to - room.from);
    return Pen().ring(middle(room), room.y, reach, 1.9 * room.half).path();
}

std::string pin_motif(const MotifRoom& room) {
    const double reach = half_width(room, 0.55);
    return Pen().ring(middle(room), room.y, reach, reach).path();
}

} // namespace libsplice
