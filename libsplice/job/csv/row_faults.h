// The faults of a file's rows, of which one that many rows share is told once.
#pragma once

#include "libsplice/base/fault_sink.h"

#include <vector>

namespace libsplice {

/// Hands faults of rows on to a sink. The first of each code is handed on at once; of the rest a
/// few are held until the end, and if there are more, one fault says how many rows have it too.
class RowFaults {
  public:
    explicit RowFaults(FaultSink& faults) : faults_(faults) {}

    void push(const Fault& fault);
    /// Hands on what is held; call it once, at the end of the file.
    void finish();

  private:
    struct Sort {
        Code code;
        std::size_t more = 0;    ///< beyond the first
        std::vector<Fault> held; ///< the first few of these, and the last
    };
    FaultSink& faults_;
    std::vector<Sort> sorts_;
};

} // namespace libsplice
