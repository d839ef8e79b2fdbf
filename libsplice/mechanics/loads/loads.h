// The loads of a sailing boat's lines, by published rules of thumb and by statics.
#pragma once

#include "libsplice/units/quantity.h"
#include "libsplice/units/sail.h"

#include <optional>

namespace libsplice {

/// The pull of a headsail's or spinnaker's sheet at the clew, `wind` being the apparent wind at
/// which this sail is really carried: c A V^2 kgf with square metres and knots, `pressure` being c.
[[nodiscard]] Force sheet_load(Area sail, Speed wind, double pressure);

/// A mainsail, as its sheet sees it.
struct MainsailShape {
    Length foot;     ///< along the boom, more than 0
    Length luff;     ///< along the mast, more than 0
    Length from_end; ///< boom's end to the sheet; negative where the sheet is aft of the clew
};

/// The pull of the whole mainsheet tackle at the boom: c E^2 P^2 V^2 / (sqrt(P^2 + E^2) (E - X))
/// kgf, with metres and knots apparent, `pressure` being c. Each of the tackle's parts carries its
/// share of it, more by friction. Nothing if the sheet is taken at or ahead of the mast (E <= X).
[[nodiscard]] std::optional<Force> mainsheet_load(const MainsailShape& sail, Speed wind,
                                                  double pressure);

/// The pull on a block that turns a line under `pull` by `turn` (0 to pi): 2 T sin(turn / 2).
/// Statics, without friction.
[[nodiscard]] Force block_load(Force pull, Angle turn);

/// The pull on the hauling part of a tackle that holds `load` with `parts` parts over `sheaves`
/// sheaves, each of which costs the share `loss` of the load: W (1 + f n) / m. `parts` 1 or more,
/// `sheaves` 0 or more.
[[nodiscard]] Force tackle_pull(Force load, int parts, int sheaves, double loss);

/// How many times its hauling pull a tackle of m parts and m sheaves holds, hauled from the fixed
/// block, whose sheaves pass on the share `efficiency` (over 0, under 1) of the pull:
/// e (1 - e^m) / (1 - e). Source: Pipeline Rules of Thumb Handbook, p. 6; e is 0.962 for roller
/// bearings and 0.917 for plain ones there.
[[nodiscard]] double tackle_advantage(int parts, double efficiency);

/// A boat of two hulls with its whole crew out on the wire.
struct TwoHulls {
    Mass boat;
    Length beam; ///< over all
    Mass crew;
    Length outside; ///< how far outside the hull the crew's weight hangs
};

/// Its greatest righting moment, as the windward hull leaves the water: m_boat B / 2 + m_crew
/// (B + outside), times standard gravity. For two hulls only.
[[nodiscard]] Moment righting_moment(const TwoHulls& boat);

/// The pull of a line that holds `moment` at `arm` (more than 0) from the axis of heel.
[[nodiscard]] Force pull_at(Moment moment, Length arm);

} // namespace libsplice
