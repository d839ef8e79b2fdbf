// The signal sets a flag; the action that was there before comes back at the end.
#include "cli/reel/search_interrupt.h"

namespace libsplice::cli {

namespace {

std::atomic<bool> flag_to_stop = false;
static_assert(std::atomic<bool>::is_always_lock_free, "a signal handler sets it");

} // namespace

std::atomic<bool>& told_to_stop() {
    return flag_to_stop;
}

SearchInterrupt::SearchInterrupt() {
    struct sigaction action {};
    if (::sigaction(SIGINT, nullptr, &before_) == 0 && before_.sa_handler != SIG_IGN) {
        action.sa_handler = [](int /*signal*/) {
            flag_to_stop = true;
        };
        set_ = ::sigaction(SIGINT, &action, nullptr) == 0;
    }
}

SearchInterrupt::~SearchInterrupt() {
    if (set_) {
        static_cast<void>(::sigaction(SIGINT, &before_, nullptr));
    }
}

} // namespace libsplice::cli
