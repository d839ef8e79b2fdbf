// Each distinct end is worked out once.
#pragma once

#include "libsplice/allowance/book.h"

#include <deque>
#include <string>
#include <unordered_map>

namespace libsplice {

/// Allowances by kind, rope and fields.
class EndTable {
  public:
    /// The book must outlive this.
    explicit EndTable(const Book& book) : book_(book) {}

    /// The allowance, or the fault that working it out gave. It stays where it is, and so must
    /// `rope`, which is told from others by its address.
    [[nodiscard]] const Result<End>& find(const Kind& kind, const Rope& rope,
                                          std::span<const FieldText> given);
    [[nodiscard]] std::size_t size() const { return ends_.size(); }

  private:
    const Book& book_;
    std::deque<Result<End>> ends_;
    std::unordered_map<std::string, const Result<End>*> by_key_;
    std::string key_;
};

} // namespace libsplice
