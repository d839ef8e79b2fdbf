// The man pages, made from the declarations that help and completion are made from.
#pragma once

#include "libsplice/allowance/book.h"
#include "libsplice/base/result.h"

#include "cli/declared/command.h"

#include <string>
#include <string_view>
#include <vector>

namespace libsplice::cli {

/// A page by the name of its file, `splice-cut.1`.
struct ManFile {
    std::string name;
    std::string text;
};

/// What pages take from files of the project; all of it is text that stands there once.
struct ManualSources {
    std::string job_page;       ///< docs/job-files.md as requests of man(7)
    std::string tables_page;    ///< docs/tables.md likewise
    std::string plug_in_page;   ///< docs/plug-ins.md likewise
    std::string plug_in_header; ///< splice_plugin.h
};

/// All pages.
[[nodiscard]] std::vector<ManFile> manual(const Book& book, const ManualSources& sources);

} // namespace libsplice::cli
