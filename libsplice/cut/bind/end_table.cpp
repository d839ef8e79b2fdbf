// Keeps the ends that have been worked out, by all that they depend on.
#include "libsplice/cut/bind/end_table.h"

#include <algorithm>
#include <bit>
#include <cstdint>

namespace libsplice {

const Result<End>& EndTable::find(const Kind& kind, const Rope& rope,
                                  std::span<const FieldText> given) {
    std::vector<FieldText> fields(given.begin(), given.end());
    std::ranges::sort(fields, {}, &FieldText::name); // the order of columns makes no other end
    constexpr char separator = '\x1f';
    key_.assign(kind.declaration.name);
    key_ += separator;
    // Two ropes of one description differ in what the reel in hand says.
    key_ += std::to_string(std::bit_cast<std::uintptr_t>(&rope));
    for (const FieldText& field : fields) {
        key_ += separator;
        key_ += field.name;
        key_ += separator;
        key_ += field.text;
        key_ += field.unit ? static_cast<char>('0' + static_cast<int>(*field.unit)) : ' ';
    }
    const auto known = by_key_.find(key_);
    if (known != by_key_.end()) {
        return *known->second;
    }
    ends_.push_back(book_.work_out(kind, rope, fields));
    by_key_.emplace(key_, &ends_.back());
    return ends_.back();
}

} // namespace libsplice
