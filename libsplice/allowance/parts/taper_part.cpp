// How a tail is thinned: in pairs of strands where they are known.
#include "libsplice/allowance/parts/taper_part.h"

#include <cmath>
#include <ranges>
#include <string>

namespace libsplice {

namespace {

std::optional<int> count_of(const Request& request, std::optional<std::size_t> field) {
    if (!field || !request.fields.has(*field)) {
        return std::nullopt;
    }
    return static_cast<int>(std::lround(request.fields.at(*field)));
}

Unexpected refuse(Code code, std::string text, std::string field) {
    return Unexpected(Fault{code, std::move(text), {}, std::move(field)});
}

/// From the field, or from the tables; nothing where neither says.
Result<std::optional<int>> read_strands(const Request& request, std::optional<std::size_t> field) {
    const auto given = count_of(request, field);
    if (given && *given % 2 != 0) {
        return refuse(Code::field_out_of_range,
                      "a braid has as many strands of one hand as of the other; " +
                          std::to_string(*given) + " is an odd number",
                      "strands");
    }
    if (given) {
        return given;
    }
    const auto figure = request.rules.find(FigureId::strands);
    return figure == nullptr ? std::optional<int>()
                             : std::optional(static_cast<int>(std::lround(figure->number())));
}

MarkName mark_of_pair(std::size_t dropped) {
    return static_cast<MarkName>(static_cast<std::size_t>(MarkName::drop_pair_1) + dropped);
}
static_assert(static_cast<std::size_t>(MarkName::drop_pair_11) -
                  static_cast<std::size_t>(MarkName::drop_pair_1) + 1 ==
              most_pairs);

TaperFacts facts_of(const TaperPart& taper) {
    TaperFacts facts;
    if (const auto& schedule = taper.schedule) {
        facts.strands = schedule->strands;
        facts.pairs = static_cast<int>(schedule->drops.size());
        facts.end_step = schedule->end_step;
        facts.end_section = schedule->end_section;
    } else {
        facts.end_section = to_nanometres(taper.length) > 0 ? 0.0 : 1.0;
    }
    return facts;
}

/// What the break tests say of the step at the end, at their cautious end: a crude reading, in
/// proportion to the section that ends at once. Nothing where no more than a pair does.
const Figure* loss_at_end(const Request& request, const TaperPart& taper) {
    const bool blunt =
        taper.schedule ? taper.schedule->ends_in_more_than_a_pair() : taper.facts.end_section > 0.0;
    return blunt ? request.rules.find(FigureId::blunt_loss) : nullptr;
}

/// Drops `pairs` of the strands, or as many as can be, along the taper.
std::optional<Fault> set_out(TaperPart& taper, int strands, bool is_blunt, std::optional<int> pairs,
                             Length diameter) {
    const int most = strands / 2 - 1;
    if (pairs.value_or(0) > most) {
        return Fault{Code::field_out_of_range,
                     "of " + std::to_string(strands) + " strands at most " + std::to_string(most) +
                         " pairs can be dropped: one is left",
                     {},
                     "pairs"};
    }
    taper.schedule =
        taper_schedule(strands, is_blunt ? 0 : pairs.value_or(most), taper.length, diameter);
    return std::nullopt;
}

} // namespace

Result<TaperPart> read_taper(const Request& request, TaperFields fields, Length length,
                             Length diameter) {
    const auto strands = read_strands(request, fields.strands);
    if (!strands) {
        return Unexpected(strands.error());
    }
    const auto pairs = count_of(request, fields.pairs);
    const bool is_blunt = !(length > Length()) || (pairs && *pairs == 0);
    if (is_blunt && pairs && *pairs > 0) {
        return refuse(Code::field_out_of_range, "there is no taper to drop pairs of strands over",
                      "pairs");
    }
    if (is_blunt && length > Length() && fields.taper && request.fields.has(*fields.taper)) {
        return refuse(Code::field_out_of_range,
                      "a tail that drops no pair of strands has no taper; leave one of the two out",
                      "pairs");
    }
    TaperPart taper;
    taper.length = is_blunt ? Length() : length;
    if (!*strands && pairs && *pairs > 0) {
        return refuse(Code::field_missing,
                      "pairs of strands can be counted off only where the number of strands is "
                      "given",
                      "strands");
    }
    if (*strands) {
        if (auto fault = set_out(taper, **strands, is_blunt, pairs, diameter)) {
            return Unexpected(*std::move(fault));
        }
    }
    taper.facts = facts_of(taper);
    if (const Figure* loss = loss_at_end(request, taper)) {
        taper.facts.end_loss = loss->highest_number() * taper.facts.end_section;
    }
    return taper;
}

void lay_taper(End& end, const TaperPart& taper, const Request& request, Nanometres tail_end) {
    if (to_nanometres(taper.length) > 0) {
        end.add(Mark{MarkName::taper_start, tail_end + to_nanometres(taper.length)});
    }
    if (taper.schedule) {
        for (std::size_t i = 0; i < taper.schedule->drops.size(); ++i) {
            const PairDrop& drop = taper.schedule->drops[i];
            const Nanometres at = tail_end + to_nanometres(drop.from_end);
            end.add(Mark{mark_of_pair(i), at});
            end.add(Thinning{mark_of_pair(i), at, drop.strands_left, drop.section,
                             to_nanometres(drop.outside), to_nanometres(drop.step)});
        }
    }
    if (const Figure* loss = loss_at_end(request, taper)) {
        end.add(Caution{
            "the tail ends with {end_section} of its section at once, which is more than one pair "
            "of strands: rope breaks at such an end. Read crudely from break tests of blunt ends, "
            "up to {end_loss} of its strength is lost there",
            loss->source});
    }
}

} // namespace libsplice
