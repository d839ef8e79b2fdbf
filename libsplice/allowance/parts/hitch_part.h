// Hitches and bends: full turns round what they hold, the rest of the hitch, and the tail.
#pragma once

#include "libsplice/allowance/parts/parts.h"

namespace libsplice {

namespace field {
inline constexpr FieldDeclaration spar{"spar",
                                       "diameter of the spar, post or rail that it goes round",
                                       Dimension::length,
                                       0.001,
                                       2.0,
                                       "none; it must be given",
                                       true};
inline constexpr FieldDeclaration held_pin{"pin",
                                           "diameter of the pin, ring or bow that it goes round",
                                           Dimension::length,
                                           0.001,
                                           1.0,
                                           "none; it must be given",
                                           true,
                                           {},
                                           {},
                                           FieldRole::pin};
[[nodiscard]] constexpr FieldDeclaration turns_of(std::string_view default_text,
                                                  double lowest = 1.0) {
    return {"turns",
            "full turns round it, from the load side back to the load side",
            Dimension::count,
            lowest,
            20.0,
            default_text};
}
} // namespace field

/// Which of a kind's fields describe a hitch.
struct HitchFields {
    std::size_t around; ///< the diameter of what it goes round
    std::optional<std::size_t> turns;
    std::size_t tail;
    ValueName around_name = ValueName::spar_m; ///< what `around` is called among the values
};

/// One full turn of a hitch.
struct Turn {
    Length around;      ///< diameter of what it goes round
    SourcedLength rope; ///< rope that it takes
};
/// A turn round one round thing; round two of them with `gap` between.
[[nodiscard]] Turn turn_round(Length around, Length diameter);
[[nodiscard]] Turn turn_round(Length first, Length second, Length gap, Length diameter);
/// `count` of them.
[[nodiscard]] SourcedLength rope_in(const Turn& turn, double count);

/// What ends a hitch beyond its turns. Turns of it go round the line itself.
struct Finish {
    Span::Form form = Span::Form::half_hitches;
    double count = 1.0;
};

/// A hitch's measures.
struct HitchPart {
    ValueName around_name = ValueName::spar_m;
    Turn turn;
    double turns = 0.0;   ///< round what it holds
    double counted = 0.0; ///< those that the job counts: of a knot that is made round its own part,
                          ///< the turns there
    std::optional<SourcedLength> own_turns; ///< round its own part, more than `beyond` holds
    SourcedLength beyond;                   ///< rope in the hitch besides its turns, less its tail
    SourcedLength tail;
};

/// A hitch round a round thing of the diameter in field `around`, which must be required.
[[nodiscard]] Result<HitchPart> read_hitch(const Request& request, HitchFields fields);
/// The same for a turn that the kind has worked out itself; field `around` is not read.
[[nodiscard]] Result<HitchPart> read_hitch(const Request& request, HitchFields fields, Turn turn);

/// The share of a load that gets past `turns` and reaches what finishes them; where the rope's
/// friction is known.
[[nodiscard]] std::optional<double> load_past_turns(const Request& request, double turns);

/// All of a hitch but its steps: from the tail's end: tail, hitch and turns, to the load side, from
/// which it is measured. In slippery rope with the slip caution.
[[nodiscard]] End lay_hitch(const Request& request, const HitchPart& hitch, Finish finish);

} // namespace libsplice
