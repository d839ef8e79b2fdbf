// Small figures that stand for one turn, tuck, clip or crossing of a rope that is laid out
// straight.
#pragma once

#include <string>

namespace libsplice {

/// The room of one figure, in units of the drawing.
struct MotifRoom {
    double from = 0.0;
    double to = 0.0;   ///< over `from`
    double y = 0.0;    ///< of the rope's centreline
    double half = 0.0; ///< half the rope's width
};

/// Makes a figure: the `d` of an SVG path.
using Motif = std::string (*)(const MotifRoom& room);

/// A ring across the rope: one turn round something.
[[nodiscard]] std::string turn_motif(const MotifRoom& room);
/// A loop whose end crosses its beginning.
[[nodiscard]] std::string half_hitch_motif(const MotifRoom& room);
/// Two strands that cross, and the same in doubled rope.
[[nodiscard]] std::string crossing_motif(const MotifRoom& room);
[[nodiscard]] std::string doubled_crossing_motif(const MotifRoom& room);
/// Over one and under one.
[[nodiscard]] std::string tuck_motif(const MotifRoom& room);
/// An end led through a small turn.
[[nodiscard]] std::string nip_motif(const MotifRoom& room);
/// A stitch there and back.
[[nodiscard]] std::string stitch_motif(const MotifRoom& room);
/// One turn of thin line.
[[nodiscard]] std::string seizing_motif(const MotifRoom& room);
/// A clip with the two nuts of its bow.
[[nodiscard]] std::string clip_motif(const MotifRoom& room);
/// A sleeve pressed over the whole.
[[nodiscard]] std::string sleeve_motif(const MotifRoom& room);
/// A dent from both sides.
[[nodiscard]] std::string crimp_motif(const MotifRoom& room);
/// An end melted together, rounded towards the cut.
[[nodiscard]] std::string melted_motif(const MotifRoom& room);
/// Yarns along the rope.
[[nodiscard]] std::string core_motif(const MotifRoom& room);
/// A ball that the rope runs through.
[[nodiscard]] std::string ball_motif(const MotifRoom& room);
/// The pin of an eye, at its crown.
[[nodiscard]] std::string pin_motif(const MotifRoom& room);

} // namespace libsplice
