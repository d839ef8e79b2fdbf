// A word that is nearly right brings the right one, whatever it names.
#include "cli/declared/command.h"
#include "cli/declared/command_line.h"
#include "cli/declared/options.h"

#include <gtest/gtest.h>

#include <fstream>

namespace libsplice::testing {

using namespace cli;

namespace {

/// What is said on standard error, and the status, of a command line.
struct Said {
    std::string text;
    Exit exit;
};

Said said_by(std::vector<std::string> words) {
    words.push_back(std::string("--tables=") + LIBSPLICE_TABLES_DIR);
    const auto line = parse_command_line(words);
    if (!line) {
        return {line.error().text, Exit::wrong_command};
    }
    ::testing::internal::CaptureStderr();
    ::testing::internal::CaptureStdout();
    const Exit exit = find_command(line->command)->run(*line);
    ::testing::internal::GetCapturedStdout();
    return {::testing::internal::GetCapturedStderr(), exit};
}

void expect_nearest(const std::vector<std::string>& words, const std::string& nearest,
                    Exit exit = Exit::wrong_command) {
    const Said said = said_by(words);
    EXPECT_NE(said.text.find("did you mean \"" + nearest + "\"?"), std::string::npos)
        << ::testing::PrintToString(words) << " says " << said.text;
    EXPECT_EQ(said.exit, exit);
}

TEST(NearestWord, OfTheCommandLine) {
    const std::string rope = "--rope=demo-b12-hmpe-3";
    expect_nearest({"cut", "--leger", "job.csv"}, "--ledger");
    expect_nearest({"cut", "--format=jsn", "job.csv"}, "json");
    expect_nearest({"cut", "--units=metrc", "job.csv"}, "metric");
    expect_nearest({"cut", "--marking-tension=slak", "job.csv"}, "slack");
    expect_nearest({"end", "bowlinne", rope}, "bowline");
    expect_nearest({"end", "bowline", "--rope=demo-b12-hmpe-33"}, "demo-b12-hmpe-3");
    expect_nearest({"end", "bowline", "--rope=12-strnd HMPE 3 mm"}, "12-strand");
    expect_nearest({"end", "bowline", "--rope=12-strand HMPF 3 mm"}, "HMPE");
    expect_nearest({"end", "buried-eye", rope, "tial=60mm"}, "tail");
    expect_nearest({"list", "erors"}, "errors");
    expect_nearest({"list", "kinds", "bowlinne"}, "bowline");
    expect_nearest({"list", "ropes", "demo-b12-hmpe-33"}, "demo-b12-hmpe-3");
    expect_nearest({"list", "columns", "quantiy"}, "quantity");
    expect_nearest({"tighten", "overhnd", "--mesh=0.4"}, "overhand");
    expect_nearest({"tighten", "overhand", "--format=jsn"}, "json");
    expect_nearest({"stretch", "demo-b12-hmpe-3", "lod=600N"}, "load");
}

TEST(NearestWord, OfAJob) {
    const auto in_a_job = [](const std::string& text, const std::string& nearest, Exit exit) {
        const std::string path = ::testing::TempDir() + "nearest-word.csv";
        std::ofstream(path) << text;
        expect_nearest({"cut", path}, nearest, exit);
    };
    const std::string row = "a,demo-b12-hmpe-3,2 m,";
    in_a_job("name,rop,length\na,b,c\n", "rope", Exit::unusable_file);
    in_a_job("name,rope,length,end_a.eyes\n" + row + "\n", "end_a.eye", Exit::unusable_file);
    in_a_job("name,rope,length,end_a\n" + row + "whiped\n", "whipped", Exit::refused);
    in_a_job("name,rope,length\na,demo-b12-hmpe-33,2 m\n", "demo-b12-hmpe-3", Exit::refused);
}

} // namespace

} // namespace libsplice::testing
