// A line on the terminal that tells how far long work has come, and takes itself away.
#pragma once

#include <chrono>
#include <string_view>

namespace libsplice::cli {

/// Told on standard error, and only where that is a terminal; not more than ten times a second.
/// There Ctrl-C waits for the next word, so that the line does not stay behind.
class Progress {
  public:
    Progress();
    ~Progress();
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;
    Progress(Progress&&) = delete;
    Progress& operator=(Progress&&) = delete;

    /// Where Ctrl-C was pressed, the line is cleared and the program ends by it.
    void tell(std::string_view text);
    /// Takes the line away.
    void clear();

  private:
    bool on_terminal_;
    bool told_ = false;
    std::chrono::steady_clock::time_point last_;
};

} // namespace libsplice::cli
