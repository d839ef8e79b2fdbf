// Progress is shown now and then, in the words of whoever does the work.
#include "cli/progress.h"

#include "libsplice/units/show.h"

#include "cli/messages.h"

#include <algorithm>
#include <cmath>
#include <unistd.h>

namespace libsplice::cli {

namespace {

/// `12,345`.
std::string grouped(double count) {
    std::string text = show_number(std::round(count), 0);
    for (std::size_t at = text.size(); at > 3;) {
        at -= 3;
        text.insert(at, ",");
    }
    return text;
}

/// `45 s`, `3 min 20 s`, `2 h 5 min`.
std::string duration(double seconds) {
    const double whole = std::ceil(seconds);
    const auto text = [](double number, const char* unit) {
        return show_number(number, 0) + unit;
    };
    if (whole < 60.0) {
        return text(whole, " s");
    }
    if (whole < 3600.0) {
        return text(std::floor(whole / 60.0), " min ") + text(std::fmod(whole, 60.0), " s");
    }
    const double minutes = std::ceil(whole / 60.0);
    return text(std::floor(minutes / 60.0), " h ") + text(std::fmod(minutes, 60.0), " min");
}

} // namespace

std::string progress_text(const WorkDone& work) {
    std::string text = std::string(work.doing) + ": " + grouped(static_cast<double>(work.count)) +
                       ' ' + std::string(work.things);
    if (work.seconds > 0.0) {
        text += ", " + grouped(static_cast<double>(work.count) / work.seconds) + " a second";
    }
    if (work.share) {
        const double share = std::clamp(*work.share, 0.0, 1.0);
        text += ", " + show_number(std::floor(share * 100.0), 0) + " %";
        if (share > 0.0 && share < 1.0) {
            text += ", " + duration(work.seconds * (1.0 - share) / share) + " to go";
        }
    }
    return text + (work.note.empty() ? "" : ", " + std::string(work.note));
}

Progress::Progress(std::string_view doing, std::string_view things, std::string_view output)
    : doing_(doing),
      things_(things),
      wanted_(shows_progress() && (output != "-" || ::isatty(STDOUT_FILENO) == 0)),
      begun_(Clock::now()),
      next_(begun_ + std::chrono::seconds(1)) {}

Progress::~Progress() {
    clear_status();
}

void Progress::at(std::size_t count, std::optional<double> share, std::string_view note) {
    constexpr auto pause = std::chrono::milliseconds(200);
    if (!wanted_) {
        return;
    }
    const auto now = Clock::now();
    if (now < next_) {
        return;
    }
    next_ = now + pause;
    const std::chrono::duration<double> since = now - begun_;
    show_status(progress_text({doing_, things_, count, since.count(), share, note}));
}

} // namespace libsplice::cli
