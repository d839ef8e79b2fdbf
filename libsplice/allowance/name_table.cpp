// Ids of words, the built-in ones and those of plug-ins.
#include "libsplice/allowance/name_table.h"

#include <algorithm>
#include <limits>

namespace libsplice {

namespace {

template <class Id>
std::optional<Id> as(std::optional<std::size_t> id) {
    return id ? std::optional(Id(*id)) : std::nullopt;
}

} // namespace

std::optional<std::size_t> WordList::find(std::string_view word) const {
    const auto ours = std::ranges::find(built_in_, word);
    if (ours != built_in_.end()) {
        return static_cast<std::size_t>(ours - built_in_.begin());
    }
    const auto known = std::ranges::find(added_, word);
    if (known != added_.end()) {
        return built_in_.size() + static_cast<std::size_t>(known - added_.begin());
    }
    return std::nullopt;
}

std::optional<std::size_t> WordList::intern(std::string_view word) {
    if (const auto known = find(word)) {
        return known;
    }
    const std::size_t id = built_in_.size() + added_.size();
    if (id > std::numeric_limits<std::uint16_t>::max()) {
        return std::nullopt;
    }
    added_.emplace_back(word);
    return id;
}

std::optional<ValueName> Names::find_value(std::string_view word) const {
    return as<ValueName>(values_.find(word));
}

std::optional<Item> Names::intern_item(std::string_view word) {
    return as<Item>(items_.intern(word));
}

std::optional<MarkName> Names::intern_mark(std::string_view word) {
    return as<MarkName>(marks_.intern(word));
}

std::optional<ValueName> Names::intern_value(std::string_view word) {
    return as<ValueName>(values_.intern(word));
}

} // namespace libsplice
