// One end for people: its allowance, row by row, and how it is made.
#pragma once

#include "libsplice/sheet/panel/page.h"
#include "libsplice/sheet/words/citation_log.h"
#include "libsplice/sheet/writer.h"

namespace libsplice {

/// What each part of an end's sheet says, in whatever order a format wants it.
struct EndPanel {
    Page& page;
    const EndSheet& sheet;
    Credits credits;
    UnitSystem units;
    CitationLog& citing;

    void title() const;
    void ledger() const;
    void marks() const;
    void figures() const;
    void work() const;
    void foot() const;
};

} // namespace libsplice
