// The records' sizes on 64-bit machines, and where their first layouts end: neither ever shrinks.
#include "splice_plugin.h"

#include <stddef.h>

#define HOLDS(name, fact) typedef char name[(fact) ? 1 : -1]

#if UINTPTR_MAX == UINT64_MAX
HOLDS(texts_size, sizeof(splice_plugin_texts) == 16);
HOLDS(source_size, sizeof(splice_plugin_source) == 32);
HOLDS(citation_size, sizeof(splice_plugin_citation) == 24);
HOLDS(field_first_size, offsetof(splice_plugin_field, also) == 72);
HOLDS(field_size, sizeof(splice_plugin_field) == 80);
HOLDS(caution_size, sizeof(splice_plugin_caution) == 24);
HOLDS(kind_first_size, offsetof(splice_plugin_kind, cut) == 144);
HOLDS(kind_size, sizeof(splice_plugin_kind) == 152);
HOLDS(value_size, sizeof(splice_plugin_value) == 16);
HOLDS(request_size, sizeof(splice_plugin_request) == 72);
HOLDS(row_size, sizeof(splice_plugin_row) == 40);
HOLDS(span_first_size, offsetof(splice_plugin_span, count) == 32);
HOLDS(span_size, sizeof(splice_plugin_span) == 48);
HOLDS(answer_size, sizeof(splice_plugin_answer) == 48);
HOLDS(sink_size, sizeof(splice_plugin_sink_1) == 48);
HOLDS(allowance_size, sizeof(splice_plugin_allowance_1) == 8);
HOLDS(functions_size, sizeof(splice_plugin_functions) == 16);
HOLDS(plugin_first_size, offsetof(splice_plugin, ropes) == 96);
HOLDS(plugin_size, sizeof(splice_plugin) == 104);
#endif
