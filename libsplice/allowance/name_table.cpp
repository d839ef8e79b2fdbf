#include "libsplice/allowance/name_table.h"

#include <algorithm>
#include <limits>

namespace libsplice {

namespace {

template <class Id>
std::optional<Id> intern_as(WordList& words, std::string_view word) {
    const auto id = words.intern(word);
    return id ? std::optional(Id(*id)) : std::nullopt;
}

} // namespace

std::optional<std::size_t> WordList::intern(std::string_view word) {
    const auto ours = std::ranges::find(built_in_, word);
    if (ours != built_in_.end()) {
        return static_cast<std::size_t>(ours - built_in_.begin());
    }
    const auto known = std::ranges::find(added_, word);
    const auto id = built_in_.size() + static_cast<std::size_t>(known - added_.begin());
    if (id > std::numeric_limits<std::uint16_t>::max()) {
        return std::nullopt;
    }
    if (known == added_.end()) {
        added_.emplace_back(word);
    }
    return id;
}

std::optional<Item> Names::intern_item(std::string_view word) {
    return intern_as<Item>(items_, word);
}

std::optional<MarkName> Names::intern_mark(std::string_view word) {
    return intern_as<MarkName>(marks_, word);
}

std::optional<ValueName> Names::intern_value(std::string_view word) {
    return intern_as<ValueName>(values_, word);
}

} // namespace libsplice
