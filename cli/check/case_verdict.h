// Whether our answers agree with what is printed.
#pragma once

#include "cli/check/case_answers.h"
#include "cli/check/published_cases.h"

#include <cstdint>
#include <string>

namespace libsplice::cli {

enum class Verdict : std::uint8_t {
    agrees,    ///< every printed value is met
    disagrees, ///< the case says that we disagree, and we do
    fails,     ///< anything else
};

struct Judgement {
    Verdict verdict{};
    std::string
        why; ///< what was expected and what came, or what cannot be read; empty if it agrees
};

/// Holds the answers against the case. A value that we do not have, or that cannot be read, fails a
/// case even where it disagrees: only two numbers can differ.
[[nodiscard]] Judgement judge(const PublishedCase& published, const Answers& answers);

} // namespace libsplice::cli
