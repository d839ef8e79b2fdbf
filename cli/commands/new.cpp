// splice new: a sample job that works unchanged.
#include "libsplice/base/text.h"

#include "cli/declared/command.h"
#include "cli/messages.h"
#include "cli/write_out.h"

#include <filesystem>

namespace libsplice::cli {

namespace {

constexpr std::string_view starter_toml =
    R"(# A job: one [[line]] for every line to cut. Run it with: splice cut THIS-FILE
# Lengths carry their unit: 6.4 m, 60 mm, 3/8 in, 12 ft 6 in. Lines starting with # are remarks.

[defaults]                      # holds for every line that does not say otherwise
boat = "No 1"

[[line]]
name = "main halyard"
rope = "demo-db-poly-6"         # a rope of the tables (splice list ropes), or for example
                                # "12-strand HMPE 4 mm": construction, fibre, diameter
length = "15.2 m"               # bearing point to bearing point: where the rope bears
tension = "20 %"                # the pull at which that length holds; leave it out if not known
state = "hoisted"
prestretched = "yes"            # the rope has been loaded before it is marked
end_a = { kind = "bowline", loop = "60 mm", pin = "8 mm" }   # splice list kinds shows all kinds
end_b = "whipped"

[[line]]
name = "bridle"
quantity = 2
rope = "12-strand HMPE 5 mm"
length = "1.55 m"
fit = "exact"                   # two made ends, so many millimetres either way
tolerance = "5 mm"
prestretched = "yes"
end_a = { kind = "locked-eye", eye = "50 mm", pin = "10 mm" }
end_b = { kind = "buried-eye", eye = "45 mm", pin = "10 mm" }
)";

constexpr std::string_view starter_csv =
    R"(name,boat,quantity,rope,length,tension,state,fit,tolerance,prestretched,end_a,end_a.loop,end_a.eye,end_a.pin,end_b,end_b.eye,end_b.pin,note
main halyard,No 1,1,demo-db-poly-6,15.2 m,20 %,hoisted,at-least,,yes,bowline,60 mm,,8 mm,whipped,,,
bridle,No 1,2,12-strand HMPE 5 mm,1.55 m,,,exact,5 mm,yes,locked-eye,,50 mm,10 mm,buried-eye,45 mm,10 mm,
)";

} // namespace

Exit run_new(const CommandLine& command) {
    if (command.words.size() > 1) {
        return wrong_command("new takes one file name, such as job.toml or job.csv");
    }
    if (!command.words.empty() && command.has("output")) {
        return wrong_command("new takes a file name or --output, not both");
    }
    const std::string path =
        command.words.empty() ? command.value("output", "-") : command.words.front();
    std::error_code ignored;
    if (path != "-" && std::filesystem::exists(path, ignored)) {
        say(in_quotes(path) + " exists already; name a file that does not");
        return Exit::unusable_file;
    }
    return write_out(path, [&](Output& output) {
        output.write(path.ends_with(".toml") ? starter_toml : starter_csv);
        return Exit::done;
    });
}

} // namespace libsplice::cli
