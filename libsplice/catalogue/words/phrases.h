// Phrases of the trade in a row of plain words.
#pragma once

#include "libsplice/catalogue/words/aliases.h"

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice {

/// The words of a text that has single blanks, or more, between them.
[[nodiscard]] std::vector<std::string_view> split_at_blanks(std::string_view text);

/// A phrase that the trade knows.
struct Phrase {
    std::string_view name = {};            ///< ours; empty where it is unclear
    const UnclearWords* unclear = nullptr; ///< where it could mean two things
    std::string text = {};                 ///< as it was written, in plain words
    std::size_t words = 0;                 ///< 0: none was found
};

/// The longest phrase from `start` on that is the name of one of `of`, or an alias for it.
[[nodiscard]] Phrase longest_phrase(std::span<const std::string_view> words, std::size_t start,
                                    AliasOf of, const Aliases& aliases);

} // namespace libsplice
