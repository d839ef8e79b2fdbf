// A line on the terminal that tells how far long work has come.
#pragma once

#include <chrono>
#include <string_view>

namespace libsplice::cli {

/// Told on standard error, and only where that is a terminal; not more than ten times a second.
class Progress {
  public:
    Progress();
    void tell(std::string_view text);
    /// Takes the line away again.
    void clear();

  private:
    bool on_terminal_;
    bool told_ = false;
    std::chrono::steady_clock::time_point last_;
};

} // namespace libsplice::cli
