// What we say to the question of a published case.
#pragma once

#include "libsplice/allowance/book.h"

#include "cli/check/printed_value.h"
#include "cli/check/published_cases.h"

#include <optional>
#include <string>
#include <vector>

namespace libsplice::cli {

/// One of our values, under the name that a case calls it by.
struct CaseAnswer {
    std::string name;
    Measure measure{};
    double value = 0.0;
};

/// All our values, or the fault that stands in their place.
struct Answers {
    std::vector<CaseAnswer> values;
    std::optional<Fault> fault;
};

/// Works a case out as `splice end` or `splice cut` would, with the usual settings.
[[nodiscard]] Answers work_out(const PublishedCase& published, const Book& book);

} // namespace libsplice::cli
