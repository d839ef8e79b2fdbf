#include "libsplice/cut/pairs.h"

#include "libsplice/units/show.h"

#include <cstdlib>

namespace libsplice {

std::optional<Fault> PairBook::check(const Piece& piece) {
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
        return Fault{Code::pair_unlike,
                     "a line of the pair \"" + std::string(piece.pair) + "\" has another " +
                         std::string(what) + " (" + here + ") than \"" + first.line + "\" (" +
                         there + "); lines of a pair must match",
                     {},
                     "pair"};
    };
    if (first.rope != piece.rope) {
        return unlike("rope", std::string(piece.rope), first.rope);
    }
    if (first.lot != piece.lot) {
        return unlike("lot", std::string(piece.lot), first.lot);
    }
    if (std::abs(first.finished - *piece.finished) > piece.plan->pair_tolerance) {
        return unlike("length", show_length(*piece.finished, UnitSystem::metric),
                      show_length(first.finished, UnitSystem::metric));
    }
    return std::nullopt;
}

} // namespace libsplice
