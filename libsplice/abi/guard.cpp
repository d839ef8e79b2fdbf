// Catches what a call lets out, and turns it into a status and the caller's fault record.
#include "libsplice/abi/guard.h"

#include <algorithm>
#include <cstring>
#include <span>
#include <string_view>

namespace libsplice::abi {

namespace {

/// The most of `text` that fits into `room` bytes and ends between two characters.
std::string_view fitting(std::string_view text, std::size_t room) {
    if (text.size() <= room) {
        return text;
    }
    const auto is_continuation = [&](std::size_t at) {
        return (static_cast<unsigned char>(text[at]) & 0xC0U) == 0x80U;
    };
    while (room > 0 && is_continuation(room)) {
        --room;
    }
    return text.substr(0, room);
}

/// Copies the text with a zero byte behind it; the record was zeroed before.
void put(std::span<char> into, std::string_view text) {
    const auto shown = fitting(text, into.size() - 1);
    std::ranges::copy(shown, into.begin());
}

splice_status hand_out_fault(splice_fault full, splice_fault* into) {
    if (into != nullptr) {
        full.size = into->size;
        std::memcpy(into, &full, std::min<std::size_t>(into->size, sizeof full));
    }
    return full.code;
}

} // namespace

Fault wrong_call(std::string text) {
    return Fault{Code::wrong_call, std::move(text)};
}

splice_status report(const Fault& fault, splice_fault* into) {
    splice_fault full{};
    full.code = static_cast<splice_status>(fault.code);
    put(full.text, fault.text);
    put(full.field, fault.field);
    put(full.rule, fault.rule);
    put(full.at, to_text(fault.at));
    return hand_out_fault(full, into);
}

splice_status report_thrown(splice_fault* into) noexcept {
    splice_fault full{};
    full.code = static_cast<splice_status>(Code::out_of_memory);
    put(full.text, "the library could not go on; most likely memory ran out");
    return hand_out_fault(full, into);
}

} // namespace libsplice::abi
