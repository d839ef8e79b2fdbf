// An answer is opened, written and committed in one place, so that no command forgets a failure.
#include "cli/write_out.h"

namespace libsplice::cli {

Exit write_out(const std::string& path, const std::function<Exit(Output&)>& write) {
    auto output = Output::open(path);
    if (!output) {
        return unusable_file(output.error());
    }
    const Exit came = write(*output);
    if (came == Exit::wrong_command || came == Exit::unusable_file) {
        return came;
    }
    const auto committed = output->commit();
    return committed ? came : unusable_file(committed.error());
}

Exit print(std::string_view text) {
    return write_out("-", [&](Output& output) {
        output.write(text);
        return Exit::done;
    });
}

} // namespace libsplice::cli
