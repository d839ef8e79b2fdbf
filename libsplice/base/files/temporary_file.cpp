// Temporary files are named after their process and locked while it lives, so that what a dead one
// left can be told from what a living one is writing.
#include "libsplice/base/files/temporary_file.h"

#include <cerrno>
#include <charconv>
#include <csignal>
#include <fcntl.h>
#include <filesystem>
#include <string_view>
#include <sys/file.h>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>

namespace libsplice {

namespace {

constexpr std::string_view prefix = ".splice-";

/// The process that a name such as `.splice-1234-0` is called after; nothing for another name.
std::optional<pid_t> process_of(std::string_view name) {
    if (!name.starts_with(prefix)) {
        return std::nullopt;
    }
    name.remove_prefix(prefix.size());
    pid_t process = 0;
    unsigned number = 0;
    const char* end = name.data() + name.size();
    const auto first = std::from_chars(name.data(), end, process);
    if (first.ec != std::errc() || process <= 0 || first.ptr == end || *first.ptr != '-') {
        return std::nullopt;
    }
    const auto second = std::from_chars(first.ptr + 1, end, number);
    return second.ec == std::errc() && second.ptr == end ? std::optional(process) : std::nullopt;
}

bool is_dead(pid_t process) {
    return ::kill(process, 0) != 0 && errno == ESRCH;
}

/// Removes a file if it is one of ours and nobody has it open for writing. A process of the same
/// number may be dead here and alive in another container: its lock says so.
void remove_if_left_over(const std::string& path) {
    const int descriptor = ::open(path.c_str(), O_RDONLY | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC);
    if (descriptor < 0) {
        return;
    }
    struct stat status {};
    if (::fstat(descriptor, &status) == 0 && S_ISREG(status.st_mode) &&
        status.st_uid == ::geteuid() && ::flock(descriptor, LOCK_EX | LOCK_NB) == 0) {
        ::unlink(path.c_str());
    }
    ::close(descriptor);
}

void remove_left_over(const std::string& folder) {
    std::error_code error;
    const std::filesystem::path named = folder.empty() ? "." : folder;
    for (std::filesystem::directory_iterator entry(named, error), end; !error && entry != end;
         entry.increment(error)) {
        const auto process = process_of(entry->path().filename().string());
        if (process && is_dead(*process)) {
            remove_if_left_over(entry->path().string());
        }
    }
}

} // namespace

bool create_beside(const std::string& path, TemporaryFile& file) {
    constexpr int most_tries = 1000;
    const auto slash = path.rfind('/');
    const std::string folder = slash == std::string::npos ? "" : path.substr(0, slash + 1);
    remove_left_over(folder);
    const std::string stem = folder + std::string(prefix) + std::to_string(::getpid()) + '-';
    int why = EEXIST;
    for (int i = 0; i < most_tries && why == EEXIST; ++i) {
        const std::string name = stem + std::to_string(i);
        file.unfinished.emplace(name); // before it is there, so that it is never there unknown
        file.descriptor =
            ::open(name.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, mode_t{0666});
        if (file.descriptor >= 0) {
            static_cast<void>(::flock(file.descriptor, LOCK_EX | LOCK_NB));
            file.path = name;
            return true;
        }
        why = errno;
    }
    file.unfinished.reset();
    errno = why;
    return false;
}

bool take_rights_of(const struct stat& old, int descriptor) {
    struct stat now {};
    if (::fstat(descriptor, &now) != 0) {
        return false;
    }
    mode_t mode = old.st_mode & mode_t{0777};
    const bool same = old.st_uid == now.st_uid && old.st_gid == now.st_gid;
    if (!same && ::fchown(descriptor, old.st_uid, old.st_gid) != 0 &&
        ::fchown(descriptor, static_cast<uid_t>(-1), old.st_gid) != 0) {
        constexpr mode_t of_group = 070;
        constexpr mode_t of_others = 07;
        mode = (mode & ~of_group) | ((mode & of_others) << 3U);
    }
    return ::fchmod(descriptor, mode) == 0;
}

} // namespace libsplice
