// Trims, quotes, lists and compares text, and shows control characters escaped.
#include "libsplice/base/text.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <utility>
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

/// The character of one well-formed sequence; of a byte that is none, the byte.
char32_t code_point(std::string_view sequence) {
    const auto byte = [&](std::size_t i) {
        return static_cast<char32_t>(static_cast<unsigned char>(sequence[i]));
    };
    constexpr std::array<char32_t, 5> bits_of_lead{0, 0xFF, 0x1F, 0x0F, 0x07};
    char32_t point = byte(0) & bits_of_lead.at(sequence.size());
    for (std::size_t i = 1; i < sequence.size(); ++i) {
        point = (point << 6U) | (byte(i) & 0x3FU);
    }
    return point;
}

struct Range {
    char32_t first;
    char32_t last;
};

bool is_in(std::span<const Range> ranges, char32_t point) {
    return std::ranges::any_of(ranges, [point](const Range& range) {
        return point >= range.first && point <= range.last;
    });
}

/// C1 controls, marks of direction, and separators of lines and paragraphs.
bool is_treacherous(char32_t point) {
    static constexpr std::array ranges{
        Range{0x80, 0x9F},     Range{0x61C, 0x61C},   Range{0x200E, 0x200F},
        Range{0x2028, 0x202E}, Range{0x2066, 0x2069}, Range{0xFEFF, 0xFEFF},
    };
    return point >= 0x80 && is_in(ranges, point);
}

/// Columns on a terminal, after the ranges of Unicode's East Asian Width and of combining marks
/// that terminals agree on.
std::size_t columns_of(char32_t point) {
    static constexpr std::array over_the_one_before{
        Range{0x300, 0x36F},   Range{0x483, 0x489},   Range{0x591, 0x5BD},   Range{0x610, 0x61A},
        Range{0x64B, 0x65F},   Range{0x1AB0, 0x1AFF}, Range{0x1DC0, 0x1DFF}, Range{0x200B, 0x200D},
        Range{0x20D0, 0x20FF}, Range{0xFE00, 0xFE0F}, Range{0xFE20, 0xFE2F},
    };
    static constexpr std::array wide{
        Range{0x1100, 0x115F},   Range{0x2E80, 0x303E},   Range{0x3041, 0x33FF},
        Range{0x3400, 0x4DBF},   Range{0x4E00, 0x9FFF},   Range{0xA000, 0xA4CF},
        Range{0xA960, 0xA97F},   Range{0xAC00, 0xD7A3},   Range{0xF900, 0xFAFF},
        Range{0xFE30, 0xFE6F},   Range{0xFF00, 0xFF60},   Range{0xFFE0, 0xFFE6},
        Range{0x1F300, 0x1F64F}, Range{0x1F680, 0x1F6FF}, Range{0x1F900, 0x1F9FF},
        Range{0x20000, 0x3FFFD},
    };
    if (point < 0x300) {
        return 1;
    }
    return is_in(over_the_one_before, point) ? 0 : is_in(wide, point) ? 2 : 1;
}

std::string in_hexadecimal(char32_t number, int digits) {
    constexpr std::string_view signs = "0123456789abcdef";
    std::string text;
    for (int i = digits - 1; i >= 0; --i) {
        text += signs[(number >> (4U * static_cast<unsigned>(i))) & 0xFU];
    }
    return text;
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

std::string in_small_letters(std::string_view text) {
    std::string small(text);
    std::ranges::transform(small, small.begin(), [](char c) {
        return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    });
    return small;
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

std::size_t display_width(std::string_view text) {
    std::size_t width = 0;
    while (!text.empty()) {
        const std::size_t length = std::max<std::size_t>(1, sequence_length(text));
        width += columns_of(code_point(text.substr(0, length)));
        text.remove_prefix(length);
    }
    return width;
}

std::string show_controls(std::string_view text) {
    std::string shown;
    shown.reserve(text.size());
    while (!text.empty()) {
        const std::size_t length = sequence_length(text);
        const auto sequence = text.substr(0, std::max<std::size_t>(1, length));
        const char32_t point = length == 0 ? 0 : code_point(sequence);
        if (length == 0 || point < 0x20 || point == 0x7F) {
            shown += "\\x" + in_hexadecimal(static_cast<unsigned char>(text.front()), 2);
        } else if (is_treacherous(point)) {
            shown += "\\u" + in_hexadecimal(point, 4);
        } else {
            shown += sequence;
        }
        text.remove_prefix(sequence.size());
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

std::vector<std::string_view>
nearest_words(std::string_view word, std::span<const std::string_view> words, std::size_t count) {
    constexpr std::size_t most_compared = 64;
    const std::string_view compared = word.substr(0, most_compared);
    std::vector<std::pair<std::size_t, std::string_view>> ranked;
    ranked.reserve(words.size());
    for (const auto candidate : words) {
        ranked.emplace_back(edit_distance(compared, candidate), candidate);
    }
    std::ranges::stable_sort(ranked, {}, &std::pair<std::size_t, std::string_view>::first);
    std::vector<std::string_view> near;
    for (std::size_t i = 0; i < std::min(count, ranked.size()); ++i) {
        near.push_back(ranked[i].second);
    }
    return near;
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
