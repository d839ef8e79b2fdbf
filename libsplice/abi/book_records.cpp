// Makes the records of a book's kinds, ropes and sources, whose texts live as long as the book.
#include "libsplice/abi/book_records.h"

namespace libsplice::abi {

namespace {

std::uint32_t dimension_of(Dimension dimension) {
    switch (dimension) {
    case Dimension::length:
        return SPLICE_DIMENSION_LENGTH;
    case Dimension::count:
        return SPLICE_DIMENSION_COUNT;
    case Dimension::ratio:
        return SPLICE_DIMENSION_RATIO;
    case Dimension::choice:
        return SPLICE_DIMENSION_CHOICE;
    }
    Expects(false);
    return 0;
}

std::vector<std::string_view> names_of(Constructions constructions) {
    std::vector<std::string_view> names;
    for (const auto name : construction_names()) {
        if (constructions.allows(*read_construction(name))) {
            names.push_back(name);
        }
    }
    return names;
}

std::uint32_t count_of(std::size_t size) {
    return static_cast<std::uint32_t>(size);
}

} // namespace

BookRecords::BookRecords(const Book& book) : tables_(texts_.keep(book.catalogue().version())) {
    for (const Kind& kind : book.kinds()) {
        add_kind(kind.declaration);
    }
    add_ropes(book);
    add_sources(book);
    add_citations(book);
}

BookRecords::Words BookRecords::keep(std::span<const std::string_view> words) {
    Words kept;
    for (const auto word : words) {
        kept.push_back(texts_.keep(word));
    }
    return kept;
}

const BookRecords::Words& BookRecords::keep_list(std::span<const std::string_view> words) {
    return lists_.emplace_back(keep(words));
}

splice_field BookRecords::record_of(const FieldDeclaration& field) {
    const bool ranged = field.dimension != Dimension::choice;
    const Words& choices = keep_list(field.choices);
    splice_field record{};
    record.dimension = dimension_of(field.dimension);
    record.name = texts_.keep(field.name);
    record.also = texts_.keep(field.also);
    record.meaning = texts_.keep(field.meaning);
    record.default_text = texts_.keep(field.default_text);
    record.unit = texts_.keep(field.dimension == Dimension::length ? "m" : "");
    record.lowest = ranged ? field.lowest : not_known;
    record.highest = ranged ? field.highest : not_known;
    record.required = field.required ? 1 : 0;
    record.choice_count = count_of(choices.size());
    record.choices = choices.data();
    return record;
}

void BookRecords::add_kind(const KindDeclaration& kind) {
    auto& fields = fields_.emplace_back();
    for (const auto declarations : {kind.fields, common_fields()}) {
        for (const FieldDeclaration& field : declarations) {
            fields.push_back(record_of(field));
        }
    }
    const Words& constructions = keep_list(names_of(kind.constructions));
    splice_kind record{};
    record.field_count = count_of(fields.size());
    record.own_field_count = count_of(kind.fields.size());
    record.name = texts_.keep(kind.name);
    record.title = texts_.keep(kind.title);
    record.datum = texts_.keep(kind.datum);
    record.constructions = constructions.data();
    record.construction_count = count_of(constructions.size());
    kinds_.push_back(record);
}

void BookRecords::add_ropes(const Book& book) {
    for (const Rope& rope : book.catalogue().ropes()) {
        splice_rope record{};
        record.generic = rope.generic ? 1 : 0;
        record.id = texts_.keep(rope.id);
        record.title = texts_.keep(rope.title);
        record.construction = texts_.keep(name_of(rope.construction));
        record.fibre = texts_.keep(name_of(rope.fibre));
        record.diameter_m = rope.diameter.si();
        record.breaking_n = rope.breaking ? rope.breaking->value.si() : not_known;
        record.breaking_source =
            texts_.keep(rope.breaking ? to_text(book.citation(rope.breaking->source)) : "");
        ropes_.push_back(record);
    }
}

void BookRecords::add_sources(const Book& book) {
    for (const Source& source : book.catalogue().sources()) {
        splice_source record{};
        record.key = texts_.keep(source.key);
        record.title = texts_.keep(source.title);
        record.terms = texts_.keep(source.terms);
        sources_.push_back(record);
    }
}

void BookRecords::add_citations(const Book& book) {
    const Citations& citations = book.catalogue().citations();
    for (std::size_t i = 0; i < citations.size(); ++i) {
        const Citation& citation = citations.at(static_cast<CitationId>(i));
        const bool says_more = !citation.key.empty() || !citation.locator.empty();
        const char* text = texts_.keep(to_text(citation));
        citations_.push_back(text);
        rules_.push_back(says_more ? text : texts_.keep(""));
    }
}

} // namespace libsplice::abi
