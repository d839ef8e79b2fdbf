// Like lines are gathered by all that a card says of them but their boats.
#include "libsplice/sheet/panel/like_lines.h"

#include <array>
#include <charconv>
#include <cstdint>
#include <cstring>
#include <numeric>
#include <optional>

namespace libsplice {

namespace {

constexpr std::array texts_of_line{
    &LineTexts::name,   &LineTexts::rope, &LineTexts::end_a,     &LineTexts::end_b,
    &LineTexts::state,  &LineTexts::pair, &LineTexts::fit_first, &LineTexts::lot,
    &LineTexts::colour, &LineTexts::note,
};

/// What like lines have in common. Equal bound lines are one object.
std::string key_of(const Piece& piece) {
    std::string key;
    for (const auto text : texts_of_line) {
        key += piece.*text;
        key += '\0';
    }
    const auto add = [&key](const auto& value) {
        std::array<char, sizeof(value)> bytes{};
        std::memcpy(bytes.data(), &value, sizeof(value));
        key.append(bytes.data(), bytes.size());
    };
    add(reinterpret_cast<std::uintptr_t>(piece.line));
    add(piece.finished.value_or(-1));
    add(piece.cut);
    if (piece.fault != nullptr) {
        key += piece.fault->text;
    }
    return key;
}

/// A name in front of a number at its end.
struct Numbered {
    std::string_view stem;
    std::optional<long> number;
};

Numbered numbered(std::string_view name) {
    std::size_t at = name.size();
    while (at > 0 && name[at - 1] >= '0' && name[at - 1] <= '9') {
        --at;
    }
    constexpr std::size_t most_digits = 6;
    if (at == name.size() || name.size() - at > most_digits || name[at] == '0') {
        return {name, {}};
    }
    long number = 0;
    std::from_chars(name.data() + at, name.data() + name.size(), number);
    return {name.substr(0, at), number};
}

bool goes_on(const BoatCount& before, const BoatCount& next) {
    const Numbered first = numbered(before.boat);
    const Numbered second = numbered(next.boat);
    return first.number && second.number && first.stem == second.stem &&
           *second.number == *first.number + 1 && before.quantity == next.quantity;
}

std::string with_count(const BoatCount& boat) {
    return boat.quantity == 1 ? boat.boat : boat.boat + " (" + std::to_string(boat.quantity) + ')';
}

} // namespace

LikeLines::LikeLines(const Piece& piece, std::size_t line) : piece_(piece) {
    std::size_t size = 0;
    for (const auto text : texts_of_line) {
        size += (piece.*text).size();
    }
    texts_.reserve(size); // never moves from here on
    for (const auto text : texts_of_line) {
        const std::size_t at = texts_.size();
        texts_ += piece.*text;
        piece_.*text = std::string_view(texts_).substr(at);
    }
    // What a step quotes of the job lies in the kept texts from now on.
    for (PieceStep& step : piece_.steps) {
        if (step.named.data() == piece.fit_first.data() && !step.named.empty()) {
            step.named = piece_.fit_first;
        }
    }
    piece_.boat = {};
    if (piece.fault != nullptr) {
        fault_ = *piece.fault;
        piece_.fault = &fault_;
    }
    add(piece, line);
}

void LikeLines::add(const Piece& piece, std::size_t line) {
    lines_.push_back(line);
    if (!boats_.empty() && boats_.back().boat == piece.boat) {
        boats_.back().quantity += piece.quantity;
    } else {
        boats_.push_back({std::string(piece.boat), piece.quantity});
    }
}

std::int64_t LikeLines::pieces() const {
    return std::accumulate(
        boats_.begin(), boats_.end(), std::int64_t{0},
        [](std::int64_t sum, const BoatCount& boat) { return sum + boat.quantity; });
}

std::size_t Gathered::add(const Piece& piece) {
    ++lines_;
    const auto [at, is_new] = by_key_.try_emplace(key_of(piece), entries_.size());
    if (is_new) {
        entries_.emplace_back(piece, lines_);
    } else {
        entries_[at->second].add(piece, lines_);
    }
    return at->second + 1;
}

std::string boats_in_words(const std::vector<BoatCount>& boats) {
    std::string text;
    for (std::size_t i = 0; i < boats.size(); ++i) {
        std::size_t last = i;
        while (last + 1 < boats.size() && goes_on(boats[last], boats[last + 1])) {
            ++last;
        }
        if (boats[i].boat.empty()) {
            continue;
        }
        text += text.empty() ? "" : ", ";
        if (last > i + 1) {
            text += boats[i].boat + " to " + with_count(boats[last]);
            i = last;
        } else {
            text += with_count(boats[i]);
        }
    }
    return text;
}

} // namespace libsplice
