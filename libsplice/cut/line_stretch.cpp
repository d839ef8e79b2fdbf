#include "libsplice/cut/line_stretch.h"

#include "libsplice/mechanics/rope/stretch.h"

#include <algorithm>
#include <cmath>

namespace libsplice {

namespace {

/// Rope with a curve that starts at a reference tension.
bool is_pulled(const LinePlan& plan) {
    return plan.stretch && !measured_relaxed(plan.rope->construction);
}

Result<double> strain_of(const LinePlan& plan, const Tension& tension) {
    return strain_at(*plan.stretch, tension, *plan.rope);
}

} // namespace

std::vector<LengthAtPull> lengths_at_pulls(const Piece& piece) {
    const LinePlan& plan = *piece.plan;
    const auto asked =
        is_pulled(plan) ? std::optional(strain_of(plan, plan.tension)) : std::nullopt;
    if (!asked || !*asked) {
        return {};
    }
    constexpr auto share = Tension::Basis::share;
    std::vector<Tension> tensions{
        Tension{}, {share, 0.1}, {share, 0.2}, {share, 0.3}, plan.tension};
    if (plan.load) {
        tensions.push_back({Tension::Basis::force, plan.load->si()});
    }
    std::vector<LengthAtPull> lengths;
    for (const Tension& tension : tensions) {
        const auto strain = strain_of(plan, tension);
        if (!strain) {
            continue;
        }
        const Length asked_length = from_nanometres(piece.loaded);
        const Length length = length_at(asked_length, **asked, *strain);
        const double sd = plan.stretch->spread * std::abs((length - asked_length).si());
        lengths.push_back(
            {tension, pull_of(tension, *plan.rope), length, Length(sd / (1.0 + **asked))});
    }
    std::ranges::stable_sort(lengths, {}, &LengthAtPull::length);
    const auto same = std::unique(lengths.begin(), lengths.end(), [](const auto& a, const auto& b) {
        return to_nanometres(a.length) == to_nanometres(b.length);
    });
    lengths.erase(same, lengths.end());
    return lengths;
}

std::optional<Tension> working_pull(const LinePlan& plan) {
    if (plan.load) {
        return Tension{Tension::Basis::force, plan.load->si()};
    }
    return plan.tension.basis == Tension::Basis::reference ? std::nullopt
                                                           : std::optional(plan.tension);
}

std::optional<Result<StretchAtLoad>> stretch_at_load(const Piece& piece) {
    const LinePlan& plan = *piece.plan;
    const auto pull = working_pull(plan);
    if (!pull || !is_pulled(plan)) {
        return std::nullopt;
    }
    const auto asked = strain_of(plan, plan.tension);
    const auto reference = strain_of(plan, {});
    const auto loaded = strain_of(plan, *pull);
    for (const auto& strain : {asked, reference, loaded}) {
        if (!strain) {
            return Unexpected(strain.error());
        }
    }
    const Length relaxed = length_at(from_nanometres(piece.loaded), *asked, *reference);
    const Length longer = length_at(relaxed, *reference, *loaded) - relaxed;
    return StretchAtLoad{*pull, longer, longer * (plan.stretch->spread / (1.0 + *asked)),
                         plan.stretch->source};
}

} // namespace libsplice
