// A piece that outlives the next one, and like pieces gathered into entries.
#pragma once

#include "libsplice/cut/piece.h"

#include <cstdint>
#include <deque>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace libsplice {

/// Pieces for one boat.
struct BoatCount {
    std::string boat; ///< may be empty
    std::int64_t quantity = 0;
};

/// Like lines: they differ in name of boat and place in the job only. One card, one row of a table.
class LikeLines {
  public:
    /// A copy of the piece, whose texts are kept here. The piece's bound line has to outlive this.
    LikeLines(const Piece& piece, std::size_t line);
    LikeLines(const LikeLines&) = delete;
    LikeLines& operator=(const LikeLines&) = delete;
    ~LikeLines() = default;

    void add(const Piece& piece, std::size_t line);

    [[nodiscard]] const Piece& piece() const { return piece_; }
    [[nodiscard]] const std::vector<BoatCount>& boats() const { return boats_; }
    /// Places in the job, from 1.
    [[nodiscard]] const std::vector<std::size_t>& lines() const { return lines_; }
    [[nodiscard]] std::int64_t pieces() const;

  private:
    std::string texts_; ///< what the piece's texts lie in
    Fault fault_{};
    Piece piece_;
    std::vector<BoatCount> boats_;
    std::vector<std::size_t> lines_;
};

/// All lines of a job, like ones once, in order of their first.
class Gathered {
  public:
    /// The number of its entry, from 1: of its card.
    std::size_t add(const Piece& piece);

    [[nodiscard]] const std::deque<LikeLines>& entries() const { return entries_; }
    [[nodiscard]] std::size_t lines() const { return lines_; }

  private:
    std::size_t lines_ = 0;
    std::deque<LikeLines> entries_;
    std::unordered_map<std::string, std::size_t> by_key_; ///< places in `entries_`
};

/// `Cat 1 to Cat 6`, `Cat 1, Cat 4`, `Cat 1 (2), Cat 2`: boats whose names differ in a last number
/// that counts on are joined. Empty where no boat has a name.
[[nodiscard]] std::string boats_in_words(const std::vector<BoatCount>& boats);

} // namespace libsplice
