// What a line's load is worked out from, as the job says it.
#pragma once

#include "libsplice/units/sail.h"

#include <variant>

namespace libsplice {

/// `{ sheet_of = "18 m2", wind = "20 kn" }`: a sheet at the clew.
struct SheetLoad {
    Area sail;
    Speed wind; ///< apparent
};

/// `{ mainsheet = { foot, luff, from_end, parts }, wind }`: one part of a mainsheet's tackle.
struct MainsheetLoad {
    Length foot;
    Length luff;
    Length from_end; ///< from the boom's end to the sheet; negative aft of the clew
    int parts = 1;
    Speed wind; ///< apparent
};

/// `{ block = "800 N", angle = 90 }`: what holds a block that turns a line of that pull.
struct BlockLoad {
    Force pull;
    Angle turn;
};

/// `{ tackle = "600 N", parts = 3, sheaves = 3 }`: the hauling part of a tackle.
struct TackleLoad {
    Force load;
    int parts = 1;
    int sheaves = 0;
};

/// `{ righting = { boat_mass, beam, crew_mass }, arm }`: what holds a boat of two hulls upright.
struct RightingLoad {
    Mass boat;
    Length beam;
    Mass crew;
    Length arm;
};

using LoadWords = std::variant<SheetLoad, MainsheetLoad, BlockLoad, TackleLoad, RightingLoad>;

} // namespace libsplice
