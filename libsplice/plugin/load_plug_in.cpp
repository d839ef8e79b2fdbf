// Asks a plug-in for its declarations, checks them all, and then adds its words, ropes and kinds
// to a book.
#include "libsplice/plugin/load_plug_in.h"

#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/plugin/checker.h"
#include "libsplice/plugin/library.h"
#include "libsplice/plugin/read_kind.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstring>
#include <filesystem>
#include <system_error>
#include <utility>

namespace libsplice {

namespace {

/// One plug-in on its way into copies of a catalogue and of what is plugged in already.
class Loader {
  public:
    Loader(std::shared_ptr<const Library> library, std::string path, Catalogue& catalogue,
           PluggedIn& plugged_in)
        : library_(std::move(library)),
          checker_(path),
          catalogue_(catalogue),
          plugged_in_(plugged_in) {
        plug_in_.path = std::move(path);
    }

    std::optional<Fault> load() {
        read_entry();
        read_sources();
        read_citations();
        read_functions();
        read_kinds();
        read_ropes();
        plugged_in_.plug_ins.push_back(std::move(plug_in_));
        return checker_.fault();
    }

  private:
    void read_entry();
    void read_sources();
    void read_citations();
    void read_functions();
    void read_kinds();
    void read_ropes();
    void check_kind_is_new(std::string_view name);
    [[nodiscard]] std::optional<Citation> read_citation(const splice_plugin_citation& record);

    std::shared_ptr<const Library> library_;
    Checker checker_;
    Catalogue& catalogue_;
    PluggedIn& plugged_in_;
    PlugIn plug_in_;
    splice_plugin entry_{};
    const splice_plugin_allowance_1* functions_ = nullptr;
    std::vector<CitationId> citations_;
};

void Loader::read_entry() {
    const void* at = library_->find("splice_plugin_entry");
    if (at == nullptr) {
        checker_.fail(Code::plug_in_foreign,
                      "it exports no splice_plugin_entry, so it is no plug-in of ours");
        return;
    }
    // The epoch comes first: another one may have records of another make.
    std::array<std::uint32_t, 2> size_and_epoch{};
    std::memcpy(size_and_epoch.data(), at, sizeof(size_and_epoch));
    if (size_and_epoch[1] != SPLICE_PLUGIN_EPOCH) {
        checker_.fail(Code::plug_in_epoch,
                      "it is built for epoch " + std::to_string(size_and_epoch[1]) +
                          ", this is epoch " + std::to_string(SPLICE_PLUGIN_EPOCH) +
                          "; build it again with the headers of this version");
        return;
    }
    entry_ = checker_.record<splice_plugin>(at, offsetof(splice_plugin, ropes), "the entry");
    const auto name = checker_.name(entry_.name, "its name", Letters::hyphenated);
    checker_.set_name(name);
    plug_in_.name = name;
    plug_in_.version = checker_.name(entry_.version, "its version", Letters::any);
    plug_in_.title = checker_.text(entry_.title, "its title");
    if (std::ranges::count(plugged_in_.plug_ins, plug_in_.name, &PlugIn::name) != 0) {
        checker_.fail(Code::plug_in_twice, "a plug-in of this name is loaded already");
    }
}

void Loader::read_sources() {
    const auto records = checker_.records(entry_.sources, entry_.source_count,
                                          sizeof(splice_plugin_source), "sources");
    for (const auto& record : records) {
        Source source{std::string(checker_.name(record.key, "a source's key", Letters::hyphenated)),
                      std::string(checker_.text(record.title, "a source's title")),
                      std::string(checker_.text(record.terms, "a source's terms")), plug_in_.path};
        if (!checker_.ok()) {
            return;
        }
        if (const auto fault = catalogue_.add_source(std::move(source))) {
            checker_.fail(Code::plug_in_source, fault->text);
        }
    }
}

std::optional<Citation> Loader::read_citation(const splice_plugin_citation& record) {
    constexpr std::array statuses{Status::printed,  Status::derived,     Status::common_practice,
                                  Status::computed, Status::from_memory, Status::shop};
    if (record.status < SPLICE_STATUS_PRINTED || record.status > SPLICE_STATUS_SHOP) {
        checker_.fail(Code::plug_in_declaration, "a citation has no known status");
        return std::nullopt;
    }
    Citation citation{statuses.at(record.status - SPLICE_STATUS_PRINTED), {}, {}};
    citation.locator = checker_.text(record.locator, "a citation's locator");
    if (record.status <= SPLICE_STATUS_DERIVED) {
        citation.key = checker_.name(record.key, "a citation's key", Letters::hyphenated);
    }
    const bool needs_document = !citation.key.empty();
    if (checker_.ok() && needs_document && catalogue_.find_source(citation.key) == nullptr) {
        checker_.fail(Code::plug_in_source,
                      "it cites \"" + citation.key + "\", which neither it nor the tables declare");
    }
    return citation;
}

void Loader::read_citations() {
    const auto records = checker_.records(entry_.citations, entry_.citation_count,
                                          sizeof(splice_plugin_citation), "citations");
    for (const auto& record : records) {
        auto citation = read_citation(record);
        if (!citation || !checker_.ok()) {
            return;
        }
        citations_.push_back(catalogue_.cite(*std::move(citation)));
    }
}

void Loader::read_functions() {
    if (!checker_.ok() || entry_.kind_count == 0) {
        return;
    }
    constexpr std::size_t most_tables = 256;
    const bool has_tables =
        checker_.check_list(entry_.functions, entry_.function_count, most_tables, "functions");
    for (std::uint32_t i = 0; has_tables && i < entry_.function_count; ++i) {
        const auto id = checker_.text(entry_.functions[i].id, "the id of its functions");
        if (id == SPLICE_ALLOWANCE_1) {
            functions_ =
                static_cast<const splice_plugin_allowance_1*>(entry_.functions[i].functions);
        }
    }
    if (functions_ == nullptr || functions_->work_out == nullptr) {
        checker_.fail(Code::plug_in_function_missing,
                      "it declares kinds and has no function to work them out, a table with the id "
                      "\"" SPLICE_ALLOWANCE_1 "\"");
    }
}

void Loader::check_kind_is_new(std::string_view name) {
    const auto stands_among = [name](const std::vector<Kind>& kinds) {
        return std::ranges::any_of(
            kinds, [name](const Kind& kind) { return kind.declaration.name == name; });
    };
    if (stands_among(built_in_kinds()) || stands_among(plugged_in_.kinds)) {
        checker_.fail(Code::plug_in_kind_exists,
                      "the kind \"" + std::string(name) + "\" exists already");
    }
}

void Loader::read_kinds() {
    const auto records = checker_.records(entry_.kinds, entry_.kind_count,
                                          offsetof(splice_plugin_kind, cut), "kinds");
    for (std::uint32_t i = 0; i < records.size() && checker_.ok(); ++i) {
        const auto kind = std::make_shared<PluggedKind>();
        kind->library = library_;
        kind->functions = functions_;
        kind->plug_in = plug_in_.name;
        kind->index = i;
        kind->citations = citations_;
        read_kind(records[i], checker_, plugged_in_.names, *kind);
        check_kind_is_new(kind->declaration.name);
        plug_in_.kinds.emplace_back(kind->declaration.name);
        plugged_in_.kinds.push_back({kind->declaration, [kind](const Request& request) {
                                         return work_out(*kind, request);
                                     }});
    }
}

void Loader::read_ropes() {
    if (!checker_.ok() || entry_.ropes == nullptr) {
        return;
    }
    auto ropes = catalogue_.add_ropes(entry_.ropes, plug_in_.path + " (ropes)");
    if (ropes) {
        plug_in_.ropes = *std::move(ropes);
    } else {
        checker_.fail(Code::plug_in_tables, "its ropes, line " +
                                                std::to_string(ropes.error().at.line) + ": " +
                                                ropes.error().text);
    }
}

} // namespace

std::optional<Fault> load_plug_in(const std::string& file, Catalogue& catalogue,
                                  PluggedIn& plugged_in) {
    std::error_code error;
    const std::string path = std::filesystem::canonical(file, error).string();
    if (error) {
        return Fault{Code::plug_in_unreadable, "the plug-in cannot be read: " + error.message(),
                     Place{file}};
    }
    if (!std::filesystem::is_regular_file(path, error)) {
        return Fault{Code::plug_in_unreadable,
                     "this is no plain file; name the file that the plug-in was built to",
                     Place{path}};
    }
    auto library = Library::open(path);
    if (!library) {
        return library.error();
    }
    Catalogue with_ropes = catalogue;
    PluggedIn with_kinds = plugged_in;
    if (auto fault = Loader(*std::move(library), path, with_ropes, with_kinds).load()) {
        return fault;
    }
    catalogue = std::move(with_ropes);
    plugged_in = std::move(with_kinds);
    return std::nullopt;
}

} // namespace libsplice
