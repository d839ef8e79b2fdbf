// A folder of its own for a test that needs files; it goes when the test ends.
#pragma once

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <stdlib.h>
#include <string>
#include <string_view>

namespace libsplice::testing {

class TemporaryFolder {
  public:
    TemporaryFolder() : path_(::testing::TempDir() + "splice-test-XXXXXX") {
        if (::mkdtemp(path_.data()) == nullptr) {
            ADD_FAILURE() << "no temporary folder";
        }
    }
    TemporaryFolder(const TemporaryFolder&) = delete;
    TemporaryFolder& operator=(const TemporaryFolder&) = delete;
    ~TemporaryFolder() { std::filesystem::remove_all(path_); }

    [[nodiscard]] std::string path() const { return path_; }
    [[nodiscard]] std::string file(std::string_view name) const {
        return path_ + '/' + std::string(name);
    }
    /// Every name in the folder, hidden ones too.
    [[nodiscard]] std::size_t entry_count() const {
        std::size_t count = 0;
        for ([[maybe_unused]] const auto& entry : std::filesystem::directory_iterator(path_)) {
            ++count;
        }
        return count;
    }

  private:
    std::string path_;
};

inline void fill(const std::string& path, std::string_view text) {
    std::ofstream(path, std::ios::binary) << text;
}

inline std::string content(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

} // namespace libsplice::testing
