// How ends are made, each once for a whole job: found by kind and steps, numbered by first use.
#include "libsplice/sheet/panel/card/methods.h"

#include "libsplice/sheet/words/piece_text.h"

#include <algorithm>
#include <array>

namespace libsplice {

namespace {

constexpr std::size_t fewest_steps = 2; ///< shorter work is said on the card itself

bool may_be_shared(const Piece& piece, LineEnd end) {
    return piece.line != nullptr && piece.line->counts(end) &&
           piece.line->end(end).allowance->steps.size() >= fewest_steps;
}

/// Ends with the same key are made the same way.
std::string key_of_method(const BoundEnd& end) {
    std::string key(end.kind->declaration.name);
    for (const Step& step : end.allowance->steps) {
        key += '\0';
        key += step.text;
    }
    return key;
}

/// The names in braces of a text, in order.
std::vector<std::string_view> places_in(std::string_view text) {
    std::vector<std::string_view> places;
    for (auto open = text.find('{'); open != std::string_view::npos; open = text.find('{')) {
        const auto close = text.find('}', open);
        if (close == std::string_view::npos) {
            break;
        }
        places.push_back(text.substr(open + 1, close - open - 1));
        text.remove_prefix(close + 1);
    }
    return places;
}

/// What stands for a figure: `[tail]`, or the mark's name.
std::string name_of_place(std::string_view place) {
    if (place.starts_with('@')) {
        return "[from the cut end to " + std::string(place.substr(1)) + ']';
    }
    return '[' + show_name(place) + ']';
}

std::string without_figures(std::string_view text) {
    std::string shown;
    for (const std::string_view place : places_in(text)) {
        const auto at = text.find('{');
        shown += text.substr(0, at);
        shown += name_of_place(place);
        text.remove_prefix(at + place.size() + 2);
    }
    return shown + std::string(text);
}

Method method_of(const BoundEnd& end) {
    Method method{{},
                  std::string(end.kind->declaration.name),
                  std::string(end.kind->declaration.title),
                  {},
                  {},
                  end.kind,
                  end.allowance};
    for (const Step& step : end.allowance->steps) {
        method.steps.push_back({std::nullopt, step.action, {}, without_figures(step.text)});
    }
    return method;
}

} // namespace

Methods::Methods(const std::deque<LikeLines>& entries) {
    constexpr std::array ends{LineEnd::a, LineEnd::b};
    std::size_t number = 0;
    for (const LikeLines& lines : entries) {
        ++number;
        for (const LineEnd end : ends) {
            if (!may_be_shared(lines.piece(), end)) {
                continue;
            }
            const BoundEnd& bound = lines.piece().line->end(end);
            const auto [at, is_new] = by_key_.try_emplace(key_of_method(bound), methods_.size());
            if (is_new) {
                methods_.push_back(method_of(bound));
            }
            std::vector<std::size_t>& cards = methods_[at->second].cards;
            if (cards.empty() || cards.back() != number) {
                cards.push_back(number);
            }
        }
    }
    std::size_t sheets = 0;
    for (Method& method : methods_) {
        if (method.cards.size() > 1) {
            method.id = 'K' + std::to_string(++sheets);
        }
    }
}

const Method* Methods::find(const Piece& piece, LineEnd end) const {
    if (!may_be_shared(piece, end)) {
        return nullptr;
    }
    const auto found = by_key_.find(key_of_method(piece.line->end(end)));
    return found == by_key_.end() || methods_[found->second].id.empty() ? nullptr
                                                                        : &methods_[found->second];
}

std::string figures_for_method(const Piece& piece, LineEnd end, std::size_t from, std::size_t to,
                               UnitSystem units) {
    const TemplateContext context = filling_of(piece, end, units);
    std::vector<std::string_view> said;
    std::string text;
    const Steps steps = piece.line->end(end).allowance->steps;
    for (const Step& step : steps.subspan(from - 1, to - from + 1)) {
        for (const std::string_view place : places_in(step.text)) {
            if (std::ranges::find(said, place) != said.end()) {
                continue;
            }
            said.push_back(place);
            text += text.empty() ? "" : "; ";
            text += place.starts_with('@') ? "cut end to " + std::string(place.substr(1))
                                           : show_name(place);
            text += ' ';
            append_filled(text, '{' + std::string(place) + '}', context);
        }
    }
    return text;
}

} // namespace libsplice
