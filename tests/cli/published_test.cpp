// splice check: what makes it fail, and what it says.
#include "cli/declared/command.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <string>
#include <unistd.h>

namespace libsplice::testing {

using namespace cli;
namespace {

/// What a run of check came to.
struct Run {
    Exit exit{};
    std::string printed;
    std::string said;

    [[nodiscard]] std::string last_line() const {
        const auto end = printed.find_last_not_of('\n');
        const auto before = printed.rfind('\n', end);
        return printed.substr(before + 1, end - before);
    }
};

Run check(std::vector<std::string> files) {
    CommandLine line{"check", std::move(files), {{"tables", {LIBSPLICE_TABLES_DIR}}}};
    ::testing::internal::CaptureStdout();
    ::testing::internal::CaptureStderr();
    Run run;
    run.exit = run_check(line);
    run.printed = ::testing::internal::GetCapturedStdout();
    run.said = ::testing::internal::GetCapturedStderr();
    return run;
}

Run check_text(const std::string& text) {
    const auto path =
        std::filesystem::temp_directory_path() / ("cases-" + std::to_string(::getpid()) + ".toml");
    std::ofstream(path) << text;
    Run run = check({path.string()});
    std::filesystem::remove(path);
    return run;
}

/// A file of one case about the tails of a laid eye, which take six diameters.
std::string one_case(const std::string& rest, const std::string& source = "osha-1926-251") {
    return "source = \"" + source + "\"\n[[case]]\nname = \"tails\"\nwhere = \"(d)\"\n" +
           "end = \"tucked-eye\"\nrope = \"3-strand nylon 12 mm\"\n" + rest;
}

TEST(Check, PassesAPrintedValueThatIsMet) {
    const auto run = check_text(one_case("expect = { end_left = \"72 mm\" }\n"));
    EXPECT_EQ(run.exit, Exit::done);
    EXPECT_EQ(run.last_line(), "1 passed, 0 failed");
}

TEST(Check, FailsAWrongNumberAndSaysWhatCame) {
    const auto run = check_text(one_case("expect = { end_left = \"73 mm\" }\n"));
    EXPECT_EQ(run.exit, Exit::refused);
    EXPECT_EQ(run.last_line(), "0 passed, 1 failed");
    EXPECT_NE(run.printed.find(".toml:2: tails ((d)): expected end_left = 73 mm, came 72 mm"),
              std::string::npos)
        << run.printed;
}

TEST(Check, HoldsToHalfTheLastPrintedDigit) {
    EXPECT_EQ(check_text(one_case("expect = { end_left = \"7.2 cm\" }\n")).exit, Exit::done);
    EXPECT_EQ(check_text(one_case("expect = { end_left = \"7.24 cm\" }\n")).exit, Exit::refused);
    EXPECT_EQ(check_text(one_case("expect = { end_left = \"7.24 cm\" }\ntolerance = \"1 %\"\n"
                                  "tolerance_reason = \"printed as about\"\n"))
                  .exit,
              Exit::done);
}

TEST(Check, FailsAnEmptyFileAndOneWithoutCases) {
    for (const std::string text :
         {"", "source = \"osha-1926-251\"\n", "source = \"osha-1926-251\"\ncase = []\n"}) {
        const auto run = check_text(text);
        EXPECT_EQ(run.exit, Exit::refused) << text;
        EXPECT_EQ(run.last_line(), "0 passed, 1 failed") << text;
        EXPECT_NE(run.said.find("error 212"), std::string::npos) << run.said;
    }
}

TEST(Check, FailsASourceThatTheTablesDoNotHave) {
    const auto run = check_text(one_case("expect = { end_left = \"72 mm\" }\n", "osha-1926-252"));
    EXPECT_EQ(run.exit, Exit::refused);
    EXPECT_NE(run.said.find("error 205"), std::string::npos) << run.said;
}

TEST(Check, CannotUseBrokenTomlOrAMissingFile) {
    EXPECT_EQ(check_text("source = \n").exit, Exit::unusable_file);
    EXPECT_EQ(check({"no-such-file.toml"}).exit, Exit::unusable_file);
}

TEST(Check, FailsCasesThatAreNotWhole) {
    const std::string met = "expect = { end_left = \"72 mm\" }\n";
    for (const std::string& rest :
         {std::string(), std::string("expect = {}\n"), met + "expected = 1\n",
          met + "tolerance = \"1 %\"\n", met + "printed_row = \"yes\"\n", met + "line = {}\n",
          std::string("expect = { fault = 307, end_left = \"72 mm\" }\n")}) {
        const auto run = check_text(one_case(rest));
        EXPECT_EQ(run.exit, Exit::refused) << rest;
        EXPECT_EQ(run.last_line(), "0 passed, 1 failed") << rest;
        EXPECT_FALSE(run.said.empty()) << rest;
    }
}

TEST(Check, FailsANameThatIsNoValueWithTheNearest) {
    const auto run = check_text(one_case("expect = { end_leftt = \"72 mm\" }\n"));
    EXPECT_EQ(run.exit, Exit::refused);
    EXPECT_NE(run.printed.find("did you mean \"end_left\"?"), std::string::npos) << run.printed;
}

TEST(Check, ExpectsARefusalByItsCode) {
    EXPECT_EQ(
        check_text(one_case("fields = { end_left = \"71 mm\" }\nexpect = { fault = 307 }\n")).exit,
        Exit::done);
    EXPECT_EQ(
        check_text(one_case("fields = { end_left = \"71 mm\" }\nexpect = { fault = 304 }\n")).exit,
        Exit::refused);
    EXPECT_EQ(check_text(one_case("expect = { fault = 307 }\n")).exit, Exit::refused);
}

TEST(Check, ADisagreementMustStillBeOne) {
    const std::string dispute = "disagrees = \"another page\"\n";
    const auto differs = check_text(one_case("expect = { end_left = \"80 mm\" }\n" + dispute));
    EXPECT_EQ(differs.exit, Exit::done);
    EXPECT_NE(differs.printed.find("1 of those that passed disagree with print"),
              std::string::npos);
    EXPECT_EQ(check_text(one_case("expect = { end_left = \"72 mm\" }\n" + dispute)).exit,
              Exit::refused);
    // A value that does not exist is no disagreement.
    EXPECT_EQ(check_text(one_case("expect = { end_leftt = \"80 mm\" }\n" + dispute)).exit,
              Exit::refused);
}

TEST(Check, WorksOutLines) {
    const std::string line =
        "source = \"computed\"\n[[case]]\nname = \"wire\"\nwhere = \"here\"\n"
        "line = { rope = \"wire stainless-steel 1/2 in\", length = \"2 m\" }\n";
    EXPECT_EQ(check_text(line + "expect = { \"row: finished length\" = \"2000 mm\" }\n").exit,
              Exit::done);
    EXPECT_EQ(check_text(line + "expect = { cut = \"1999 mm\" }\n").exit, Exit::refused);
}

} // namespace
} // namespace libsplice::testing
