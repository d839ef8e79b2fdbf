// Reads the facts of a reel in hand and puts them before any table.
#include "libsplice/catalogue/rope_facts.h"

#include "libsplice/base/text.h"
#include "libsplice/units/read.h"

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

namespace libsplice {

namespace {

constexpr double dearest = 1e6;
constexpr double most_stretch = 10.0;
constexpr Force strongest = newtons(1e8);
constexpr LineMass heaviest{1000.0};

/// One `2.4 % at 20 %`.
struct StretchWords {
    double strain = 0.0;
    Tension at;
};

Unexpected no_stretch(std::string_view text) {
    return Unexpected(
        Fault{Code::not_a_number, in_quotes(text) +
                                      " is no stretch; write how far the rope stretches and "
                                      "at which pull, as 2.4 % at 20 %"});
}

Result<StretchWords> read_one(std::string_view text) {
    const std::size_t at = text.find(" at ");
    if (at == std::string_view::npos) {
        return no_stretch(text);
    }
    const auto strain = read_share(text.substr(0, at));
    const auto load = read_tension(text.substr(at + 4));
    if (!strain) {
        return no_stretch(text);
    }
    if (!load) {
        return Unexpected(load.error());
    }
    if (!(*strain > 0.0) || *strain > most_stretch || !(load->value > 0.0)) {
        return no_stretch(text);
    }
    return StretchWords{*strain, *load};
}

/// Puts facts into a rope, one by one.
class FactReader {
  public:
    FactReader(Rope& rope, CitationId source, const std::function<void(RopeFact, Fault)>& refuse)
        : rope_(rope), source_(source), refuse_(refuse) {}

    void read(RopeFact fact, const FactText& given) {
        switch (fact) {
        case RopeFact::breaking:
            read_breaking(given);
            break;
        case RopeFact::stretch:
            take(fact, read_stretch_words(given.text, source_),
                 [&](RopeStretch stretch) { rope_.stretch = std::move(stretch); });
            break;
        case RopeFact::core_diameter:
            read_diameter(fact, given, rope_.core_diameter);
            break;
        case RopeFact::measured_diameter:
            read_diameter(fact, given, rope_.measured_diameter);
            break;
        case RopeFact::mass:
            read_mass(given);
            break;
        case RopeFact::price:
            read_price(given);
            break;
        case RopeFact::prestretched:
            read_prestretched(given);
            break;
        }
    }

  private:
    template <class T, class Put>
    void take(RopeFact fact, Result<T> value, Put put) {
        if (value) {
            put(*std::move(value));
        } else {
            refuse_(fact, std::move(value).error());
        }
    }

    void out_of_range(RopeFact fact, const FactText& given, std::string_view most) {
        refuse_(fact, {Code::value_out_of_range,
                       in_quotes(given.text) + " is out of range; it may be over 0 and up to " +
                           std::string(most)});
    }

    void read_breaking(const FactText& given) {
        take(RopeFact::breaking, read_quantity(given.text, force_units, "breaking strength"),
             [&](double force) {
                 if (Force(force) > strongest) {
                     out_of_range(RopeFact::breaking, given, "100,000 kN");
                     return;
                 }
                 rope_.breaking = {Force(force), source_};
                 rope_.generic_breaking = false;
             });
    }

    void read_mass(const FactText& given) {
        take(RopeFact::mass, read_quantity(given.text, mass_units, "mass of a metre"),
             [&](double mass) {
                 if (LineMass(mass) > heaviest) {
                     out_of_range(RopeFact::mass, given, "1,000 kg/m");
                     return;
                 }
                 rope_.mass = {LineMass(mass), source_};
                 rope_.generic_mass = false;
             });
    }

    void read_diameter(RopeFact fact, const FactText& given, std::optional<Sourced<Length>>& into) {
        if (fact == RopeFact::core_diameter && !has_cover(rope_.construction)) {
            refuse_(fact, {Code::not_a_choice, "a rope of construction " +
                                                   std::string(name_of(rope_.construction)) +
                                                   " has no core; leave it empty"});
            return;
        }
        take(fact, read_length(given.text, given.unit), [&](const WrittenLength& written) {
            // A measured rope is near its nominal size, and a core is inside it.
            const Length most =
                fact == RopeFact::core_diameter ? rope_.counting_diameter() : 2.0 * rope_.diameter;
            const Length least = fact == RopeFact::core_diameter ? Length() : 0.5 * rope_.diameter;
            if (written.length <= least || written.length > most) {
                refuse_(fact, {Code::value_out_of_range,
                               in_quotes(given.text) + " cannot be right for this rope; " +
                                   (fact == RopeFact::core_diameter
                                        ? "a core is thinner than its rope"
                                        : "it is from half to twice the nominal diameter")});
                return;
            }
            into = {written.length, source_};
        });
    }

    void read_price(const FactText& given) {
        std::string_view text = trimmed(given.text);
        if (text.ends_with("/m")) {
            text = trimmed(text.substr(0, text.size() - 2));
        }
        const auto price = read_number(text);
        if (!price || *price < 0.0 || *price > dearest) {
            refuse_(RopeFact::price,
                    {Code::not_a_number, in_quotes(given.text) +
                                             " is no price of a metre; write it like 2.40 or "
                                             "2.40/m, from 0 to 1,000,000"});
            return;
        }
        rope_.price = {*price, source_};
    }

    void read_prestretched(const FactText& given) {
        if (given.text != "yes" && given.text != "no") {
            refuse_(RopeFact::prestretched,
                    {Code::not_a_choice, in_quotes(given.text) + " is not one of yes and no"});
            return;
        }
        rope_.prestretched = given.text == "yes";
    }

    Rope& rope_;
    CitationId source_;
    const std::function<void(RopeFact, Fault)>& refuse_;
};

} // namespace

Result<RopeStretch> read_stretch_words(std::string_view text, CitationId source) {
    std::vector<StretchPoint> points;
    std::optional<Tension::Basis> basis;
    for (std::string_view rest = trimmed(text); !rest.empty();) {
        const std::size_t end = std::min(rest.find_first_of(",;"), rest.size());
        const auto one = read_one(trimmed(rest.substr(0, end)));
        if (!one) {
            return Unexpected(one.error());
        }
        if (basis.value_or(one->at.basis) != one->at.basis) {
            return Unexpected(Fault{Code::not_a_tension,
                                    "the pulls of one stretch are all shares of the breaking "
                                    "strength, or all forces"});
        }
        basis = one->at.basis;
        points.push_back({one->at.value, one->strain});
        rest = trimmed(rest.substr(std::min(end + 1, rest.size())));
    }
    if (points.empty() || !rises(points)) {
        return points.empty() ? no_stretch(text)
                              : Unexpected(Fault{Code::not_a_number,
                                                 "each pull of a stretch is greater than the one "
                                                 "before, and so is what the rope stretches"});
    }
    StretchCurve curve = points.size() == 1   ? StretchCurve::line(points[0])
                         : points.size() == 2 ? StretchCurve::power(points[0], points[1])
                                              : StretchCurve::through(std::move(points));
    return RopeStretch{std::move(curve), basis == Tension::Basis::force, 0.0, SpreadOrigin::none,
                       source};
}

void state_facts(Rope& rope, const FactTexts& facts, CitationId source,
                 const std::function<void(RopeFact, Fault)>& refuse) {
    FactReader reader(rope, source, refuse);
    // The measured diameter first: a core is held against it.
    const auto measured = static_cast<std::size_t>(RopeFact::measured_diameter);
    if (!facts.at(measured).text.empty()) {
        reader.read(RopeFact::measured_diameter, facts.at(measured));
    }
    for (std::size_t i = 0; i < facts.size(); ++i) {
        if (i != measured && !facts.at(i).text.empty()) {
            reader.read(static_cast<RopeFact>(i), facts.at(i));
        }
    }
}

} // namespace libsplice
