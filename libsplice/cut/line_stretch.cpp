// Brings a line's loaded length to other pulls.
#include "libsplice/cut/line_stretch.h"

#include "libsplice/mechanics/rope/stretch.h"

#include <algorithm>
#include <cmath>

namespace libsplice {

void add_lengths(const BoundLine& line, Piece& piece) {
    const PullsOfLine& pulls = line.pulls;
    const Length asked = from_nanometres(piece.loaded);
    for (const StrainAtPull& at : pulls.pulls) {
        const Length length = length_at(asked, pulls.asked, at.strain);
        const double sd = line.states.stretch->spread * std::abs((length - asked).si());
        piece.lengths.push_back({at.tension, at.pull, length, Length(sd / (1.0 + pulls.asked))});
    }
    const auto same =
        std::unique(piece.lengths.begin(), piece.lengths.end(), [](const auto& a, const auto& b) {
            return to_nanometres(a.length) == to_nanometres(b.length);
        });
    piece.lengths.erase(same, piece.lengths.end());
}

void add_stretch(const BoundLine& line, Piece& piece) {
    const PullsOfLine& pulls = line.pulls;
    if (!pulls.load) {
        return;
    }
    const Length asked = from_nanometres(piece.loaded);
    const Length relaxed = length_at(asked, pulls.asked, pulls.reference);
    const Length longer = length_at(relaxed, pulls.reference, pulls.load->strain) - relaxed;
    const RopeStretch& stretch = *line.states.stretch;
    piece.stretch = StretchAtLoad{pulls.load->tension, longer,
                                  longer * (stretch.spread / (1.0 + pulls.asked)), stretch.source};
}

} // namespace libsplice
