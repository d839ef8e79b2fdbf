// What is said on standard error, in colour or not, and the status line that comes and goes.
#include "cli/messages.h"

#include "libsplice/base/text.h"

#include <atomic>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <unistd.h>

namespace libsplice::cli {

namespace {

/// What the command line says of messages.
struct Manner {
    Colour colour = Colour::automatic;
    bool quiet = false;
};

Manner& manner() {
    static Manner the_manner;
    return the_manner;
}

std::atomic<bool> status_shown = false;

constexpr std::string_view start_of_line = "\r\x1b[K";

bool set(const char* variable) {
    const char* value = std::getenv(variable);
    return value != nullptr && *value != '\0';
}

void print_line(const std::string& text) {
    clear_status();
    static_cast<void>(std::fprintf(stderr, "%s\n", text.c_str()));
}

/// The words `error 107:` in red and bold.
std::string coloured(const Fault& fault) {
    std::string text = to_text(fault);
    const std::string at = show_controls(to_text(fault.at));
    const auto from = at.empty() ? 0 : at.size() + 2;
    const auto to = text.find(':', from);
    text.insert(to, "\x1b[0m");
    text.insert(from, "\x1b[1;31m");
    return text;
}

bool has_terminal() {
    const char* terminal = std::getenv("TERM");
    return ::isatty(STDERR_FILENO) == 1 && terminal != nullptr &&
           std::string_view(terminal) != "dumb";
}

bool in_colour() {
    static const bool by_itself = has_terminal() && !set("NO_COLOR");
    const Colour colour = manner().colour;
    return colour == Colour::always || (colour == Colour::automatic && by_itself);
}

} // namespace

void set_messages(Colour colour, bool quiet) {
    manner() = {colour, quiet};
}

bool shows_progress() {
    return has_terminal() && !manner().quiet;
}

void show_status(std::string_view text) {
    status_shown = true;
    const auto line = std::string(start_of_line) + show_controls(text);
    static_cast<void>(std::fputs(line.c_str(), stderr));
    static_cast<void>(std::fflush(stderr));
}

void clear_status() {
    if (status_shown.exchange(false)) {
        static_cast<void>(std::fputs(std::string(start_of_line).c_str(), stderr));
    }
}

void wipe_status() noexcept {
    if (status_shown.exchange(false)) {
        const auto ignored = ::write(STDERR_FILENO, start_of_line.data(), start_of_line.size());
        static_cast<void>(ignored);
    }
}

void say(std::string_view text) {
    print_line("splice: " + show_controls(text));
}

void say(const Fault& fault) {
    print_line(in_colour() ? coloured(fault) : to_text(fault));
}

void remark(std::string_view text) {
    if (!manner().quiet) {
        say(text);
    }
}

FaultSink printing_sink() {
    return FaultSink(most_printed, [](const Fault& fault) { say(fault); });
}

void say_rest(const FaultSink& faults) {
    if (faults.count() > faults.kept().size()) {
        say("and " + std::to_string(faults.count() - faults.kept().size()) + " more errors");
    }
}

} // namespace libsplice::cli
