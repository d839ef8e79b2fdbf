// Texts that a host may point to: they stay where they are and end in a zero byte.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <unordered_set>

namespace libsplice::abi {

/// Keeps every text once.
class Texts {
  public:
    /// The text where it stays until clear().
    [[nodiscard]] const char* keep(std::string_view text) {
        auto found = kept_.find(text);
        if (found == kept_.end()) {
            found = kept_.emplace(text).first;
        }
        return found->c_str();
    }
    void clear() { kept_.clear(); }

  private:
    struct Hash {
        // NOLINTNEXTLINE(readability-identifier-naming): the standard library looks for this name
        using is_transparent = void;
        std::size_t operator()(std::string_view text) const {
            return std::hash<std::string_view>()(text);
        }
    };
    std::unordered_set<std::string, Hash, std::equal_to<>> kept_;
};

/// A text of the host's; null counts as empty.
[[nodiscard]] inline std::string_view text_of(const char* text) {
    return text == nullptr ? std::string_view() : std::string_view(text);
}

} // namespace libsplice::abi
