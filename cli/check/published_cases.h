// Files of published values: what print says of an end, a line or a rope.
//
//     source = "toss-riggers-apprentice"      # a key of the tables' sources.toml
//
//     [[case]]
//     name = "HMPE locked eye, 5 mm"
//     where = "p. 103-106"                    # page, table, row, paragraph
//     end = "locked-eye"                      # a kind of end ...
//     rope = "12-strand HMPE 5 mm"             # ... in a rope; a rope alone; or a line, see below
//     fields = { rule = "72-diameters" }      # as splice end takes them
//     expect = { tail = "360 mm", exit = "540 mm" }
//     tolerance = "1 %"                       # else half of the last digit of what is expected
//     tolerance_reason = "the page rounds"    # needed with a tolerance
//     printed_row = true                      # the very row that our table took its figure from
//     accepted = true                         # repeats `fields`: shows that they are taken
//     disagrees = "why"                       # print and we differ, and the case must say why
//
// A line stands as in a job file:
//     line = { rope = "12-strand HMPE 4 mm", length = "4 m", end_a = { kind = "locked-eye" } }
//
// What can be expected:
//   of an end   its values without their unit (`tail`, `rope_round_eye`, `throat_angle`, `tucks`),
//               `allowance`, `retained_strength`, a row as `row: take-up as spliced`, a mark as
//               `mark: exit`;
//   of a line   `cut`, `check`, `between the marks`, `retained_strength`, `design_factor`, a row as
//               `row: stretch`, or `row a: tail` where it belongs to an end, and `mark b: exit`;
//   of a rope   `breaking`, `reference_pull`, `mass_g_m` and `stretch_20` (at 20 % of its strength;
//               also 10, 30, 75 and 100);
//   of any      `fault = 307`, alone, where it must be refused.
// Values are written as print has them: `360 mm`, `10 1/2 in`, `25.2 kN`, `23.27 deg`, `43.4 %` or
// `3`; a bound as `at most 2000 lbf` or `at least 2 kN`, where print lies on one side of what we
// say.
#pragma once

#include "libsplice/base/document.h"
#include "libsplice/base/fault_sink.h"
#include "libsplice/catalogue/catalogue.h"

#include <cstddef>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace libsplice::cli {

/// One value that print gives: `tail = "360 mm"`.
struct Expectation {
    std::string name;
    std::string text;
    Place at;
};

/// One case. It asks for an end if `kind` is set, for a line if `line` is, else for the rope.
struct PublishedCase {
    Place at;
    std::string name;
    std::string where;
    std::string kind;
    std::string rope;
    std::vector<std::pair<std::string, std::string>> fields; ///< of the end
    std::optional<Node> line;                                ///< a table of columns
    std::vector<Expectation> expected;                       ///< never empty
    std::string tolerance; ///< empty: half of the last printed digit
    bool printed_row = false;
    bool accepted = false; ///< its expectations repeat its fields
    std::string disagrees; ///< why; empty: we agree
};

/// What a file holds.
struct CaseFile {
    std::vector<PublishedCase> cases;
    std::size_t unusable = 0; ///< cases with a fault, and 1 more if the file's own head has one
};

/// Reads a file's cases. Every fault is pushed with its place: a source that the catalogue does not
/// have, an unknown key, a missing one, a value of the wrong shape, and Code::case_file_empty.
[[nodiscard]] CaseFile read_cases(const Node& document, const Catalogue& catalogue,
                                  FaultSink& faults);

} // namespace libsplice::cli
