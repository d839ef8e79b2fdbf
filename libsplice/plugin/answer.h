// Takes a plug-in's answer in, number by number, and keeps the first thing that is wrong with it.
#pragma once

#include "libsplice/plugin/plugged_kind.h"

namespace libsplice {

/// Fills an allowance. Its lists come through the functions of sink(); marks and spans are moved by
/// what the cut itself costs.
class AnswerReader {
  public:
    AnswerReader(const PluggedKind& kind, End& allowance, Nanometres cutting_loss)
        : kind_(kind), allowance_(allowance), cutting_loss_(cutting_loss) {}

    /// The functions that a plug-in calls; this must outlive them.
    [[nodiscard]] splice_plugin_sink_1 sink();
    /// What is said once of an end; after all lists.
    void finish(const splice_plugin_answer& answer);

    [[nodiscard]] const std::optional<Fault>& fault() const { return fault_; }

  private:
    void add_row(const splice_plugin_row& row);
    void add_mark(std::uint32_t mark, double from_tail_end);
    void add_value(std::uint32_t value, double figure);
    void add_caution(std::uint32_t caution);
    void add_span(const splice_plugin_span& span);

    void fail(Code code, const std::string& text);
    /// Whether the index is one of `count`, and a list of at most `most` has room for one more.
    [[nodiscard]] bool has_room(std::string_view what, std::uint32_t index, std::size_t count,
                                std::size_t held, std::size_t most);
    [[nodiscard]] bool is_number(double number, double lowest, double highest,
                                 const std::string& what);
    [[nodiscard]] std::optional<CitationId> cited(std::uint32_t citation, const std::string& what);

    const PluggedKind& kind_;
    End& allowance_;
    Nanometres cutting_loss_;
    std::size_t own_rows_ = 0;
    std::optional<Fault> fault_;
};

} // namespace libsplice
