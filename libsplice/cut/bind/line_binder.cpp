#include "libsplice/cut/bind/line_binder.h"

#include "libsplice/cut/bind/along_line.h"
#include "libsplice/cut/bind/cell_reader.h"
#include "libsplice/cut/bind/ends.h"
#include "libsplice/cut/bind/person.h"
#include "libsplice/cut/bind/route.h"
#include "libsplice/cut/bind/states.h"
#include "libsplice/mechanics/chance/spread.h"

namespace libsplice {

namespace {

constexpr std::array<std::string_view, 3> fits{"exact", "trim-aboard", "at-least"};
constexpr std::array<std::string_view, 2> end_letters{"a", "b"};
constexpr Nanometres usual_step = nanometres_per_metre / 200;  // 5 mm
constexpr Nanometres exact_step = nanometres_per_metre / 1000; // 1 mm

void bind_fit(const CutSettings& settings, LineFields& fields, LinePlan& plan) {
    plan.fit = static_cast<Fit>(
        fields.choice(Column::fit, fits).value_or(static_cast<std::size_t>(Fit::at_least)));
    plan.tolerance = fields.length(Column::tolerance, 1);
    if (plan.tolerance && plan.fit != Fit::exact) {
        fields.add(Fault{Code::tolerance_without_exact,
                         "a tolerance goes with fit exact; leave one of them out"},
                   Column::tolerance);
    }
    plan.first_end =
        static_cast<LineEnd>(fields.choice(Column::first_end, end_letters).value_or(0));
    const Nanometres usual = plan.fit == Fit::exact ? exact_step : usual_step;
    plan.step = settings.step ? to_nanometres(*settings.step) : usual;
    plan.spare_quantile = normal_quantile(1.0 - settings.risk);
}

void bind_load(LineFields& fields, LinePlan& plan) {
    const auto load = fields.tension(Column::load);
    if (!load) {
        return;
    }
    if (load->basis != Tension::Basis::force) {
        fields.add(Fault{Code::not_a_tension, "the load must be a force such as 1.2 kN"},
                   Column::load);
        return;
    }
    plan.load = Force(load->value);
}

void bind_fixed_columns(const CutSettings& settings, LineFields& fields, LinePlan& plan) {
    bind_fit(settings, fields, plan);
    plan.prestretched = fields.yes(Column::prestretched);
    plan.person = fields.yes(Column::carries_person);
    bind_load(fields, plan);
    plan.tension = fields.tension(Column::tension).value_or(Tension{});
    plan.extra = fields.length(Column::extra, 0).value_or(0);
    plan.wear = fields.length(Column::wear, 0).value_or(0);
    plan.spare = fields.length(Column::spare, 0);
}

} // namespace

std::span<const std::string_view> fit_names() {
    return fits;
}

LineBinder::LineBinder(const Book& book, const CutSettings& settings)
    : book_(book), settings_(settings), ends_(book) {}

const Rope* LineBinder::find_rope(const JobLine& line, LineFields& fields) {
    const auto text = line.text(Column::rope);
    if (text.empty()) {
        fields.add(Fault{Code::cell_missing, "a line needs its rope"}, Column::rope);
        return nullptr;
    }
    const auto known = rope_by_text_.find(std::string(text));
    if (known != rope_by_text_.end()) {
        return known->second;
    }
    auto rope = book_.catalogue().rope(text);
    if (!rope) {
        fields.add(rope.error(), Column::rope);
        return nullptr;
    }
    ropes_.push_back(*std::move(rope));
    rope_by_text_.emplace(text, &ropes_.back());
    return &ropes_.back();
}

std::optional<LinePlan> LineBinder::bind(const JobLine& line, std::vector<Fault>& faults) {
    const std::size_t faults_before = faults.size();
    LineFields fields(line, faults);
    LinePlan plan;
    plan.citations = &book_.catalogue().citations();
    plan.names = &book_.names();
    bind_fixed_columns(settings_, fields, plan);
    read_way(line, fields, plan);
    plan.rope = find_rope(line, fields);
    bind_ends(line, book_, ends_, fields, plan);
    if (plan.rope != nullptr && has_route(line) && line.text(Column::length).empty()) {
        bind_route(line, settings_, faults, plan);
    }
    if (faults.size() != faults_before) {
        return std::nullopt;
    }
    bind_states(book_, settings_, fields, plan);
    bind_way(book_, fields, plan);
    bind_person_rules(book_, plan);
    return faults.size() == faults_before ? std::optional(std::move(plan)) : std::nullopt;
}

} // namespace libsplice
