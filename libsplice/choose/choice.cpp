// Puts the ropes that were chosen for all lines among those that each line shows.
#include "libsplice/choose/choice.h"

#include <utility>

namespace libsplice {

void take_together(JobChoice& choice) {
    if (!choice.together) {
        return;
    }
    for (std::size_t l = 0; l < choice.lines.size(); ++l) {
        LineChoice& line = choice.lines[l];
        auto& chosen = choice.together->chosen[l];
        if (!chosen) {
            continue;
        }
        if (*chosen >= line.ropes.size()) {
            TriedRope rope = line.rope_at(*chosen);
            rope.shown_as = ShownAs::together;
            chosen = line.ropes.size();
            line.ropes.push_back(std::move(rope));
        }
        line.chosen = chosen;
    }
    for (LineChoice& line : choice.lines) {
        line.others.clear();
    }
}

} // namespace libsplice
