// Looking things up in the tables.
#include "libsplice/catalogue/catalogue.h"

#include "libsplice/base/text.h"
#include "libsplice/catalogue/reading/read_tables.h"

#include <algorithm>
#include <iterator>
#include <limits>
#include <utility>

namespace libsplice {

Result<Catalogue> Catalogue::load(std::span<const std::string> folders, FaultSink& faults) {
    if (folders.empty()) {
        Fault fault{Code::tables_missing, "no folder of tables is given; name one"};
        faults.push(fault);
        return Unexpected(std::move(fault));
    }
    Catalogue catalogue;
    FaultSink own(std::numeric_limits<std::size_t>::max());
    TableReader reader(catalogue, own);
    for (const auto& folder : folders) {
        reader.read_folder(folder);
    }
    for (const auto& fault : own.kept()) {
        faults.push(fault);
    }
    if (!own.empty()) {
        return Unexpected(own.kept().front());
    }
    for (std::size_t i = 0; i < catalogue.ropes_.size(); ++i) {
        catalogue.rope_by_id_.emplace(catalogue.ropes_[i].id, i);
    }
    return catalogue;
}

const Rope* Catalogue::find_rope(std::string_view id) const {
    const auto found = rope_by_id_.find(std::string(id));
    return found == rope_by_id_.end() ? nullptr : &ropes_[found->second];
}

std::optional<Fault> Catalogue::add_rope(Rope rope) {
    if (!rope_by_id_.emplace(rope.id, ropes_.size()).second) {
        return Fault{Code::duplicate_record,
                     "the rope \"" + rope.id + "\" is known already; give it another id"};
    }
    ropes_.push_back(std::move(rope));
    return std::nullopt;
}

std::optional<Fault> Catalogue::add_source(Source source) {
    const Source* known = find_source(source.key);
    if (known == nullptr) {
        sources_.push_back(std::move(source));
    } else if (known->title != source.title) {
        return Fault{Code::duplicate_record, "the source \"" + source.key +
                                                 "\" is known already as \"" + known->title +
                                                 "\"; cite that one, or choose another key"};
    }
    return std::nullopt;
}

Result<std::vector<std::string>> Catalogue::add_ropes(std::string_view text,
                                                      const std::string& name) {
    FaultSink faults;
    auto ropes = TableReader(*this, faults).read_rope_text(text, name);
    if (!faults.empty()) {
        return Unexpected(faults.kept().front());
    }
    std::vector<std::string> ids;
    for (const Rope& rope : ropes) {
        if (find_rope(rope.id) != nullptr || std::ranges::count(ids, rope.id) != 0) {
            return Unexpected(Fault{Code::duplicate_record,
                                    "the rope \"" + rope.id + "\" is known already", Place{name}});
        }
        ids.push_back(rope.id);
    }
    for (Rope& rope : ropes) {
        static_cast<void>(add_rope(std::move(rope)));
    }
    return ids;
}

const Source* Catalogue::find_source(std::string_view key) const {
    const auto found = std::ranges::find(sources_, key, &Source::key);
    return found == sources_.end() ? nullptr : &*found;
}

std::string Catalogue::version() const {
    std::string text;
    for (const auto& folder : folders_) {
        text += (text.empty() ? "" : " + ") + folder.version;
    }
    return text;
}

Result<Rope> Catalogue::rope(std::string_view text) const {
    const std::string_view name = trimmed(text);
    if (const Rope* named = find_rope(name)) {
        return *named;
    }
    const auto described = read_rope_description(name, aliases_);
    if (described) {
        return rope_of(*described);
    }
    // What is nearly an id is one misspelt, although words of it may describe a rope.
    std::vector<std::string_view> ids;
    std::ranges::transform(ropes_, std::back_inserter(ids), &Rope::id);
    const auto meant = did_you_mean(name, ids);
    return Unexpected(
        meant.empty() ? described.error()
                      : Fault{Code::unknown_rope, "no rope is called " + in_quotes(name) + meant});
}

Rope Catalogue::rope_of(const RopeDescription& description) const {
    Rope rope;
    rope.id = description.text();
    rope.title = rope.id;
    rope.construction = description.construction;
    rope.fibre = description.fibre;
    rope.grade = description.grade;
    rope.diameter = description.diameter.length;
    rope.imperial = description.diameter.imperial;
    rope.prestretched = description.prestretched;
    const auto is_like = [&](const Rope& known) {
        return known.generic && known.construction == rope.construction &&
               known.fibre == rope.fibre &&
               to_nanometres(known.diameter) == to_nanometres(rope.diameter);
    };
    const auto like = std::ranges::find_if(ropes_, is_like);
    if (like != ropes_.end()) {
        rope.breaking = like->breaking;
        rope.mass = like->mass;
        rope.stretch = like->stretch;
        rope.braid_constant = like->braid_constant;
    }
    add_generic_figures(rope);
    return rope;
}

} // namespace libsplice
