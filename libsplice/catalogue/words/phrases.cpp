// Finds the longest phrase of the trade that starts at a word.
#include "libsplice/catalogue/words/phrases.h"

#include <algorithm>
#include <utility>

namespace libsplice {

std::vector<std::string_view> split_at_blanks(std::string_view text) {
    std::vector<std::string_view> words;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find(' '), text.size());
        if (end > 0) {
            words.push_back(text.substr(0, end));
        }
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return words;
}

Phrase longest_phrase(std::span<const std::string_view> words, std::size_t start, AliasOf of,
                      const Aliases& aliases) {
    constexpr std::size_t longest = 5;
    for (std::size_t count = std::min(longest, words.size() - start); count > 0; --count) {
        std::string text;
        for (std::size_t i = start; i < start + count; ++i) {
            text += (text.empty() ? "" : " ") + std::string(words[i]);
        }
        if (const auto meaning = aliases.find(of, text)) {
            return {meaning->name, meaning->unclear, std::move(text), count};
        }
    }
    return {};
}

} // namespace libsplice
