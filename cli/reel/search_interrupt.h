// Ctrl-C during a search ends the search and not the program.
#pragma once

#include <atomic>
#include <csignal>

namespace libsplice::cli {

/// Set once somebody asks a search to stop; searches look at it.
[[nodiscard]] std::atomic<bool>& told_to_stop();

/// While it lives, Ctrl-C sets told_to_stop().
class SearchInterrupt {
  public:
    SearchInterrupt();
    SearchInterrupt(const SearchInterrupt&) = delete;
    SearchInterrupt& operator=(const SearchInterrupt&) = delete;
    ~SearchInterrupt();

  private:
    struct sigaction before_ {};
    bool set_ = false;
};

} // namespace libsplice::cli
