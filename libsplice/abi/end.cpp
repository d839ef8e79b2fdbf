// Working out one end and looking through it.
#include "libsplice/abi/end.h"

#include "libsplice/abi/records.h"
#include "libsplice/allowance/values.h"
#include "libsplice/sheet/words/ledger_group.h"

#include <memory>

using namespace libsplice;
using namespace libsplice::abi;

namespace {

Result<std::vector<FieldText>> read_fields(const splice_cell* fields, std::uint32_t count) {
    std::vector<FieldText> texts;
    for (std::uint32_t i = 0; i < count; ++i) {
        if (fields == nullptr || fields[i].name == nullptr) {
            return Unexpected(wrong_call("a field of the end is null, or has no name"));
        }
        if (!text_of(fields[i].text).empty()) {
            texts.push_back({fields[i].name, fields[i].text});
        }
    }
    return texts;
}

Result<End> work_out(const Book& book, const char* kind_name, const char* rope_text,
                     std::span<const FieldText> fields) {
    const auto kind = book.kind(text_of(kind_name));
    if (!kind) {
        return Unexpected(kind.error());
    }
    const auto rope = book.catalogue().rope(text_of(rope_text));
    if (!rope) {
        return Unexpected(rope.error());
    }
    return book.work_out(**kind, *rope, fields);
}

std::unique_ptr<splice_end> record_of(const End& allowance, const splice_book& book) {
    auto end = std::make_unique<splice_end>();
    PartsWriter writer(book, end->texts, end->parts);
    const Names& names = book.book.names();
    const TemplateContext filling{allowance, names};
    writer.add_ledger(ledger_of(allowance), "end");
    for (const Mark& mark : allowance.marks) {
        writer.add_mark(LineEnd::a, mark.name, mark.from_tail_end);
    }
    for (const Caution& caution : allowance.cautions) {
        writer.add_caution(caution, LineEnd::a, &filling);
    }
    writer.add_steps(LineEnd::a, filling);
    for (const Value& value : values_of(allowance)) {
        end->values.push_back({0, 0, end->texts.keep(names.of(value.name)), value.value});
    }
    for (splice_row& row : end->parts.rows) {
        row.end = SPLICE_END_A;
    }
    const auto count_of = [](const auto& list) {
        return static_cast<std::uint32_t>(list.size());
    };
    splice_end_facts& facts = end->facts;
    facts.row_count = count_of(end->parts.rows);
    facts.allowance_nm = allowance.total();
    facts.allowance_m = from_nanometres(allowance.total()).si();
    facts.retained_strength = allowance.retained ? allowance.retained->share : not_known;
    facts.mark_count = count_of(end->parts.marks);
    facts.value_count = count_of(end->values);
    facts.step_count = count_of(end->parts.steps);
    facts.caution_count = count_of(end->parts.cautions);
    return end;
}

template <class Read>
splice_status read_end(const splice_end* end, splice_fault* fault, Read&& read) {
    return guarded(fault, [&]() -> Outcome {
        return end == nullptr ? Outcome(wrong_call("the end is null")) : read(*end);
    });
}

} // namespace

splice_status splice_end_open(const splice_book* book, const char* kind, const char* rope,
                              const splice_cell* fields, std::uint32_t field_count,
                              splice_end** end, splice_fault* fault) {
    return guarded(fault, [&]() -> Outcome {
        if (end == nullptr) {
            return wrong_call("there is no place for the end: the pointer is null");
        }
        *end = nullptr;
        if (book == nullptr) {
            return wrong_call("the book is null");
        }
        const auto texts = read_fields(fields, field_count);
        if (!texts) {
            return texts.error();
        }
        const auto allowance = work_out(book->book, kind, rope, *texts);
        if (!allowance) {
            return allowance.error();
        }
        *end = record_of(*allowance, *book).release();
        return std::nullopt;
    });
}

void splice_end_close(splice_end* end) {
    const std::unique_ptr<splice_end> closed(end);
}

splice_status splice_end_describe(const splice_end* end, splice_end_facts* facts,
                                  splice_fault* fault) {
    return read_end(end, fault,
                    [&](const splice_end& open) { return hand_out(open.facts, facts); });
}

splice_status splice_end_row(const splice_end* end, std::uint32_t index, splice_row* row,
                             splice_fault* fault) {
    return read_end(end, fault, [&](const splice_end& open) {
        return hand_out_at(open.parts.rows, index, row);
    });
}

splice_status splice_end_mark(const splice_end* end, std::uint32_t index, splice_mark* mark,
                              splice_fault* fault) {
    return read_end(end, fault, [&](const splice_end& open) {
        return hand_out_at(open.parts.marks, index, mark);
    });
}

splice_status splice_end_value(const splice_end* end, std::uint32_t index, splice_value* value,
                               splice_fault* fault) {
    return read_end(end, fault,
                    [&](const splice_end& open) { return hand_out_at(open.values, index, value); });
}

splice_status splice_end_step(const splice_end* end, std::uint32_t index, splice_step* step,
                              splice_fault* fault) {
    return read_end(end, fault, [&](const splice_end& open) {
        return hand_out_at(open.parts.steps, index, step);
    });
}

splice_status splice_end_caution(const splice_end* end, std::uint32_t index,
                                 splice_caution* caution, splice_fault* fault) {
    return read_end(end, fault, [&](const splice_end& open) {
        return hand_out_at(open.parts.cautions, index, caution);
    });
}
