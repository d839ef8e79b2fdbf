// Reading from the system: files, standard input, and text in memory.
#include "libsplice/base/input.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <fcntl.h>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>
#include <utility>

namespace libsplice {

namespace {

Unexpected unreadable(const std::string& name, const std::string& what) {
    return Unexpected(Fault{Code::file_unreadable, what, Place{name}});
}

Unexpected system_refused(const std::string& name, const std::string& what, int error) {
    return unreadable(name, what + ": " + std::generic_category().message(error));
}

bool is_folder(int descriptor) {
    struct stat status {};
    return ::fstat(descriptor, &status) == 0 && S_ISDIR(status.st_mode);
}

} // namespace

Input::Input(int descriptor, std::string_view text, std::string name)
    : descriptor_(descriptor), text_(text), name_(std::move(name)) {}

Result<Input> Input::open(const std::string& path) {
    if (path == "-") {
        return Input(STDIN_FILENO, {}, "standard input");
    }
    const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0) {
        return system_refused(path, "the file cannot be opened", errno);
    }
    Input input(descriptor, {}, path);
    if (is_folder(descriptor)) {
        return unreadable(path, "this is a folder; name a file in it");
    }
    return input;
}

Input Input::of_text(std::string_view text, std::string name) {
    return Input(-1, text, std::move(name));
}

Input::Input(Input&& other) noexcept
    : descriptor_(std::exchange(other.descriptor_, -1)),
      text_(std::exchange(other.text_, {})),
      name_(std::move(other.name_)),
      consumed_(other.consumed_) {}

Input& Input::operator=(Input&& other) noexcept {
    std::swap(descriptor_, other.descriptor_);
    std::swap(text_, other.text_);
    std::swap(name_, other.name_);
    std::swap(consumed_, other.consumed_);
    return *this;
}

Input::~Input() {
    if (descriptor_ >= 0 && descriptor_ != STDIN_FILENO) {
        ::close(descriptor_);
    }
}

Result<std::size_t> Input::read(std::span<char> into) {
    if (descriptor_ < 0) {
        const std::size_t count = text_.copy(into.data(), into.size());
        text_.remove_prefix(count);
        consumed_ += count;
        return count;
    }
    for (;;) {
        const ssize_t count = ::read(descriptor_, into.data(), into.size());
        if (count >= 0) {
            consumed_ += static_cast<std::size_t>(count);
            return static_cast<std::size_t>(count);
        }
        if (errno == EISDIR) {
            return unreadable(name_, "this is a folder; name a file in it");
        }
        if (errno != EINTR) {
            return system_refused(name_, "the file cannot be read", errno);
        }
    }
}

Result<std::string> Input::read_all() {
    std::string text;
    std::array<char, 1U << 14U> piece;
    for (;;) {
        const auto count = read(piece);
        if (!count) {
            return Unexpected(count.error());
        }
        if (*count == 0) {
            return text;
        }
        text.append(piece.data(), *count);
    }
}

} // namespace libsplice
