// Writing to the system so that a file is there whole or not at all.
#include "libsplice/base/output.h"

#include "libsplice/base/files/temporary_file.h"

#include <gsl/assert>

#include <cerrno>
#include <cstdlib>
#include <fcntl.h>
#include <memory>
#include <optional>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>
#include <utility>

namespace libsplice {

/// Where the text goes. Only a plain file has a temporary one beside it.
struct Output::Target {
    Target() = default;
    Target(const Target&) = delete;
    Target& operator=(const Target&) = delete;
    ~Target() {
        close();
        if (!temporary.path.empty()) {
            ::unlink(temporary.path.c_str());
        }
    }

    [[nodiscard]] bool begin(const std::optional<struct stat>& old);
    void put(std::string_view text);
    bool close();
    [[nodiscard]] bool sync_and_rename();

    std::string* into = nullptr; ///< text in memory instead of a descriptor
    int descriptor = -1;
    std::string name;        ///< as the user gave it, for faults
    std::string path;        ///< the name that the file takes at the commit
    TemporaryFile temporary; ///< none: written straight to its place
    int error = 0;           ///< the first `errno` of a failed write
    bool reader_gone = false;
};

namespace {

Unexpected unwritable(const std::string& name, const std::string& why) {
    return Unexpected(Fault{Code::cannot_write, "the output cannot be written: " + why,
                            Place{name == "-" ? "standard output" : name}});
}

Unexpected unwritable(const std::string& name, int error) {
    return unwritable(name, std::generic_category().message(error));
}

std::optional<struct stat> status_of(const std::string& path) {
    struct stat status {};
    if (::stat(path.c_str(), &status) != 0) {
        return std::nullopt;
    }
    return status;
}

/// The file that a chain of symbolic links leads to, so that the links stay as they are.
std::string behind_links(const std::string& path) {
    const std::unique_ptr<char, decltype(&std::free)> real(::realpath(path.c_str(), nullptr),
                                                           &std::free);
    return real ? std::string(real.get()) : path;
}

/// Whether `path` is a link whose end is not there.
bool leads_nowhere(const std::string& path) {
    struct stat link {};
    return ::lstat(path.c_str(), &link) == 0 && S_ISLNK(link.st_mode) && !status_of(path);
}

} // namespace

/// Opens the temporary file, with the rights of what it will replace; `errno` says why not.
bool Output::Target::begin(const std::optional<struct stat>& old) {
    if (!create_beside(path, temporary)) {
        return false;
    }
    descriptor = temporary.descriptor;
    return !old || take_rights_of(*old, descriptor);
}

void Output::Target::put(std::string_view text) {
    if (into != nullptr) {
        *into += text;
        return;
    }
    Expects(text.empty() || descriptor >= 0);
    while (!text.empty() && error == 0 && !reader_gone) {
        const ssize_t count = ::write(descriptor, text.data(), text.size());
        if (count >= 0) {
            text.remove_prefix(static_cast<std::size_t>(count));
        } else if (errno == EPIPE) {
            reader_gone = true;
        } else if (errno != EINTR) {
            error = errno;
        }
    }
}

/// True if all went well. Standard output stays open.
bool Output::Target::close() {
    const int closing = std::exchange(descriptor, -1);
    return closing < 0 || closing == STDOUT_FILENO || ::close(closing) == 0;
}

/// True if the file has taken its place; `errno` says why not.
bool Output::Target::sync_and_rename() {
    if (::fsync(descriptor) != 0 || !close() ||
        ::rename(temporary.path.c_str(), path.c_str()) != 0) {
        return false;
    }
    temporary.path.clear();
    temporary.unfinished.reset();
    return true;
}

Output::Output(std::unique_ptr<Target> target) : target_(std::move(target)) {}
Output::Output(Output&&) noexcept = default;
Output& Output::operator=(Output&&) noexcept = default;
Output::~Output() = default;

Result<Output> Output::open(const std::string& path) {
    auto target = std::make_unique<Target>();
    target->name = path;
    if (path == "-") {
        target->descriptor = STDOUT_FILENO;
        return Output(std::move(target));
    }
    if (path.empty()) {
        return unwritable(path, "its name is empty");
    }
    const auto old = status_of(path);
    if (old && S_ISDIR(old->st_mode)) {
        return unwritable(path, "this is a folder; name a file in it");
    }
    if (old && !S_ISREG(old->st_mode)) { // a device or a pipe is written to, not replaced
        target->descriptor = ::open(path.c_str(), O_WRONLY | O_CLOEXEC);
        if (target->descriptor < 0) {
            return unwritable(path, errno);
        }
        return Output(std::move(target));
    }
    if (old && ::access(path.c_str(), W_OK) != 0) {
        return unwritable(path, errno);
    }
    if (leads_nowhere(path)) {
        return unwritable(path,
                          "this is a link that leads nowhere; name a file, or remove the link");
    }
    target->path = behind_links(path);
    if (!target->begin(old)) {
        return unwritable(path, errno);
    }
    return Output(std::move(target));
}

Result<Output> Output::open_copy(const std::string& path, const std::string& of) {
    const auto model = status_of(of);
    if (!model) {
        return unwritable(path, errno);
    }
    struct stat there {};
    if (::lstat(path.c_str(), &there) == 0 && S_ISDIR(there.st_mode)) {
        return unwritable(path, "this is a folder; move it away");
    }
    auto target = std::make_unique<Target>();
    target->name = path;
    target->path = path;
    if (!target->begin(model)) {
        return unwritable(path, errno);
    }
    return Output(std::move(target));
}

Output Output::to_string(std::string& into) {
    auto target = std::make_unique<Target>();
    target->into = &into;
    return Output(std::move(target));
}

void Output::flush() {
    Expects(target_ != nullptr);
    target_->put(buffer_);
    buffer_.clear();
}

bool Output::reader_gone() const {
    Expects(target_ != nullptr);
    return target_->reader_gone;
}

Result<bool> Output::commit() {
    flush();
    if (target_->error != 0) {
        return unwritable(target_->name, target_->error);
    }
    if (!target_->temporary.path.empty() && !target_->sync_and_rename()) {
        return unwritable(target_->name, errno);
    }
    return true;
}

} // namespace libsplice
