// Folders of tables into one catalogue.
#pragma once

#include "libsplice/base/document.h"
#include "libsplice/catalogue/catalogue.h"
#include "libsplice/catalogue/reading/read_record.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice {

/// Reads folders, the lowest in precedence first. A folder holds `tables.toml` (`version`, `title`)
/// and any of `sources.toml` ([[source]]), `aliases.toml` ([[alias]], [[unclear]]), `generic.toml`
/// ([[generic]]), `constructions.toml` and `bench.toml` ([[rule]]),
/// `ropes/*.toml` ([[rope]]) and `terminations/*.toml` ([[rule]]). A few records may stand in
/// `tables.toml` itself, and a single such file may take a folder's place. Its own records must
/// differ in their ids; a record of an earlier folder gives way to the one of the same id.
class TableReader {
  public:
    TableReader(Catalogue& catalogue, FaultSink& faults) : catalogue_(catalogue), faults_(faults) {}

    /// Reads one folder; every fault is pushed.
    void read_folder(const std::string& path);
    /// Reads the [[rope]] records of a text; every fault is pushed.
    [[nodiscard]] std::vector<Rope> read_rope_text(std::string_view text, const std::string& name);

  private:
    [[nodiscard]] TableContext context();
    void read_aliases(const std::string& file);
    void check_files();
    void read_files();
    void read_heading(const Node& document);
    void read_sources(const Node::Array& records);
    void read_ropes(const Node::Array& records);
    void read_rules(const Node::Array& records);
    [[nodiscard]] std::vector<std::string> files_in(const std::string& subfolder);
    [[nodiscard]] std::optional<Node> parse(const std::string& file);
    [[nodiscard]] Node::Array records(const std::string& file, std::string_view name);
    [[nodiscard]] Node::Array records_of(const Node& document, std::string_view name);
    [[nodiscard]] Node::Array list_of(const Node& document, std::string_view name);
    template <class Record>
    void keep(std::vector<Record>& records, std::vector<std::string>& own, Record record,
              std::string Record::*id, const Node& at);

    Catalogue& catalogue_;
    FaultSink& faults_;
    TableFolder folder_;
    std::vector<std::string> own_sources_; ///< ids that this folder has given already
    std::vector<std::string> own_generics_;
    std::vector<std::string> own_ropes_;
    std::vector<std::string> own_rules_;
};

} // namespace libsplice
