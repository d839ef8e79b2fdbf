// Hands each fault on up to a limit, and counts the rest.
#include "libsplice/base/fault_sink.h"

namespace libsplice {

void FaultSink::push(Fault fault) {
    ++count_;
    if (kept_.size() >= keep_) {
        return;
    }
    kept_.push_back(std::move(fault));
    if (on_fault_) {
        on_fault_(kept_.back());
    }
}

} // namespace libsplice
