// Every formula of a working gives the length that stands beside it: read from the page and worked
// out again, for every kind of end.
#include "libsplice/sheet/panel/working.h"

#include "tests/cut/jobs.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <numbers>
#include <regex>

namespace libsplice::testing {
namespace {

/// A number as it is printed, and half of its last place.
struct Printed {
    double value = 0.0;
    double half_place = 0.0;
};
using Letters = std::map<std::string, Printed>;

Letters letters_of(const std::string& working) {
    static const std::regex term(R"((\w+) = (-?[0-9.]+)(?: (mm|%|degrees))?)");
    Letters letters;
    for (std::sregex_iterator at(working.begin(), working.end(), term), end; at != end; ++at) {
        const std::string unit = (*at)[3];
        const double scale = unit == "%"         ? 0.01
                             : unit == "degrees" ? std::numbers::pi / 180.0
                                                 : 1.0;
        const double half = unit == "mm"        ? 0.05
                            : unit == "%"       ? 0.00005
                            : unit == "degrees" ? 0.0005
                                                : 0.0000005;
        letters[(*at)[1]] = {std::stod((*at)[2]) * scale, half * scale};
    }
    return letters;
}

using Sum = std::function<double(const std::function<double(const char*)>&)>;

double eye_of(const std::function<double(const char*)>& of) {
    const double q = std::hypot(of("h"), of("w"));
    const double b = std::asin(of("R") / q) - std::atan(of("w") / of("h"));
    return of("R") * (std::numbers::pi + 2.0 * b) + 2.0 * std::sqrt(q * q - of("R") * of("R"));
}

double steps_of(const std::function<double(const char*)>& of) {
    double in_taper = 0.0;
    for (int k = 0; k < of("n") + 0.5; ++k) {
        in_taper += 1.0 / std::sqrt(1.0 - of("K") * (1.0 - 2.0 * k / of("N")));
    }
    return (of("T") - of("P")) / std::sqrt(1.0 - of("K")) + of("P") / (of("n") + 1.0) * in_taper -
           of("T");
}

/// The shapes of formula that a working may have, by their text.
const std::map<std::string, Sum>& formulas() {
    static const std::map<std::string, Sum> all{
        {"R (pi + 2b) + 2t", eye_of},
        {"R (pi + 2b) + 2t + 2l",
         [](const auto& of) {
             return eye_of(of) + 2.0 * of("l");
         }},
        {"(T - P)/sqrt(1 - aK) + 2P/(sqrt(1 - aK) + sqrt(1 - eK)) - T",
         [](const auto& of) {
             const double root = std::sqrt(1.0 - of("a") * of("K"));
             const double at_end = std::sqrt(1.0 - of("e") * of("K"));
             return (of("T") - of("P")) / root + 2.0 * of("P") / (root + at_end) - of("T");
         }},
        {"(T - P)/sqrt(1 - aK) + 2P/(sqrt(1 - aK) + sqrt(1 - eK)) - T - U",
         [](const auto& of) {
             const double root = std::sqrt(1.0 - of("a") * of("K"));
             const double at_end = std::sqrt(1.0 - of("e") * of("K"));
             return (of("T") - of("P")) / root + 2.0 * of("P") / (root + at_end) - of("T") -
                    of("U");
         }},
        {"(T - P)/sqrt(1 - K) + P/(n + 1) sum(1/sqrt(1 - K (1 - 2k/N)), k = 0 to n) - T", steps_of},
        {"(T - P)/sqrt(1 - K) + P/(n + 1) sum(1/sqrt(1 - K (1 - 2k/N)), k = 0 to n) - T - U",
         [](const auto& of) {
             return steps_of(of) - of("U");
         }},
        {"p/2",
         [](const auto& of) {
             return of("p") / 2.0;
         }},
        {"l/2",
         [](const auto& of) {
             return of("l") / 2.0;
         }},
        {"2t",
         [](const auto& of) {
             return 2.0 * of("t");
         }},
        {"pi (B + D) - 2B",
         [](const auto& of) {
             return std::numbers::pi * (of("B") + of("D")) - 2.0 * of("B");
         }},
        {"n D",
         [](const auto& of) {
             return of("n") * of("D");
         }},
        {"f x n D",
         [](const auto& of) {
             return of("f") * of("n") * of("D");
         }},
        {"n (2 sqrt(C^2 - (r - s)^2) + pi (r + s) + 2 (r - s) asin((r - s)/C))",
         [](const auto& of) {
             const double less = of("r") - of("s");
             return of("n") * (2.0 * std::sqrt(of("C") * of("C") - less * less) +
                               std::numbers::pi * (of("r") + of("s")) +
                               2.0 * less * std::asin(less / of("C")));
         }},
        {"n pi (A + D)",
         [](const auto& of) {
             return of("n") * std::numbers::pi * (of("A") + of("D"));
         }},
        {"-E",
         [](const auto& of) {
             return -of("E");
         }},
        {"L ((1 + m)/(1 + w) - 1)",
         [](const auto& of) {
             return of("L") * ((1.0 + of("m")) / (1.0 + of("w")) - 1.0);
         }},
        {"L (1/(1 + s) - 1)",
         [](const auto& of) {
             return of("L") * (1.0 / (1.0 + of("s")) - 1);
         }},
        {"L (1/(1 - s) - 1)",
         [](const auto& of) {
             return of("L") * (1.0 / (1.0 - of("s")) - 1);
         }},
        {"z s",
         [](const auto& of) {
             return of("z") * of("s");
         }},
    };
    return all;
}

struct Read {
    std::string formula;
    double sides = 1.0;
};

/// A count that stands in the formula itself as a letter, with its number.
void take_out(std::string& formula, Letters& letters, const std::string& pattern,
              const std::string& letter) {
    std::smatch found;
    if (std::regex_search(formula, found, std::regex(pattern))) {
        letters[letter] = {std::stod(found[1]), 0.0000005};
        formula.replace(static_cast<std::size_t>(found.position(1)),
                        static_cast<std::size_t>(found.length(1)), letter);
    }
}

/// What comes before the first comma outside parentheses.
std::string formula_in(const std::string& working) {
    int depth = 0;
    std::size_t at = 0;
    for (; at < working.size() && (depth != 0 || working[at] != ','); ++at) {
        depth += working[at] == '(' ? 1 : working[at] == ')' ? -1 : 0;
    }
    return working.substr(0, at);
}

/// The formula, and whether it is taken twice.
Read read(const std::string& working, Letters& letters) {
    std::string formula = formula_in(working);
    double sides = 1.0;
    if (formula.starts_with("2 x (") && formula.ends_with(')')) {
        formula = formula.substr(5, formula.size() - 6);
        sides = 2.0;
    }
    take_out(formula, letters, "^(-?[0-9.]+) x ", "f");
    take_out(formula, letters, "^([0-9.]+) \\(2 sqrt", "n");
    take_out(formula, letters, "(-?[0-9.]+) (?:D$|pi \\()", "n");
    return {formula, sides};
}

/// Checks one row; whether it has a formula at all.
bool check_row(const Piece& piece, std::size_t at) {
    const std::string working = working_of(piece, at, UnitSystem::metric);
    Letters letters = letters_of(working);
    const auto [formula, sides] = read(working, letters);
    const auto found = formulas().find(formula);
    if (found == formulas().end()) {
        return false;
    }
    const auto with_one_off = [&](const std::string& letter, double halves) {
        return sides * found->second([&](const char* name) {
            const Printed& printed = letters.at(name);
            return printed.value + (letter == name ? halves * printed.half_place : 0.0);
        });
    };
    const double result = with_one_off("", 0.0);
    double rounding = 0.06; // the row itself is asked for within 0.05 mm
    for (const auto& [letter, printed] : letters) {
        rounding += std::max(std::abs(with_one_off(letter, 1.0) - result),
                             std::abs(with_one_off(letter, -1.0) - result));
    }
    const double length = in_millimetres(piece.ledger[at].row.length);
    // What is printed is near enough to check the row by, or the page would say nothing.
    EXPECT_LT(rounding, std::max(5.0, 0.02 * std::abs(length))) << working;
    EXPECT_NEAR(result, length, rounding) << working;
    return true;
}

/// Rows that always have a formula, unless the job itself states them.
bool needs_formula(const Row& row) {
    static const std::set<Item> items{Item::stretch,   Item::first_stretch, Item::eye_legs,
                                      Item::loop_legs, Item::settling,      Item::spare,
                                      Item::take_up,   Item::cover_take_up, Item::turns,
                                      Item::knot,      Item::round_bearings};
    return items.contains(row.item) && row.source != cited_job;
}

void check_piece(const Made& made) {
    const Piece& piece = made.piece;
    ASSERT_FALSE(made.fault) << made.name << ": " << to_text(*made.fault);
    for (std::size_t i = 0; i < piece.ledger.size(); ++i) {
        const Row& row = piece.ledger[i].row;
        SCOPED_TRACE(made.name + ": " +
                     std::string(item_names()[static_cast<std::size_t>(row.item)]));
        EXPECT_TRUE(check_row(piece, i) || !needs_formula(row))
            << working_of(piece, i, UnitSystem::metric);
    }
}

/// A rope that the kind is made in.
std::string rope_for(const Kind& kind) {
    constexpr std::array<std::string_view, construction_count> ropes{
        "3-strand polyester 10 mm",    "8-plait nylon 10 mm",        "12-strand HMPE 5 mm",
        "double-braid polyester 6 mm", "core-dependent HMPE 5 mm",   "parallel-core aramid 6 mm",
        "laid-core polyester 8 mm",    "solid-braid polyester 3 mm", "shock-cord rubber 5 mm",
        "wire stainless-steel 1/8 in",
    };
    const auto allowed = [&](Construction construction) {
        return kind.declaration.constructions.allows(construction);
    };
    if (allowed(Construction::twelve_strand) && kind.declaration.name != "heat-sealed") {
        return std::string(ropes[static_cast<std::size_t>(Construction::twelve_strand)]);
    }
    for (std::size_t i = 0; i < ropes.size(); ++i) {
        if (allowed(static_cast<Construction>(i))) {
            return std::string(ropes.at(i));
        }
    }
    ADD_FAILURE() << kind.declaration.name;
    return {};
}

/// A line with that end and its defaults; what only the fitting can tell is given.
Line line_for(const Kind& kind) {
    static const std::map<std::string_view, std::string> measured{
        {"groove", "20 mm"},   {"bore", "12 mm"}, {"shank", "12 D"},
        {"insertion", "10 D"}, {"growth", "1 D"}, {"length", "2 D"}};
    Line line{{"name", std::string(kind.declaration.name)},
              {"rope", rope_for(kind)},
              {"length", "21.7 m"},
              {"prestretched", "no"},
              {"end_a", std::string(kind.declaration.name)}};
    for (const FieldDeclaration& field : kind.declaration.fields) {
        const std::string column = "end_a." + std::string(field.name);
        if (field.name == "stitched") {
            line[column] = "yes"; // a clove hitch in bare HMPE
        } else if (field.name == "gap") {
            line[column] = "80 mm"; // a lashing between two fittings
        } else if (field.required) {
            const auto known = measured.find(field.name);
            line[column] = !field.choices.empty()    ? std::string(field.choices.front())
                           : known != measured.end() ? known->second
                                                     : "30 mm";
        }
    }
    return line;
}

bool has_field(const Kind& kind, std::string_view name) {
    return std::ranges::any_of(kind.declaration.fields,
                               [&](const FieldDeclaration& field) { return field.name == name; });
}

TEST(Working, GivesTheLengthBesideItForEveryKind) {
    std::vector<Line> lines;
    for (const Kind& kind : shipped_book().kinds()) {
        lines.push_back(line_for(kind));
        if (has_field(kind, "pin")) {
            lines.push_back(with(lines.back(), {{"end_a.pin", "12 mm"}}));
            if (kind.declaration.name == "crimped-end") { // only as a loop
                lines.back()["end_a.form"] = "loop";
            }
        }
    }
    const auto run = cut_lines(lines);
    ASSERT_EQ(run.lines.size(), lines.size());
    for (const Made& made : run.lines) {
        check_piece(made);
    }
}

TEST(Working, GivesTheLengthBesideItForLinesOfManySorts) {
    const auto run = cut_lines(many_sorts());
    for (const Made& made : run.lines) {
        check_piece(made);
    }
}

std::string working_at(const Piece& piece, Item item) {
    for (std::size_t i = 0; i < piece.ledger.size(); ++i) {
        if (piece.ledger[i].row.item == item) {
            return working_of(piece, i, UnitSystem::metric);
        }
    }
    ADD_FAILURE() << "no such row";
    return {};
}

Line end_on(const Line& line, const std::string& kind, const Line& fields = {}) {
    return with(with(line, {{"end_a", kind}}), fields);
}

TEST(Working, OfBothSidesIsTwiceThatOfOne) {
    const One loop = cut_one(end_on(plain_line, "endless-loop", {{"prestretched", "no"}}));
    const std::string settling = working_at(loop.piece(), Item::settling);
    EXPECT_TRUE(settling.starts_with("2 x ((T - P)")) << settling;
    EXPECT_NE(settling.find("K = 0.135 of the braid once it was loaded"), std::string::npos)
        << settling;
    EXPECT_TRUE(working_at(loop.piece(), Item::take_up).starts_with("2 x ((T - P)"));
    EXPECT_TRUE(working_at(loop.piece(), Item::spare).starts_with("z s, "));
}

TEST(Working, OfATakeUpIsThatOfWhatLiesInside) {
    const One eye = cut_one({{"name", "sheet"},
                             {"rope", "double-braid polyester 8 mm"},
                             {"length", "9 m"},
                             {"end_a", "cover-core-eye"}});
    const std::string working = working_at(eye.piece(), Item::take_up);
    EXPECT_TRUE(std::regex_match(working, std::regex(R"([0-9.]+ D, D = 8\.0 mm)"))) << working;
    const One thick = cut_one(
        end_on(plain_line, "cover-over-join",
               {{"rope", "12-strand HMPE 8 mm"}, {"end_a.side", "thick"}, {"end_a.thin", "4 mm"}}));
    // A line half as thick fills a quarter of the section.
    EXPECT_NE(working_at(thick.piece(), Item::take_up).find("a = 0.25 "), std::string::npos);
}

TEST(Working, OfWhatTheJobStatesIsWhatTheJobSays) {
    const One eye =
        cut_one(end_on(plain_line, "buried-eye", {{"end_a.tail", "400 mm"}, {"spare", "25 mm"}}));
    EXPECT_EQ(working_at(eye.piece(), Item::tail), "as the job says");
    EXPECT_EQ(working_at(eye.piece(), Item::spare), "as the job says");
    const One loop =
        cut_one(end_on(plain_line, "endless-loop", {{"end_a.tail", "400 mm"}, {"spare", "25 mm"}}));
    EXPECT_EQ(working_at(loop.piece(), Item::tail), "as the job says, both sides together");
    EXPECT_EQ(working_at(loop.piece(), Item::spare), "as the job says");
}

TEST(Working, OfAnEyeNamesWhatItWasShapedOn) {
    // Round a groove of 20 mm in rope of 5 mm: R = (20 + 5)/2; flat: R = 5/2.
    const One ring = cut_one(
        end_on(plain_line, "ring-eye", {{"end_a.groove", "20 mm"}, {"end_a.bore", "12 mm"}}));
    EXPECT_NE(working_at(ring.piece(), Item::eye_legs).find("R = 12.5 mm"), std::string::npos);
    const One larked = cut_one(end_on(plain_line, "larked-eye", {{"end_a.pin", "30 mm"}}));
    EXPECT_NE(working_at(larked.piece(), Item::eye_legs).find("R = 2.5 mm"), std::string::npos);
}

} // namespace
} // namespace libsplice::testing
