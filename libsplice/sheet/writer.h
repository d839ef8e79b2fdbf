// What a sheet writer is: begin, a piece at a time, end.
#pragma once

#include "libsplice/base/output.h"
#include "libsplice/catalogue/rope_stretch.h"
#include "libsplice/cut/credits.h"
#include "libsplice/cut/cutter.h"
#include "libsplice/cut/piece.h"
#include "libsplice/units/show.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace libsplice {

/// How an answer is written; each is a row of the table in `formats.h`.
enum class Format : std::uint8_t { text, csv, json, html };
inline constexpr std::size_t format_count = static_cast<std::size_t>(Format::html) + 1;
/// The formats' names, in order of `Format`.
[[nodiscard]] std::span<const std::string_view> format_names();
[[nodiscard]] std::optional<Format> read_format(std::string_view name);

/// What writes an answer of a few figures, by `Format`; null: the answer has no such form.
template <class Write>
using ByFormat = std::array<Write*, format_count>;

/// How a sheet is written.
struct SheetOptions {
    UnitSystem units = UnitSystem::metric; ///< JSON is in SI whatever this says
    bool full = false;                     ///< text: the card of every line in place of a table
    bool ledger = false;                   ///< show every row of each ledger
    bool working = false; ///< show how each row is worked out, and lengths at several pulls
    double risk = 0.01;   ///< the risk that the spares were worked out for
};

/// Writes a cut sheet piece by piece. Memory does not grow with their number but in HTML, where a
/// summary of them all stands first.
class SheetWriter {
  public:
    SheetWriter() = default;
    SheetWriter(const SheetWriter&) = delete;
    SheetWriter& operator=(const SheetWriter&) = delete;
    virtual ~SheetWriter() = default;

    virtual void begin() = 0;
    virtual void piece(const Piece& piece) = 0;
    virtual void end(const Counts& counts) = 0;
};

/// One end worked out by itself, for `splice end`.
struct EndSheet {
    const KindDeclaration& kind;
    const Rope& rope;
    const End& allowance;
    std::optional<RopeStretch> stretch; ///< of the rope; nothing where no source gives it
};

} // namespace libsplice
