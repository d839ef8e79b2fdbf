// Reads the cases of a file of published values, and keeps every fault with its place.
#include "cli/check/published_cases.h"

#include "libsplice/base/text.h"
#include "libsplice/catalogue/reading/read_record.h"

#include <algorithm>
#include <array>

namespace libsplice::cli {

namespace {

constexpr std::array<std::string_view, 2> file_keys{"source", "case"};
constexpr std::array<std::string_view, 12> case_keys{
    "name",        "where",   "end",       "rope",      "fields",
    "line",        "expect",  "tolerance", "disagrees", "tolerance_reason",
    "printed_row", "accepted"};

/// Reads one case after the other; what all of them share.
class CaseReader {
  public:
    CaseReader(const Catalogue& catalogue, FaultSink& faults)
        : sources_(catalogue.sources().begin(), catalogue.sources().end()),
          context_{sources_, catalogue.aliases(), citations_, faults} {}

    void read_head(const Node& document);
    PublishedCase read_case(const Node& node);

  private:
    void wrong(const Node& at, std::string key, std::string text) {
        push_fault(context_, Code::table_value_wrong, at, std::move(key), std::move(text));
    }
    void read_question(const Node& node, PublishedCase& one);
    void read_fields(const Node& node, PublishedCase& one);
    void read_expected(const Node& node, PublishedCase& one);
    void read_tolerance(const Node& node, PublishedCase& one);
    void read_accepted(const Node& node, PublishedCase& one);

    std::vector<Source> sources_;
    Citations citations_;
    TableContext context_;
};

void CaseReader::read_head(const Node& document) {
    check_keys(context_, document, file_keys);
    const std::string key = require_text(context_, document, "source");
    if (key.empty() || std::ranges::find(sources_, key, &Source::key) != sources_.end()) {
        return;
    }
    std::vector<std::string_view> keys;
    for (const Source& source : sources_) {
        keys.push_back(source.key);
    }
    push_fault(context_, Code::source_unknown, *document.find("source"), "source",
               "no source has the key \"" + key + '"' + did_you_mean(key, keys) +
                   "; add it to the tables' sources.toml");
}

/// The line's table; it is called `name` unless it has a name of its own.
Node named_line(const Node& line, const std::string& name) {
    Node::Table columns = *line.table();
    if (line.find("name") == nullptr) {
        columns.emplace_back("name", Node(name, line.at()));
    }
    return {std::move(columns), line.at()};
}

/// The end, the line or the rope that is asked for.
void CaseReader::read_question(const Node& node, PublishedCase& one) {
    const Node* line = node.find("line");
    one.kind = optional_text(context_, node, "end");
    if (line == nullptr) {
        one.rope = require_text(context_, node, "rope");
        read_fields(node, one);
        return;
    }
    if (node.find("end") != nullptr || node.find("rope") != nullptr ||
        node.find("fields") != nullptr) {
        wrong(*line, "line",
              "a case asks for a line or for an end, not both; a line names its own");
    }
    if (line->table() == nullptr) {
        wrong(*line, "line", "\"line\" must be a table as in a job file");
        return;
    }
    one.line = named_line(*line, one.name);
}

void CaseReader::read_fields(const Node& node, PublishedCase& one) {
    const Node* fields = node.find("fields");
    if (fields == nullptr) {
        return;
    }
    if (fields->table() == nullptr || one.kind.empty()) {
        wrong(*fields, "fields", "\"fields\" must be a table, and goes with an end");
        return;
    }
    for (const auto& [name, value] : *fields->table()) {
        if (value.scalar_text().empty()) {
            wrong(value, name, "the field " + name + " must be a text or a number, not blank");
        }
        one.fields.emplace_back(name, value.scalar_text());
    }
}

void CaseReader::read_expected(const Node& node, PublishedCase& one) {
    const Node* expected = node.find("expect");
    if (expected == nullptr) {
        push_fault(context_, Code::table_key_missing, node, "expect",
                   "\"expect\" is missing; give what is printed");
        return;
    }
    if (expected->table() == nullptr || expected->table()->empty()) {
        wrong(*expected, "expect", "\"expect\" must be a table of printed values");
        return;
    }
    for (const auto& [name, value] : *expected->table()) {
        if (value.text() == nullptr && !value.is_whole()) {
            wrong(value, name,
                  name + " must be a text as printed, e.g. \"360 mm\", or a whole number");
        }
        one.expected.push_back({name, value.scalar_text(), value.at()});
    }
    if (one.expected.size() > 1 &&
        std::ranges::find(one.expected, "fault", &Expectation::name) != one.expected.end()) {
        wrong(*expected, "expect", "a case that expects a fault expects nothing else");
    }
    if (one.expected.size() > 1 && !one.disagrees.empty()) {
        wrong(*expected, "expect", "a case that disagrees expects one value, the one in dispute");
    }
}

void CaseReader::read_tolerance(const Node& node, PublishedCase& one) {
    one.tolerance = optional_text(context_, node, "tolerance");
    const std::string reason = optional_text(context_, node, "tolerance_reason");
    if (one.tolerance.empty() != reason.empty()) {
        wrong(node, "tolerance", "a tolerance and its tolerance_reason go together");
    }
}

/// What a case gives and expects again shows no value of ours, only that it is not refused.
void CaseReader::read_accepted(const Node& node, PublishedCase& one) {
    one.accepted = optional_flag(context_, node, "accepted");
    const auto repeats_field = [&](const Expectation& expected) {
        return std::ranges::find(one.fields, std::pair(expected.name, expected.text)) !=
               one.fields.end();
    };
    const auto repeats = std::ranges::count_if(one.expected, repeats_field);
    const bool all = static_cast<std::size_t>(repeats) == one.expected.size();
    if (repeats > 0 && !all) {
        wrong(node, "expect", "an expectation repeats what a field gives; leave it out");
    } else if (one.accepted != all) {
        wrong(node, "accepted",
              all ? "the expectations only repeat what the fields give; write accepted = true"
                  : "an accepted case expects what its fields give, and nothing else");
    }
}

PublishedCase CaseReader::read_case(const Node& node) {
    check_keys(context_, node, case_keys);
    PublishedCase one;
    one.at = node.at();
    one.name = require_text(context_, node, "name");
    one.where = require_text(context_, node, "where");
    one.disagrees = optional_text(context_, node, "disagrees");
    one.printed_row = optional_flag(context_, node, "printed_row");
    read_question(node, one);
    read_expected(node, one);
    read_tolerance(node, one);
    read_accepted(node, one);
    return one;
}

} // namespace

CaseFile read_cases(const Node& document, const Catalogue& catalogue, FaultSink& faults) {
    CaseFile file;
    const Node* cases = document.find("case");
    const bool has_cases =
        cases != nullptr && cases->array() != nullptr && !cases->array()->empty() &&
        std::ranges::all_of(*cases->array(),
                            [](const Node& one) { return one.table() != nullptr; });
    if (!has_cases) {
        faults.push(Fault{Code::case_file_empty, "this file has no case; each starts with [[case]]",
                          document.at()});
        file.unusable = 1;
        return file;
    }
    CaseReader reader(catalogue, faults);
    const std::size_t before_head = faults.count();
    reader.read_head(document);
    file.unusable = faults.count() == before_head ? 0 : 1;
    for (const Node& node : *cases->array()) {
        const std::size_t before = faults.count();
        PublishedCase one = reader.read_case(node);
        if (faults.count() == before) {
            file.cases.push_back(std::move(one));
        } else {
            ++file.unusable;
        }
    }
    return file;
}

} // namespace libsplice::cli
