// Looking things up in the tables.
#include "libsplice/catalogue/catalogue.h"

#include "libsplice/base/text.h"
#include "libsplice/catalogue/read_tables.h"

#include <algorithm>
#include <iterator>
#include <limits>
#include <utility>

namespace libsplice {

namespace {

/// With single blanks between words.
std::string with_single_blanks(std::string_view text) {
    std::string spaced;
    for (const char c : trimmed(text)) {
        const char plain = c == '\t' ? ' ' : c;
        if (plain != ' ' || spaced.back() != ' ') {
            spaced += plain;
        }
    }
    return spaced;
}

} // namespace

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
    return catalogue;
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
        const bool known = std::ranges::count(ropes_, rope.id, &Rope::id) != 0 ||
                           std::ranges::count(ids, rope.id) != 0;
        if (known) {
            return Unexpected(Fault{Code::duplicate_record,
                                    "the rope \"" + rope.id + "\" is known already", Place{name}});
        }
        ids.push_back(rope.id);
    }
    std::ranges::move(ropes, std::back_inserter(ropes_));
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
    const auto named = std::ranges::find(ropes_, name, &Rope::id);
    if (named != ropes_.end()) {
        return *named;
    }
    if (!describes_rope(name)) {
        std::vector<std::string_view> ids;
        std::ranges::transform(ropes_, std::back_inserter(ids), &Rope::id);
        std::string near = did_you_mean(name, ids);
        if (near.empty()) { // a description whose first word is misspelt
            near = did_you_mean(name.substr(0, name.find(' ')), construction_names());
        }
        return Unexpected(
            Fault{Code::unknown_rope,
                  "no rope \"" + std::string(name) +
                      "\" is in the tables; describe it, e.g. \"12-strand HMPE 6 mm\"" + near});
    }
    const auto described = read_rope_description(name);
    if (!described) {
        return Unexpected(described.error());
    }
    Rope rope;
    rope.id = with_single_blanks(name);
    rope.title = rope.id;
    rope.construction = described->construction;
    rope.fibre = described->fibre;
    rope.diameter = described->diameter.length;
    rope.imperial = described->diameter.imperial;
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
    return rope;
}

} // namespace libsplice
