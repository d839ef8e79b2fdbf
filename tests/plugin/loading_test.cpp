// Whatever is wrong with a file given as a plug-in ends in its own fault and leaves the rest alone.
#include "plug_ins.h"

#include <filesystem>
#include <fstream>
#include <unistd.h>

namespace libsplice::testing {
namespace {

struct Misbehaviour {
    int number;
    Code code;
    const char* words; ///< that the fault must hold
};

/// The names stand in misbehaves.c.
const std::vector<Misbehaviour> misbehaviours{
    {1, Code::plug_in_foreign, "splice_plugin_entry"},
    {2, Code::plug_in_epoch, "epoch 2"},
    {3, Code::plug_in_size, "16"},
    {4, Code::plug_in_text, "name is null"},
    {5, Code::plug_in_text, "not UTF-8 from byte 21"},
    {6, Code::plug_in_declaration, "\"tail\" has its bounds upside-down"},
    {7, Code::plug_in_declaration, "\"12-strnd\"; did you mean \"12-strand\"?"},
    {8, Code::plug_in_declaration, "17 fields"},
    {9, Code::plug_in_kind_exists, "\"bowline\" exists already"},
    {10, Code::plug_in_function_missing, "splice.allowance/1"},
    {11, Code::plug_in_function_missing, "no function"},
    {12, Code::plug_in_source, "\"no-such-book\""},
    {13, Code::plug_in_text, "a citation's key is null"},
    {14, Code::plug_in_source, "no rule"},
    {15, Code::plug_in_declaration, "\"tucks\""},
    {16, Code::plug_in_declaration, "\"cutting loss\""},
    {17, Code::plug_in_size, "newer libsplice"},
    {18, Code::plug_in_size, "differ in size"},
    {19, Code::plug_in_source, "\"ashley-1944\" is known already"},
    {20, Code::plug_in_declaration, "\"rule\" is taken"},
    {21, Code::plug_in_kind_exists, "\"shop-eye\" exists already"},
    {22, Code::plug_in_text, "the kind's marks is null"},
    {23, Code::plug_in_text, "control characters"},
    {24, Code::plug_in_declaration, "not a number"},
    {25, Code::plug_in_declaration, "choice without words"},
    {26, Code::plug_in_text, "\"Shop Eye\""},
    {27, Code::plug_in_tables, "line 2"},
    {28, Code::plug_in_tables, "\"3-strand-manila-5-mm\" is known already"},
};

TEST(Loading, EveryMisbehaviourEndsInItsOwnFault) {
    Catalogue catalogue = shipped_catalogue();
    const auto sources = catalogue.sources().size();
    const auto ropes = catalogue.ropes().size();
    const auto citations = catalogue.citations().size();
    PluggedIn plugged_in;
    for (const auto& [number, code, words] : misbehaviours) {
        const std::string path = plug_in_path("misbehaves-" + std::to_string(number));
        const auto fault = load_plug_in(path, catalogue, plugged_in);
        ASSERT_TRUE(fault) << number;
        EXPECT_EQ(fault->code, code) << number << ": " << fault->text;
        EXPECT_TRUE(says(*fault, words)) << number << ": " << fault->text;
        EXPECT_EQ(fault->at.file, path);
        const bool has_said_its_name = number > 4;
        EXPECT_EQ(says(*fault, "the plug-in \"shop\""), has_said_its_name) << fault->text;
    }
    // Nothing of them has stayed, and what is in order still loads.
    EXPECT_TRUE(plugged_in.kinds.empty() && plugged_in.plug_ins.empty());
    EXPECT_EQ(catalogue.sources().size(), sources);
    EXPECT_EQ(catalogue.ropes().size(), ropes);
    EXPECT_EQ(catalogue.citations().size(), citations);
    EXPECT_FALSE(load_plug_in(plug_in_path("misbehaves-0"), catalogue, plugged_in));
    EXPECT_EQ(plugged_in.kinds.size(), 2U);
    EXPECT_EQ(catalogue.ropes().size(), ropes + 1);
}

TEST(Loading, AFileThatIsNoLibraryIsAFault) {
    Catalogue catalogue = shipped_catalogue();
    PluggedIn plugged_in;
    const auto missing = load_plug_in("no-such-plug-in.so", catalogue, plugged_in);
    ASSERT_TRUE(missing);
    EXPECT_EQ(missing->code, Code::plug_in_unreadable);
    const auto text = std::filesystem::temp_directory_path() /
                      ("text-as-plug-in-" + std::to_string(::getpid()) + ".so");
    std::ofstream(text) << "name,rope,length\n";
    const auto fault = load_plug_in(text.string(), catalogue, plugged_in);
    std::filesystem::remove(text);
    ASSERT_TRUE(fault);
    EXPECT_EQ(fault->code, Code::plug_in_unreadable);
    EXPECT_TRUE(says(*fault, "no shared library")) << fault->text;
}

TEST(Loading, APlugInLoadsOnce) {
    Catalogue catalogue = shipped_catalogue();
    PluggedIn plugged_in;
    EXPECT_FALSE(load_plug_in(plug_in_path("unruly"), catalogue, plugged_in));
    const auto again = load_plug_in(plug_in_path("unruly"), catalogue, plugged_in);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->code, Code::plug_in_twice);
    EXPECT_EQ(plugged_in.kinds.size(), 1U);
}

} // namespace
} // namespace libsplice::testing
