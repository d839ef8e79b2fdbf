// How ends are made, each once for a whole job: a sheet that several cards refer to.
#pragma once

#include "libsplice/sheet/panel/card/card_steps.h"
#include "libsplice/sheet/panel/like_lines.h"

#include <deque>
#include <string>
#include <unordered_map>
#include <vector>

namespace libsplice {

/// The steps of one kind of end without the figures of a line: where a figure belongs, its name
/// stands in brackets, and the card that refers here gives it.
struct Method {
    std::string id;    ///< `K2`; empty: no sheet of its own, for only one card has such an end
    std::string kind;  ///< its name
    std::string title; ///< in a few words
    std::vector<CardStep> steps;
    std::vector<std::size_t> cards; ///< the numbers of the cards that refer to it
    const Kind* made_by = nullptr;  ///< for its drawing: the first end made so
    const End* example = nullptr;
};

/// The methods of a job.
class Methods {
  public:
    /// None: every card has its own steps.
    Methods() = default;
    /// Those that at least two cards need, numbered in order of first use. The entries have to
    /// outlive this.
    explicit Methods(const std::deque<LikeLines>& entries);

    /// The method of that end of a piece; null where its steps stand on its own card.
    [[nodiscard]] const Method* find(const Piece& piece, LineEnd end) const;
    [[nodiscard]] const std::vector<Method>& all() const { return methods_; }

  private:
    std::vector<Method> methods_;
    std::unordered_map<std::string, std::size_t> by_key_;
};

/// The figures that some steps of a method ask of an end, from the step of number `from` to that of
/// `to`: `tail 300 mm; exit 432 mm`.
[[nodiscard]] std::string figures_for_method(const Piece& piece, LineEnd end, std::size_t from,
                                             std::size_t to, UnitSystem units);

} // namespace libsplice
