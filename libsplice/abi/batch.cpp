// Many ends of one kind and rope at once, numbers in and numbers out.
#include "libsplice/abi/book.h"
#include "libsplice/abi/records.h"
#include "libsplice/allowance/values.h"

#include <algorithm>
#include <cmath>

using namespace libsplice;
using namespace libsplice::abi;

namespace {

/// A field's values, and where the kind declares it.
struct Column {
    std::size_t field;
    const double* values;
};

/// The figure of that name of every end.
struct Wanted {
    ValueName name;
    double* values;
};

/// A batch with its names resolved.
struct Batch {
    const Kind* kind;
    Rope rope;
    std::vector<Column> columns;
    std::vector<Wanted> wanted;
};

Result<Column> find_column(const KindDeclaration& kind, const splice_field_column& column) {
    const auto name = text_of(column.field);
    const auto found = std::ranges::find(kind.fields, name, &FieldDeclaration::name);
    if (found == kind.fields.end()) {
        return Unexpected(
            Fault{Code::unknown_field,
                  std::string(kind.name) + " has no field \"" + std::string(name) + "\" of its own",
                  {},
                  std::string(name)});
    }
    if (column.values == nullptr) {
        return Unexpected(wrong_call("the values of " + std::string(name) + " are null"));
    }
    return Column{static_cast<std::size_t>(found - kind.fields.begin()), column.values};
}

Result<Wanted> find_value(const Names& names, const splice_value_column& column) {
    const auto name = text_of(column.name);
    const auto found = names.find_value(name);
    if (!found) {
        return Unexpected(wrong_call("no end has a value \"" + std::string(name) + "\""));
    }
    if (column.values == nullptr) {
        return Unexpected(wrong_call("the room for " + std::string(name) + " is null"));
    }
    return Wanted{*found, column.values};
}

std::optional<Fault> resolve_columns(const Names& names, const splice_batch& given, Batch& batch) {
    const bool lists_there = (given.fields != nullptr || given.field_count == 0) &&
                             (given.values != nullptr || given.value_count == 0);
    if (!lists_there) {
        return wrong_call("a list of columns is null");
    }
    for (const auto& column : std::span(given.fields, given.field_count)) {
        const auto found = find_column(batch.kind->declaration, column);
        if (!found) {
            return found.error();
        }
        batch.columns.push_back(*found);
    }
    for (const auto& column : std::span(given.values, given.value_count)) {
        const auto found = find_value(names, column);
        if (!found) {
            return found.error();
        }
        batch.wanted.push_back(*found);
    }
    return std::nullopt;
}

Result<Batch> resolve(const Book& book, const splice_batch& given) {
    const auto kind = book.kind(text_of(given.kind));
    if (!kind) {
        return Unexpected(kind.error());
    }
    auto rope = book.catalogue().rope(text_of(given.rope));
    if (!rope) {
        return Unexpected(rope.error());
    }
    Batch batch{*kind, *std::move(rope), {}, {}};
    if (auto fault = resolve_columns(book.names(), given, batch)) {
        return Unexpected(*std::move(fault));
    }
    return batch;
}

Fields fields_of(const Batch& batch, std::uint64_t at) {
    Fields fields;
    for (const Column& column : batch.columns) {
        if (const double value = column.values[at]; !std::isnan(value)) {
            fields.set(column.field, value);
        }
    }
    return fields;
}

void put(const Result<End>& allowance, const Batch& batch, const splice_batch& given,
         std::uint64_t at) {
    if (given.allowances_m != nullptr) {
        given.allowances_m[at] = allowance ? from_nanometres(allowance->total()).si() : not_known;
    }
    if (given.codes != nullptr) {
        given.codes[at] = allowance ? 0 : static_cast<std::int32_t>(allowance.error().code);
    }
    const auto values = allowance ? values_of(*allowance) : ShortList<Value, most_end_values>();
    for (const Wanted& wanted : batch.wanted) {
        const auto value = std::ranges::find(values, wanted.name, &Value::name);
        wanted.values[at] = value == values.end() ? not_known : value->value;
    }
}

Outcome work_out(const Book& book, const splice_batch& given) {
    const auto batch = resolve(book, given);
    if (!batch) {
        return batch.error();
    }
    // The rules point to the rope, so they are found where it stays.
    const auto rules = book.rules(*batch->kind, batch->rope, text_of(given.rule));
    if (!rules) {
        return rules.error();
    }
    for (std::uint64_t at = 0; at < given.count; ++at) {
        put(book.work_out(*batch->kind, batch->rope, *rules, fields_of(*batch, at)), *batch, given,
            at);
    }
    return std::nullopt;
}

} // namespace

splice_status splice_work_out_batch(const splice_book* book, const splice_batch* batch,
                                    splice_fault* fault) {
    return guarded(fault, [&]() -> Outcome {
        if (book == nullptr || batch == nullptr) {
            return wrong_call("the book or the batch is null");
        }
        const auto known = take_in(batch);
        return known ? work_out(book->book, *known) : Outcome(known.error());
    });
}
