// How far a long piece of work has come, on a terminal.
#pragma once

#include <chrono>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace libsplice::cli {

/// What is known of work under way.
struct WorkDone {
    std::string_view doing;      ///< such as `cutting`
    std::string_view things;     ///< what is counted, such as `lines`
    std::size_t count = 0;       ///< how many are done
    double seconds = 0.0;        ///< since the beginning
    std::optional<double> share; ///< of the whole, 0 to 1; nothing: not known
    std::string_view note = {};  ///< what else is known; may be empty
};

/// `cutting: 120,000 lines, 60,000 a second, 40 %, 3 s to go`. The time to go is left out where the
/// share says nothing, the rate at the very beginning.
[[nodiscard]] std::string progress_text(const WorkDone& work);

/// Shows how far a piece of work has come, from its second second on and until it ends, where
/// standard error is a terminal and what is written does not go to one. Cheap enough to call for
/// every line.
class Progress {
  public:
    /// `output` is where the answer goes; `-` is standard output.
    Progress(std::string_view doing, std::string_view things, std::string_view output);
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;
    ~Progress();

    /// `count` are done, which is `share` of the whole; `note` is what else is known.
    void at(std::size_t count, std::optional<double> share = {}, std::string_view note = {});
    /// Whether it is of any use to call at().
    [[nodiscard]] bool wanted() const { return wanted_; }

  private:
    using Clock = std::chrono::steady_clock;

    std::string_view doing_;
    std::string_view things_;
    bool wanted_;
    Clock::time_point begun_;
    Clock::time_point next_; ///< when to show something
};

} // namespace libsplice::cli
