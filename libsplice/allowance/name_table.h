// The words of items, marks and values behind their ids: the built-in ones, and those of plug-ins.
#pragma once

#include "libsplice/allowance/names.h"

#include <cstddef>
#include <deque>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace libsplice {

/// The words of one sort of id. An id below the number of built-in words stands for the built-in
/// one; those of plug-ins follow in the order in which they were taken in.
class WordList {
  public:
    explicit WordList(std::span<const std::string_view> built_in) : built_in_(built_in) {}

    [[nodiscard]] std::string_view at(std::size_t id) const {
        return id < built_in_.size() ? built_in_[id] : added_.at(id - built_in_.size());
    }
    /// The id of the word, which is added where it is not known yet; nothing once every id that 16
    /// bits hold is taken.
    [[nodiscard]] std::optional<std::size_t> intern(std::string_view word);
    /// The id of the word, if it is known.
    [[nodiscard]] std::optional<std::size_t> find(std::string_view word) const;

  private:
    std::span<const std::string_view> built_in_;
    std::deque<std::string> added_; ///< a deque, so that its texts stay where they are
};

/// Every word that a book's ids stand for.
class Names {
  public:
    [[nodiscard]] std::string_view of(Item item) const {
        return items_.at(static_cast<std::size_t>(item));
    }
    [[nodiscard]] std::string_view of(MarkName mark) const {
        return marks_.at(static_cast<std::size_t>(mark));
    }
    [[nodiscard]] std::string_view of(ValueName value) const {
        return values_.at(static_cast<std::size_t>(value));
    }

    /// The value of that name, if some end has it.
    [[nodiscard]] std::optional<ValueName> find_value(std::string_view word) const;

    /// The id of a plug-in's word: the built-in one where the word is ours. Nothing where there are
    /// too many.
    [[nodiscard]] std::optional<Item> intern_item(std::string_view word);
    [[nodiscard]] std::optional<MarkName> intern_mark(std::string_view word);
    [[nodiscard]] std::optional<ValueName> intern_value(std::string_view word);

  private:
    WordList items_{item_names()};
    WordList marks_{mark_names()};
    WordList values_{value_names()};
};

} // namespace libsplice
