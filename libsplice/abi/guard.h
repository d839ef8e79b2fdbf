// What every call of the C library goes through: faults become status codes, and nothing that is
// thrown gets out.
#pragma once

#include "libsplice/abi/include/splice_base.h"
#include "libsplice/base/fault.h"

#include <optional>
#include <string>

namespace libsplice::abi {

/// What the body of a call comes to: nothing, or the fault that it ends in.
using Outcome = std::optional<Fault>;

/// Code::wrong_call.
[[nodiscard]] Fault wrong_call(std::string text);

/// Fills the caller's record, as far as it reaches; it may be null. The fault's code.
splice_status report(const Fault& fault, splice_fault* into);

/// Code::out_of_memory, written without needing memory.
splice_status report_thrown(splice_fault* into) noexcept;

/// Runs the body of a call. The one catch-all of the library stands here.
template <class Body>
splice_status guarded(splice_fault* fault, Body&& body) noexcept {
    try {
        const Outcome outcome = body();
        return outcome ? report(*outcome, fault) : 0;
    } catch (...) {
        return report_thrown(fault);
    }
}

} // namespace libsplice::abi
