// Writes the fields of a case's line as one record of a TOML job.
#include "cli/check/line_text.h"

#include "libsplice/base/text.h"

#include <algorithm>

namespace libsplice::cli {

namespace {

std::string toml_string(std::string_view text) {
    std::string out = "\"";
    for (const char c : text) {
        if (c == '"' || c == '\\') {
            out += '\\';
        }
        // A cell is one line of text; a control byte has no place in it.
        out += static_cast<unsigned char>(c) < ' ' ? ' ' : c;
    }
    return out + '"';
}

std::string value_text(const Node& node);

std::string pair_text(const std::string& key, const Node& value) {
    return toml_string(key) + " = " + value_text(value);
}

std::string value_text(const Node& node) {
    std::string out;
    if (const auto* array = node.array()) {
        for (const Node& part : *array) {
            out += (out.empty() ? "" : ", ") + value_text(part);
        }
        return '[' + out + ']';
    }
    if (const auto* table = node.table()) {
        for (const auto& [key, value] : *table) {
            out += (out.empty() ? "" : ", ") + pair_text(key, value);
        }
        return '{' + out + '}';
    }
    if (const auto* yes = node.boolean()) {
        return *yes ? "true" : "false";
    }
    return node.is_number() ? node.scalar_text() : toml_string(*node.text());
}

} // namespace

std::string one_line_job(const Node& line, const std::string& name) {
    std::string job = "[[line]]\n";
    if (line.find("name") == nullptr) {
        job += "name = " + toml_string(name) + '\n';
    }
    for (const auto& [key, value] : *line.table()) {
        job += pair_text(key, value) + '\n';
    }
    return job;
}

} // namespace libsplice::cli
