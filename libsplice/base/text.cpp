// Trims, quotes, lists and compares text, and shows control characters escaped.
#include "libsplice/base/text.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <vector>

namespace libsplice {

namespace {

/// Length of the well-formed UTF-8 sequence at the start of `text`; 0 if it is not well-formed.
std::size_t sequence_length(std::string_view text) {
    const auto byte = [&](std::size_t i) {
        return static_cast<unsigned char>(text[i]);
    };
    const unsigned char lead = byte(0);
    if (lead < 0x80) {
        return 1;
    }
    const std::size_t length = lead >= 0xC2 && lead <= 0xDF   ? 2
                               : lead >= 0xE0 && lead <= 0xEF ? 3
                               : lead >= 0xF0 && lead <= 0xF4 ? 4
                                                              : 0;
    if (length == 0 || text.size() < length) {
        return 0;
    }
    for (std::size_t i = 1; i < length; ++i) {
        if ((byte(i) & 0xC0U) != 0x80U) {
            return 0;
        }
    }
    const bool overlong = (lead == 0xE0 && byte(1) < 0xA0) || (lead == 0xF0 && byte(1) < 0x90);
    const bool surrogate = lead == 0xED && byte(1) > 0x9F;
    const bool too_large = lead == 0xF4 && byte(1) > 0x8F;
    return overlong || surrogate || too_large ? 0 : length;
}

std::size_t edit_distance(std::string_view a, std::string_view b) {
    std::vector<std::size_t> row(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j) {
        row[j] = j;
    }
    for (std::size_t i = 1; i <= a.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t changed = diagonal + (a[i - 1] == b[j - 1] ? 0U : 1U);
            diagonal = row[j];
            row[j] = std::min({changed, row[j] + 1, row[j - 1] + 1});
        }
    }
    return row[b.size()];
}

} // namespace

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

std::optional<std::size_t> first_bad_utf8(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t length = sequence_length(text.substr(at));
        if (length == 0) {
            return at;
        }
        at += length;
    }
    return std::nullopt;
}

std::size_t character_count(std::string_view text) {
    return static_cast<std::size_t>(std::ranges::count_if(
        text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

std::string show_controls(std::string_view text) {
    constexpr std::string_view digits = "0123456789abcdef";
    std::string shown;
    shown.reserve(text.size());
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (byte < 0x20 || byte == 0x7F) {
            shown += "\\x";
            shown += digits[byte >> 4U];
            shown += digits[byte & 0xFU];
        } else {
            shown += c;
        }
    }
    return shown;
}

std::optional<std::string_view> nearest(std::string_view word,
                                        std::span<const std::string_view> words) {
    constexpr std::size_t longest_worth_comparing = 64;
    if (word.size() > longest_worth_comparing) {
        return std::nullopt;
    }
    std::optional<std::string_view> best;
    std::size_t best_distance = std::min<std::size_t>(3, (word.size() + 2) / 3) + 1;
    for (const auto candidate : words) {
        const std::size_t distance = edit_distance(word, candidate);
        if (distance < best_distance) {
            best_distance = distance;
            best = candidate;
        }
    }
    return best;
}

std::string did_you_mean(std::string_view word, std::span<const std::string_view> words) {
    const auto near = nearest(word, words);
    return near ? "; did you mean \"" + std::string(*near) + "\"?" : std::string();
}

std::string in_quotes(std::string_view text) {
    constexpr std::size_t longest_shown = 60;
    if (text.size() <= longest_shown) {
        return '"' + std::string(text) + '"';
    }
    std::size_t cut = longest_shown;
    while (cut != 0 && (static_cast<unsigned char>(text[cut]) & 0xC0U) == 0x80U) {
        --cut;
    }
    return '"' + std::string(text.substr(0, cut)) + "…\"";
}

std::string listed(std::span<const std::string_view> words) {
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (i != 0) {
            text += i + 1 == words.size() ? " and " : ", ";
        }
        text += words[i];
    }
    return text;
}

} // namespace libsplice
