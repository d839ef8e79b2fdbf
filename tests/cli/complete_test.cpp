// What completion offers, word by word, as the shells ask for it.
#include "cli/declared/complete.h"
#include "cli/declared/synopsis.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace libsplice::testing {

using namespace cli;

namespace {

using Words = std::vector<std::string>;

Words offered(const Words& typed) {
    Words words;
    for (const Entry& entry : complete(typed).words) {
        words.push_back(entry.name);
    }
    return words;
}

bool offers(const Words& typed, std::string_view word) {
    const auto words = offered(typed);
    return std::ranges::find(words, word) != words.end();
}

const std::string tables = std::string("--tables=") + LIBSPLICE_TABLES_DIR;

TEST(Complete, CommandsAndTheirOptions) {
    EXPECT_EQ(offered({"lis"}), Words{"list"});
    EXPECT_EQ(offered({"nothing"}), Words{});
    EXPECT_EQ(offered({"cut", "--led"}), Words{"--ledger"});
    EXPECT_EQ(offered({"check", "--led"}), Words{}) << "check takes no ledger";
    EXPECT_EQ(offered({"cut", "--ledger", "--led"}), Words{}) << "it is given already";
    EXPECT_EQ(offered({"cut", "--tables", "a", "--tab"}), Words{"--tables"}) << "may be repeated";
    EXPECT_EQ(offered({"cut", "--", "--led"}), Words{}) << "-- ends the options";
    EXPECT_EQ(offered({"help", "lis"}), Words{"list"});
}

TEST(Complete, ValuesOfOptions) {
    EXPECT_EQ(offered({"cut", "--units", ""}), (Words{"metric", "imperial"}));
    EXPECT_EQ(offered({"cut", "--format", ""}), (Words{"text", "csv", "json", "html"}));
    EXPECT_EQ(offered({"tighten", "--format", ""}), (Words{"text", "csv", "json"}));
    EXPECT_EQ(offered({"list", "--format", ""}), (Words{"text", "json"})) << "it refuses csv";
    EXPECT_EQ(offered({"list", "-f", "j"}), Words{"json"}) << "by its letter";
    EXPECT_EQ(offered({"cut", "--unit", "i"}), Words{"imperial"}) << "shortened";
    EXPECT_EQ(offered({"cut", "--units=im"}), Words{"--units=imperial"});
    EXPECT_EQ(complete(Words{"cut", "--output", ""}).paths, Paths::files);
    EXPECT_EQ(complete(Words{"cut", "--output="}).paths, Paths::files);
    EXPECT_EQ(complete(Words{"cut", "--tables", ""}).paths, Paths::folders);
    EXPECT_EQ(complete(Words{"cut", "--risk", ""}).paths, Paths::none);
    EXPECT_TRUE(offers({"end", tables, "--rope", "demo-b12"}, "demo-b12-hmpe-3"));
    EXPECT_TRUE(offers({"end", tables, "--rope=demo-b12"}, "--rope=demo-b12-hmpe-3"));
}

TEST(Complete, KindsAndTheirFields) {
    EXPECT_EQ(offered({tables, "end", "bowl"}), Words{"bowline"});
    EXPECT_EQ(offered({"end", tables, "buried-eye", "ta"}), (Words{"tail=", "taper="}));
    EXPECT_EQ(offered({"end", tables, "buried-eye", "tail=72D", "ta"}), Words{"taper="});
    EXPECT_EQ(offered({"end", tables, "no-such-kind", "ta"}), Words{});
    EXPECT_EQ(offered({"end", tables, "bowline", "loop=60mm", "ru"}), Words{"rule="});
}

TEST(Complete, WordsOfASynopsis) {
    EXPECT_EQ(complete(Words{"cut", "one.csv", ""}).paths, Paths::files) << "jobs repeat";
    EXPECT_EQ(complete(Words{"show", ""}).paths, Paths::files);
    EXPECT_TRUE(offers({"stretch", tables, "demo-b12"}, "demo-b12-hmpe-3"));
    EXPECT_EQ(offered({"stretch", tables, "rope", "load=1kN", ""}), (Words{"length=", "against="}));
    EXPECT_EQ(offered({"tighten", "stev"}), Words{"stevedore"});
    EXPECT_EQ(offered({"tighten", "figure-eight-"}), Words{"figure-eight-loop"});
    EXPECT_EQ(complete(Words{"tighten", ""}).paths, Paths::files) << "or a file of points";
    EXPECT_EQ(offered({"list", "err"}), Words{"errors"});
    EXPECT_EQ(offered({"list", tables, "errors", "10"}).front(), "101");
    EXPECT_EQ(offered({"list", tables, "columns", "name", "end_"}), (Words{"end_a", "end_b"}));
    EXPECT_EQ(offered({"list", tables, "nothing", ""}), Words{});
}

TEST(Complete, TablesThatCannotBeRead) {
    EXPECT_EQ(offered({"end", "--tables=no/such/folder", "bowl"}), Words{});
}

TEST(Complete, AsText) {
    EXPECT_EQ(to_text({{{"eye=", "inside"}, {"text", ""}}, Paths::none}), "eye=\tinside\ntext\t\n");
    EXPECT_EQ(to_text({{}, Paths::files}), "\tfiles\n");
    EXPECT_EQ(to_text({{}, Paths::folders}), "\tfolders\n");
}

TEST(Synopsis, IsTakenApart) {
    const auto forms =
        forms_of("JOB... --stock FILE [--minimise left|right] [NAME] | word a|b [x=Y]");
    ASSERT_EQ(forms.size(), 2U);
    ASSERT_EQ(forms[0].size(), 2U) << "options stand elsewhere";
    EXPECT_EQ(forms[0][0].texts.front(), "JOB");
    EXPECT_TRUE(forms[0][0].repeats);
    EXPECT_EQ(forms[0][1].texts.front(), "NAME");
    EXPECT_FALSE(forms[0][1].repeats);
    ASSERT_EQ(forms[1].size(), 3U);
    EXPECT_EQ(forms[1][1].texts, (std::vector<std::string_view>{"a", "b"}));
    EXPECT_TRUE(is_assignment(forms[1][2].texts.front()));
}

} // namespace

} // namespace libsplice::testing
