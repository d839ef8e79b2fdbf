// Tries ropes on a line: cuts it from each that may serve, and keeps the best.
#pragma once

#include "libsplice/choose/candidates.h"
#include "libsplice/choose/choice.h"
#include "libsplice/choose/choice_tables.h"
#include "libsplice/cut/cutter.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace libsplice {

/// How many of the best others are shown.
inline constexpr std::size_t best_shown = 3;

class Chooser {
  public:
    /// All outlive this.
    Chooser(const Book& book, const ChoiceTables& tables, Candidates& candidates,
            const CutSettings& settings, Preference preference)
        : book_(book),
          tables_(tables),
          candidates_(candidates),
          cutter_(book, settings),
          preference_(preference) {}

    /// The ropes of a line: the one it names, a size down and up, polyester a size up if that is
    /// high-modulus, and `most_best` of the best others. Faults of its needs are pushed.
    [[nodiscard]] LineChoice choose(const JobRow& row, FaultSink& faults, std::size_t most_best);

  private:
    struct Trial;
    [[nodiscard]] TriedRope try_rope(Trial& trial, std::size_t candidate, ShownAs shown_as);
    void try_named(Trial& trial, LineChoice& choice);
    void try_best(Trial& trial, LineChoice& choice, std::size_t most);
    [[nodiscard]] std::vector<std::size_t> hopeful(const Trial& trial) const;
    [[nodiscard]] double key_of(const Candidate& candidate, const Needs& needs) const;

    const Book& book_;
    const ChoiceTables& tables_;
    Candidates& candidates_;
    Cutter cutter_;
    Preference preference_;
};

/// Whether one rope is to be preferred to another, both of which meet every need.
[[nodiscard]] bool is_preferred(const TriedRope& one, const TriedRope& other,
                                Preference preference);

} // namespace libsplice
