// The defaults that help quotes are those of the tables.
#include "tests/support/tables.h"

#include <gtest/gtest.h>

#include <array>
#include <regex>
#include <string>

namespace libsplice::testing {
namespace {

constexpr std::array<std::string_view, construction_count> ropes{
    "3-strand polyester 10 mm",    "8-plait nylon 10 mm",        "12-strand HMPE 5 mm",
    "double-braid polyester 6 mm", "core-dependent HMPE 5 mm",   "parallel-core aramid 6 mm",
    "laid-core polyester 8 mm",    "solid-braid polyester 3 mm", "shock-cord rubber 5 mm",
    "wire stainless-steel 4 mm"};

/// Checks one text on every construction that the kind is made in; whether it quotes the tables.
bool check(const Kind& kind, const FieldDeclaration& field) {
    static const std::regex quoted("([0-9.]+) times the pin, at least ([0-9.]+) D.*");
    const std::string text(field.default_text);
    std::smatch numbers;
    if (!std::regex_match(text, numbers, quoted)) {
        return false;
    }
    for (std::size_t i = 0; i < ropes.size(); ++i) {
        if (!kind.declaration.constructions.allows(static_cast<Construction>(i))) {
            continue;
        }
        const auto rope = shipped_book().catalogue().rope(ropes.at(i));
        const auto rules = shipped_book().rules(kind, *rope, "");
        const Figure* pins = rules->find(FigureId::eye_pins);
        const Figure* diameters = rules->find(FigureId::eye_diameters);
        EXPECT_TRUE(pins != nullptr && diameters != nullptr) << kind.declaration.name;
        if (pins != nullptr && diameters != nullptr) {
            EXPECT_DOUBLE_EQ(pins->value, std::stod(numbers[1])) << kind.declaration.name;
            EXPECT_DOUBLE_EQ(diameters->value, std::stod(numbers[2])) << kind.declaration.name;
        }
    }
    return true;
}

TEST(DefaultTexts, OfEyesAreThoseOfTheTables) {
    int quoting = 0;
    for (const Kind& kind : shipped_book().kinds()) {
        for (const FieldDeclaration& field : kind.declaration.fields) {
            quoting += check(kind, field) ? 1 : 0;
        }
    }
    EXPECT_GE(quoting, 15); // or the words have changed and nothing is checked
}

} // namespace
} // namespace libsplice::testing
