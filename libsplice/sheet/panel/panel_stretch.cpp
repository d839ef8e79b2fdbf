// What a line stretches, in the words of the bench.
#include "libsplice/sheet/panel/panel_stretch.h"

#include "libsplice/sheet/panel/panel_facts.h"

#include <array>

namespace libsplice {

namespace {

/// `30 % over its relaxed length (30 N)`.
std::string show_pulled_out(double share, const std::optional<Force>& pull, UnitSystem units) {
    return show_number(share * 100.0, 1) + " % over its relaxed length" +
           (pull ? ", pulling " + show_force(*pull, units) : "");
}

/// The working range, the limit and the loss that the tables give.
std::string show_range(const ElasticRange& range) {
    std::string text;
    if (range.from != nullptr && range.up_to != nullptr) {
        text += "; it works from " + show_share(range.from->number()) + " to " +
                show_share(range.up_to->number());
    }
    if (range.limit != nullptr) {
        text += ", is stopped at " + show_share(range.limit->number());
    }
    if (range.loss != nullptr) {
        text += ", and loses about " + show_share(range.loss->number()) +
                " of its pull in its first weeks";
    }
    return text;
}

void write_elastic(Page& page, const Piece& piece, UnitSystem units) {
    const Elastic& elastic = *piece.elastic;
    std::string text = show_length(elastic.relaxed, units) +
                       " relaxed; where its way is shortest " +
                       show_pulled_out(elastic.shortest, elastic.pull_shortest, units);
    if (elastic.longest) {
        text += "; at the other end of its travel " +
                show_pulled_out(*elastic.longest, elastic.pull_longest, units);
    }
    page.fact("Elastic", text + show_range(*piece.line->states.elastic));
}

} // namespace

void write_stretch_facts(Page& page, const Piece& piece, UnitSystem units, CitationLog& citing) {
    if (piece.elastic) {
        write_elastic(page, piece, units);
    }
    if (piece.stretch) {
        const StretchAtLoad& at = *piece.stretch;
        page.fact("Stretch", show_fine(at.longer, units) + " longer at " +
                                 show_tension(at.tension, units) +
                                 " than at the reference tension, sd " + show_fine(at.sd, units) +
                                 " (" + std::string(citing.text(at.source)) + ")");
    } else if (const std::string& why = piece.line->pulls.load_not_known; !why.empty()) {
        page.fact("Stretch", "not known at its load: " + why);
    }
}

void write_lengths_at_pulls(Page& page, const Piece& piece, UnitSystem units, CitationLog& citing) {
    if (piece.lengths.empty()) {
        return;
    }
    constexpr std::array columns{PageColumn{30}, PageColumn{18, true}, PageColumn{16, true},
                                 PageColumn{10, true}};
    page.section("LENGTH AT SEVERAL PULLS, BEARING POINT TO BEARING POINT");
    page.head(columns, std::array<std::string, 4>{"at", "pull", "length", "sd"});
    for (const LengthAtPull& at : piece.lengths) {
        page.row(columns, std::array<std::string, 4>{show_tension(at.tension, units),
                                                     at.pull ? show_force(*at.pull, units) : "",
                                                     show_length(at.length, units),
                                                     show_fine(at.sd, units)});
    }
    const RopeStretch& stretch = *piece.line->states.stretch;
    page.paragraph("Stretch of the rope: " + std::string(citing.text(stretch.source)) +
                       ". sd: of the difference from the length that was asked for, " +
                       std::string(name_of(stretch.origin)) + ".",
                   4);
}

std::string show_printed_stretch(const std::optional<RopeStretch>& stretch, CitationLog& citing) {
    if (!stretch) {
        return {};
    }
    std::string text;
    for (const StretchPoint& point : stretch->curve.points()) {
        text += (text.empty() ? "" : ", ") + show_share(point.strain) + " at " +
                (stretch->by_force ? show_force(Force(point.load), UnitSystem::metric)
                                   : show_share(point.load));
    }
    return text + (stretch->by_force ? "" : " of breaking strength") + ", sd " +
           show_share(stretch->spread) + " of it (" + std::string(citing.text(stretch->source)) +
           ")";
}

} // namespace libsplice
