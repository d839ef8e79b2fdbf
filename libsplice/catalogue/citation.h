// Where a number comes from, and what it is worth.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace libsplice {

/// What a number is worth.
enum class Status : std::uint8_t {
    printed,         ///< stands in the document named
    derived,         ///< arithmetic from figures in the document named
    common_practice, ///< a fact of the trade without a document
    computed,        ///< the result of a calculation that can be run again
    from_memory,     ///< recalled or estimated, the document not at hand
    shop,            ///< measured by the shop itself
    demo,            ///< invented for the demo
    job,             ///< stated in the job
    geometry,        ///< plain geometry
};

[[nodiscard]] std::string_view name_of(Status status);

/// A source as a row names it.
struct Citation {
    Status status = Status::printed;
    std::string key;     ///< a key of sources.toml; empty for what needs no document
    std::string locator; ///< page, table, paragraph, or how it was worked out
};

/// `key locator` for what is printed, otherwise the status first: `common practice: locator`.
[[nodiscard]] std::string to_text(const Citation& citation);

/// A citation as a row carries it: an index into the book.
enum class CitationId : std::uint16_t {};

/// The citations that every book starts with.
inline constexpr CitationId cited_job{0};
inline constexpr CitationId cited_geometry{1};
inline constexpr CitationId cited_computed{2};
inline constexpr CitationId cited_derived{3};

/// Every citation of a book, each kept once.
class Citations {
  public:
    Citations();
    /// The number of a citation. Past some sixty thousand of them they lose their locators, and
    /// then their keys, so that there is always a number.
    [[nodiscard]] CitationId intern(Citation citation);
    [[nodiscard]] const Citation& at(CitationId id) const {
        return all_[static_cast<std::size_t>(id)];
    }
    [[nodiscard]] std::size_t size() const { return all_.size(); }

  private:
    std::vector<Citation> all_;
    std::unordered_map<std::string, std::uint16_t> by_text_;
};

} // namespace libsplice
