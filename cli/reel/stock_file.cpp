// The file is opened under a lock, compared before it is written, and renamed into place.
#include "cli/reel/stock_file.h"

#include "libsplice/base/input.h"
#include "libsplice/base/output.h"

#include <gsl/assert>

#include <cerrno>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>
#include <utility>

namespace libsplice::cli {

/// An open file with the system's lock on it. It holds the very file that was read, so a lock does
/// not outlive its run, and leaves nothing behind.
struct StockFile::Held {
    explicit Held(int opened) : descriptor(opened) {}
    Held(const Held&) = delete;
    Held& operator=(const Held&) = delete;
    ~Held() { ::close(descriptor); }
    int descriptor;
};

namespace {

Fault locked(const std::string& path) {
    return {Code::stock_locked,
            "another run holds this stock; wait until it has ended, and try again", Place{path}};
}

Fault changed(const std::string& path) {
    return {Code::stock_changed,
            "the stock has changed since it was read, so nothing was written to it; plan again",
            Place{path}};
}

/// Whether the open file is still the one of that name.
bool is_the_file(int descriptor, const std::string& path) {
    struct stat open {};
    struct stat named {};
    return ::fstat(descriptor, &open) == 0 && ::stat(path.c_str(), &named) == 0 &&
           open.st_dev == named.st_dev && open.st_ino == named.st_ino;
}

Result<std::string> text_of(const std::string& path) {
    auto input = Input::open(path);
    return input ? input->read_all() : Result<std::string>(Unexpected(input.error()));
}

Result<bool> write_whole(Result<Output> output, const std::string& text) {
    if (!output) {
        return Unexpected(output.error());
    }
    output->write(text);
    return output->commit();
}

/// So that the renaming, too, is on disk.
void sync_folder_of(const std::string& path) {
    const auto slash = path.rfind('/');
    const std::string folder = slash == std::string::npos ? "." : path.substr(0, slash + 1);
    const int descriptor = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (descriptor >= 0) {
        ::fsync(descriptor);
        ::close(descriptor);
    }
}

} // namespace

StockFile::StockFile(std::string path, std::string text)
    : path_(std::move(path)), text_(std::move(text)) {}
StockFile::StockFile(StockFile&&) noexcept = default;
StockFile& StockFile::operator=(StockFile&&) noexcept = default;
StockFile::~StockFile() = default;

Result<bool> StockFile::hold() {
    constexpr int most_tries = 10;
    for (int i = 0; i < most_tries; ++i) {
        // Whoever opens a pipe waits until somebody writes to it.
        const int descriptor = ::open(path_.c_str(), O_RDONLY | O_NONBLOCK | O_CLOEXEC);
        if (descriptor < 0) {
            return Unexpected(
                Fault{Code::file_unreadable, std::generic_category().message(errno), Place{path_}});
        }
        auto held = std::make_unique<Held>(descriptor);
        struct stat status {};
        if (::fstat(descriptor, &status) != 0 || !S_ISREG(status.st_mode)) {
            return Unexpected(Fault{Code::file_unreadable,
                                    "this is no plain file, and a stock that is written again must "
                                    "be one",
                                    Place{path_}});
        }
        if (::flock(descriptor, LOCK_EX | LOCK_NB) != 0) {
            return Unexpected(locked(path_));
        }
        if (is_the_file(descriptor, path_)) { // else another run has just put a new one there
            held_ = std::move(held);
            return true;
        }
    }
    return Unexpected(locked(path_));
}

Result<StockFile> StockFile::open(const std::string& path, bool hold, FaultSink& faults) {
    StockFile stock(path, {});
    const auto held = hold ? stock.hold() : Result<bool>(true);
    auto text = held ? text_of(path) : Result<std::string>(Unexpected(held.error()));
    if (!text) {
        faults.push(text.error());
        return Unexpected(text.error());
    }
    stock.text_ = *std::move(text);
    Input input = Input::of_text(stock.text_, path == "-" ? "standard input" : path);
    auto rows = read_stock(input, faults);
    if (!rows) {
        return Unexpected(rows.error());
    }
    stock.rows_ = *std::move(rows);
    return stock;
}

Result<bool> StockFile::write_after(const ReelPlan& plan) const {
    Expects(held_ != nullptr);
    const auto now = text_of(path_);
    if (!now || *now != text_ || !is_the_file(held_->descriptor, path_)) {
        return Unexpected(changed(path_));
    }
    auto kept = write_whole(Output::open_copy(path_ + ".previous", path_), text_);
    if (!kept) {
        return kept;
    }
    auto written = write_whole(Output::open(path_),
                               write_stock(rows_after(rows_, plan), is_toml_stock(path_)));
    sync_folder_of(path_);
    return written;
}

} // namespace libsplice::cli
