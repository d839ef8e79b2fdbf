#include "cli/progress.h"

#include <csignal>
#include <iostream>
#include <unistd.h>

namespace libsplice::cli {

namespace {

volatile std::sig_atomic_t interrupted = 0;

void note_interrupt(int /*signal*/) {
    interrupted = 1;
}

} // namespace

Progress::Progress()
    : on_terminal_(::isatty(STDERR_FILENO) != 0), last_(std::chrono::steady_clock::now()) {
    if (on_terminal_) {
        static_cast<void>(std::signal(SIGINT, note_interrupt));
    }
}

Progress::~Progress() {
    clear();
    if (on_terminal_) {
        static_cast<void>(std::signal(SIGINT, SIG_DFL));
    }
}

void Progress::tell(std::string_view text) {
    if (interrupted != 0) {
        clear();
        static_cast<void>(std::signal(SIGINT, SIG_DFL));
        static_cast<void>(std::raise(SIGINT));
    }
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
