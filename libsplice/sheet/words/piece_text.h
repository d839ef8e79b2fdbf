// The cautions and steps of a piece as sentences.
#pragma once

#include "libsplice/cut/piece.h"
#include "libsplice/sheet/words/citation_log.h"
#include "libsplice/sheet/words/fill_text.h"

#include <string>

namespace libsplice {

/// What the texts of one end of a piece are filled in with. The piece has a plan.
[[nodiscard]] TemplateContext filling_of(const Piece& piece, LineEnd end, UnitSystem units);

/// Appends a caution's sentence and, in brackets, the rule that it rests on.
void append_caution(std::string& into, const Piece& piece, const PieceCaution& caution,
                    UnitSystem units, CitationLog& citing);

/// Likewise with the end in front, for where cautions of both ends stand together: `end a: ...`.
void append_caution_with_end(std::string& into, const Piece& piece, const PieceCaution& caution,
                             UnitSystem units, CitationLog& citing);

/// Appends the sentence of a step.
void append_step(std::string& into, const Piece& piece, const PieceStep& step, UnitSystem units);

/// Appends the rule in brackets, if there is one to name.
void append_rule(std::string& into, CitationId rule, CitationLog& citing);

} // namespace libsplice
