// One rope against one set of needs, each need on its own.
#pragma once

#include "libsplice/choose/candidates.h"
#include "libsplice/choose/choice_tables.h"
#include "libsplice/choose/needs.h"

#include <optional>
#include <string>

namespace libsplice {

/// Finds what a rope fails. All that it is given outlives it.
class Judge {
  public:
    /// With `worded`, what is found is said in words.
    Judge(const Candidate& candidate, const Needs& needs, const ChoiceTables& tables, bool worded)
        : candidate_(candidate),
          rope_(*candidate.rope),
          needs_(needs),
          tables_(tables),
          worded_(worded) {}

    /// A need that is failed, and how; without words the text is empty.
    struct Failure {
        Column need;
        std::string text;
    };
    /// Nothing: the need is met, or not asked for.
    using Finding = std::optional<Failure>;

    /// A line for a person asks for the reel's own strength.
    [[nodiscard]] Finding person() const;
    /// The load, at the share that is published, against what the line keeps.
    [[nodiscard]] Finding strength(std::optional<double> retained) const;
    /// From set to load, `slack` times what it may.
    [[nodiscard]] Finding give(std::optional<Length> length, double slack) const;
    /// A load that stays, against creep.
    [[nodiscard]] Finding standing() const;
    /// What holds a bare slippery rope.
    [[nodiscard]] Finding holders() const;
    /// What diameters that takes.
    [[nodiscard]] Finding range() const;
    /// The smallest sheave for the rope: what its own sort asks, of wire; else the least for rope.
    [[nodiscard]] std::optional<Length> least_sheave() const;
    /// The smallest sheave that it turns on.
    [[nodiscard]] Finding sheave() const;
    /// The smallest hole that it passes.
    [[nodiscard]] Finding hole() const;
    /// How much it is handled.
    [[nodiscard]] Finding hand() const;
    /// How it runs.
    [[nodiscard]] Finding heat() const;
    /// Whether it floats.
    [[nodiscard]] Finding floats() const;
    /// What a metre may cost.
    [[nodiscard]] Finding price() const;
    /// The first finding of all.
    [[nodiscard]] Finding first(std::optional<double> retained, std::optional<Length> length,
                                double slack) const;

  private:
    template <class Text>
    [[nodiscard]] Failure fail(Column column, Text text) const;

    const Candidate& candidate_;
    const Rope& rope_;
    const Needs& needs_;
    const ChoiceTables& tables_;
    bool worded_;
};

} // namespace libsplice
