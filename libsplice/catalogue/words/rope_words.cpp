// Reads a rope's description word by word, in whatever order the words come.
#include "libsplice/catalogue/words/rope_words.h"

#include "libsplice/base/text.h"
#include "libsplice/catalogue/words/phrases.h"
#include "libsplice/units/read.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <optional>
#include <utility>
#include <vector>

namespace libsplice {

namespace {

constexpr std::string_view how_to_describe =
    "describe it by construction, fibre and diameter, for example \"double-braid polyester 8 mm\" "
    "or \"12-strand HMPE 5 mm\"";

/// An 8-plait thinner than this may as well be a hollow braid.
constexpr Length thinnest_square_plait = millimetres(6.0);
constexpr std::string_view square_plait = "square-plait";

Unexpected not_understood(std::string text) {
    return Unexpected(Fault{Code::rope_not_understood, std::move(text)});
}

bool is_number(std::string_view word) {
    return !word.empty() && word.find_first_not_of("0123456789./") == std::string_view::npos;
}

/// The unit of a size that a word is, in our spelling.
std::optional<std::string_view> size_unit(std::string_view word) {
    struct Spelling {
        std::string_view word;
        std::string_view unit;
    };
    constexpr std::array spellings{
        Spelling{"mm", "mm"},     Spelling{"millimetre", "mm"}, Spelling{"millimetres", "mm"},
        Spelling{"cm", "cm"},     Spelling{"in", "in"},         Spelling{"inch", "in"},
        Spelling{"inches", "in"}, Spelling{"ins", "in"},        Spelling{"m", "m"},
        Spelling{"ft", "ft"}};
    const auto found = std::ranges::find(spellings, word, &Spelling::word);
    return found == spellings.end() ? std::nullopt : std::optional(found->unit);
}

/// Everything that a description has said so far.
class Description {
  public:
    Description(std::string_view text, const Aliases& aliases)
        : text_(trimmed(text)),
          plain_(plain_words(text)),
          words_(split_at_blanks(plain_)),
          aliases_(aliases) {}

    Result<RopeDescription> read() {
        take_size();
        for (std::size_t i = 0; i < words_.size();) {
            i += take(i);
        }
        if (auto fault = refusal()) {
            return Unexpected(*std::move(fault));
        }
        return result();
    }

  private:
    /// Takes the size out of the words: a number, or a whole number and a fraction, with a unit.
    void take_size() {
        for (std::size_t i = 0; i + 1 < words_.size(); ++i) {
            if (!is_number(words_[i])) {
                continue;
            }
            const bool mixed = i + 2 < words_.size() && is_number(words_[i + 1]) &&
                               words_[i + 1].find('/') != std::string_view::npos;
            const std::size_t unit_at = i + (mixed ? 2 : 1);
            const auto unit = size_unit(words_[unit_at]);
            if (!unit) {
                continue;
            }
            size_ = std::string(words_[i]) + (mixed ? ' ' + std::string(words_[i + 1]) : "") + ' ' +
                    std::string(*unit);
            const auto first = words_.begin() + static_cast<std::ptrdiff_t>(i);
            words_.erase(first, first + static_cast<std::ptrdiff_t>(unit_at - i + 1));
            return;
        }
    }

    /// Takes the longest phrase that starts at `at`; the number of its words.
    std::size_t take(std::size_t at) {
        std::array<std::pair<AliasOf, Phrase>, 3> found{
            std::pair{AliasOf::construction,
                      longest_phrase(words_, at, AliasOf::construction, aliases_)},
            std::pair{AliasOf::fibre, longest_phrase(words_, at, AliasOf::fibre, aliases_)},
            std::pair{AliasOf::rope, longest_phrase(words_, at, AliasOf::rope, aliases_)}};
        auto& [of, phrase] =
            *std::ranges::max_element(found, {}, [](const auto& one) { return one.second.words; });
        if (phrase.words == 0) {
            unknown_.push_back(words_[at]);
            return 1;
        }
        if (phrase.unclear != nullptr) {
            unclear_.emplace_back(phrase.text, phrase.unclear);
        } else if (of == AliasOf::construction) {
            take_construction(phrase);
        } else if (of == AliasOf::fibre) {
            fibres_.emplace_back(*read_fibre(phrase.name), Part::whole);
        } else {
            take_other(phrase.name);
        }
        return phrase.words;
    }

    void take_construction(const Phrase& phrase) {
        const auto said = read_construction(phrase.name);
        if (construction_ && construction_ != said) {
            second_construction_ = said;
            return;
        }
        construction_ = said;
        construction_text_ = phrase.text;
    }

    /// `core` and `cover` stand behind the fibre that they are of.
    void take_other(std::string_view name) {
        if ((name == "core" || name == "cover") && !fibres_.empty()) {
            fibres_.back().second = name == "core" ? Part::core : Part::cover;
        }
        prestretched_ = prestretched_ || name == "prestretched";
        grade_ = name == "higher-grade"  ? FibreGrade::higher
                 : name == "lower-grade" ? FibreGrade::lower
                                         : grade_;
    }

    /// The fibre of the part, if it is said.
    enum class Part : std::uint8_t { whole, core, cover };
    [[nodiscard]] std::optional<Fibre> fibre_of(Part part) const {
        const auto found = std::ranges::find(fibres_, part, &std::pair<Fibre, Part>::second);
        return found == fibres_.end() ? std::nullopt : std::optional(found->first);
    }

    /// What bears the load: the core where it is said, else the fibre that no part is said of.
    [[nodiscard]] std::optional<Fibre> bearing() const {
        const auto core = fibre_of(Part::core);
        const auto whole = core ? core : fibre_of(Part::whole);
        if (whole || construction_ != Construction::shock_cord) {
            return whole;
        }
        return Fibre::rubber;
    }

    /// A core in a cover of another fibre bears the load alone.
    [[nodiscard]] bool core_bears() const {
        const auto cover = fibre_of(Part::cover);
        const auto bears = bearing();
        return cover && bears && *cover != *bears;
    }

    [[nodiscard]] std::string quoted() const { return in_quotes(text_); }

    [[nodiscard]] std::optional<Fault> refusal() const {
        const bool says_nothing = !construction_ && fibres_.empty() && unclear_.empty();
        if (says_nothing) {
            return Fault{Code::unknown_rope, "no rope " + quoted() +
                                                 " is known, and a maker's name says too little; " +
                                                 std::string(how_to_describe)};
        }
        std::optional<std::string> text;
        for (auto check :
             {&Description::unclear_fault, &Description::construction_fault,
              &Description::fibre_fault, &Description::size_fault, &Description::word_fault}) {
            text = text ? text : (this->*check)();
        }
        return text ? std::optional(Fault{Code::rope_not_understood, *text}) : std::nullopt;
    }

    /// A word that could mean two things is clear where another word says which.
    [[nodiscard]] std::optional<std::string> unclear_fault() const {
        for (const auto& [text, unclear] : unclear_) {
            const bool settled =
                unclear->of == AliasOf::construction && construction_ &&
                std::ranges::find(unclear->means, name_of(*construction_)) != unclear->means.end();
            if (!settled) {
                return unclear_text(text, *unclear);
            }
        }
        return std::nullopt;
    }

    [[nodiscard]] std::optional<std::string> construction_fault() const {
        if (second_construction_) {
            return quoted() + " names two constructions, " + std::string(name_of(*construction_)) +
                   " and " + std::string(name_of(*second_construction_)) + "; leave one out";
        }
        if (construction_ == Construction::double_braid && core_bears()) {
            return "in " + quoted() + " the core bears the load alone; write core-dependent " +
                   std::string(name_of(*bearing())) + (size_.empty() ? "" : ' ' + size_);
        }
        if (construction_ || core_bears()) {
            return std::nullopt;
        }
        std::string text = "the construction is missing in " + quoted() + "; ";
        text += fibre_of(Part::cover) || fibre_of(Part::core)
                    ? "write double-braid or laid-core, by what lies under the cover"
                    : "it is for example 3-strand, 12-strand, double-braid or core-dependent "
                      "(splice list constructions shows all)";
        return unknown_.empty() ? text : text + nearest_to_unknown(construction_names());
    }

    [[nodiscard]] std::optional<std::string> fibre_fault() const {
        if (bearing()) {
            return std::nullopt;
        }
        if (!unknown_.empty()) {
            return in_quotes(unknown_.front()) + " is no fibre in " + quoted() +
                   "; it is one of HMPE, aramid, LCP, polyester, nylon, polypropylene and manila" +
                   nearest_to_unknown(fibre_names());
        }
        return "the fibre is missing in " + quoted() +
               "; it is one of HMPE, aramid, LCP, polyester, nylon, polypropylene and manila";
    }

    [[nodiscard]] std::optional<std::string> size_fault() const {
        if (!size_.empty()) {
            const auto diameter = read_rope_diameter(size_);
            if (!diameter) {
                return diameter.error().text;
            }
            const bool plait = construction_ == Construction::eight_plait;
            if (plait && construction_text_ != plain_words(square_plait) &&
                diameter->length < thinnest_square_plait) {
                return "an 8-plait as thin as " + size_ +
                       " could mean a square plait or a hollow braid; write square-plait " +
                       std::string(name_of(*bearing())) + ' ' + size_ +
                       ", or 12-strand for a "
                       "hollow braid";
            }
            return std::nullopt;
        }
        const auto number = std::ranges::find_if(unknown_, is_number);
        if (number != unknown_.end()) {
            return in_quotes(*number) + " is no diameter in " + quoted() +
                   "; give it its unit, as 6 mm or 1/4 in";
        }
        return "the diameter is missing in " + quoted() + "; write it with its unit, as 6 mm";
    }

    [[nodiscard]] std::optional<std::string> word_fault() const {
        if (unknown_.empty()) {
            return std::nullopt;
        }
        return "the word " + in_quotes(unknown_.front()) + " in " + quoted() +
               " is not known; leave it out, a colour or a maker's name has a column of its own";
    }

    [[nodiscard]] std::string nearest_to_unknown(std::span<const std::string_view> names) const {
        for (const std::string_view word : unknown_) {
            if (const auto near = nearest_in_any_case(word, names)) {
                return "; did you mean \"" + std::string(*near) + "\"?";
            }
        }
        return nearest_name_in_text(names);
    }

    static std::optional<std::string_view>
    nearest_in_any_case(std::string_view word, std::span<const std::string_view> names) {
        std::vector<std::string> small;
        std::ranges::transform(names, std::back_inserter(small), in_small_letters);
        const std::vector<std::string_view> views(small.begin(), small.end());
        const auto near = nearest(word, views);
        if (!near) {
            return std::nullopt;
        }
        const auto which = std::ranges::find(views, *near) - views.begin();
        return names[static_cast<std::size_t>(which)];
    }

    /// A name of several words is misspelt as a whole: `12-stand`.
    [[nodiscard]] std::string nearest_name_in_text(std::span<const std::string_view> names) const {
        const std::string_view first = text_.substr(0, text_.find(' '));
        return did_you_mean(in_small_letters(first), names);
    }

    [[nodiscard]] RopeDescription result() const {
        RopeDescription description;
        description.construction = construction_.value_or(Construction::core_dependent);
        description.fibre = *bearing();
        description.diameter = *read_rope_diameter(size_);
        description.size = size_;
        description.prestretched = prestretched_;
        description.grade = grade_;
        return description;
    }

    std::string_view text_;
    std::string plain_;
    std::vector<std::string_view> words_; ///< those of plain_ that the size leaves
    const Aliases& aliases_;
    std::string size_;
    std::optional<Construction> construction_;
    std::string construction_text_;
    std::optional<Construction> second_construction_;
    std::vector<std::pair<Fibre, Part>> fibres_;
    bool prestretched_ = false;
    FibreGrade grade_ = FibreGrade::unknown;
    std::vector<std::pair<std::string, const UnclearWords*>> unclear_;
    std::vector<std::string_view> unknown_;
};

/// The one of `names` that the whole of `text` says.
Result<std::string_view> read_name(std::string_view text, AliasOf of, std::string_view what,
                                   std::span<const std::string_view> names,
                                   const Aliases& aliases) {
    const std::string plain = plain_words(text);
    const auto words = split_at_blanks(plain);
    const Phrase phrase = words.empty() ? Phrase{} : longest_phrase(words, 0, of, aliases);
    if (phrase.unclear != nullptr && phrase.words == words.size()) {
        return not_understood(unclear_text(text, *phrase.unclear));
    }
    if (phrase.words == 0 || phrase.words != words.size()) {
        return not_understood(in_quotes(text) + " is no " + std::string(what) +
                              "; the nearest are " + listed(nearest_words(text, names, 3)));
    }
    return phrase.name;
}

} // namespace

std::string RopeDescription::text() const {
    const bool thin_plait =
        construction == Construction::eight_plait && diameter.length < thinnest_square_plait;
    std::string text = std::string(thin_plait ? square_plait : name_of(construction)) + ' ' +
                       std::string(name_of(fibre)) + ' ' + size;
    text += grade == FibreGrade::higher  ? " higher-grade"
            : grade == FibreGrade::lower ? " lower-grade"
                                         : "";
    return prestretched ? text + " pre-stretched" : text;
}

bool describes_rope(std::string_view text) {
    const std::string_view start = trimmed(text);
    return read_construction(start.substr(0, start.find_first_of(" \t"))).has_value();
}

Result<WrittenLength> read_rope_diameter(std::string_view text) {
    constexpr Nanometres smallest = 500'000;
    constexpr Nanometres largest = 200'000'000;
    const auto diameter = read_length(text);
    if (!diameter) {
        return not_understood(in_quotes(text) + " is no diameter: " + diameter.error().text);
    }
    const Nanometres size = to_nanometres(diameter->length);
    if (size < smallest || size > largest) {
        return not_understood("a rope is from 0.5 mm to 200 mm thick, not " + std::string(text));
    }
    return *diameter;
}

Result<RopeDescription> read_rope_description(std::string_view text, const Aliases& aliases) {
    return Description(text, aliases).read();
}

Result<Construction> read_construction_words(std::string_view text, const Aliases& aliases) {
    const auto name =
        read_name(text, AliasOf::construction, "construction", construction_names(), aliases);
    if (!name) {
        return Unexpected(name.error());
    }
    return *read_construction(*name);
}

Result<Fibre> read_fibre_words(std::string_view text, const Aliases& aliases) {
    const auto name = read_name(text, AliasOf::fibre, "fibre", fibre_names(), aliases);
    if (!name) {
        return Unexpected(name.error());
    }
    return *read_fibre(*name);
}

} // namespace libsplice
