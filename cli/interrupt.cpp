// A signal handler removes what is half written, with nothing that may not be called there.
#include "cli/interrupt.h"

#include "libsplice/base/files/unfinished_file.h"

#include "cli/messages.h"

#include <csignal>

namespace libsplice::cli {

namespace {

/// Only what a signal handler may call. SA_RESETHAND has put the usual end back.
void stop(int signal) {
    remove_unfinished_files();
    wipe_status();
    static_cast<void>(::raise(signal));
}

} // namespace

void leave_no_trace_when_interrupted() {
    for (const int signal : {SIGINT, SIGTERM, SIGHUP, SIGQUIT}) {
        struct sigaction action {};
        if (::sigaction(signal, nullptr, &action) == 0 && action.sa_handler != SIG_IGN) {
            action = {};
            action.sa_handler = stop;
            action.sa_flags = static_cast<int>(SA_RESETHAND);
            static_cast<void>(::sigaction(signal, &action, nullptr));
        }
    }
}

} // namespace libsplice::cli
