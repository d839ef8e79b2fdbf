// Ropes by id and by description.
#include "folder.h"

#include <gmock/gmock.h>

#include <cmath>

namespace libsplice::testing {
namespace {

TEST(RopeDescriptions, AreConstructionFibreDiameter) {
    const auto metric = read_rope_description("12-strand HMPE 5 mm", {});
    ASSERT_TRUE(metric.has_value());
    EXPECT_EQ(metric->construction, Construction::twelve_strand);
    EXPECT_EQ(metric->fibre, Fibre::hmpe);
    EXPECT_EQ(to_nanometres(metric->diameter.length), 5'000'000);
    EXPECT_FALSE(metric->diameter.imperial);

    const auto imperial = read_rope_description("  3-strand\tpolyester  1/2 in ", {});
    ASSERT_TRUE(imperial.has_value());
    EXPECT_EQ(to_nanometres(imperial->diameter.length), 12'700'000);
    EXPECT_TRUE(imperial->diameter.imperial);
}

TEST(RopeDescriptions, SayWhatIsWrong) {
    const auto message = [](const std::string& text) {
        const auto rope = Catalogue().rope(text);
        EXPECT_FALSE(rope.has_value()) << text;
        EXPECT_EQ(rope.error().code, Code::rope_not_understood) << text;
        return rope.error().text;
    };
    EXPECT_THAT(message("12-strand HMPA 5 mm"), ::testing::HasSubstr("did you mean \"HMPE\""));
    EXPECT_THAT(message("12-strand"), ::testing::HasSubstr("the fibre is missing"));
    EXPECT_THAT(message("12-strand HMPE"), ::testing::HasSubstr("the diameter is missing"));
    EXPECT_THAT(message("12-strand HMPE 5"), ::testing::HasSubstr("no diameter"));
    EXPECT_THAT(message("12-strand HMPE 5 mm red"), ::testing::HasSubstr("\"red\""));
    EXPECT_THAT(message("12-strand HMPE 0.4 mm"), ::testing::HasSubstr("0.5 mm"));
    EXPECT_THAT(message("12-strand HMPE 201 mm"), ::testing::HasSubstr("200 mm"));
    EXPECT_TRUE(read_rope_description("12-strand HMPE 0.5 mm", {}).has_value());
    EXPECT_TRUE(read_rope_description("12-strand HMPE 200 mm", {}).has_value());
    EXPECT_THAT(read_rope_description("12-stand HMPE 5 mm", {}).error().text,
                ::testing::HasSubstr("did you mean \"12-strand\""));
}

TEST(RopeLookup, GoesByIdFirst) {
    const Folder folder;
    folder.write("ropes/all.toml", rope_record("grey six", "colour = \"grey\"") +
                                       rope_record("12-strand HMPE 6 mm", "colour = \"red\""));
    const Catalogue catalogue = load({folder.path()});
    EXPECT_EQ(catalogue.rope(" grey six ")->colour, "grey");
    EXPECT_EQ(catalogue.rope("12-strand HMPE 6 mm")->colour, "red");
    const auto unknown = catalogue.rope("grey sox");
    ASSERT_FALSE(unknown.has_value());
    EXPECT_EQ(unknown.error().code, Code::unknown_rope);
    EXPECT_THAT(unknown.error().text, ::testing::HasSubstr("did you mean \"grey six\""));
    EXPECT_EQ(catalogue.rope("").error().code, Code::unknown_rope);
}

TEST(RopeLookup, DescriptionsTakeFiguresFromTheFirstGenericRope) {
    const Folder folder;
    const std::string first = "generic = true\nbreaking = { value = 30, unit = \"kN\", " + cited +
                              " }\nmass = { value = 20, unit = \"g/m\", " + cited +
                              " }\nstretch = { value = 0.7, unit = \"%\", at = \"20 %\", " + cited +
                              " }";
    folder.write("ropes/all.toml",
                 rope_record("named", "breaking = { value = 99, unit = \"kN\", " + cited + " }") +
                     rope_record("first", first) +
                     rope_record("second", "generic = true\nbreaking = { value = 31, unit = "
                                           "\"kN\", " +
                                               cited + " }"));
    const Catalogue catalogue = load({folder.path()});
    const auto rope = catalogue.rope("12-strand   HMPE 6  mm");
    ASSERT_TRUE(rope.has_value());
    EXPECT_EQ(rope->id, "12-strand HMPE 6 mm");
    EXPECT_EQ(rope->title, "12-strand HMPE 6 mm");
    EXPECT_DOUBLE_EQ(rope->breaking->value.si(), 30'000.0);
    EXPECT_DOUBLE_EQ(rope->mass->value.si(), 0.020);
    EXPECT_DOUBLE_EQ(rope->stretch->curve.at(0.2), 0.007);
    EXPECT_EQ(to_text(catalogue.citations().at(rope->breaking->source)), "book p. 1");
    EXPECT_FALSE(catalogue.rope("12-strand HMPE 6.1 mm")->breaking.has_value());
    EXPECT_FALSE(catalogue.rope("12-strand polyester 6 mm")->breaking.has_value());
    EXPECT_FALSE(catalogue.rope("8-plait HMPE 6 mm")->breaking.has_value());
}

TEST(RopeRecords, ReadPrintedUnits) {
    const Folder folder;
    const auto breaking = [](const std::string& id, const std::string& unit) {
        return rope_record(id,
                           "breaking = { value = 100, unit = \"" + unit + "\", " + cited + " }");
    };
    const auto mass = [](const std::string& id, const std::string& unit) {
        return rope_record(id, "mass = { value = 2, unit = \"" + unit + "\", " + cited + " }");
    };
    folder.write("ropes/all.toml",
                 breaking("N", "N") + breaking("daN", "daN") + breaking("kN", "kN") +
                     breaking("kgf", "kgf") + breaking("lbf", "lbf") + mass("a", "g/m") +
                     mass("b", "kg/m") + mass("c", "kg/100m") + mass("d", "lb/100ft"));
    const Catalogue catalogue = load({folder.path()});
    const auto force = [&](const std::string& id) {
        return catalogue.rope(id)->breaking->value.si();
    };
    EXPECT_DOUBLE_EQ(force("N"), 100.0);
    EXPECT_DOUBLE_EQ(force("daN"), 1000.0);
    EXPECT_DOUBLE_EQ(force("kN"), 100'000.0);
    EXPECT_DOUBLE_EQ(force("kgf"), 980.665);
    EXPECT_NEAR(force("lbf"), 444.8222, 1e-4);
    const auto line_mass = [&](const std::string& id) {
        return catalogue.rope(id)->mass->value.si();
    };
    EXPECT_DOUBLE_EQ(line_mass("a"), 0.002);
    EXPECT_DOUBLE_EQ(line_mass("b"), 2.0);
    EXPECT_DOUBLE_EQ(line_mass("c"), 0.02);
    EXPECT_NEAR(line_mass("d"), 0.0297633, 1e-7); // 0.90718474 kg on 30.48 m
}

TEST(RopeRecords, MayCarryMeasuredAndCoreDiameter) {
    const Folder folder;
    folder.write(
        "ropes/all.toml",
        "[[rope]]\nid = \"r\"\ntitle = \"t\"\nconstruction = \"core-dependent\"\nfibre = "
        "\"HMPE\"\ndiameter = \"1/4 in\"\nnote = \"n\"\nprice = { value = 3.5, unit = \"per m\", " +
            cited + " }\nmeasured_diameter = { value = 6.6, unit = \"mm\", " + cited +
            " }\ncore_diameter = { value = \"3/16\", unit = \"in\", " + cited + " }\n");
    const auto rope = load({folder.path()}).rope("r");
    ASSERT_TRUE(rope.has_value());
    EXPECT_TRUE(rope->imperial);
    EXPECT_DOUBLE_EQ(rope->counting_diameter().si(), 0.0066);
    EXPECT_EQ(to_nanometres(rope->core_diameter->value), 4'762'500);
    EXPECT_DOUBLE_EQ(rope->price->value, 3.5);
}

TEST(RopeRecords, MayHoldABraidConstantWithItsSpread) {
    const Folder folder;
    folder.write("ropes/all.toml",
                 rope_record("own", "generic = true\nbraid_constant = { value = 0.21, low = 0.19, "
                                    "high = 0.24, spread = \"measured\", " +
                                        cited + " }"));
    const Catalogue catalogue = load({folder.path()});
    // The record is generic, so a rope described as it is one.
    for (const auto& name : {"own", "12-strand HMPE 6 mm"}) {
        const auto rope = catalogue.rope(name);
        ASSERT_TRUE(rope && rope->braid_constant) << name;
        EXPECT_DOUBLE_EQ(rope->braid_constant->value, 0.21);
        EXPECT_NEAR(rope->braid_constant->sd, 0.025 / std::sqrt(3.0), 1e-12);
        EXPECT_EQ(rope->braid_constant->origin, SpreadOrigin::measured);
        EXPECT_EQ(catalogue.citations().at(rope->braid_constant->source).locator, "p. 1");
    }
}

TEST(RopeRecords, ABraidConstantIsOfAHollowBraid) {
    const Folder folder;
    folder.write("ropes/all.toml",
                 "[[rope]]\nid = \"laid\"\ntitle = \"laid\"\nconstruction = \"3-strand\"\n"
                 "fibre = \"nylon\"\ndiameter = \"12 mm\"\nbraid_constant = { value = 0.2, " +
                     cited + " }\n");
    const auto faults = faults_of({folder.path()});
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_THAT(faults[0].text, ::testing::HasSubstr("has no hollow braid"));
}

} // namespace
} // namespace libsplice::testing
