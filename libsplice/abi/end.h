// What stands behind the host's `splice_end`.
#pragma once

#include "libsplice/abi/book.h"
#include "libsplice/abi/parts.h"

#include <vector>

/// An end worked out, as records.
struct splice_end { // NOLINT(readability-identifier-naming): named by the C header
    splice_end_facts facts{};
    libsplice::abi::Texts texts;
    libsplice::abi::Parts parts;
    std::vector<splice_value> values;
};
