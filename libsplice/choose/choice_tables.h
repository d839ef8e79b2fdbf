// What the tables say of places aboard, of fibres, and of what holds, handles and turns a rope.
#pragma once

#include "libsplice/base/fault_sink.h"
#include "libsplice/catalogue/catalogue.h"
#include "libsplice/choose/need_words.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice {

/// A place aboard: the words of needs that hold where a line does not say its own.
using Place = CitedRecord;

/// What is known of a fibre besides its strength.
struct FibreFacts {
    bool slippery = false;                       ///< bare, it runs through what holds it
    std::optional<Sourced<double>> gravity;      ///< against water
    std::optional<Sourced<double>> melts;        ///< or chars, degrees Celsius
    std::optional<Sourced<double>> steady_share; ///< of its strength, over which it creeps
};

/// The tables of `places.toml`, read once for a book, which outlives this.
class ChoiceTables {
  public:
    /// Code::table_value_wrong where a record's word or number cannot be read; every fault is
    /// pushed.
    [[nodiscard]] static std::optional<ChoiceTables> open(const Catalogue& catalogue,
                                                          FaultSink& faults);

    /// The place of that name, or of one of its other words, in any case; null: there is none.
    [[nodiscard]] const Place* find_place(std::string_view name) const;
    /// `; did you mean "..."?` or the places there are.
    [[nodiscard]] std::string places_near(std::string_view name) const;

    [[nodiscard]] const FibreFacts& of(Fibre fibre) const {
        return fibres_.at(static_cast<std::size_t>(fibre));
    }
    /// The thinnest rope for such handling; nothing where nobody says.
    [[nodiscard]] const std::optional<Sourced<Length>>& least_for(Handling hand) const {
        return hands_.at(static_cast<std::size_t>(hand));
    }
    /// Where a bare slippery rope is not held; nothing where nobody says.
    [[nodiscard]] const std::optional<CitationId>& lets_slip(Holder holder) const {
        return slips_.at(static_cast<std::size_t>(holder));
    }
    /// A rope that runs so hot must melt above this, degrees Celsius; nothing where nobody says.
    [[nodiscard]] const std::optional<Sourced<double>>& least_melting(Running runs) const {
        return melting_.at(static_cast<std::size_t>(runs));
    }
    /// The smallest sheave, in diameters of the rope; nothing where nobody says.
    [[nodiscard]] const std::optional<Sourced<double>>& least_sheave() const { return sheave_; }

  private:
    friend class ChoiceTablesReader;
    std::vector<const Place*> places_;
    std::array<FibreFacts, fibre_count> fibres_;
    std::array<std::optional<Sourced<Length>>, handling_words.size()> hands_;
    std::array<std::optional<CitationId>, holder_words.size()> slips_;
    std::array<std::optional<Sourced<double>>, running_words.size()> melting_;
    std::optional<Sourced<double>> sheave_;
};

} // namespace libsplice
