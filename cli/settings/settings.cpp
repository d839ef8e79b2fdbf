// Files of settings are read in order of strength, and lie under the command line.
#include "cli/settings/settings.h"

#include "libsplice/base/document.h"
#include "libsplice/base/input.h"
#include "libsplice/base/text.h"

#include "cli/declared/command.h"
#include "cli/declared/options.h"
#include "cli/declared/synopsis.h"
#include "cli/settings/user_folders.h"

#include <algorithm>
#include <system_error>

namespace libsplice::cli {

namespace {

/// A value that counts from the folder of the file that holds it.
bool is_path(const OptionDeclaration& option) {
    return option.argument == "FILE" || option.argument == "DIR";
}

/// Reads one file.
class Reader {
  public:
    Reader(std::filesystem::path file, FaultSink& faults)
        : file_(std::move(file)), faults_(faults) {}

    void read(std::vector<Setting>& settings) {
        auto input = Input::open(file_.string());
        const auto text =
            input ? input->read_all() : Result<std::string>(Unexpected(input.error()));
        const auto document =
            text ? parse_toml(*text, file_.string()) : Result<Node>(Unexpected(text.error()));
        if (!document) {
            faults_.push(document.error());
            return;
        }
        for (const auto& [key, value] : *document->table()) {
            if (auto setting = read_one(key, value)) {
                std::erase_if(settings, [&](const Setting& weaker) {
                    return weaker.option == setting->option;
                });
                settings.push_back(*std::move(setting));
            }
        }
    }

  private:
    std::optional<Setting> read_one(const std::string& key, const Node& value) {
        const OptionDeclaration* option = find_option(key);
        if (option == nullptr) {
            return wrong(value, key, "there is no option --" + key + nearest_setting(key));
        }
        if (!option->setting) {
            return wrong(value, key, "--" + key + " is no setting: give it on the command line");
        }
        Setting setting{option, {}, true, value.at()};
        if (option->argument.empty()) {
            return read_switch(key, value, std::move(setting));
        }
        const auto* list = value.array();
        if (list != nullptr && !option->repeatable) {
            return wrong(value, key, key + " takes one value");
        }
        for (const Node& one : list != nullptr ? *list : std::vector<Node>{value}) {
            std::string text = one.scalar_text();
            if (text.empty()) {
                return wrong(one, key, takes_a_value(key, *option));
            }
            const bool counts = is_path(*option) && text != "-";
            setting.values.push_back(
                counts ? (file_.parent_path() / text).lexically_normal().string() : text);
        }
        return setting;
    }

    static std::string takes_a_value(const std::string& key, const OptionDeclaration& option) {
        return key + " takes a value as on the command line, such as " + key + " = \"" +
               std::string(option.otherwise) + '"';
    }

    std::optional<Setting> read_switch(const std::string& key, const Node& value, Setting setting) {
        const auto text = value.scalar_text();
        if (text != "yes" && text != "no") {
            return wrong(value, key, key + " is true or false");
        }
        setting.on = text == "yes";
        return setting;
    }

    static std::string nearest_setting(const std::string& key) {
        std::vector<std::string_view> names;
        for (const OptionDeclaration& option : option_declarations()) {
            if (option.setting) {
                names.push_back(option.name);
            }
        }
        return did_you_mean(key, names) + "; splice list settings shows those that can be set";
    }

    std::nullopt_t wrong(const Node& at, const std::string& key, std::string text) {
        faults_.push({Code::unknown_column, std::move(text), at.at(), key});
        return std::nullopt;
    }

    std::filesystem::path file_;
    FaultSink& faults_;
};

std::filesystem::path job_folder(const CommandLine& command) {
    const Command* declared = find_command(command.command);
    const bool has_job = declared != nullptr && first_placeholder(declared->synopsis) == "JOB" &&
                         !command.words.empty() && command.words.front() != "-";
    return has_job ? std::filesystem::path(command.words.front()).parent_path()
                   : std::filesystem::path();
}

} // namespace

std::vector<std::filesystem::path> settings_files(const CommandLine& command) {
    std::vector<std::filesystem::path> files;
    if (const auto folder = user_settings_folder()) {
        files.push_back(*folder / "config.toml");
    }
    files.push_back(job_folder(command) / name_beside_job);
    return files;
}

std::vector<Setting> read_settings(const CommandLine& command, FaultSink& faults) {
    std::vector<Setting> settings;
    for (const auto& file : settings_files(command)) {
        std::error_code ignored;
        if (std::filesystem::exists(file, ignored)) {
            Reader(file, faults).read(settings);
        }
    }
    return settings;
}

void add_settings(const std::vector<Setting>& settings, CommandLine& command) {
    for (const Setting& setting : settings) {
        const std::string name(setting.option->name);
        if (setting.on && !command.has(name) && takes(command.command, *setting.option)) {
            command.options[name] = setting.values;
            command.set_in[name] = setting.at;
        }
    }
}

} // namespace libsplice::cli
