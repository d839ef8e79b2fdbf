#include "cli/messages.h"

#include "libsplice/base/text.h"

#include <cstdio>

namespace libsplice::cli {

namespace {

void print_line(const std::string& text) {
    static_cast<void>(std::fprintf(stderr, "%s\n", text.c_str()));
}

} // namespace

void say(std::string_view text) {
    print_line("splice: " + show_controls(text));
}

void say(const Fault& fault) {
    print_line(to_text(fault));
}

FaultSink printing_sink() {
    return FaultSink(most_printed, [](const Fault& fault) { say(fault); });
}

void say_rest(const FaultSink& faults) {
    if (faults.count() > faults.kept().size()) {
        say("and " + std::to_string(faults.count() - faults.kept().size()) + " more faults");
    }
}

} // namespace libsplice::cli
