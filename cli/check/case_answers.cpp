// Works out an end, a line or a rope as a published case asks for it, and takes its values in SI
// units.
#include "cli/check/case_answers.h"

#include "libsplice/allowance/values.h"
#include "libsplice/cut/cutter.h"
#include "libsplice/job/read_job.h"
#include "libsplice/mechanics/rope/stretch.h"

namespace libsplice::cli {

namespace {

CaseAnswer length_answer(std::string name, Nanometres length) {
    return {std::move(name), Measure::length, from_nanometres(length).si()};
}

/// A value's name without its unit, and what the unit makes of it.
CaseAnswer value_answer(const Value& value, const Names& names) {
    const std::string_view name = names.of(value.name);
    const auto without = [&](std::string_view unit) {
        return std::string(name.substr(0, name.size() - unit.size()));
    };
    if (name.ends_with("_m")) {
        return {without("_m"), Measure::length, value.value};
    }
    if (name.ends_with("_deg")) {
        return {without("_deg"), Measure::degrees, value.value};
    }
    const bool share = value.name == ValueName::bend_retained;
    return {std::string(name), share ? Measure::share : Measure::number, value.value};
}

/// `row: tail`, or `row a: tail` for a line's.
std::string row_name(const Row& row, std::string_view end, const Names& names) {
    return "row" + std::string(end) + ": " + std::string(names.of(row.item));
}

std::string mark_name(MarkName name, std::string_view end, const Names& names) {
    return "mark" + std::string(end) + ": " + std::string(names.of(name));
}

void add_retained(Answers& answers, const std::optional<Retained>& retained) {
    if (retained) {
        answers.values.push_back({"retained_strength", Measure::share, retained->share});
    }
}

Answers answers_of(const End& allowance, const Names& names) {
    Answers answers;
    for (const Value& value : values_of(allowance)) {
        answers.values.push_back(value_answer(value, names));
    }
    for (const Row& row : allowance.rows) {
        answers.values.push_back(length_answer(row_name(row, "", names), row.length));
    }
    for (const Mark& mark : allowance.marks) {
        answers.values.push_back(
            length_answer(mark_name(mark.name, "", names), mark.from_tail_end));
    }
    answers.values.push_back(length_answer("allowance", allowance.total()));
    add_retained(answers, allowance.retained);
    return answers;
}

std::string_view suffix(std::optional<LineEnd> end) {
    return !end ? "" : *end == LineEnd::a ? " a" : " b";
}

Answers answers_of(const Piece& piece) {
    const Names& names = *piece.line->names;
    Answers answers;
    answers.values.push_back(length_answer("cut", piece.cut));
    answers.values.push_back(length_answer("between the marks", piece.between_marks));
    if (piece.check) {
        answers.values.push_back(length_answer("check", piece.check->reads));
        answers.values.push_back(length_answer("check loaded", piece.check->reads_loaded));
    }
    for (const LedgerRow& entry : piece.ledger) {
        answers.values.push_back(
            length_answer(row_name(entry.row, suffix(entry.end), names), entry.row.length));
    }
    for (const PieceMark& mark : piece.marks) {
        answers.values.push_back(
            length_answer(mark_name(mark.name, suffix(mark.end), names), mark.from_end));
    }
    if (piece.strength.design_factor) {
        answers.values.push_back({"design_factor", Measure::number, *piece.strength.design_factor});
    }
    if (piece.strength.load) {
        answers.values.push_back({"load", Measure::force, piece.strength.load->si()});
    }
    add_retained(answers, piece.strength.retained);
    return answers;
}

Answers refused(const Fault& fault) {
    return {{}, fault};
}

Answers work_out_line(const PublishedCase& published, const Book& book) {
    Answers answers;
    FaultSink faults;
    Cutter cutter(book, CutSettings{});
    const auto read =
        read_toml_line(*published.line, book.field_names(), faults, [&](const JobRow& row) {
            const Piece& piece = cutter.cut(row, faults);
            answers = piece.fault != nullptr ? refused(*piece.fault) : answers_of(piece);
            return true;
        });
    return read ? answers : refused(read.error());
}

Answers work_out_end(const PublishedCase& published, const Book& book, const Rope& rope) {
    const auto kind = book.kind(published.kind);
    if (!kind) {
        return refused(kind.error());
    }
    std::vector<FieldText> fields;
    for (const auto& [name, text] : published.fields) {
        fields.push_back({name, text});
    }
    const auto allowance = book.work_out(**kind, rope, fields);
    return allowance ? answers_of(*allowance, book.names()) : refused(allowance.error());
}

/// What the rope stretches at shares of its strength, as far as its curve reaches.
void add_stretches(Answers& answers, const Rope& rope, const Book& book) {
    const auto stretch = stretch_of(rope, book.common_rules(rope));
    for (const int percent : {10, 20, 30, 75, 100}) {
        const double share = percent / 100.0;
        if (stretch && !stretch->by_force && stretch->curve.reaches(share)) {
            answers.values.push_back(
                {"stretch_" + std::to_string(percent), Measure::share, stretch->curve.at(share)});
        }
    }
}

Answers answers_of(const Rope& rope, const Book& book) {
    Answers answers;
    if (rope.breaking) {
        answers.values.push_back({"breaking", Measure::force, rope.breaking->value.si()});
    }
    if (!measured_relaxed(rope.construction)) {
        answers.values.push_back(
            {"reference_pull", Measure::force, reference_tension(rope.counting_diameter()).si()});
    }
    if (rope.mass) {
        answers.values.push_back({"mass_g_m", Measure::number, rope.mass->value.si() * 1000.0});
    }
    add_stretches(answers, rope, book);
    return answers;
}

} // namespace

Answers work_out(const PublishedCase& published, const Book& book) {
    if (published.line) {
        return work_out_line(published, book);
    }
    const auto rope = book.catalogue().rope(published.rope);
    if (!rope) {
        return refused(rope.error());
    }
    return published.kind.empty() ? answers_of(*rope, book) : work_out_end(published, book, *rope);
}

} // namespace libsplice::cli
