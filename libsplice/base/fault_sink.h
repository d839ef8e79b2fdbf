// Where a reader leaves the faults that it finds, so that it can go on and find the next.
#pragma once

#include "libsplice/base/fault.h"

#include <cstddef>
#include <functional>
#include <utility>
#include <vector>

namespace libsplice {

/// Takes every fault of a run. It keeps the first `keep` of them and counts the rest, so that a
/// file of a million bad rows costs no more memory than one of two hundred. `on_fault`, if given,
/// sees each kept fault as it arrives.
class FaultSink {
  public:
    explicit FaultSink(std::size_t keep = 200, std::function<void(const Fault&)> on_fault = {})
        : keep_(keep), on_fault_(std::move(on_fault)) {}

    void push(Fault fault);

    [[nodiscard]] const std::vector<Fault>& kept() const { return kept_; }
    [[nodiscard]] std::size_t count() const { return count_; }
    [[nodiscard]] bool empty() const { return count_ == 0; }

  private:
    std::size_t keep_;
    std::function<void(const Fault&)> on_fault_;
    std::vector<Fault> kept_;
    std::size_t count_ = 0;
};

} // namespace libsplice
