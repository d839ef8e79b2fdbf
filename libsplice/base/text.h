// Small work on text that several stages share.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice {

/// Without ASCII blanks and tabs at either end.
[[nodiscard]] std::string_view trimmed(std::string_view text);

/// With `a` to `z` for `A` to `Z`; everything else is unchanged.
[[nodiscard]] std::string in_small_letters(std::string_view text);

/// Offset of the first byte that does not belong to well-formed UTF-8 (overlong forms, surrogates
/// and values past U+10FFFF are refused), or nothing if all is well.
[[nodiscard]] std::optional<std::size_t> first_bad_utf8(std::string_view text);

/// Number of characters (code points) in well-formed UTF-8.
[[nodiscard]] std::size_t character_count(std::string_view text);

/// Columns that well-formed UTF-8 takes up on a terminal: 2 for a wide character of East Asian
/// writing, 0 for one that is put over the character before it, else 1.
[[nodiscard]] std::size_t display_width(std::string_view text);

/// What could drive a terminal or turn a text round is shown escaped: control bytes and bytes that
/// are no UTF-8 as `\x1b`; the C1 controls, line and paragraph separators, and the marks that
/// change the direction of writing, as `\u202e`. Everything else is unchanged.
[[nodiscard]] std::string show_controls(std::string_view text);

/// The word of `words` nearest to `word` by edit distance, if it is near enough to be worth a
/// "did you mean": at most a third of its letters off, and at most three.
[[nodiscard]] std::optional<std::string_view> nearest(std::string_view word,
                                                      std::span<const std::string_view> words);

/// The `count` words of `words` that are nearest to `word`, the nearest first, however far they
/// are.
[[nodiscard]] std::vector<std::string_view>
nearest_words(std::string_view word, std::span<const std::string_view> words, std::size_t count);

/// `; did you mean "x"?` where a near word exists, otherwise empty.
[[nodiscard]] std::string did_you_mean(std::string_view word,
                                       std::span<const std::string_view> words);

/// In quotes for a message, cut short between two characters if it is long.
[[nodiscard]] std::string in_quotes(std::string_view text);

/// `a, b and c`.
[[nodiscard]] std::string listed(std::span<const std::string_view> words);

} // namespace libsplice
