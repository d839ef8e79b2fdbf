// What becomes of a command that is told to stop.
#pragma once

namespace libsplice::cli {

/// From now on a signal that asks the program to stop (Ctrl-C and its like) removes the files that
/// are half written, then ends the program as that signal does. Signals that are ignored stay so.
void leave_no_trace_when_interrupted();

} // namespace libsplice::cli
