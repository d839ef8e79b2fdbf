// Knows other kinds of file by their first bytes, and a CSV file's separator by its first line.
#include "libsplice/job/csv/csv_start.h"

#include "libsplice/base/text.h"

#include <algorithm>
#include <array>
#include <string>

namespace libsplice {

namespace {

constexpr std::string_view save_as_csv =
    "in the program that wrote it choose \"save as\" or \"export\", then \"CSV (UTF-8)\", and "
    "give that file";

/// A kind of file that begins with certain bytes.
struct Magic {
    std::string_view bytes;
    std::string_view what;
};
constexpr std::array magics{
    Magic{"PK\x03\x04", "this is a spreadsheet's own file (or another zip archive), not CSV"},
    Magic{"\xD0\xCF\x11\xE0", "this is an old spreadsheet's own file, not CSV"},
    Magic{"\xFF\xFE", "this file is in UTF-16, not in UTF-8"},
    Magic{"\xFE\xFF", "this file is in UTF-16, not in UTF-8"},
    Magic{"%PDF", "this is a PDF, not CSV"},
    Magic{"<", "this is a web page or XML, not CSV"},
    Magic{"{", "this is JSON, not CSV"},
    Magic{"[{", "this is JSON, not CSV"},
};

/// Every other byte of western text in UTF-16 is zero.
bool looks_like_utf_16(std::string_view start) {
    const std::string_view head = start.substr(0, 64);
    std::array<std::size_t, 2> zeros{};
    for (std::size_t i = 0; i < head.size(); ++i) {
        zeros.at(i % 2) += head[i] == '\0' ? 1U : 0U;
    }
    return head.size() >= 8 && std::ranges::max(zeros) * 2 + 2 >= head.size();
}

/// The next line, taken off `text`.
std::string_view take_line(std::string_view& text) {
    const std::size_t end = std::min(text.find_first_of("\r\n"), text.size());
    const std::string_view line = text.substr(0, end);
    const bool two = text.substr(end, 2) == "\r\n";
    text.remove_prefix(std::min(end + (two ? 2 : 1), text.size()));
    return line;
}

/// `[line]`, `[[line]]` or `key = value`.
bool is_toml_line(std::string_view line) {
    if (line.starts_with('[')) {
        return trimmed(line.substr(0, line.find('#'))).ends_with(']');
    }
    const std::size_t equals = line.find('=');
    const std::string_view key = trimmed(line.substr(0, equals));
    constexpr std::string_view key_letters =
        "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789_-.";
    return equals != std::string_view::npos && !key.empty() &&
           key.find_first_not_of(key_letters) == std::string_view::npos &&
           !trimmed(line.substr(equals + 1)).empty();
}

/// Whether the first line that is neither blank nor a comment is TOML.
bool looks_like_toml(std::string_view start) {
    while (!start.empty()) {
        const std::string_view line = trimmed(take_line(start));
        if (!line.empty() && !line.starts_with('#')) {
            return is_toml_line(line);
        }
    }
    return false;
}

/// `sep=;`, as some spreadsheets write it above the heading.
bool names_separator(std::string_view start) {
    constexpr std::string_view key = "sep=";
    const std::string_view first = take_line(start);
    return in_small_letters(first).starts_with(key) && first.size() == key.size() + 1;
}

char most_frequent_separator(std::string_view line) {
    constexpr std::string_view separators = ",;\t";
    std::array<std::size_t, separators.size()> counts{};
    bool quoted = false;
    for (const char c : line) {
        quoted = quoted != (c == '"');
        const std::size_t which = quoted ? std::string_view::npos : separators.find(c);
        if (which != std::string_view::npos) {
            ++counts.at(which);
        }
    }
    const auto most = std::ranges::max_element(counts);
    return separators[static_cast<std::size_t>(most - counts.begin())];
}

} // namespace

CsvStart csv_start(std::string_view start) {
    std::string_view rest = start;
    if (names_separator(start)) {
        const std::string_view first = take_line(rest);
        return {first.back(), start.size() - rest.size()};
    }
    while (!rest.empty()) {
        const std::string_view line = take_line(rest);
        if (line.find_first_not_of(" \t,;") != std::string_view::npos) {
            return {most_frequent_separator(line), 0};
        }
    }
    return {};
}

std::optional<Fault> foreign_file(std::string_view start) {
    for (const auto& [bytes, what] : magics) {
        if (start.starts_with(bytes)) {
            return Fault{Code::foreign_file, std::string(what) + "; " + std::string(save_as_csv)};
        }
    }
    if (looks_like_utf_16(start)) {
        return Fault{Code::foreign_file,
                     "this file is in UTF-16, not in UTF-8; " + std::string(save_as_csv)};
    }
    if (!names_separator(start) && looks_like_toml(start)) {
        return Fault{Code::foreign_file,
                     "this is TOML, not CSV; put it in a file whose name ends in .toml (standard "
                     "input takes CSV only)"};
    }
    return std::nullopt;
}

} // namespace libsplice
