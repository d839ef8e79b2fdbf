// The tables in memory: sources, ropes and rules. Immutable once loaded; threads may share it.
#pragma once

#include "libsplice/base/fault_sink.h"
#include "libsplice/base/result.h"
#include "libsplice/catalogue/citation.h"
#include "libsplice/catalogue/generic.h"
#include "libsplice/catalogue/rope.h"
#include "libsplice/catalogue/rule.h"
#include "libsplice/catalogue/source.h"
#include "libsplice/catalogue/words/aliases.h"

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

namespace libsplice {

/// A folder that was loaded, in order of precedence from the lowest to the highest.
struct TableFolder {
    std::string path;
    std::string version; ///< of `tables.toml` in it
    std::string title;
    std::vector<std::string> replaces; ///< ids of records of earlier folders that it replaces
};

/// All tables.
class Catalogue {
  public:
    /// Loads the folders in order; a later folder's record replaces the whole record of the same
    /// id. Every fault is pushed; with any fault there is no catalogue and the first is returned.
    [[nodiscard]] static Result<Catalogue> load(std::span<const std::string> folders,
                                                FaultSink& faults);

    [[nodiscard]] const Citations& citations() const { return citations_; }
    [[nodiscard]] std::span<const Source> sources() const { return sources_; }
    [[nodiscard]] const Source* find_source(std::string_view key) const;
    [[nodiscard]] std::span<const Rope> ropes() const { return ropes_; }
    [[nodiscard]] std::span<const Rule> rules() const { return rules_; }
    [[nodiscard]] std::span<const GenericRope> generics() const { return generics_; }
    [[nodiscard]] const Aliases& aliases() const { return aliases_; }
    [[nodiscard]] std::span<const TableFolder> folders() const { return folders_; }
    /// The versions of all folders, e.g. `2026.11 + shop 3`, for a sheet's footer.
    [[nodiscard]] std::string version() const;

    /// The rope that `text` names or describes. A description takes strength, mass, stretch and
    /// braid constant from the table's generic rope of just that construction, fibre and size, if
    /// there is one, and strength and mass from what any rope of its sort has at least (see
    /// add_generic_figures()); what no source gives stays absent. Code::unknown_rope,
    /// Code::rope_not_understood.
    [[nodiscard]] Result<Rope> rope(std::string_view text) const;

    /// The record of that very id; null where there is none.
    [[nodiscard]] const Rope* find_rope(std::string_view id) const;

    /// Works out anew what the rope has from add_generic_figures(), after its facts have changed.
    void add_generic_figures(Rope& rope) const { libsplice::add_generic_figures(rope, generics_); }
    /// The rope of a description, as above.
    [[nodiscard]] Rope rope_of(const RopeDescription& description) const;

    // What a plug-in brings is added before a book is opened with the catalogue.

    /// Adds a document. One that is known already stays as it is; another title under the same key
    /// is Code::duplicate_record.
    [[nodiscard]] std::optional<Fault> add_source(Source source);
    [[nodiscard]] CitationId cite(Citation citation) {
        return citations_.intern(std::move(citation));
    }
    /// Adds the [[rope]] records of a TOML text and returns their ids. `name` stands as the file in
    /// every place. A rope that is known already is Code::duplicate_record; the first fault is
    /// returned, and nothing is added then.
    [[nodiscard]] Result<std::vector<std::string>> add_ropes(std::string_view text,
                                                             const std::string& name);

    /// Adds a rope of a list. One that is known already is Code::duplicate_record.
    [[nodiscard]] std::optional<Fault> add_rope(Rope rope);

  private:
    Citations citations_;
    Aliases aliases_;
    std::vector<GenericRope> generics_;
    std::vector<Source> sources_;
    std::vector<Rope> ropes_;
    std::vector<Rule> rules_;
    std::vector<TableFolder> folders_;
    std::unordered_map<std::string, std::size_t> rope_by_id_; ///< once loaded
    friend class TableReader;
};

} // namespace libsplice
