// A folder of tables made up for one test.
#pragma once

#include "libsplice/catalogue/catalogue.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <unistd.h>
#include <vector>

namespace libsplice::testing {

/// A folder that lasts as long as this; it starts with a good heading and one source, `book`.
class Folder {
  public:
    explicit Folder(const std::string& version = "1") : path_(next_path()) {
        write("tables.toml", "version = \"" + version + "\"\ntitle = \"made up\"\n");
        write("sources.toml", "[[source]]\nkey = \"book\"\ntitle = \"A Book\"\nterms = \"none\"\n");
    }
    ~Folder() { std::filesystem::remove_all(path_); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    Folder(Folder&&) = delete;
    Folder& operator=(Folder&&) = delete;

    void write(const std::string& file, const std::string& text) const {
        const std::filesystem::path path = std::filesystem::path(path_) / file;
        std::filesystem::create_directories(path.parent_path());
        std::ofstream(path) << text;
    }
    void remove(const std::string& file) const {
        std::filesystem::remove(std::filesystem::path(path_) / file);
    }
    [[nodiscard]] const std::string& path() const { return path_; }

  private:
    static std::string next_path() {
        static int count = 0;
        return (std::filesystem::temp_directory_path() /
                ("tables-" + std::to_string(::getpid()) + '-' + std::to_string(count++)))
            .string();
    }
    std::string path_;
};

/// The citation that every made-up figure carries.
inline const std::string cited = R"(source = "book", locator = "p. 1", status = "printed")";

/// A rule's record, for any end, with the keys given.
inline std::string rule_record(const std::string& id, const std::string& keys) {
    return "[[rule]]\nid = \"" + id + "\"\nname = \"" + id + "\"\n" + keys + '\n';
}

/// A rope's record, 6 mm thick, with the keys given.
inline std::string rope_record(const std::string& id, const std::string& keys) {
    return "[[rope]]\nid = \"" + id +
           "\"\ntitle = \"a rope\"\nconstruction = \"12-strand\"\n"
           "fibre = \"HMPE\"\ndiameter = \"6 mm\"\n" +
           keys + '\n';
}

inline std::vector<Fault> faults_of(const std::vector<std::string>& folders) {
    FaultSink sink;
    const auto catalogue = Catalogue::load(folders, sink);
    EXPECT_FALSE(catalogue.has_value());
    return sink.kept();
}

/// The catalogue of folders that must load without a fault.
inline Catalogue load(const std::vector<std::string>& folders) {
    FaultSink sink;
    auto catalogue = Catalogue::load(folders, sink);
    for (const auto& fault : sink.kept()) {
        ADD_FAILURE() << to_text(fault);
    }
    return catalogue ? *std::move(catalogue) : Catalogue();
}

/// The tables that the library ships; the environment may name changed ones.
inline const Catalogue& shipped() {
    static const Catalogue catalogue = [] {
        const char* changed = std::getenv("LIBSPLICE_TABLES");
        return load({changed == nullptr ? LIBSPLICE_TABLES_DIR : changed});
    }();
    return catalogue;
}

} // namespace libsplice::testing
