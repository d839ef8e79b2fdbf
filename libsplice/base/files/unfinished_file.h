// Files that are being written, so that a program which is told to stop can take them away.
#pragma once

#include <cstddef>
#include <string>

namespace libsplice {

/// Remembers the path of a file that is not finished, as long as it lives. The paths lie in a fixed
/// place that a signal handler may read; of more than eight at once the rest are not remembered,
/// and neither is a path of 4096 bytes or more.
class UnfinishedFile {
  public:
    explicit UnfinishedFile(const std::string& path);
    UnfinishedFile(const UnfinishedFile&) = delete;
    UnfinishedFile& operator=(const UnfinishedFile&) = delete;
    ~UnfinishedFile();

  private:
    std::size_t slot_;
};

/// Removes every file that is remembered. A signal handler may call it.
void remove_unfinished_files() noexcept;

} // namespace libsplice
