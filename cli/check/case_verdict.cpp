// A case passes if every value lies within its tolerance of the published one.
#include "cli/check/case_verdict.h"

#include "libsplice/base/text.h"

#include <algorithm>
#include <cmath>

namespace libsplice::cli {

namespace {

/// Rounding in the last bits is no disagreement.
constexpr double hair = 1e-12;

Judgement fails(std::string why) {
    return {Verdict::fails, std::move(why)};
}

std::string code_text(const Fault& fault) {
    return std::to_string(static_cast<int>(fault.code));
}

std::string expected_text(const Expectation& expected) {
    return "expected " + expected.name + " = " + expected.text;
}

Judgement judge_fault(const Expectation& expected, const Answers& answers) {
    if (!answers.fault) {
        return fails(expected_text(expected) + ", came no error");
    }
    if (code_text(*answers.fault) != expected.text) {
        return fails(expected_text(expected) + ", came error " + code_text(*answers.fault) + ": " +
                     answers.fault->text);
    }
    return {};
}

Judgement unknown_name(const Expectation& expected, const Answers& answers) {
    std::vector<std::string_view> names;
    for (const CaseAnswer& answer : answers.values) {
        names.push_back(answer.name);
    }
    return fails("there is no value \"" + expected.name + '"' + did_you_mean(expected.name, names) +
                 "; there are " + listed(names));
}

constexpr std::string_view at_most = "at most ";
constexpr std::string_view at_least = "at least ";

/// The words of a bound that the text begins with; empty where it is a value.
std::string_view bound_in(std::string_view text) {
    for (const std::string_view words : {at_most, at_least}) {
        if (text.starts_with(words)) {
            return words;
        }
    }
    return {};
}

Judgement judge_bound(const Expectation& expected, const PrintedValue& printed,
                      const CaseAnswer& answer, bool least) {
    const double over = least ? printed.value - answer.value : answer.value - printed.value;
    if (over <= hair) {
        return {};
    }
    return {Verdict::disagrees,
            expected_text(expected) + ", came " + show_answer(answer.value, answer.measure)};
}

Judgement judge_value(const PublishedCase& published, const Expectation& expected,
                      const Answers& answers) {
    const auto answer = std::ranges::find(answers.values, expected.name, &CaseAnswer::name);
    if (answer == answers.values.end()) {
        return unknown_name(expected, answers);
    }
    const std::string_view bound = bound_in(expected.text);
    const auto printed = read_printed_value(
        trimmed(std::string_view(expected.text).substr(bound.size())), answer->measure);
    if (printed && !bound.empty()) {
        return judge_bound(expected, *printed, *answer, bound == at_least);
    }
    if (!printed) {
        return fails(expected.name + ": " + printed.error().text);
    }
    const auto tolerance = published.tolerance.empty()
                               ? Result<double>(printed->half_digit)
                               : read_tolerance(published.tolerance, answer->measure, *printed);
    if (!tolerance) {
        return fails("tolerance: " + tolerance.error().text);
    }
    if (std::abs(answer->value - printed->value) <= *tolerance + hair) {
        return {};
    }
    return {Verdict::disagrees, expected_text(expected) + ", came " +
                                    show_answer(answer->value, answer->measure) + ", tolerance " +
                                    show_answer(*tolerance, answer->measure)};
}

Judgement judge_one(const PublishedCase& published, const Expectation& expected,
                    const Answers& answers) {
    if (expected.name == "fault") {
        return judge_fault(expected, answers);
    }
    if (answers.fault) {
        return fails(expected_text(expected) + ", came error " + code_text(*answers.fault) + ": " +
                     answers.fault->text);
    }
    return judge_value(published, expected, answers);
}

} // namespace

Judgement judge(const PublishedCase& published, const Answers& answers) {
    Judgement all;
    for (const Expectation& expected : published.expected) {
        const Judgement one = judge_one(published, expected, answers);
        if (one.verdict == Verdict::agrees) {
            continue;
        }
        all.verdict = std::max(all.verdict, one.verdict);
        all.why += (all.why.empty() ? "" : "; ") + one.why;
    }
    if (published.disagrees.empty()) {
        return all.verdict == Verdict::agrees ? all : fails(all.why);
    }
    if (all.verdict == Verdict::agrees) {
        return fails("print and we are said to disagree (" + published.disagrees +
                     "), and we agree: take \"disagrees\" out");
    }
    return all;
}

} // namespace libsplice::cli
