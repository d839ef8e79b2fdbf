// Writing to the system so that a file is there whole or not at all.
#include "libsplice/base/output.h"

#include "libsplice/base/unfinished_file.h"

#include <gsl/assert>

#include <cerrno>
#include <cstdlib>
#include <fcntl.h>
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
        if (!temporary.empty()) {
            ::unlink(temporary.c_str());
        }
    }

    void put(std::string_view text);
    bool close();
    [[nodiscard]] bool sync_and_rename();

    std::string* into = nullptr; ///< text in memory instead of a descriptor
    int descriptor = -1;
    std::string name;                         ///< as the user gave it, for faults
    std::string path;                         ///< the name that the file takes at the commit
    std::string temporary;                    ///< empty: written straight to its place
    std::optional<UnfinishedFile> unfinished; ///< the temporary file, for whoever is interrupted
    int error = 0;                            ///< the first `errno` of a failed write
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

/// Creates a new file in the folder of `path` under a name that nobody has. The system takes the
/// umask off its mode. -1 with `errno` set if it cannot be done.
int create_beside(const std::string& path, std::string& temporary,
                  std::optional<UnfinishedFile>& unfinished) {
    constexpr int most_tries = 1000;
    const auto slash = path.rfind('/');
    const std::string folder = slash == std::string::npos ? "" : path.substr(0, slash + 1);
    const std::string stem = folder + ".splice-" + std::to_string(::getpid()) + "-";
    for (int i = 0; i < most_tries; ++i) {
        const std::string name = stem + std::to_string(i);
        unfinished.emplace(name); // before it is there, so that it is never there unknown
        const int descriptor =
            ::open(name.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, mode_t{0666});
        if (descriptor >= 0) {
            temporary = name;
            return descriptor;
        }
        if (errno != EEXIST) {
            break;
        }
    }
    unfinished.reset();
    return -1;
}

} // namespace

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
    if (::fsync(descriptor) != 0 || !close() || ::rename(temporary.c_str(), path.c_str()) != 0) {
        return false;
    }
    temporary.clear();
    unfinished.reset();
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
    target->path = behind_links(path);
    target->descriptor = create_beside(target->path, target->temporary, target->unfinished);
    if (target->descriptor < 0 ||
        (old && ::fchmod(target->descriptor, old->st_mode & mode_t{07777}) != 0)) {
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
    if (!target_->temporary.empty() && !target_->sync_and_rename()) {
        return unwritable(target_->name, errno);
    }
    return true;
}

} // namespace libsplice
