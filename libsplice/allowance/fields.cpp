// Binds the texts of a job's fields to what a kind declares.
#include "libsplice/allowance/fields.h"

#include "libsplice/base/text.h"
#include "libsplice/units/read.h"
#include "libsplice/units/show.h"

#include <algorithm>
#include <cmath>

namespace libsplice {

namespace {

Fault fault_of(Code code, std::string_view field, std::string text) {
    return Fault{code, std::move(text), {}, std::string(field)};
}

/// `D` as the unit: a count of rope diameters.
std::optional<std::string_view> count_of_diameters(std::string_view text) {
    if (!text.ends_with('D')) {
        return std::nullopt;
    }
    return trimmed(text.substr(0, text.size() - 1));
}

Result<double> read_field_length(const FieldText& field, Length diameter) {
    if (const auto count = count_of_diameters(field.text)) {
        const auto number = read_number(*count);
        if (!number) {
            return Unexpected(number.error());
        }
        return *number * diameter.si();
    }
    const auto length = read_length(field.text, field.unit);
    if (!length) {
        return Unexpected(length.error());
    }
    return length->length.si();
}

Result<double> read_field_choice(const FieldDeclaration& declaration, std::string_view text) {
    const auto found = std::ranges::find(declaration.choices, text);
    if (found == declaration.choices.end()) {
        return Unexpected(
            Fault{Code::field_unreadable, "not one of " + listed(declaration.choices)});
    }
    return static_cast<double>(found - declaration.choices.begin());
}

Result<double> read_value(const FieldDeclaration& declaration, const FieldText& field,
                          Length diameter) {
    switch (declaration.dimension) {
    case Dimension::length:
        return read_field_length(field, diameter);
    case Dimension::count:
    case Dimension::ratio:
        return read_share(field.text);
    case Dimension::choice:
        return read_field_choice(declaration, field.text);
    }
    Expects(false);
    return 0.0;
}

std::string shown(const FieldDeclaration& declaration, double value) {
    return declaration.dimension == Dimension::length
               ? show_length(Length(value), UnitSystem::metric)
               : show_number(value, 3);
}

bool is_whole(double value) {
    return to_nanometres(Length(value)) % nanometres_per_metre == 0;
}

/// The limits of a field; those of a choice are its words.
std::pair<double, double> limits(const FieldDeclaration& declaration) {
    if (declaration.dimension == Dimension::choice) {
        return {0.0, static_cast<double>(declaration.choices.size()) - 1.0};
    }
    return {declaration.lowest, declaration.highest};
}

/// What is wrong with a number, if anything is; `said` is how the field and its value were given.
template <class Said>
std::optional<Fault> check_value(const FieldDeclaration& declaration, double value,
                                 const Said& said) {
    const auto [lowest, highest] = limits(declaration);
    const bool in_range = value >= lowest && value <= highest; // never where it is no number
    if (!in_range) {
        return fault_of(Code::field_out_of_range, declaration.name,
                        said() + " is out of range; it may be " + shown(declaration, lowest) +
                            " to " + shown(declaration, highest));
    }
    const bool counted =
        declaration.dimension == Dimension::count || declaration.dimension == Dimension::choice;
    if (counted && !is_whole(value)) {
        return fault_of(Code::field_unreadable, declaration.name,
                        said() + " is not a whole number");
    }
    return std::nullopt;
}

std::optional<Fault> find_missing(const KindDeclaration& kind, const Fields& fields) {
    for (std::size_t i = 0; i < kind.fields.size(); ++i) {
        if (kind.fields[i].required && !fields.has(i)) {
            return fault_of(Code::field_missing, kind.fields[i].name,
                            std::string(kind.name) + " needs the field \"" +
                                std::string(kind.fields[i].name) +
                                "\": " + std::string(kind.fields[i].meaning));
        }
    }
    return std::nullopt;
}

const FieldDeclaration* find_field(const KindDeclaration& kind, std::string_view name,
                                   std::size_t& index) {
    const auto found = std::ranges::find_if(kind.fields, [&](const FieldDeclaration& field) {
        return field.name == name || (!field.also.empty() && field.also == name);
    });
    index = static_cast<std::size_t>(found - kind.fields.begin());
    return found == kind.fields.end() ? nullptr : &*found;
}

Fault unknown_field(const KindDeclaration& kind, std::string_view name) {
    std::vector<std::string_view> known;
    for (const auto& field : kind.fields) {
        known.push_back(field.name);
    }
    const std::string which =
        kind.fields.empty() ? " it takes none of its own" : " it takes " + listed(known);
    return fault_of(Code::unknown_field, name,
                    std::string(kind.name) + " has no field \"" + std::string(name) + "\"" +
                        did_you_mean(name, known) + (nearest(name, known) ? "" : ";" + which));
}

} // namespace

Result<double> read_field(const FieldDeclaration& declaration, const FieldText& field,
                          Length diameter) {
    std::string quoted = std::string(declaration.name) + " \"" + std::string(field.text) + "\"";
    const auto value = read_value(declaration, field, diameter);
    if (!value) {
        return Unexpected(
            fault_of(Code::field_unreadable, declaration.name, quoted + ": " + value.error().text));
    }
    if (auto fault = check_value(declaration, *value, [&] { return quoted; })) {
        return Unexpected(*std::move(fault));
    }
    return *value;
}

Result<Fields> bind_fields(const KindDeclaration& kind, Length diameter,
                           std::span<const FieldText> fields) {
    Fields bound;
    for (const FieldText& field : fields) {
        if (field.name == "rule") {
            continue;
        }
        std::size_t index = 0;
        const auto* declaration = find_field(kind, field.name, index);
        if (declaration == nullptr) {
            return Unexpected(unknown_field(kind, field.name));
        }
        if (bound.has(index)) {
            return Unexpected(fault_of(Code::field_unreadable, field.name,
                                       std::string(declaration->name) + " and " +
                                           std::string(declaration->also) +
                                           " are one length here; give one of them"));
        }
        const auto value = read_field(*declaration, field, diameter);
        if (!value) {
            return Unexpected(value.error());
        }
        bound.set(index, *value);
    }
    if (auto fault = find_missing(kind, bound)) {
        return Unexpected(*std::move(fault));
    }
    return bound;
}

std::optional<Fault> check_fields(const KindDeclaration& kind, const Fields& fields) {
    for (std::size_t i = 0; i < kind.fields.size(); ++i) {
        const FieldDeclaration& declaration = kind.fields[i];
        if (!fields.has(i)) {
            continue;
        }
        const double value = fields.at(i);
        auto fault = check_value(declaration, value, [&] {
            return std::string(declaration.name) + ' ' + std::to_string(value) +
                   (declaration.dimension == Dimension::length ? " m" : "");
        });
        if (fault) {
            return fault;
        }
    }
    return find_missing(kind, fields);
}

} // namespace libsplice
