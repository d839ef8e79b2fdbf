// Records cross the border by size: what the caller does not know of is not touched, what we do not
// know of is refused.
#pragma once

#include "libsplice/abi/guard.h"
#include "libsplice/base/result.h"

#include <algorithm>
#include <cstddef>
#include <cstring>
#include <type_traits>

namespace libsplice::abi {

/// The least that a record may be: its size and the member beside it.
inline constexpr std::uint32_t least_record = 8;

/// Fills the caller's record from `full`, as far as it reaches.
template <class Record>
[[nodiscard]] Outcome hand_out(Record full, Record* into) {
    static_assert(std::is_trivially_copyable_v<Record>);
    if (into == nullptr) {
        return wrong_call("the record to fill is null");
    }
    if (into->size < least_record) {
        return wrong_call("the record to fill does not give its size");
    }
    full.size = into->size;
    std::memcpy(into, &full, std::min<std::size_t>(into->size, sizeof(Record)));
    return std::nullopt;
}

/// The caller's record with every member that it does not reach at 0; all of them where it is null.
/// Code::wrong_call where it holds something that is not known here.
template <class Record>
[[nodiscard]] Result<Record> take_in(const Record* given) {
    static_assert(std::is_trivially_copyable_v<Record>);
    Record record{};
    if (given == nullptr) {
        return record;
    }
    if (given->size < least_record) {
        return Unexpected(wrong_call("a record does not give its size"));
    }
    std::memcpy(&record, given, std::min<std::size_t>(given->size, sizeof(Record)));
    const auto* bytes = reinterpret_cast<const unsigned char*>(given);
    const bool known =
        given->size <= sizeof(Record) || std::all_of(bytes + sizeof(Record), bytes + given->size,
                                                     [](unsigned char byte) { return byte == 0; });
    if (!known) {
        return Unexpected(wrong_call("a record asks for something that this version of the library "
                                     "does not know; use a newer library"));
    }
    return record;
}

/// `list[index]` into the caller's record; Code::wrong_call past the end.
template <class List, class Record>
[[nodiscard]] Outcome hand_out_at(const List& list, std::uint64_t index, Record* into) {
    if (index >= list.size()) {
        return wrong_call("index " + std::to_string(index) + " is past the end: there are " +
                          std::to_string(list.size()));
    }
    return hand_out(list[static_cast<std::size_t>(index)], into);
}

} // namespace libsplice::abi
