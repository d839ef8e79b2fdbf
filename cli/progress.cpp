#include "cli/progress.h"

#include <iostream>
#include <unistd.h>

namespace libsplice::cli {

Progress::Progress()
    : on_terminal_(::isatty(STDERR_FILENO) != 0), last_(std::chrono::steady_clock::now()) {}

void Progress::tell(std::string_view text) {
    constexpr std::chrono::milliseconds pause(100);
    const auto now = std::chrono::steady_clock::now();
    if (on_terminal_ && now - last_ >= pause) {
        std::cerr << "\r\x1b[K" << text << std::flush;
        last_ = now;
        told_ = true;
    }
}

void Progress::clear() {
    if (told_) {
        std::cerr << "\r\x1b[K" << std::flush;
        told_ = false;
    }
}

} // namespace libsplice::cli
