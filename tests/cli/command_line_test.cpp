// How words are sorted into command, options and the rest.
#include "cli/declared/command.h"
#include "cli/declared/command_line.h"
#include "cli/declared/options.h"

#include <gtest/gtest.h>

#include <set>

namespace libsplice::testing {

using namespace cli;

namespace {

using Arguments = std::vector<std::string>;

std::string fault_of(const Arguments& words) {
    const auto parsed = parse_command_line(words);
    return parsed ? "" : parsed.error().text;
}

CommandLine parsed(const Arguments& words) {
    auto line = parse_command_line(words);
    EXPECT_TRUE(line) << line.error().text;
    return line ? *std::move(line) : CommandLine{};
}

TEST(CommandLine, TakesOptionsInEveryForm) {
    for (const Arguments& words : {Arguments{"cut", "job.csv", "--format", "json"},
                                   {"cut", "job.csv", "--format=json"},
                                   {"cut", "job.csv", "-f", "json"},
                                   {"cut", "job.csv", "-fjson"},
                                   {"--format", "json", "cut", "job.csv"},
                                   {"cut", "--form", "json", "job.csv"},
                                   {"-qf", "json", "cut", "job.csv"}}) {
        const auto line = parsed(words);
        EXPECT_EQ(line.command, "cut") << words.front();
        EXPECT_EQ(line.words, Arguments{"job.csv"});
        EXPECT_EQ(line.value("format", ""), "json");
    }
}

TEST(CommandLine, EndsOptionsAtTwoDashes) {
    const auto line = parsed({"cut", "--", "--format", "-q", "-"});
    EXPECT_EQ(line.words, (Arguments{"--format", "-q", "-"}));
    EXPECT_TRUE(line.options.empty());
    EXPECT_EQ(parsed({"cut", "-"}).words, Arguments{"-"}) << "standard input";
}

TEST(CommandLine, ShortensAmongTheOptionsOfItsCommand) {
    EXPECT_EQ(parsed({"cut", "--st", "1 mm", "job.csv"}).value("step", ""), "1 mm")
        << "reel has --stock, too, and cut has not";
    EXPECT_NE(fault_of({"reel", "--st", "x"}).find("--stock, --step"), std::string::npos);
    EXPECT_EQ(parsed({"--st", "1 mm", "cut", "job.csv"}).command, "cut")
        << "the value of an option is no command";
}

TEST(CommandLine, KnowsWhatTheNextWordWouldBe) {
    const auto next_is_value_of = [](const Arguments& words) {
        const Typed typed = sort_words(words);
        return typed.pending == nullptr ? "" : typed.pending->name;
    };
    EXPECT_EQ(next_is_value_of({"cut", "--output"}), "output");
    EXPECT_EQ(next_is_value_of({"cut", "-qo"}), "output");
    EXPECT_EQ(next_is_value_of({"cut", "--output", "-"}), "");
    EXPECT_EQ(next_is_value_of({"cut", "--full"}), "") << "a switch";
    EXPECT_EQ(next_is_value_of({"cut", "--", "--output"}), "") << "a word";
    EXPECT_TRUE(sort_words(Arguments{"cut", "--"}).options_ended);
    EXPECT_EQ(sort_words(Arguments{"cut", "--", "--"}).line.words, Arguments{"--"});
    EXPECT_FALSE(sort_words(Arguments{"cut", "job.csv"}).options_ended);
}

TEST(CommandLine, SaysWhatIsWrong) {
    EXPECT_NE(fault_of({"cut", "--fromat", "x"}).find("did you mean \"--format\"?"),
              std::string::npos);
    EXPECT_NE(fault_of({"cut", "-x"}).find("\"-x\""), std::string::npos);
    EXPECT_NE(fault_of({"cut", "--step"}).find("needs a value"), std::string::npos);
    EXPECT_NE(fault_of({"cut", "--step="}).find("needs a value"), std::string::npos);
    EXPECT_NE(fault_of({"cut", "--full=yes"}).find("takes no value"), std::string::npos);
    EXPECT_NE(fault_of({"cut", "--step", "1 mm", "--step=2 mm"}).find("twice"), std::string::npos);
    EXPECT_EQ(fault_of({"cut", "--tables", "a", "--tables", "b"}), "") << "may be repeated";
    EXPECT_EQ(fault_of({"cut", "-q", "-q"}), "") << "a switch says it once";
}

TEST(Options, AreDeclaredOnce) {
    std::set<std::string_view> names;
    std::set<char> letters;
    for (const OptionDeclaration& option : option_declarations()) {
        EXPECT_TRUE(names.insert(option.name).second) << option.name;
        EXPECT_TRUE(option.letter == '\0' || letters.insert(option.letter).second) << option.name;
    }
}

TEST(Options, OfferTheFormatsThatTheCommandWrites) {
    const OptionDeclaration& format = *find_option("format");
    for (const Command& command : commands()) {
        EXPECT_EQ(takes(command.name, format), !command.formats.empty()) << command.name;
        if (!command.formats.empty()) {
            EXPECT_EQ(format.choices(command.name).size(), command.formats.size()) << command.name;
        }
    }
}

} // namespace

} // namespace libsplice::testing
