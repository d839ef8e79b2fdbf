// Reads what a plug-in declares, and keeps the first thing that is wrong with it.
#pragma once

#include "libsplice/abi/include/splice_plugin.h"
#include "libsplice/base/result.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice {

/// What a name may be made of.
enum class Letters : std::uint8_t {
    any,        ///< all but braces, which steps use
    hyphenated, ///< lower-case letters, digits and hyphens, a letter first
    underlined, ///< lower-case letters, digits and underlines, a letter first
};

/// Copies records and texts out of a plug-in's declaration. After the first fault everything that
/// is read is empty, so that a reader goes through a record without asking at every step. Texts are
/// not copied: they stay where the plug-in has them.
class Checker {
  public:
    explicit Checker(std::string path) : path_(std::move(path)) {}

    /// What the plug-in is called in faults, once it has said so.
    void set_name(std::string_view name) { name_ = name; }
    [[nodiscard]] bool ok() const { return !fault_; }
    [[nodiscard]] const std::optional<Fault>& fault() const { return fault_; }
    /// Keeps the fault unless there is one already; `text` goes on from the plug-in's name.
    void fail(Code code, const std::string& text);

    /// A text that must be there. `what` names it in faults.
    [[nodiscard]] std::string_view text(const char* text, std::string_view what);
    /// The same, for a name: no longer than 60 bytes and made of `letters`.
    [[nodiscard]] std::string_view name(const char* text, std::string_view what, Letters letters);
    /// Names of one sort, each once, at most 64.
    [[nodiscard]] std::vector<std::string_view> names(const splice_plugin_texts& list,
                                                      std::string_view what, Letters letters);
    /// Texts of one sort, at most 64.
    [[nodiscard]] std::vector<std::string_view> texts(const splice_plugin_texts& list,
                                                      std::string_view what);

    /// Whether there is a list to read: one that is not null, not empty and no longer than `most`.
    [[nodiscard]] bool check_list(const void* first, std::uint32_t count, std::size_t most,
                                  std::string_view what);

    /// A record of which the first layout had `first_size` bytes; what an older one does not have
    /// is 0. One that is longer than ours is read if the rest of it is 0.
    template <class Record>
    [[nodiscard]] Record record(const void* at, std::size_t first_size, std::string_view what) {
        Record copy{};
        copy_record(at, {&copy, sizeof(Record), first_size}, what);
        return copy;
    }
    /// At most `most` records of one size.
    template <class Record>
    [[nodiscard]] std::vector<Record> records(const Record* first, std::uint32_t count,
                                              std::size_t first_size, std::string_view what,
                                              std::size_t most = 256) {
        std::vector<Record> copies;
        if (!check_list(first, count, most, what)) {
            return copies;
        }
        const auto* at = reinterpret_cast<const std::byte*>(first);
        for (std::uint32_t i = 0; i < count && ok(); ++i) {
            copies.push_back(record<Record>(at, first_size, what));
            if (copies.back().size != copies.front().size) {
                fail(Code::plug_in_size, std::string(what) + " differ in size within one list");
            }
            at += copies.front().size;
        }
        return copies;
    }

  private:
    /// Where a copy goes.
    struct Room {
        void* to;
        std::size_t size;
        std::size_t first_size;
    };
    void copy_record(const void* at, const Room& room, std::string_view what);

    std::string path_;
    std::string name_;
    std::optional<Fault> fault_;
};

} // namespace libsplice
