// A buffered output that commits as a whole or leaves no trace.
#pragma once

#include "libsplice/base/result.h"

#include <cstddef>
#include <memory>
#include <string>
#include <string_view>

namespace libsplice {

/// Text on its way out. `-` writes to standard output as it goes; a path writes to a file beside
/// it, which takes the path's name only at commit(): a failure leaves the old file whole. A
/// temporary file that is never committed is removed. Standard output whose reader has gone away
/// ends quietly: the rest is dropped and `reader_gone()` says so.
class Output {
  public:
    /// Opens the output. A file that is there is replaced: the new one has its owner and group as
    /// far as the system allows it, and its permissions, but never the right to act as another user
    /// (setuid). A link to a file stays, and the file that it leads to is replaced; one that leads
    /// nowhere is refused. Left-over temporary files of runs that have died are removed from the
    /// folder. Code::cannot_write.
    [[nodiscard]] static Result<Output> open(const std::string& path);
    /// Opens an output for a copy of the file `of`: nobody can read it who cannot read that file,
    /// and whatever bears the name `path` is replaced, a link too. Code::cannot_write.
    [[nodiscard]] static Result<Output> open_copy(const std::string& path, const std::string& of);
    /// An output that keeps what is written in `into`, which must outlive it; for tests and hosts.
    [[nodiscard]] static Output to_string(std::string& into);

    Output(Output&&) noexcept;
    Output& operator=(Output&&) noexcept;
    ~Output();

    void write(std::string_view text) {
        if (buffer_.size() + text.size() > flush_at) {
            flush();
        }
        buffer_ += text;
    }
    void write(char c) { write(std::string_view(&c, 1)); }

    /// Hands what is buffered to the system.
    void flush();
    [[nodiscard]] bool reader_gone() const;
    /// Flushes, syncs and renames into place. Code::cannot_write if any write failed.
    [[nodiscard]] Result<bool> commit();

  private:
    static constexpr std::size_t flush_at = std::size_t{1} << 16U;
    struct Target;
    explicit Output(std::unique_ptr<Target> target);

    std::string buffer_;
    std::unique_ptr<Target> target_;
};

} // namespace libsplice
