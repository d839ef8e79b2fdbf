// Cuts say how long a line is and what it keeps of its strength; the judge says the rest.
#include "libsplice/choose/verdict.h"

#include "libsplice/choose/judge.h"

#include <algorithm>

namespace libsplice {

std::optional<Length> give_of(const Candidate& candidate, const Needs& needs, Length length) {
    if (!candidate.stretch || !needs.load) {
        return std::nullopt;
    }
    constexpr Tension slack{Tension::Basis::force, 0.0};
    const Tension load{Tension::Basis::force, needs.load->si()};
    const auto at_load = strain_at(*candidate.stretch, load, *candidate.rope);
    const auto at_set = strain_at(*candidate.stretch, needs.set.value_or(slack), *candidate.rope);
    if (!at_load || !at_set) {
        return std::nullopt;
    }
    return length_at(length, *at_set, *at_load) - length;
}

std::optional<Column> failed_by_rope(const Candidate& candidate, const Needs& needs,
                                     const ChoiceTables& tables, const Foreseen& foreseen) {
    constexpr double on_the_safe_side = 1.1; // another rope's length and loss are not quite its own
    const auto retained = foreseen.retained
                              ? std::optional(std::min(*foreseen.retained * on_the_safe_side, 1.0))
                              : std::nullopt;
    const auto found =
        Judge(candidate, needs, tables, false).first(retained, foreseen.length, on_the_safe_side);
    return found ? std::optional(found->need) : std::nullopt;
}

namespace {

/// What the rope fits, each need on its own.
Fits fits_of(const Judge& judge, const Needs& needs, const ChoiceTables& tables) {
    const auto fits = [](bool asked, const Judge::Finding& finding) {
        return asked ? std::optional(!finding) : std::nullopt;
    };
    const auto holders = judge.holders();
    Fits result;
    result.cleat = fits(!needs.held_by.empty() || needs.held_range.has_value(),
                        holders ? holders : judge.range());
    result.sheave = fits(needs.sheave && judge.least_sheave(), judge.sheave());
    result.hole = fits(needs.smallest_hole.has_value(), judge.hole());
    result.hand = fits(needs.hand && tables.least_for(*needs.hand), judge.hand());
    result.heat = fits(needs.runs && tables.least_melting(*needs.runs), judge.heat());
    return result;
}

/// The needs, with the smallest sheave of the piece's route if the job gives no other.
Needs with_route(const Needs& needs, const Piece& piece) {
    Needs all = needs;
    if (!all.sheave && piece.line != nullptr && piece.line->route) {
        all.sheave = piece.line->route->least_sheave;
    }
    return all;
}

} // namespace

Verdict verdict_on(const Piece& piece, const Candidate& candidate, const Needs& needs,
                   const ChoiceTables& tables) {
    const Needs all_needs = with_route(needs, piece);
    const Judge judge(candidate, all_needs, tables, true);
    Verdict verdict;
    verdict.fits = fits_of(judge, all_needs, tables);
    verdict.fits.ends = piece.fault == nullptr || !piece.fault->field.starts_with("end_");
    if (piece.fault != nullptr) {
        verdict.fails = Failure{piece.fault->field, piece.fault->text};
        return verdict;
    }
    const Length loaded = from_nanometres(piece.loaded);
    verdict.give = give_of(candidate, all_needs, loaded);
    verdict.factor = piece.strength.design_factor;
    verdict.buy = piece.cut * piece.quantity;
    const double metres_to_buy = from_nanometres(*verdict.buy).si();
    if (const auto price = candidate.price()) {
        verdict.price = *price * metres_to_buy;
    }
    if (candidate.rope->mass) {
        verdict.mass_kg = candidate.rope->mass->value.si() * metres_to_buy;
    }
    const auto& retained = piece.strength.retained;
    const auto found =
        judge.first(retained ? std::optional(retained->share) : std::nullopt, loaded, 1.0);
    if (found) {
        verdict.fails = Failure{std::string(column_name(found->need)), found->text};
    }
    return verdict;
}

} // namespace libsplice
