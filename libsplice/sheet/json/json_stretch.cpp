// What a line stretches, and how far elastic is pulled out, as JSON.
#include "libsplice/sheet/json/json_stretch.h"

namespace libsplice {

namespace {

std::optional<double> newtons_of(const std::optional<Force>& pull) {
    return pull ? std::optional(pull->si()) : std::nullopt;
}

void write_elastic(JsonText& json, const Elastic& elastic) {
    json.begin_object();
    json.metres("relaxed_m", elastic.relaxed);
    json.number("shortest", elastic.shortest);
    json.number("shortest_pull_n", newtons_of(elastic.pull_shortest));
    json.number("longest", elastic.longest);
    json.number("longest_pull_n", newtons_of(elastic.pull_longest));
    json.end_object();
}

} // namespace

void write_stretch(JsonText& json, const Piece& piece, CitationLog& citing) {
    std::optional<Nanometres> longer;
    if (piece.stretch) {
        citing.use(piece.stretch->source);
        longer = to_nanometres(piece.stretch->longer);
    }
    json.metres("stretch_at_load_m", longer);
    json.key("elastic");
    if (piece.elastic) {
        write_elastic(json, *piece.elastic);
    } else {
        json.null();
    }
}

void write_lengths_at_pulls(JsonText& json, const Piece& piece) {
    json.key("lengths_at");
    json.begin_array();
    for (const LengthAtPull& at : piece.lengths) {
        json.begin_object();
        json.number("pull_n", newtons_of(at.pull));
        json.metres("length_m", to_nanometres(at.length));
        json.number("sd_m", at.sd.si());
        json.end_object();
    }
    json.end_array();
}

} // namespace libsplice
