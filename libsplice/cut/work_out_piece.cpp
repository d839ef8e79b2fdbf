// The order of judgement: add up, see that there is room, say what to heed; then lay the work out.
#include "libsplice/cut/work_out_piece.h"

#include "libsplice/cut/judge/cautions.h"
#include "libsplice/cut/judge/chance.h"
#include "libsplice/cut/judge/elastic.h"
#include "libsplice/cut/judge/room.h"
#include "libsplice/cut/layout.h"
#include "libsplice/cut/ledger.h"
#include "libsplice/cut/line_stretch.h"
#include "libsplice/cut/steps/piece_steps.h"

namespace libsplice {

std::optional<LineFault> work_out_piece(const BoundLine& line, Nanometres finished, Piece& piece) {
    piece.line = &line;
    piece.finished = finished;
    write_ledger(line, finished, piece);
    if (auto fault = check_room(line, piece, finished)) {
        return fault;
    }
    piece.elastic = elastic_of(line, piece.loaded);
    piece.check = check_figure(line, piece);
    add_chance(line, piece);
    piece.strength = line.strength;
    add_stretch(line, piece);
    add_cautions(line, piece);
    return std::nullopt;
}

void lay_out_work(const BoundLine& line, Piece& piece) {
    place_marks(line, piece);
    add_steps(line, piece);
    add_lengths(line, piece);
}

} // namespace libsplice
