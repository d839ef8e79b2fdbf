// Tries ropes on a line: cuts it from each that may serve, and keeps the best.
#pragma once

#include "libsplice/choose/candidates.h"
#include "libsplice/choose/choice.h"
#include "libsplice/choose/choice_tables.h"
#include "libsplice/cut/cutter.h"
#include "libsplice/cut/ropes/line_ropes.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace libsplice {

/// How many of the best others are shown.
inline constexpr std::size_t best_shown = 3;

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
    /// high-modulus, and the best others. Faults of its needs are pushed.
    [[nodiscard]] LineChoice choose(const JobRow& row, FaultSink& faults);

  private:
    struct Trial;
    [[nodiscard]] TriedRope cut_from(Trial& trial, const Candidate& candidate, ShownAs shown_as,
                                     JobLine line);
    [[nodiscard]] TriedRope try_candidate(Trial& trial, std::size_t index, ShownAs shown_as);
    [[nodiscard]] std::vector<TriedRope> try_named(Trial& trial);
    [[nodiscard]] std::vector<TriedRope> try_best(Trial& trial);
    [[nodiscard]] std::vector<std::size_t> hopeful(const Trial& trial) const;

    const Book& book_;
    const ChoiceTables& tables_;
    const Candidates& candidates_;
    Cutter cutter_;
    LineRopes ropes_; ///< that lines name
    Preference preference_;
};

/// Whether one rope is to be preferred to another, both of which meet every need.
[[nodiscard]] bool is_preferred(const TriedRope& one, const TriedRope& other,
                                Preference preference);

} // namespace libsplice
