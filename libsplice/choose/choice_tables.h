// What the tables say of places aboard, of fibres, and of what holds, handles and turns a rope.
#pragma once

#include "libsplice/base/fault_sink.h"
#include "libsplice/catalogue/catalogue.h"
#include "libsplice/choose/cited_record.h"
#include "libsplice/choose/need_words.h"

#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice {

/// A value with the citation that it rests on.
template <class T>
struct Cited {
    T value{};
    Citation source;
};

/// `polyester, HMPE`; nothing if one of the words is no fibre.
[[nodiscard]] std::optional<std::vector<Fibre>> read_fibres(std::string_view text);

/// What is known of a fibre, its strength apart.
struct FibreFacts {
    bool slippery = false;                     ///< bare, it runs through what holds it
    bool dear = false;                         ///< rope of it costs more than once that of others
    std::optional<Cited<double>> gravity;      ///< against water
    std::optional<Cited<double>> melts;        ///< or chars, degrees Celsius
    std::optional<Cited<double>> steady_share; ///< of its strength, over which it creeps
};

/// The tables of `places.toml`, read once.
class ChoiceTables {
  public:
    /// Reads `places.toml` of every folder of the catalogue that has one; a later folder's record
    /// replaces the whole record of the same sort and id. Every fault is pushed: those of a table,
    /// and Code::table_value_wrong if a record's word or number cannot be read.
    [[nodiscard]] static std::optional<ChoiceTables> open(const Catalogue& catalogue,
                                                          FaultSink& faults);

    /// A place aboard: the words of needs that hold if a line does not say its own.
    [[nodiscard]] std::span<const CitedRecord> places() const { return places_; }
    /// The place of that name, or of one of its other words, in any case; null: there is none.
    [[nodiscard]] const CitedRecord* find_place(std::string_view name) const;
    /// `; did you mean "..."?`, or what else can be done.
    [[nodiscard]] std::string places_near(std::string_view name) const;

    [[nodiscard]] const FibreFacts& of(Fibre fibre) const {
        return fibres_.at(static_cast<std::size_t>(fibre));
    }
    /// The thinnest rope for such handling; nothing where nobody says.
    [[nodiscard]] const std::optional<Cited<Length>>& least_for(Handling hand) const {
        return hands_.at(static_cast<std::size_t>(hand));
    }
    /// Where a bare slippery rope is not held; nothing where nobody says.
    [[nodiscard]] const std::optional<Citation>& lets_slip(Holder holder) const {
        return slips_.at(static_cast<std::size_t>(holder));
    }
    /// A rope that runs so hot must melt above this, degrees Celsius; nothing where nobody says.
    [[nodiscard]] const std::optional<Cited<double>>& least_melting(Running runs) const {
        return melting_.at(static_cast<std::size_t>(runs));
    }
    /// The smallest sheave, in diameters of the rope; nothing where nobody says.
    [[nodiscard]] const std::optional<Cited<double>>& least_sheave() const { return sheave_; }
    /// The fibres that such a place usually has, or any place that does not say (null).
    [[nodiscard]] Cited<std::vector<Fibre>> usual_at(const CitedRecord* place) const;

  private:
    friend class ChoiceTablesReader;
    std::vector<CitedRecord> places_;
    std::array<FibreFacts, fibre_count> fibres_;
    std::array<std::optional<Cited<Length>>, handling_words.size()> hands_;
    std::array<std::optional<Citation>, holder_words.size()> slips_;
    std::array<std::optional<Cited<double>>, running_words.size()> melting_;
    std::optional<Cited<double>> sheave_;
    Cited<std::vector<Fibre>> usual_;
};

} // namespace libsplice
