// What an end knows of its own parts, in their own types.
#pragma once

#include "libsplice/allowance/names.h"
#include "libsplice/base/short_list.h"
#include "libsplice/mechanics/rope/braid.h"
#include "libsplice/units/quantity.h"

#include <array>
#include <optional>

namespace libsplice {

/// An eye or a loop, as it is made and as it bears.
struct EyeFacts {
    Length diameter;    ///< of the rope, or the core, that goes round
    Length inside;      ///< from the inside of its crown to its throat, as it is made
    Length bearing;     ///< from the bearing point to the throat, in use; `inside` in most eyes
    Length pin;         ///< diameter of what it bears on; 0: a soft eye
    Length bent_round;  ///< diameter of what it is shaped on; `pin` in most eyes
    Length rope_round;  ///< rope from throat to throat
    Angle throat_angle; ///< included
    Length legs;        ///< how far the legs lie side by side before the throat; behind a ring
};

/// How a buried tail ends.
struct TaperFacts {
    std::optional<int> strands = {};     ///< of the tail's braid, where they are known
    int pairs = 0;                       ///< dropped along the taper
    Length end_step;                     ///< in the host's diameter, where the tail ends
    double end_section = 0.0;            ///< what is left there, as a share of the whole
    std::optional<double> end_loss = {}; ///< of strength, read crudely from tests of blunt ends
};

/// A tail led inside the rope.
struct BuryFacts {
    Length tail;            ///< the whole end beyond the throat
    Length taper;           ///< the part of it that is thinned out
    Length take_up;         ///< host used beyond the tail's own length, as spliced
    Length settling;        ///< what of that draws out at first load, as a negative length
    Length exit;            ///< from the throat to where the fid comes out
    Length minimum;         ///< the published minimum of the tail; 0: none
    Length over;            ///< diameter of what is seen over the bury; 0: not known
    BuriedTail inside = {}; ///< the tail as it lies in the host
    std::optional<double> braid_constant = {}; ///< K of the braid over the tail, once loaded
    std::optional<Length> entry = {};          ///< from the throat to where the core is entered
    std::optional<Length> fid = {};            ///< one full fid
    std::optional<TaperFacts> end = {};        ///< how it ends, where it ends inside
};

/// The grip of the braid on a buried tail, and what was assumed for it.
struct GripFacts {
    double margin = 0.0; ///< times the grip that it needs
    double lowest = 0.0;
    double highest = 0.0;
    double friction = 0.0;
    double braid_angle_deg = 0.0;
    double packing = 0.0;
    double throat_share = 0.0;
};

/// The cover of a rope whose core is spliced.
struct CoverFacts {
    std::optional<Length>
        slip_knot; ///< from the end to the knot that holds cover and core together
    std::optional<Length> tail = {}; ///< cover led into the core
    std::optional<Length> end = {};  ///< from the bearing point to where the cover ends
};

/// The lock stitching of a splice.
struct StitchFacts {
    Length start; ///< from the throat
    std::optional<Length> end = {};
};

/// A knot.
struct KnotFacts {
    Length rope;                     ///< that the knot uses up
    std::optional<Length> body = {}; ///< its length along the rope, where `rope` leaves it out
    Length left;                     ///< what is left sticking out beyond it
    ValueName left_name = ValueName::tail_m; ///< what that is called among the values
    std::optional<Length> ball = {};         ///< length of a ball or ferrule that it holds
    std::optional<Length> width = {}; ///< least width across the line at its tightest, of a stopper
};

/// Turns round a spar, a pin or another rope.
struct TurnFacts {
    double count = 0.0;
    Length around;                             ///< diameter of what they go round
    ValueName around_name = ValueName::spar_m; ///< what that is called among the values
    std::optional<double> bend_ratio = {};     ///< what they go round, in diameters of the rope
    std::optional<double> load_past = {};      ///< share of a load that gets past them
    std::optional<double> margin = {};         ///< of a hitch that friction has to hold
    std::optional<double> extra = {};          ///< turns more that would hold
};

} // namespace libsplice
