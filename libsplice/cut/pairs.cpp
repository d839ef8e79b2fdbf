// Compares the lines of a pair with the first one.
#include "libsplice/cut/pairs.h"

#include "libsplice/cut/judge/chance.h"
#include "libsplice/units/show.h"

#include <cstdlib>

namespace libsplice {

Nanometres PairBook::tolerance_of(const Rope& rope) const {
    const Rules rules = book_.common_rules(rope);
    const Figure* figure = rules.find(FigureId::pair_tolerance);
    return figure == nullptr ? 0 : to_nanometres(figure->length(rope.diameter));
}

std::optional<double> PairBook::chance_apart(const Piece& piece) const {
    if (piece.pair.empty()) {
        return std::nullopt;
    }
    return libsplice::chance_apart(*piece.line, piece, tolerance_of(*piece.line->rope));
}

std::optional<LineFault> PairBook::check(const Piece& piece) {
    if (piece.pair.empty() || !piece.finished) {
        return std::nullopt;
    }
    std::string key(piece.boat);
    key += '\x1f';
    key += piece.pair;
    const auto [entry, is_first] =
        firsts_.try_emplace(std::move(key), First{std::string(piece.name), std::string(piece.rope),
                                                  std::string(piece.lot), *piece.finished});
    if (is_first) {
        return std::nullopt;
    }
    const First& first = entry->second;
    const auto unlike = [&](std::string_view what, const std::string& here,
                            const std::string& there) {
        return LineFault{Fault{Code::pair_unlike, "a line of the pair \"" +
                                                      std::string(piece.pair) + "\" has another " +
                                                      std::string(what) + " (" + here +
                                                      ") than \"" + first.line + "\" (" + there +
                                                      "); lines of a pair must match"},
                         Column::pair};
    };
    if (first.rope != piece.rope) {
        return unlike("rope", std::string(piece.rope), first.rope);
    }
    if (first.lot != piece.lot) {
        return unlike("lot", std::string(piece.lot), first.lot);
    }
    if (std::abs(first.finished - *piece.finished) > tolerance_of(*piece.line->rope)) {
        return unlike("length", show_length(*piece.finished, UnitSystem::metric),
                      show_length(first.finished, UnitSystem::metric));
    }
    return std::nullopt;
}

} // namespace libsplice
