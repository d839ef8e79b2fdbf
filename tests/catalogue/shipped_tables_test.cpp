// The shipped tables as a whole: every number has a source, and every source a number.
#include "folder.h"
#include "tests/support/tables.h"

#include <algorithm>
#include <array>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <set>
#include <string>
#include <utility>

namespace libsplice::testing {
namespace {

std::set<std::string> keys_in_use(const Catalogue& catalogue) {
    std::set<std::string> keys;
    for (std::size_t i = 0; i < catalogue.citations().size(); ++i) {
        const Citation& citation =
            catalogue.citations().at(CitationId(static_cast<std::uint16_t>(i)));
        if (!citation.key.empty()) {
            keys.insert(citation.key);
        }
    }
    return keys;
}

std::string text_of(const std::filesystem::path& path) {
    std::ifstream file(path);
    return {std::istreambuf_iterator<char>(file), {}};
}

TEST(ShippedTables, EverySourceResolvesAndIsUsed) {
    std::set<std::string> listed;
    for (const auto& source : shipped().sources()) {
        listed.insert(source.key);
    }
    EXPECT_FALSE(listed.empty());
    std::set<std::string> used = keys_in_use(shipped());
    // A cautious figure lies below those of several documents, and its locator names them by key.
    for (const GenericRope& generic : shipped().generics()) {
        for (const auto& of : {generic.breaking, generic.mass}) {
            for (const std::string& key : listed) {
                if (of &&
                    shipped().citations().at(of->source).locator.find(key) != std::string::npos) {
                    used.insert(key);
                }
            }
        }
    }
    // What places ask of a rope is read where a rope is chosen; a published case is held against
    // us.
    std::string text = text_of(tables_folder() + "/places.toml");
    ASSERT_FALSE(text.empty());
    for (const auto& cases :
         std::filesystem::directory_iterator(tables_folder() + "/../tests/published")) {
        text += text_of(cases.path());
    }
    for (const std::string& key : listed) {
        if (text.find("source = \"" + key + '"') != std::string::npos) {
            used.insert(key);
        }
    }
    EXPECT_EQ(used, listed);
}

TEST(ShippedTables, EveryFigureNamesItsSourceAndPlace) {
    for (const Rule& rule : shipped().rules()) {
        for (const auto& [id, figure] : rule.figures) {
            const Citation& citation = shipped().citations().at(figure.source);
            EXPECT_NE(shipped().find_source(citation.key), nullptr) << rule.id << name_of(id);
            EXPECT_NE(citation.locator.find_first_not_of(' '), std::string::npos) << rule.id;
        }
    }
}

TEST(ShippedTables, WhatIsPrintedNamesADocument) {
    const std::set<std::string> no_documents{"common-practice", "from-memory", "computed", "demo"};
    for (std::size_t i = 0; i < shipped().citations().size(); ++i) {
        const Citation& citation =
            shipped().citations().at(CitationId(static_cast<std::uint16_t>(i)));
        const bool document = citation.status == Status::printed ||
                              (citation.status == Status::derived && !citation.key.empty());
        EXPECT_EQ(document, !citation.key.empty() && !no_documents.contains(citation.key))
            << to_text(citation);
    }
}

TEST(ShippedTables, NoDefaultStandsBelowAPublishedMinimum) {
    const std::array<std::pair<FigureId, FigureId>, 3> pairs{
        std::pair{FigureId::tail, FigureId::minimum_tail},
        std::pair{FigureId::tucks, FigureId::minimum_tucks},
        std::pair{FigureId::end_left, FigureId::minimum_end_left}};
    std::set<std::string> kinds;
    for (const Rule& rule : shipped().rules()) {
        kinds.insert(rule.kinds.begin(), rule.kinds.end());
    }
    int compared = 0;
    for (const auto& kind : kinds) {
        std::vector<const Rule*> of_kind;
        for (const Rule& rule : shipped().rules()) {
            if (std::ranges::find(rule.kinds, kind) != rule.kinds.end()) {
                of_kind.push_back(&rule);
            }
        }
        for (const auto construction : construction_names()) {
            for (const auto fibre : fibre_names()) {
                const auto rope =
                    shipped().rope(std::string(construction) + ' ' + std::string(fibre) + " 6 mm");
                const Rules rules(*rope, of_kind, {}, nullptr);
                for (const auto& [figure, least] : pairs) {
                    const Figure* minimum = rules.find(least);
                    if (minimum == nullptr || rules.find(figure) == nullptr) {
                        continue;
                    }
                    ++compared;
                    EXPECT_GE(rules.find(figure)->value, minimum->value)
                        << kind << ' ' << rope->id << ' ' << name_of(figure);
                }
            }
        }
    }
    EXPECT_GT(compared, 20);
}

TEST(ShippedTables, EveryNamedRuleIsNamedOncePerKindAndRope) {
    std::map<std::pair<std::string, std::string>, std::vector<const Rule*>> named;
    for (const Rule& rule : shipped().rules()) {
        for (const auto& kind : rule.kinds) {
            named[{kind, rule.name}].push_back(&rule);
        }
    }
    for (const auto& [key, rules] : named) {
        for (const auto construction : construction_names()) {
            for (const auto fibre : fibre_names()) {
                const auto rope = shipped().rope(std::string(construction) + ' ' +
                                                 std::string(fibre) + " 1/2 in");
                EXPECT_LE(std::ranges::count_if(
                              rules, [&](const Rule* rule) { return rule->applies_to(*rope); }),
                          1)
                    << key.first << ' ' << key.second << ' ' << rope->id;
            }
        }
    }
}

} // namespace
} // namespace libsplice::testing
