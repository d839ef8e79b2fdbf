// The paths of unfinished files lie in static memory: nothing here allocates, locks or is freed.
#include "libsplice/base/files/unfinished_file.h"

#include <array>
#include <atomic>
#include <unistd.h>

namespace libsplice {

namespace {

enum class State : int { free, taken, holds_path };

struct Slot {
    std::atomic<State> state = State::free;
    std::array<char, 4096> path{};
};

constexpr std::size_t slot_count = 8;
std::array<Slot, slot_count> slots;

static_assert(std::atomic<State>::is_always_lock_free);

} // namespace

UnfinishedFile::UnfinishedFile(const std::string& path) : slot_(0) {
    if (path.size() >= Slot().path.size()) {
        slot_ = slot_count;
    }
    for (; slot_ < slot_count; ++slot_) {
        Slot& slot = slots.at(slot_);
        State expected = State::free;
        if (slot.state.compare_exchange_strong(expected, State::taken)) {
            path.copy(slot.path.data(), path.size());
            slot.path.at(path.size()) = '\0';
            slot.state = State::holds_path;
            return;
        }
    }
}

UnfinishedFile::~UnfinishedFile() {
    if (slot_ < slot_count) {
        slots.at(slot_).state = State::free;
    }
}

void remove_unfinished_files() noexcept {
    for (const Slot& slot : slots) {
        if (slot.state == State::holds_path) {
            ::unlink(slot.path.data());
        }
    }
}

} // namespace libsplice
