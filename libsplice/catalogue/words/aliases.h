// What the trade calls things, and what each is called here.
#pragma once

#include "libsplice/catalogue/vocabulary.h"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice {

/// A text taken apart: words and numbers in small letters, one blank between them, and nothing of
/// hyphens, commas, brackets and the like: `Three-Strand, 8mm` is `three strand 8 mm`. An inch mark
/// behind a number becomes `in`.
[[nodiscard]] std::string plain_words(std::string_view text);

/// What a name is the name of.
enum class AliasOf : std::uint8_t {
    construction,
    fibre,
    rope, ///< another word about a rope: `prestretched`, `core`, `cover`, `higher-grade` ...
    kind,
    field,
};
inline constexpr std::size_t alias_of_count = static_cast<std::size_t>(AliasOf::field) + 1;
[[nodiscard]] std::span<const std::string_view> alias_of_names();

/// One name here, and words of the trade for it.
struct Alias {
    AliasOf of{};
    std::string name;
    std::vector<std::string> words;
    Constructions constructions; ///< of a kind: the ropes in which the words mean it; empty: all
};

/// Words that could mean two things or more.
struct UnclearWords {
    AliasOf of{};
    std::vector<std::string> words;
    std::vector<std::string> means; ///< names here
    std::string hint;               ///< how to tell them apart; a sentence without a full stop
    Constructions constructions;    ///< of a kind: the ropes in which they are unclear; empty: all
};

/// What a word means.
struct WordMeaning {
    std::string_view name = {};            ///< the name here; empty where it is unclear
    const UnclearWords* unclear = nullptr; ///< where it could mean two things
};

/// All of them, and the names of constructions and fibres themselves. Immutable once loaded.
class Aliases {
  public:
    Aliases();
    void add(Alias alias);
    void add(UnclearWords unclear);

    /// The meaning of a phrase of plain words, if it is one of these. `construction` decides where
    /// a kind's words mean one thing in one rope and another in the next.
    [[nodiscard]] std::optional<WordMeaning>
    find(AliasOf of, std::string_view phrase,
         std::optional<Construction> construction = std::nullopt) const;
    /// The words of the trade for a name, as the tables have them.
    [[nodiscard]] std::vector<std::string_view> words_for(AliasOf of, std::string_view name) const;

    [[nodiscard]] std::span<const Alias> all() const { return aliases_; }
    [[nodiscard]] std::span<const UnclearWords> all_unclear() const { return unclear_; }

  private:
    /// Where a phrase stands.
    struct Entry {
        AliasOf of{};
        bool unclear = false;
        std::size_t index = 0; ///< in aliases_ or unclear_
    };
    void enter(std::string_view words, Entry entry);

    std::vector<Alias> aliases_;
    std::vector<UnclearWords> unclear_;
    std::map<std::string, std::vector<Entry>, std::less<>> by_phrase_; ///< in plain words
};

/// `"16-plait" could mean double-braid or laid-core: look under the cover`.
[[nodiscard]] std::string unclear_text(std::string_view word, const UnclearWords& unclear);

} // namespace libsplice
