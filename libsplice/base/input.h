// A file, standard input or text in memory, read in pieces.
#pragma once

#include "libsplice/base/result.h"

#include <concepts>
#include <cstddef>
#include <span>
#include <string>
#include <string_view>

namespace libsplice {

/// Bytes on their way in. The name stands as the file in places of faults.
class Input {
  public:
    /// Opens a file; `-` is standard input (its name becomes `standard input`).
    /// Code::file_unreadable for what cannot be opened and for a folder.
    [[nodiscard]] static Result<Input> open(const std::string& path);
    /// Text that the caller keeps alive.
    [[nodiscard]] static Input of_text(std::string_view text, std::string name);
    template <class Text>
    requires std::same_as<Text, std::string>
    static Input of_text(Text&& text, std::string name) = delete; ///< it would be gone at once

    Input(Input&& other) noexcept;
    Input& operator=(Input&& other) noexcept;
    ~Input();

    /// Reads up to `into.size()` bytes; 0 at the end. Code::file_unreadable if the system fails.
    [[nodiscard]] Result<std::size_t> read(std::span<char> into);
    /// The rest of the input, whole.
    [[nodiscard]] Result<std::string> read_all();
    [[nodiscard]] const std::string& name() const { return name_; }
    /// Whether it is a file or standard input. Text in memory, which a host gives, is neither:
    /// nothing that it names beside itself is opened.
    [[nodiscard]] bool is_file() const { return descriptor_ >= 0; }
    /// Bytes read so far.
    [[nodiscard]] std::size_t consumed() const { return consumed_; }

  private:
    Input(int descriptor, std::string_view text, std::string name);

    int descriptor_; ///< -1: text in memory
    std::string_view text_;
    std::string name_;
    std::size_t consumed_ = 0;
};

} // namespace libsplice
