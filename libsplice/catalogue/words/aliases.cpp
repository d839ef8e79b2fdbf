// Takes texts apart into plain words, and finds what they mean.
#include "libsplice/catalogue/words/aliases.h"

#include "libsplice/base/text.h"

#include <algorithm>
#include <array>
#include <utility>

namespace libsplice {

namespace {

constexpr std::array<std::string_view, alias_of_count> of_names{"construction", "fibre", "rope",
                                                                "kind", "field"};

/// What a byte is, as far as words go.
enum class Sort : std::uint8_t { gap, letter, number, inch_mark };

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

Sort sort_of(std::string_view text, std::size_t at) {
    const char c = text[at];
    const bool digit_before = at > 0 && is_digit(text[at - 1]);
    const bool digit_after = at + 1 < text.size() && is_digit(text[at + 1]);
    if (is_digit(c) || ((c == '.' || c == '/') && digit_after && (digit_before || c == '.'))) {
        return Sort::number;
    }
    if (c == '"') {
        return digit_before ? Sort::inch_mark : Sort::gap;
    }
    const auto byte = static_cast<unsigned char>(c);
    const bool letter = (c >= 'a' && c <= 'z') || byte >= 0x80 || c == '%';
    return letter ? Sort::letter : Sort::gap;
}

/// An apostrophe inside a word is no gap: `lark's` is `larks`.
bool joins(std::string_view text, std::size_t at) {
    const auto is_letter = [&](std::size_t i) {
        return i < text.size() && text[i] >= 'a' && text[i] <= 'z';
    };
    return text[at] == '\'' && at > 0 && is_letter(at - 1) && is_letter(at + 1);
}

bool bears_on(const Constructions& constructions, std::optional<Construction> construction) {
    return constructions.empty() || (construction && constructions.allows(*construction));
}

} // namespace

std::string plain_words(std::string_view text) {
    const std::string small = in_small_letters(text);
    std::string words;
    Sort before = Sort::gap;
    for (std::size_t i = 0; i < small.size(); ++i) {
        if (joins(small, i)) {
            continue;
        }
        const Sort sort = sort_of(small, i);
        if (sort != Sort::gap && sort != before && !words.empty()) {
            words += ' ';
        }
        if (sort == Sort::inch_mark) {
            words += "in";
        } else if (sort != Sort::gap) {
            words += small[i];
        }
        before = sort;
    }
    return words;
}

std::span<const std::string_view> alias_of_names() {
    return of_names;
}

Aliases::Aliases() {
    for (const std::string_view name : construction_names()) {
        add(Alias{AliasOf::construction, std::string(name), {}, {}});
    }
    for (const std::string_view name : fibre_names()) {
        add(Alias{AliasOf::fibre, std::string(name), {}, {}});
    }
}

void Aliases::enter(std::string_view words, Entry entry) {
    by_phrase_[plain_words(words)].push_back(entry);
}

void Aliases::add(Alias alias) {
    const Entry entry{alias.of, false, aliases_.size()};
    enter(alias.name, entry);
    for (const std::string& words : alias.words) {
        enter(words, entry);
    }
    aliases_.push_back(std::move(alias));
}

void Aliases::add(UnclearWords unclear) {
    const Entry entry{unclear.of, true, unclear_.size()};
    for (const std::string& words : unclear.words) {
        enter(words, entry);
    }
    unclear_.push_back(std::move(unclear));
}

std::optional<WordMeaning> Aliases::find(AliasOf of, std::string_view phrase,
                                         std::optional<Construction> construction) const {
    const auto entries = by_phrase_.find(phrase);
    if (entries == by_phrase_.end()) {
        return std::nullopt;
    }
    for (const Entry& entry : entries->second) {
        const Constructions& constructions = entry.unclear ? unclear_[entry.index].constructions
                                                           : aliases_[entry.index].constructions;
        if (entry.of == of && bears_on(constructions, construction)) {
            return entry.unclear ? WordMeaning{{}, &unclear_[entry.index]}
                                 : WordMeaning{aliases_[entry.index].name, nullptr};
        }
    }
    return std::nullopt;
}

std::vector<std::string_view> Aliases::words_for(AliasOf of, std::string_view name) const {
    std::vector<std::string_view> words;
    for (const Alias& alias : aliases_) {
        if (alias.of == of && alias.name == name) {
            words.insert(words.end(), alias.words.begin(), alias.words.end());
        }
    }
    return words;
}

std::string unclear_text(std::string_view word, const UnclearWords& unclear) {
    std::string means;
    for (std::size_t i = 0; i < unclear.means.size(); ++i) {
        means += i == 0 ? "" : i + 1 == unclear.means.size() ? " or " : ", ";
        means += unclear.means[i];
    }
    return in_quotes(word) + " could mean " + means +
           (unclear.hint.empty() ? std::string() : ": " + unclear.hint);
}

} // namespace libsplice
