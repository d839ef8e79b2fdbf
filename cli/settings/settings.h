// Options that a shop gives each time, from a file: the user's own, and one beside the job.
#pragma once

#include "libsplice/base/fault_sink.h"

#include "cli/declared/command_line.h"

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice::cli {

struct OptionDeclaration;

/// The name of a file of settings beside a job.
inline constexpr std::string_view name_beside_job = "splice.toml";

/// What a file of settings says of one option.
struct Setting {
    const OptionDeclaration* option = nullptr;
    std::vector<std::string> values; ///< as on the command line; none of a switch
    bool on = true;                  ///< whether a switch is set
    Place at;
};

/// The files that are looked at, whether they are there or not; a later one is stronger:
/// `config.toml` in the user's folder of settings, then `splice.toml` beside the first job (in the
/// working folder if the command names no job).
[[nodiscard]] std::vector<std::filesystem::path> settings_files(const CommandLine& command);

/// What the files say, one setting an option. Every fault is pushed with its place: a file that
/// cannot be read or is no TOML, a key that is no option or that belongs to the command line only,
/// a value of the wrong sort. A name of a file or folder counts from the file that holds it.
[[nodiscard]] std::vector<Setting> read_settings(const CommandLine& command, FaultSink& faults);

/// Adds to the command line what the settings say of options that its command takes and that it
/// does not give itself.
void add_settings(const std::vector<Setting>& settings, CommandLine& command);

} // namespace libsplice::cli
