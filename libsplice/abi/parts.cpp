// Fills the records of rows, marks, cautions and steps from an end or a piece.
#include "libsplice/abi/parts.h"

#include "libsplice/sheet/words/ledger_group.h"

namespace libsplice::abi {

void Parts::clear() {
    rows.clear();
    marks.clear();
    cautions.clear();
    steps.clear();
}

std::uint32_t number_of(std::optional<LineEnd> end) {
    if (!end) {
        return SPLICE_END_WHOLE_LINE;
    }
    return *end == LineEnd::a ? SPLICE_END_A : SPLICE_END_B;
}

void PartsWriter::add_ledger(std::span<const LedgerRow> ledger, std::string_view whole) {
    for (std::size_t i = 0; i < ledger.size(); ++i) {
        const auto& [row, end] = ledger[i];
        splice_row record{};
        record.end = number_of(end);
        record.item = texts_.keep(names_.of(row.item));
        record.group = texts_.keep(group_of(ledger, i, whole, names_));
        record.source = book_.source(row.source);
        record.length_m = from_nanometres(row.length).si();
        record.sd_m = row.sd;
        record.length_nm = row.length;
        parts_.rows.push_back(record);
    }
}

void PartsWriter::add_mark(LineEnd end, MarkName name, Nanometres from_end) {
    splice_mark record{};
    record.end = number_of(end);
    record.name = texts_.keep(names_.of(name));
    record.from_end_m = from_nanometres(from_end).si();
    parts_.marks.push_back(record);
}

const char* PartsWriter::filled(std::string_view text, const TemplateContext* filling) {
    if (filling == nullptr) {
        return texts_.keep(text);
    }
    text_.clear();
    append_filled(text_, text, *filling);
    return texts_.keep(text_);
}

void PartsWriter::add_caution(const Caution& caution, std::optional<LineEnd> end,
                              const TemplateContext* filling) {
    splice_caution record{};
    record.end = number_of(end);
    record.text = filled(caution.text, filling);
    record.rule = book_.rule(caution.rule);
    parts_.cautions.push_back(record);
}

void PartsWriter::add_steps(LineEnd end, const TemplateContext& filling) {
    for (const Step& step : filling.allowance.steps) {
        text_.clear();
        append_filled(text_, step.text, filling);
        add_step(end, text_);
    }
}

void PartsWriter::add_step(std::optional<LineEnd> end, std::string_view text) {
    splice_step record{};
    record.end = number_of(end);
    record.text = texts_.keep(text);
    parts_.steps.push_back(record);
}

} // namespace libsplice::abi
