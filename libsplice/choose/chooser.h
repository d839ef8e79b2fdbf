// Tries ropes on a line: cuts it from each that may serve, and keeps the best.
#pragma once

#include "libsplice/choose/candidates.h"
#include "libsplice/choose/choice.h"
#include "libsplice/choose/choice_tables.h"
#include "libsplice/cut/cutter.h"
#include "libsplice/cut/ropes/line_ropes.h"

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <unordered_map>
#include <vector>

namespace libsplice {

/// How many of the best others are shown.
inline constexpr std::size_t best_shown = 3;

/// What a rope is sorted by: the smaller, the better.
using SortKey = std::array<double, 6>;

/// Not shared by threads. It owns the ropes that its choices point to, or its candidates do.
class Chooser {
  public:
    /// All outlive this.
    Chooser(const Book& book, const ChoiceTables& tables, const Candidates& candidates,
            const CutSettings& settings, Preference preference)
        : book_(book),
          tables_(tables),
          candidates_(candidates),
          cutter_(book, settings),
          ropes_(book.catalogue()),
          preference_(preference) {}

    /// The ropes of a line: the one it names, a size down and up, polyester a size up if that is
    /// high-modulus, and the best others. Faults of its needs are pushed. Lines that are alike but
    /// for their names are worked out once.
    [[nodiscard]] LineChoice choose(const JobRow& row, FaultSink& faults);

    /// Adds to the line's choice, as further ropes, those of the candidates that meet every need.
    void add_others(const JobRow& row, std::span<const std::size_t> candidates, LineChoice& choice);

  private:
    struct Trial;
    [[nodiscard]] LineChoice work_out(const JobRow& row, FaultSink& faults);
    [[nodiscard]] Trial begin(const JobRow& row, CellReader& cells, std::vector<Fault>& faults);
    [[nodiscard]] bool may_try(const Trial& trial, const Candidate& candidate) const;
    [[nodiscard]] TriedRope cut_from(Trial& trial, const Candidate& candidate, ShownAs shown_as,
                                     JobLine line);
    [[nodiscard]] static JobLine in_rope(JobLine line, const Rope& rope);
    [[nodiscard]] TriedRope try_candidate(Trial& trial, std::size_t index, ShownAs shown_as);
    [[nodiscard]] std::vector<TriedRope> try_named(Trial& trial);
    [[nodiscard]] std::optional<TriedRope> try_hybrid(Trial& trial);
    [[nodiscard]] std::vector<TriedRope> try_best(Trial& trial, std::vector<RopesOut>& out);
    [[nodiscard]] std::vector<std::size_t> hopeful(const Trial& trial,
                                                   std::vector<RopesOut>& out) const;
    [[nodiscard]] SortKey key_of(const TriedRope& tried, const Needs& needs) const;
    [[nodiscard]] SortKey key_of(const Candidate& candidate, const Needs& needs) const;

    const Book& book_;
    const ChoiceTables& tables_;
    const Candidates& candidates_;
    Cutter cutter_;
    LineRopes ropes_; ///< that lines name
    Preference preference_;
    std::unordered_map<std::string, LineChoice> chosen_;             ///< by what makes lines alike
    std::unordered_map<std::string, std::vector<TriedRope>> others_; ///< likewise
};

} // namespace libsplice
