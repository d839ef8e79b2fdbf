// Makes ropes of the rows of rope lists and of what a line says of its reel.
#include "libsplice/cut/ropes/listed_rope.h"

#include "libsplice/base/text.h"
#include "libsplice/catalogue/words/rope_words.h"

#include <array>
#include <string>
#include <utility>

namespace libsplice {

namespace {

/// A fact, and where a job's line and a rope list say it.
struct FactPlaces {
    RopeFact fact;
    Column column;
    RopeColumn listed;
};
constexpr std::array fact_places{
    FactPlaces{RopeFact::breaking, Column::rope_breaking, RopeColumn::breaking},
    FactPlaces{RopeFact::stretch, Column::rope_stretch, RopeColumn::stretch},
    FactPlaces{RopeFact::core_diameter, Column::rope_core, RopeColumn::core_diameter},
    FactPlaces{RopeFact::measured_diameter, Column::rope_measured, RopeColumn::measured_diameter},
    FactPlaces{RopeFact::mass, Column::rope_mass, RopeColumn::mass},
    FactPlaces{RopeFact::price, Column::rope_price, RopeColumn::price},
    FactPlaces{RopeFact::prestretched, Column::rope_prestretched, RopeColumn::prestretched},
};
consteval bool facts_are_in_order() {
    for (std::size_t i = 0; i < fact_places.size(); ++i) {
        if (static_cast<std::size_t>(fact_places[i].fact) != i) {
            return false;
        }
    }
    return true;
}
static_assert(fact_places.size() == rope_fact_count && facts_are_in_order());

const FactPlaces& places_of(RopeFact fact) {
    return fact_places.at(static_cast<std::size_t>(fact));
}

/// Reads a row, telling each fault at its cell.
class RowReader {
  public:
    RowReader(const RopeRow& row, const Catalogue& catalogue, const OnRopeFault& refuse)
        : row_(row), catalogue_(catalogue), refuse_(refuse) {}

    std::optional<Rope> read(CitationId source) {
        const auto construction = take(
            RopeColumn::construction,
            read_construction_words(row_.text(RopeColumn::construction), catalogue_.aliases()));
        const auto fibre = read_fibre();
        const auto diameter =
            take(RopeColumn::diameter, read_rope_diameter(row_.text(RopeColumn::diameter)));
        if (!construction || !fibre || !diameter) {
            return std::nullopt;
        }
        Rope rope =
            catalogue_.rope_of({*construction, *fibre, *diameter,
                                std::string(row_.text(RopeColumn::diameter)), false, grade_});
        state_facts(rope, texts(), source, [&](RopeFact fact, Fault fault) {
            add(places_of(fact).listed, std::move(fault));
        });
        catalogue_.add_generic_figures(rope);
        rope.title = row_.text(RopeColumn::title).empty() ? rope.id : row_.text(RopeColumn::title);
        rope.id = row_.text(RopeColumn::id);
        rope.colour = row_.text(RopeColumn::colour);
        rope.cover = row_.text(RopeColumn::cover);
        rope.lot = row_.text(RopeColumn::lot);
        return failed_ ? std::nullopt : std::optional(std::move(rope));
    }

  private:
    template <class T>
    std::optional<T> take(RopeColumn column, Result<T> value) {
        if (value) {
            return *std::move(value);
        }
        add(column, std::move(value).error());
        return std::nullopt;
    }

    /// `HMPE`, or with its grade: `HMPE, higher grade`.
    std::optional<Fibre> read_fibre() {
        std::string text = plain_words(row_.text(RopeColumn::fibre));
        for (const auto& [words, grade] : {std::pair{" higher grade", FibreGrade::higher},
                                           {" lower grade", FibreGrade::lower}}) {
            if (text.ends_with(words)) {
                text.resize(text.size() - std::string_view(words).size());
                grade_ = grade;
            }
        }
        return take(RopeColumn::fibre, read_fibre_words(text, catalogue_.aliases()));
    }

    [[nodiscard]] FactTexts texts() const {
        FactTexts texts;
        for (const FactPlaces& places : fact_places) {
            texts.at(static_cast<std::size_t>(places.fact)).text = row_.text(places.listed);
        }
        return texts;
    }

    void add(RopeColumn column, Fault fault) {
        failed_ = true;
        fault.at = row_.cell(column).at;
        fault.field = name_of(column);
        refuse_(std::move(fault));
    }

    const RopeRow& row_;
    const Catalogue& catalogue_;
    const OnRopeFault& refuse_;
    FibreGrade grade_ = FibreGrade::unknown;
    bool failed_ = false;
};

/// The list, and the source that the row names itself.
Citation citation_of(const RopeRow& row, const std::string& list) {
    const std::string_view source = row.text(RopeColumn::source);
    return {Status::shop, {}, list + (source.empty() ? std::string() : ": " + std::string(source))};
}

} // namespace

std::optional<Rope> rope_of_row(const RopeRow& row, const Catalogue& catalogue, CitationId source,
                                const OnRopeFault& refuse) {
    return RowReader(row, catalogue, refuse).read(source);
}

bool add_rope_list(Input& input, Catalogue& catalogue, FaultSink& faults) {
    const auto rows = read_rope_list(input, faults);
    if (!rows) {
        return false;
    }
    bool good = true;
    const auto refuse = [&](Fault fault) {
        good = false;
        faults.push(std::move(fault));
    };
    for (const RopeRow& row : *rows) {
        const CitationId source = catalogue.cite(citation_of(row, input.name()));
        auto rope = rope_of_row(row, catalogue, source, refuse);
        auto fault = rope ? catalogue.add_rope(*std::move(rope)) : std::nullopt;
        if (fault) {
            fault->at = row.cell(RopeColumn::id).at;
            refuse(*std::move(fault));
        }
    }
    return good;
}

FactTexts facts_of(const JobLine& line) {
    FactTexts texts;
    for (const FactPlaces& places : fact_places) {
        const Cell& cell = line.cell(places.column);
        texts.at(static_cast<std::size_t>(places.fact)) = {cell.text, cell.unit};
    }
    return texts;
}

Column column_of(RopeFact fact) {
    return places_of(fact).column;
}

} // namespace libsplice
