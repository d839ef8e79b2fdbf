// From a field's text to its value: units, counts of diameters, percentages, choices, ranges.
#include "libsplice/allowance/fields.h"

#include "ends.h"

namespace libsplice::testing {
namespace {

constexpr FieldDeclaration length_field{"tail", "a length", Dimension::length, 0.01, 2.0, "none"};
constexpr FieldDeclaration count_field{"tucks", "a count", Dimension::count, 1.0, 20.0, "none"};
constexpr FieldDeclaration ratio_field{"set", "a ratio", Dimension::ratio, 0.0, 0.1, "none"};
constexpr std::array<std::string_view, 2> words{"free", "fixed"};
constexpr FieldDeclaration choice_field{"far_end", "a word", Dimension::choice, 0.0, 0.0, "free",
                                        false,     words};

Result<double> read(const FieldDeclaration& field, std::string_view text,
                    std::optional<LengthUnit> unit = {}) {
    return read_field(field, FieldText{field.name, text, unit}, millimetres(5.0));
}

double value(const FieldDeclaration& field, std::string_view text,
             std::optional<LengthUnit> unit = {}) {
    const auto read_value = read(field, text, unit);
    EXPECT_TRUE(read_value) << text << ": " << (read_value ? "" : read_value.error().text);
    return read_value ? *read_value : not_there;
}

Code fault(const FieldDeclaration& field, std::string_view text) {
    const auto read_value = read(field, text);
    EXPECT_FALSE(read_value) << text;
    return read_value ? Code{} : read_value.error().code;
}

TEST(Field, LengthsHaveUnitsOrCountDiameters) {
    EXPECT_NEAR(value(length_field, "72 D"), 0.36, 1e-12);
    EXPECT_NEAR(value(length_field, "72D"), 0.36, 1e-12);
    EXPECT_NEAR(value(length_field, "4.5 D"), 0.0225, 1e-12);
    EXPECT_NEAR(value(length_field, "360 mm"), 0.36, 1e-12);
    EXPECT_NEAR(value(length_field, "5/8 in"), 0.015875, 1e-12);
    EXPECT_NEAR(value(length_field, "1 1/2 in"), 0.0381, 1e-12);
    EXPECT_NEAR(value(length_field, "36", LengthUnit::cm), 0.36, 1e-12);
    EXPECT_NEAR(value(length_field, "36 mm", LengthUnit::cm), 0.036, 1e-12);
}

TEST(Field, RatiosArePlainOrPercentages) {
    EXPECT_NEAR(value(ratio_field, "2 %"), 0.02, 1e-15);
    EXPECT_NEAR(value(ratio_field, "2%"), 0.02, 1e-15);
    EXPECT_NEAR(value(ratio_field, "0.02"), 0.02, 1e-15);
    EXPECT_NEAR(value(ratio_field, "0"), 0.0, 1e-15);
}

TEST(Field, CountsAreWhole) {
    EXPECT_NEAR(value(count_field, "5"), 5.0, 1e-15);
    EXPECT_EQ(fault(count_field, "4.5"), Code::field_unreadable);
    EXPECT_EQ(fault(count_field, "five"), Code::field_unreadable);
}

TEST(Field, ChoicesAreWords) {
    EXPECT_NEAR(value(choice_field, "free"), 0.0, 1e-15);
    EXPECT_NEAR(value(choice_field, "fixed"), 1.0, 1e-15);
    const auto wrong = read(choice_field, "loose");
    ASSERT_FALSE(wrong);
    EXPECT_EQ(wrong.error().code, Code::field_unreadable);
    EXPECT_TRUE(says(wrong.error(), "free") && says(wrong.error(), "fixed")) << wrong.error().text;
}

TEST(Field, WhatCannotBeReadIsSaidWithItsName) {
    for (const std::string_view text : {"long", "72", "D", "1,5 m", "72 d", "3/0 in", "-"}) {
        const auto wrong = read(length_field, text);
        ASSERT_FALSE(wrong) << text;
        EXPECT_EQ(wrong.error().code, Code::field_unreadable) << text;
        EXPECT_EQ(wrong.error().field, "tail");
        EXPECT_TRUE(says(wrong.error(), std::string("tail \"") + std::string(text) + '"'))
            << wrong.error().text;
    }
    EXPECT_EQ(fault(ratio_field, "2 mm"), Code::field_unreadable);
    EXPECT_EQ(fault(ratio_field, "% 2"), Code::field_unreadable);
    EXPECT_EQ(fault(ratio_field, "nan"), Code::field_unreadable);
    EXPECT_EQ(fault(length_field, "inf D"), Code::field_unreadable);
}

TEST(Field, LimitsAreInclusiveAndNamed) {
    EXPECT_NEAR(value(length_field, "10 mm"), 0.01, 1e-15);
    EXPECT_NEAR(value(length_field, "2 m"), 2.0, 1e-15);
    for (const std::string_view text : {"9.9 mm", "2001 mm", "401 D", "-1 D"}) {
        const auto wrong = read(length_field, text);
        ASSERT_FALSE(wrong) << text;
        EXPECT_EQ(wrong.error().code, Code::field_out_of_range) << text;
        EXPECT_TRUE(says(wrong.error(), "10 mm") && says(wrong.error(), "to"))
            << wrong.error().text;
    }
    EXPECT_EQ(fault(count_field, "0"), Code::field_out_of_range);
    EXPECT_EQ(fault(count_field, "21"), Code::field_out_of_range);
    EXPECT_EQ(fault(ratio_field, "11 %"), Code::field_out_of_range);
    EXPECT_EQ(fault(ratio_field, "-1 %"), Code::field_out_of_range);
}

TEST(Fields, AreBoundInTheDeclarationsOrder) {
    constexpr std::array fields{length_field, count_field, ratio_field};
    const KindDeclaration kind{"made-up", "a kind", "its end", {}, fields};
    const FieldList given{{"set", "5 %"}, {"rule", "any"}, {"tail", "100 D"}};
    const auto bound = bind_fields(kind, millimetres(5.0), given);
    ASSERT_TRUE(bound);
    EXPECT_NEAR(bound->at(0), 0.5, 1e-12);
    EXPECT_FALSE(bound->has(1));
    EXPECT_NEAR(bound->at(2), 0.05, 1e-12);
    EXPECT_FALSE(bound->length(1));
}

TEST(Fields, RequiredOnesAreAskedFor) {
    auto required = count_field;
    required.required = true;
    const std::array fields{length_field, required};
    const KindDeclaration kind{"made-up", "a kind", "its end", {}, fields};
    const auto missing = bind_fields(kind, millimetres(5.0), FieldList{{"tail", "1 m"}});
    ASSERT_FALSE(missing);
    EXPECT_EQ(missing.error().code, Code::field_missing);
    EXPECT_EQ(missing.error().field, "tucks");
    EXPECT_TRUE(bind_fields(kind, millimetres(5.0), FieldList{{"tucks", "3"}}));
}

} // namespace
} // namespace libsplice::testing
