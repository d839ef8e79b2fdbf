// What `splice list` can list. Help, man pages and completion read the same table.
#pragma once

#include "libsplice/allowance/book.h"
#include "libsplice/base/output.h"

#include "cli/declared/command.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice::cli {

/// What lists are made from.
struct ListSource {
    const Book& book;
    const CommandLine& command; ///< whose settings are listed
};

/// The entries that are asked for by name; if none is named, all.
class Chosen {
  public:
    explicit Chosen(std::span<const std::string> names) : names_(names) {}
    [[nodiscard]] bool has(std::string_view name) const;
    [[nodiscard]] bool all() const { return names_.empty(); }
    [[nodiscard]] std::span<const std::string> names() const { return names_; }

  private:
    std::span<const std::string> names_;
};

/// An entry of a list by its name, with a few words on it.
struct Entry {
    std::string name;
    std::string meaning;
};

struct Listing {
    Word word;
    void (*as_text)(const ListSource&, const Chosen&, Output&);
    void (*as_json)(const ListSource&, const Chosen&, Output&);
    std::vector<Entry> (*entries)(const ListSource&);
};

[[nodiscard]] std::span<const Listing> listings();
/// The listing of that name, or null.
[[nodiscard]] const Listing* find_listing(std::string_view name);

} // namespace libsplice::cli
