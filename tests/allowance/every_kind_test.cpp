// What holds of every kind of end, in every construction that it is made in.
#include "ends.h"

#include <map>
#include <set>

namespace libsplice::testing {
namespace {

/// A rope of each construction, in order of `Construction`, and one twice as thick.
struct TwoRopes {
    std::string_view thin;
    std::string_view thick;
};
constexpr std::array<TwoRopes, construction_count> ropes{{
    {"3-strand polyester 10 mm", "3-strand polyester 20 mm"},
    {"8-plait nylon 10 mm", "8-plait nylon 20 mm"},
    {"12-strand HMPE 4 mm", "12-strand HMPE 8 mm"},
    {"double-braid polyester 6 mm", "double-braid polyester 12 mm"},
    {"core-dependent HMPE 5 mm", "core-dependent HMPE 10 mm"},
    {"parallel-core aramid 6 mm", "parallel-core aramid 12 mm"},
    {"laid-core polyester 6 mm", "laid-core polyester 12 mm"},
    {"solid-braid polyester 3 mm", "solid-braid polyester 6 mm"},
    {"shock-cord rubber 5 mm", "shock-cord rubber 10 mm"},
    {"wire stainless-steel 1/8 in", "wire stainless-steel 1/4 in"},
}};

struct Made {
    const Kind* kind;
    Construction construction;
    End allowance;
};

std::string described(const Made& end) {
    return std::string(end.kind->declaration.name) + " in " +
           std::string(name_of(end.construction));
}

/// What a kind has no default for, because only the fitting itself can tell.
FieldList needed_fields(const Kind& kind) {
    static const std::map<std::string_view, std::string_view> measured{
        {"groove", "20 mm"},   {"bore", "12 mm"}, {"side", "thin"},  {"shank", "12 D"},
        {"insertion", "10 D"}, {"growth", "1 D"}, {"length", "2 D"}, {"stitched", "yes"}};
    FieldList fields;
    for (const FieldDeclaration& field : kind.declaration.fields) {
        if (field.required || field.name == "stitched") { // a clove hitch in bare HMPE
            const auto known = measured.find(field.name);
            fields.push_back({field.name, field.required && !field.choices.empty()
                                              ? field.choices.front()
                                          : known == measured.end() ? "30 mm"
                                                                    : known->second});
        }
    }
    return fields;
}

/// The thin rope of a construction. A bare hollow braid is sealed in polyester: heat spoils HMPE.
std::string_view thin_rope(const Kind& kind, std::size_t construction) {
    const bool sealed_braid =
        kind.declaration.name == "heat-sealed" &&
        static_cast<Construction>(construction) == Construction::twelve_strand;
    return sealed_braid ? "12-strand polyester 4 mm" : ropes.at(construction).thin;
}

/// Every kind, with its defaults, in every construction that it declares.
const std::vector<Made>& all_ends() {
    static const std::vector<Made> ends = [] {
        std::vector<Made> made;
        for (const Kind& kind : shipped_book().kinds()) {
            for (std::size_t i = 0; i < construction_count; ++i) {
                const auto construction = static_cast<Construction>(i);
                if (kind.declaration.constructions.allows(construction)) {
                    made.push_back(
                        {&kind, construction,
                         make_end(kind.declaration.name, thin_rope(kind, i), needed_fields(kind))});
                }
            }
        }
        return made;
    }();
    return ends;
}

std::string without_unit(std::string_view name) {
    for (const std::string_view unit : {"_m", "_deg"}) {
        if (name.ends_with(unit)) {
            return std::string(name.substr(0, name.size() - unit.size()));
        }
    }
    return std::string(name);
}

/// The words between braces in a text.
std::vector<std::string> placeholders(std::string_view text) {
    std::vector<std::string> found;
    for (auto open = text.find('{'); open != std::string_view::npos; open = text.find('{', open)) {
        const auto close = text.find('}', open);
        EXPECT_NE(close, std::string_view::npos) << text;
        found.emplace_back(text.substr(open + 1, close - open - 1));
        open = close;
    }
    return found;
}

std::set<std::string> names_given_by(const End& allowance) {
    std::set<std::string> names;
    for (const Value& value : values_of(allowance)) {
        names.insert(without_unit(value_names()[static_cast<std::size_t>(value.name)]));
    }
    for (const Mark& mark : allowance.marks) {
        names.insert('@' + std::string(mark_names()[static_cast<std::size_t>(mark.name)]));
    }
    return names;
}

TEST(EveryKind, IsMadeInTheConstructionsOfTheTrade) {
    std::map<std::string, int> constructions;
    for (const Made& end : all_ends()) {
        ++constructions[std::string(end.kind->declaration.name)];
    }
    const std::map<std::string, int> expected{
        {"bare", 10},        // anything can be cut
        {"whipped", 9},      // anything but wire
        {"figure-eight", 9}, // likewise
        {"overhand", 9},
        {"double-overhand", 9},
        {"stopper-ball", 9},
        {"stevedore", 8}, // too bulky for shock cord
        {"figure-eight-loop", 8},
        {"overhand-loop", 9},
        {"barrel-noose", 9},
        {"double-bowline", 8},
        {"halyard-hitch", 8}, // hitches and bends: neither wire nor shock cord
        {"buntline-hitch", 8},
        {"round-turn-two-half-hitches", 8},
        {"clove-hitch", 8},
        {"cow-hitch", 8},
        {"rolling-hitch", 8},
        {"lashing", 8},
        {"sheet-bend", 8},
        {"double-fisherman", 8},
        {"bowline", 8},           // neither wire nor shock cord
        {"buried-eye", 1},        // hollow braid
        {"locked-eye", 1},        // hollow braid
        {"stripped-eye", 2},      // double braid and core-dependent rope
        {"core-eye", 1},          // core-dependent rope
        {"cover-core-eye", 1},    // double braid
        {"parallel-core-eye", 1}, // its own construction
        {"larked-eye", 1},        // hollow braid, as the splices that they stand on
        {"ring-eye", 1},
        {"adjustable-eye", 1},
        {"endless-loop", 1},
        {"two-eye-strop", 1},
        {"soft-shackle", 1},
        {"stitched-eye", 8}, // neither wire nor shock cord
        {"seized-eye", 8},
        {"tucked-eye", 2},  // three strands and square plait
        {"clipped-eye", 1}, // wire
        {"ferrule-eye", 1},
        {"swaged-fitting", 1},
        {"crimped-end", 1},     // shock cord
        {"cover-over-join", 4}, // hollow, or with a core that comes out
        {"sewn-join", 5},       // braids
        {"core-to-core", 2},
        {"end-for-end", 2}, // double braid and square plait
        {"short-splice", 1},
        {"long-splice", 1},
        {"heat-sealed", 9}, // anything but wire
    };
    EXPECT_EQ(constructions, expected);
}

TEST(EveryKind, DescribesItselfAndItsFields) {
    for (const Kind& kind : shipped_book().kinds()) {
        const auto& declaration = kind.declaration;
        EXPECT_FALSE(declaration.title.empty() || declaration.datum.empty()) << declaration.name;
        EXPECT_LE(declaration.fields.size(), most_fields);
        std::set<std::string_view> names;
        for (const FieldDeclaration& field : declaration.fields) {
            EXPECT_TRUE(names.insert(field.name).second) << declaration.name << ' ' << field.name;
            EXPECT_FALSE(field.meaning.empty() || field.default_text.empty()) << field.name;
            EXPECT_EQ(field.dimension == Dimension::choice, !field.choices.empty()) << field.name;
            EXPECT_LE(field.lowest, field.highest) << field.name;
        }
    }
}

TEST(EveryKind, RowsNameTheirSourceAndWhereTheirSpreadComesFrom) {
    for (const Made& end : all_ends()) {
        for (const Row& row : end.allowance.rows) {
            const std::string which = described(end) + ", " +
                                      std::string(item_names()[static_cast<std::size_t>(row.item)]);
            const Citation& source = shipped_book().citation(row.source);
            EXPECT_TRUE(source.status == Status::geometry || source.status == Status::job ||
                        shipped_book().catalogue().find_source(source.key) != nullptr)
                << which;
            // What draws out takes off what the take-up as spliced errs more than the settled one.
            EXPECT_EQ(row.sd < 0.0, row.item == Item::settling) << which;
            EXPECT_EQ(std::abs(row.sd) > 0.0, row.origin != SpreadOrigin::none) << which;
        }
    }
}

TEST(EveryKind, MarksAscendFromTheTailEnd) {
    for (const Made& end : all_ends()) {
        Nanometres before = -1;
        for (const Mark& mark : end.allowance.marks) {
            // One of the cover and one of the core may lie side by side.
            EXPECT_GE(mark.from_tail_end, before) << described(end);
            before = mark.from_tail_end;
        }
    }
}

/// Whether a row is rope between the tail's end and the standing mark. The others, take-up and what
/// draws out at first load, lie beyond the mark or only shift the bearing point.
bool is_before_standing_mark(const Row& row) {
    static const std::set<Item> items{
        Item::ball,     Item::turns,        Item::half_hitches,  Item::eye_legs, Item::loop_legs,
        Item::tail,     Item::tucks,        Item::turn_back,     Item::knot,     Item::knot_body,
        Item::end_left, Item::cutting_loss, Item::short_section, Item::overlap,  Item::unlaid,
        Item::crimp,    Item::insertion,    Item::travel};
    return items.contains(row.item);
}

TEST(EveryKind, RowsLeadFromTheCutEndToTheStandingMark) {
    for (const Made& end : all_ends()) {
        Nanometres rope = 0;
        for (const Row& row : end.allowance.rows) {
            rope += is_before_standing_mark(row) ? row.length : 0;
        }
        const int sides = end.kind->declaration.reach == Reach::both_ends ? 2 : 1;
        EXPECT_NEAR(in_millimetres(end.allowance.standing_mark * sides), in_millimetres(rope), near)
            << described(end);
        EXPECT_TRUE(std::ranges::any_of(end.allowance.marks, [&](const Mark& mark) {
            return mark.from_tail_end == end.allowance.standing_mark;
        })) << described(end);
    }
}

TEST(EveryKind, ShapeLiesOnTheRope) {
    for (const Made& end : all_ends()) {
        for (const Span& span : end.allowance.shape) {
            EXPECT_GE(span.from, 0) << described(end);
            EXPECT_GT(span.to, span.from) << described(end);
            EXPECT_GT(span.width, 0) << described(end);
        }
    }
}

TEST(EveryKind, StepsAndCautionsSpeakOfWhatTheEndHas) {
    for (const Made& end : all_ends()) {
        const auto known = names_given_by(end.allowance);
        EXPECT_FALSE(end.allowance.steps.empty()) << described(end);
        for (const Step& step : end.allowance.steps) {
            for (const std::string& name : placeholders(step.text)) {
                EXPECT_TRUE(known.contains(name)) << described(end) << ": {" << name << '}';
            }
        }
        for (const Caution& caution : end.allowance.cautions) {
            for (const std::string& name : placeholders(caution.text)) {
                EXPECT_TRUE(known.contains(name)) << described(end) << ": {" << name << '}';
            }
        }
    }
}

TEST(EveryKind, NoTwoKindsAreMadeByTheSameSteps) {
    std::map<std::vector<std::string_view>, const Kind*> made_by;
    for (const Made& end : all_ends()) {
        std::vector<std::string_view> steps;
        for (const Step& step : end.allowance.steps) {
            steps.push_back(step.text);
        }
        const auto known = made_by.emplace(steps, end.kind).first->second;
        EXPECT_EQ(known, end.kind) << described(end);
    }
}

TEST(EveryKind, ThickerRopeNeedsMore) {
    for (const Made& end : all_ends()) {
        const auto& name = end.kind->declaration.name;
        const auto& rope = ropes.at(static_cast<std::size_t>(end.construction));
        if (end.kind->declaration.reach == Reach::plain || name == "swaged-fitting") {
            continue; // a cut costs the same in any rope; a fitting's lengths are its own
        }
        EXPECT_GT(make_end(name, rope.thick, needed_fields(*end.kind)).total(),
                  end.allowance.total())
            << described(end);
    }
}

TEST(EveryKind, IsRefusedInWhatItIsNotMadeIn) {
    for (const Kind& kind : shipped_book().kinds()) {
        for (std::size_t i = 0; i < construction_count; ++i) {
            if (!kind.declaration.constructions.allows(static_cast<Construction>(i))) {
                EXPECT_EQ(refuse_end(kind.declaration.name, ropes.at(i).thin).code,
                          Code::wrong_construction);
            }
        }
    }
}

} // namespace
} // namespace libsplice::testing
