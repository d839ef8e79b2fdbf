// Strength and mass of a rope that is only described, inside the sizes that print was read for.
#include "libsplice/catalogue/generic.h"

#include <algorithm>
#include <array>

namespace libsplice {

namespace {

bool is_of_sort(const GenericRope& generic, const Rope& rope) {
    return generic.construction == rope.construction && generic.fibre == rope.fibre &&
           generic.grade == rope.grade;
}

/// The record that holds for that diameter of the rope's sort, or null.
const GenericRope* find_generic(std::span<const GenericRope> generics, const Rope& rope,
                                Length diameter) {
    const Nanometres size = to_nanometres(diameter);
    const auto found = std::ranges::find_if(generics, [&](const GenericRope& generic) {
        return is_of_sort(generic, rope) && size >= to_nanometres(generic.from.length) &&
               size <= to_nanometres(generic.up_to.length);
    });
    return found == generics.end() ? nullptr : &*found;
}

/// The inch size that a rope of a metric label often is, if it is one of those.
std::optional<Length> inch_size_of_label(const Rope& rope) {
    struct Label {
        Nanometres metric;
        double inches;
    };
    constexpr std::array labels{Label{5'000'000, 3.0 / 16.0}, Label{10'000'000, 3.0 / 8.0}};
    const auto found = std::ranges::find(labels, to_nanometres(rope.diameter), &Label::metric);
    if (found == labels.end() || rope.imperial || rope.measured_diameter) {
        return std::nullopt;
    }
    return metres(found->inches * metres_per_inch);
}

double squared(Length diameter) {
    return diameter.si() * diameter.si();
}

} // namespace

void add_generic_figures(Rope& rope, std::span<const GenericRope> generics) {
    if (rope.generic_mass) {
        rope.mass.reset();
    }
    if (rope.generic_breaking) {
        rope.breaking.reset();
    }
    rope.generic_mass = rope.generic_breaking = false;
    const Length diameter = rope.counting_diameter();
    const GenericRope* generic = find_generic(generics, rope, diameter);
    if (generic == nullptr) {
        return;
    }
    if (!rope.mass && generic->mass) {
        rope.generic_mass = true;
        rope.mass = {LineMass(generic->mass->value * squared(diameter)), generic->mass->source};
    }
    if (rope.breaking || !generic->breaking) {
        return;
    }
    rope.breaking = {Force(generic->breaking->value * squared(diameter)),
                     generic->breaking->source};
    rope.generic_breaking = true;
    const auto inches = inch_size_of_label(rope);
    const GenericRope* thinner = inches ? find_generic(generics, rope, *inches) : nullptr;
    if (thinner != nullptr && thinner->breaking) {
        const Force less = Force(thinner->breaking->value * squared(*inches));
        if (less < rope.breaking->value) {
            rope.breaking = {less, thinner->breaking->source};
        }
    }
}

} // namespace libsplice
