// Copies rows, marks, values, spans and steps out of the plug-in's records, and checks each.
#include "libsplice/plugin/answer.h"

#include "libsplice/units/show.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <cstring>

namespace libsplice {

namespace {

constexpr double longest = 100.0; // metres of one row, or to one mark
constexpr double widest = 10.0;   // metres of one standard deviation
constexpr double largest = 1e6;   // of a figure, whatever its unit
constexpr std::size_t most_rows = 15;
constexpr std::size_t most_marks = 15;
constexpr std::size_t most_values = 24;
constexpr std::size_t most_cautions = 8;
constexpr std::size_t most_spans = 8;

/// Rows that lie within the finished length, or come back when the splice sets. All others are rope
/// that the end needs.
constexpr std::array may_be_negative{Item::throat_to_bearing, Item::knot_to_bearing, Item::settling,
                                     Item::crossing,          Item::shank,           Item::growth};

bool within(double value, double lowest, double highest) {
    return std::isfinite(value) && value >= lowest && value <= highest;
}

constexpr double most_counted = 1000.0;

/// Rows have not grown since their first layout.
bool is_whole(const splice_plugin_row* row) {
    return row != nullptr && row->size >= sizeof(*row);
}
/// In their first layout spans ended before `count`.
bool is_whole(const splice_plugin_span* span) {
    return span != nullptr && span->size >= offsetof(splice_plugin_span, count);
}

/// The span with what its layout lacks left at 0.
splice_plugin_span in_full(const splice_plugin_span& given) {
    splice_plugin_span span{};
    std::memcpy(&span, &given, std::min<std::size_t>(given.size, sizeof(span)));
    return span;
}

} // namespace

splice_plugin_sink_1 AnswerReader::sink() {
    splice_plugin_sink_1 sink{};
    sink.host = this;
    sink.row = [](void* host, const splice_plugin_row* row) {
        auto& reader = *static_cast<AnswerReader*>(host);
        if (is_whole(row)) {
            reader.add_row(*row);
        } else {
            reader.fail(Code::plug_in_size, "a row is null or of a wrong size");
        }
    };
    sink.mark = [](void* host, std::uint32_t mark, double from_tail_end) {
        static_cast<AnswerReader*>(host)->add_mark(mark, from_tail_end);
    };
    sink.value = [](void* host, std::uint32_t value, double figure) {
        static_cast<AnswerReader*>(host)->add_value(value, figure);
    };
    sink.caution = [](void* host, std::uint32_t caution) {
        static_cast<AnswerReader*>(host)->add_caution(caution);
    };
    sink.span = [](void* host, const splice_plugin_span* span) {
        auto& reader = *static_cast<AnswerReader*>(host);
        if (is_whole(span)) {
            reader.add_span(in_full(*span));
        } else {
            reader.fail(Code::plug_in_size, "a span is null or of a wrong size");
        }
    };
    return sink;
}

void AnswerReader::add_row(const splice_plugin_row& row) {
    if (!has_room("row", row.item, kind_.items.size(), own_rows_, most_rows)) {
        return;
    }
    const Item item = kind_.items[row.item];
    const std::string what = "row " + std::to_string(own_rows_ + 1);
    const bool may_take_off = std::ranges::count(may_be_negative, item) != 0;
    if (!is_number(row.length_m, may_take_off ? -longest : 0.0, longest, what) ||
        !is_number(row.sd_m, 0.0, widest, "the spread of " + what)) {
        return;
    }
    if (row.origin > SPLICE_ORIGIN_STATED_GUESS || row.group > SPLICE_GROUP_ROPE ||
        (row.sd_m > 0.0 && row.origin == SPLICE_ORIGIN_NONE)) {
        fail(Code::plug_in_answer, what + " has a spread without an origin, or an origin or group "
                                          "that is not known");
        return;
    }
    const auto source = cited(row.citation, what);
    if (!source) {
        return;
    }
    ++own_rows_;
    allowance_.add(Row{item,
                       Group(row.group),
                       SpreadOrigin(row.origin),
                       *source,
                       to_nanometres(Length(row.length_m)),
                       row.sd_m,
                       {}});
}

void AnswerReader::add_mark(std::uint32_t mark, double from_tail_end) {
    if (!has_room("mark", mark, kind_.marks.size(), allowance_.marks.size(), most_marks) ||
        !is_number(from_tail_end, 0.0, longest, "a mark's place")) {
        return;
    }
    const Nanometres place = cutting_loss_ + to_nanometres(Length(from_tail_end));
    if (!allowance_.marks.empty() && allowance_.marks.back().from_tail_end > place) {
        fail(Code::plug_in_answer, "its marks do not ascend from the tail end");
        return;
    }
    allowance_.add(Mark{kind_.marks[mark], place});
}

void AnswerReader::add_value(std::uint32_t value, double figure) {
    if (!has_room("value", value, kind_.values.size(), allowance_.others.size(), most_values) ||
        !is_number(figure, -largest, largest, "a value")) {
        return;
    }
    const ValueName name = kind_.values[value];
    if (std::ranges::count(allowance_.others, name, &Value::name) != 0) {
        fail(Code::plug_in_answer, "it gives one value twice");
        return;
    }
    if (name == ValueName::pin_m) {
        allowance_.pin = Length(figure);
    }
    allowance_.add(Value{name, figure});
}

void AnswerReader::add_caution(std::uint32_t caution) {
    if (has_room("caution", caution, kind_.cautions.size(), allowance_.cautions.size(),
                 most_cautions)) {
        allowance_.add(kind_.cautions[caution]);
    }
}

void AnswerReader::add_span(const splice_plugin_span& span) {
    if (!has_room("form of a span", span.form, Span::forms, allowance_.shape.size(), most_spans) ||
        !is_number(span.from_m, 0.0, longest, "a span's start") ||
        !is_number(span.to_m, span.from_m, longest, "a span's end") ||
        !is_number(span.width_m, 0.0, widest, "a span's width") ||
        !is_number(span.count, 0.0, most_counted, "a span's count") ||
        !is_number(span.around_m, 0.0, longest, "what a span goes round")) {
        return;
    }
    allowance_.add(Span{Span::Form(span.form), cutting_loss_ + to_nanometres(Length(span.from_m)),
                        cutting_loss_ + to_nanometres(Length(span.to_m)),
                        to_nanometres(Length(span.width_m)), span.count,
                        to_nanometres(Length(span.around_m))});
}

void AnswerReader::finish(const splice_plugin_answer& answer) {
    if (!is_number(answer.standing_m, 0.0, longest, "the start of the standing part") ||
        !is_number(answer.bury_reach_m, 0.0, longest, "the reach of the bury") ||
        !is_number(answer.fid_reach_m, 0.0, longest, "the reach of the fid") ||
        !is_number(answer.retained, 0.0, 1.0, "the retained strength")) {
        return;
    }
    if (!has_room("list of steps", answer.way, kind_.ways.size(), 0, 1)) {
        return;
    }
    if (answer.retained > 0.0) {
        const auto source = cited(answer.retained_citation, "the retained strength");
        if (!source) {
            return;
        }
        allowance_.retained = Retained{answer.retained, *source};
    }
    allowance_.steps = kind_.ways[answer.way];
    allowance_.standing_mark = cutting_loss_ + to_nanometres(Length(answer.standing_m));
    allowance_.bury_reach = to_nanometres(Length(answer.bury_reach_m));
    allowance_.fid_reach = to_nanometres(Length(answer.fid_reach_m));
    if (std::ranges::count(allowance_.marks, allowance_.standing_mark, &Mark::from_tail_end) == 0) {
        fail(Code::plug_in_answer, "none of its marks lies where its standing part begins");
    } else if (allowance_.total() < 0) {
        fail(Code::plug_in_number, "its rows add up to less than nothing");
    }
}

void AnswerReader::fail(Code code, const std::string& text) {
    if (!fault_) {
        fault_ = Fault{code, "the plug-in \"" + kind_.plug_in + "\", working out " +
                                 std::string(kind_.declaration.name) + ": " + text};
    }
}

bool AnswerReader::has_room(std::string_view what, std::uint32_t index, std::size_t count,
                            std::size_t held, std::size_t most) {
    if (index >= count) {
        fail(Code::plug_in_answer, "it has no " + std::string(what) + " of index " +
                                       std::to_string(index) + "; it declares " +
                                       std::to_string(count));
    } else if (held >= most) {
        fail(Code::plug_in_answer, "it gives more than " + std::to_string(most) + " of one list (" +
                                       std::string(what) + ')');
    }
    return !fault_;
}

bool AnswerReader::is_number(double number, double lowest, double highest,
                             const std::string& what) {
    if (within(number, lowest, highest)) {
        return !fault_;
    }
    const std::string shown = std::isnan(number)   ? "not a number"
                              : std::isinf(number) ? "infinite"
                                                   : show_number(number, 6);
    fail(Code::plug_in_number, what + " is " + shown + "; it may be " + show_number(lowest, 6) +
                                   " to " + show_number(highest, 6));
    return false;
}

std::optional<CitationId> AnswerReader::cited(std::uint32_t citation, const std::string& what) {
    if (citation == SPLICE_CITED_JOB) {
        return cited_job;
    }
    if (citation == SPLICE_CITED_GEOMETRY) {
        return cited_geometry;
    }
    if (citation >= SPLICE_CITED_OWN && citation - SPLICE_CITED_OWN < kind_.citations.size()) {
        return kind_.citations[citation - SPLICE_CITED_OWN];
    }
    fail(Code::plug_in_row_without_source,
         what + (citation == 0 ? " has no source" : " cites what the plug-in does not declare"));
    return std::nullopt;
}

} // namespace libsplice
