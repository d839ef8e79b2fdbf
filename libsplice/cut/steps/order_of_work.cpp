// Decides what is done before what: nothing is threaded, rove, cut or hung too late.
#include "libsplice/cut/steps/order_of_work.h"

#include "libsplice/cut/layout.h"

#include <algorithm>

namespace libsplice {

namespace {

constexpr std::string_view put_marks_on = "Put the marks on at the pull to mark at.";
constexpr std::string_view put_trim_marks_on = "Mark where its own rope ends, for the trim.";
constexpr std::string_view thread_now =
    "Thread now, because it does not go on once this end is closed: {named}.";
constexpr std::string_view captive_now =
    "Put the {named} into this end now: it is closed and does not go in once the end is drawn up.";
constexpr std::string_view reeve_now = "Reeve now: lead the free end through all that its route "
                                       "names, in order, without a turn too many.";
constexpr std::string_view make_aboard =
    "Make this end aboard, with the line in its place. Count its marks from the bearing point of "
    "the other end.";
constexpr std::string_view make_first_aboard = "Make this end aboard, on what it is to hold.";
constexpr std::string_view close_aboard =
    "Do the rest aboard: lead the line where it runs, for once it is closed it does not come out.";
constexpr std::string_view read_check =
    "With the line at its pull to mark at, from the bearing point of the end made first to the "
    "{named} mark of the other end, it must read {1} before the first end has been loaded, and {2} "
    "once it has. Write down what it reads.";
constexpr std::string_view not_hung_yet =
    "This eye is not hung yet, so measure from its throat: hung, its bearing point will lie {1} "
    "beyond that.";
constexpr std::string_view cut_raw_end =
    "Cut the raw end square through a turn of tape. Leave on what lies outside the bearing-point "
    "mark, {1}: the last cut is made aboard.";
constexpr std::string_view cut_it_aboard = "Aboard, once the line has been tried, cut it where it "
                                           "fits, not inside the bearing-point mark.";
constexpr std::string_view mark_as_cut =
    "Mark the end as it is now: its {named} mark lies {1} from the new cut.";
constexpr std::array closing_actions{Action::lead_in,
                                     Action::pass_tail_through_host,
                                     Action::pass_line_through_tail,
                                     Action::turn_eye_through,
                                     Action::bring_together,
                                     Action::bury,
                                     Action::tuck,
                                     Action::tie,
                                     Action::press,
                                     Action::seize,
                                     Action::stitch};
constexpr std::array thinning_actions{Action::taper, Action::unlay, Action::strip,
                                      Action::draw_core};

template <class List>
bool is_one_of(const List& list, Action action) {
    return std::ranges::find(list, action) != list.end();
}

std::size_t index_of(LineEnd end) {
    return static_cast<std::size_t>(end);
}

/// Builds the list, step after step.
class Work {
  public:
    explicit Work(const BoundLine& line) : line_(line) {}

    [[nodiscard]] OrderOfWork take() { return std::move(work_); }
    void add_line();

  private:
    [[nodiscard]] bool made(LineEnd end) const { return line_.end(end).allowance->made; }
    [[nodiscard]] bool rove() const { return line_.route && line_.route->rove; }
    [[nodiscard]] bool hangs(LineEnd end) const {
        return std::ranges::find(line_.end(end).allowance->steps, Action::hang, &Step::action) !=
               line_.end(end).allowance->steps.end();
    }
    /// Whether the end made first is hung before the last is made.
    [[nodiscard]] bool is_hung_early() const {
        return rove() || line_.last().captive || line_.last().aboard;
    }
    /// Whether the end is cut only aboard: it is plain, and rope lies outside it.
    [[nodiscard]] bool cut_aboard(LineEnd end) const {
        return !made(end) && has_outside(line_, end) && line_.fit.fit != Fit::exact;
    }

    PieceStep& add(std::optional<LineEnd> end, Action action, std::string_view text);
    void add_kind_step(LineEnd end, const Step& step);
    void add_numbers(PieceStep& step, LineEnd end, std::span<const MarkName> names) const;
    [[nodiscard]] std::optional<std::size_t> number_of(LineEnd end, MarkName name) const;

    void add_thread_and_reeve();
    void add_outside_marks(LineEnd end);
    void add_trim(LineEnd end);
    void add_check();
    void add_captive(LineEnd end);
    void add_kind_steps(LineEnd end, std::span<const Step> steps);
    void add_made(LineEnd end);
    void add_hanging(LineEnd end);
    void add_plain_start(LineEnd end);
    void add_plain_rest(LineEnd end);
    void add_open_line();
    void add_last(LineEnd last);

    const BoundLine& line_;
    OrderOfWork work_;
};

std::optional<std::size_t> Work::number_of(LineEnd end, MarkName name) const {
    const std::size_t outside = marks_outside(line_, end);
    if (name == MarkName::trim || name == MarkName::tail_end) {
        const bool there = outside > (name == MarkName::trim ? 1U : 0U);
        return there ? std::optional(name == MarkName::trim ? std::size_t{1} : outside)
                     : std::nullopt;
    }
    const End& own = *line_.end(end).allowance;
    const auto mark = std::ranges::find(own.marks, name, &Mark::name);
    return mark == own.marks.end() ? std::nullopt : std::optional(outside + mark->number);
}

void Work::add_numbers(PieceStep& step, LineEnd end, std::span<const MarkName> names) const {
    if (step.action == Action::mark && names.empty()) {
        const End& own = *line_.end(end).allowance;
        const std::size_t count =
            marks_outside(line_, end) + (own.marks.empty() ? 0 : own.marks.back().number);
        for (std::size_t number = 1; number <= count; ++number) {
            step.at.push_back(static_cast<std::uint8_t>(number));
        }
    }
    for (const MarkName name : names) {
        if (const auto number = number_of(end, name)) {
            step.at.push_back(static_cast<std::uint8_t>(*number));
        }
    }
}

PieceStep& Work::add(std::optional<LineEnd> end, Action action, std::string_view text) {
    PieceStep step;
    step.end = end;
    step.action = action;
    step.text = text;
    work_.steps.push_back(step);
    return work_.steps.back();
}

void Work::add_kind_step(LineEnd end, const Step& step) {
    PieceStep& added = add(end, step.action, step.text);
    added.part = step.part;
    add_numbers(added, end, {step.marks.begin(), step.marks.end()});
}

void Work::add_thread_and_reeve() {
    work_.fit_first = work_.steps.size();
    add({}, Action::fit_first, thread_now);
    if (rove()) {
        add({}, Action::reeve, reeve_now);
    }
}

/// The marks that lie outside those of the kind's own steps.
void Work::add_outside_marks(LineEnd end) {
    if (has_outside(line_, end)) {
        constexpr std::array both{MarkName::trim, MarkName::tail_end};
        add_numbers(add(end, Action::mark, put_trim_marks_on), end, both);
    }
}

/// Before anything of the end is thinned or closed.
void Work::add_trim(LineEnd end) {
    if (!has_outside(line_, end)) {
        return;
    }
    work_.trim[index_of(end)] = work_.steps.size();
    const std::array at{marks_outside(line_, end) > 1 ? MarkName::trim : MarkName::tail_end};
    PieceStep& step = add(end, Action::trim, {});
    step.named = line_.names->of(at.front());
    add_numbers(step, end, at);
}

void Work::add_check() {
    if (!has_check(line_) || !made(line_.ends.first_end)) {
        return; // without a made end it is no more than a measured mark
    }
    if (hangs(line_.ends.first_end) && !is_hung_early()) {
        PieceStep& step = add(line_.ends.first_end, Action::plain, not_hung_yet);
        const auto& rows = line_.first().allowance->rows;
        const auto row = std::ranges::find(rows, Item::throat_to_bearing, &Row::item);
        step.amounts.push_back(amount_of(from_nanometres(row == rows.end() ? 0 : -row->length)));
    }
    work_.check = work_.steps.size();
    const End& last = *line_.last().allowance;
    const auto mark = std::ranges::find(last.marks, last.standing_mark, &Mark::from_tail_end);
    add({}, Action::measure, read_check).named =
        mark == last.marks.end() ? "last" : line_.names->of(mark->name);
}

void Work::add_captive(LineEnd end) {
    if (line_.end(end).captive) {
        add(end, Action::fit_first, captive_now).named = line_.end(end).fitting;
    }
}

/// The kind's own steps, with the captive fitting before the first that closes the end, and the
/// trim as soon as the marks are on.
void Work::add_kind_steps(LineEnd end, std::span<const Step> steps) {
    const auto closes = std::ranges::find_if(
        steps, [](const Step& step) { return is_one_of(closing_actions, step.action); });
    const auto works = std::ranges::find_if(steps, [](const Step& step) {
        return is_one_of(closing_actions, step.action) ||
               is_one_of(thinning_actions, step.action) || step.action == Action::trim;
    });
    const bool marks = std::ranges::find(steps, Action::mark, &Step::action) != steps.end();
    const bool marks_all = std::find_if(steps.begin(), works, [](const Step& step) {
                               return step.action == Action::mark && step.marks.empty();
                           }) != works;
    const auto names =
        std::ranges::find_if(steps, [](const Step& step) { return !step.marks.empty(); });
    auto trims = works;
    for (auto step = steps.begin(); step != works; ++step) {
        trims = step->action == Action::mark ? step + 1 : trims;
    }
    const LineEnd trimmed = line_.ends.closing ? other(end) : end;
    // Where the kind says so: what is on the line does not go through a tail with it.
    const auto own = line_.ends.closing ? std::ranges::find(steps, Action::fit_first, &Step::action)
                                        : steps.end();
    const auto threads = own == steps.end() ? closes : own;
    for (auto step = steps.begin(); step != steps.end(); ++step) {
        if (step == std::min(works, names) && !marks) {
            add_kind_step(end, Step{Action::mark, {}, put_marks_on});
        }
        if (step == std::min(trims, threads) && line_.ends.closing && line_.end(end).aboard) {
            add(end, Action::plain, close_aboard);
        }
        if (step == trims) {
            if (trimmed != end || (marks && !marks_all)) {
                add_outside_marks(trimmed);
            }
            add_trim(trimmed);
        }
        if (step == threads && line_.ends.closing) {
            add_thread_and_reeve();
        }
        if (step == closes) {
            add_captive(end);
            if (line_.ends.closing) {
                add_captive(other(end));
            }
        }
        if (step->action != Action::trim && step != own) {
            add_kind_step(end, *step);
        }
    }
    if (trims == steps.end()) {
        add_trim(trimmed);
    }
}

/// All but what hangs the end on something.
void Work::add_made(LineEnd end) {
    const auto steps = line_.end(end).allowance->steps;
    const auto hang = std::ranges::find(steps, Action::hang, &Step::action);
    add_kind_steps(end, {steps.begin(), hang});
}

void Work::add_hanging(LineEnd end) {
    const auto steps = line_.end(end).allowance->steps;
    const auto hang = std::ranges::find(steps, Action::hang, &Step::action);
    for (const Step& step : std::span(hang, steps.end())) {
        add_kind_step(end, step);
    }
}

/// What is done to a plain end at the bench. One that is cut aboard keeps all its rope until then,
/// and gets its marks inside the cut once that is made.
void Work::add_plain_start(LineEnd end) {
    if (cut_aboard(end)) {
        constexpr std::array up_to_the_cut{MarkName::tail_end, MarkName::bearing_point};
        add_numbers(add(end, Action::mark, put_marks_on), end, up_to_the_cut);
        work_.cut_raw[index_of(end)] = work_.steps.size();
        add(end, Action::cut, cut_raw_end);
        return;
    }
    add_kind_step(end, Step{Action::mark, {}, put_marks_on});
    add_trim(end);
    for (const Step& step : line_.end(end).allowance->steps) {
        add_kind_step(end, step);
    }
}

/// What is left to do to a plain end that is cut aboard.
void Work::add_plain_rest(LineEnd end) {
    if (!cut_aboard(end)) {
        return;
    }
    work_.aboard[index_of(end)] = work_.steps.size();
    constexpr std::array at{MarkName::bearing_point};
    add_numbers(add(end, Action::cut_aboard, cut_it_aboard), end, at);
    const End& own = *line_.end(end).allowance;
    for (const Mark& mark : own.marks) {
        if (mark.from_tail_end > own.standing_mark) {
            PieceStep& step = add(end, Action::mark, mark_as_cut);
            step.named = line_.names->of(mark.name);
            step.amounts.push_back(
                amount_of(from_nanometres(mark.from_tail_end - own.standing_mark)));
            add_numbers(step, end, std::array{mark.name});
        }
    }
    bool is_cut = false;
    for (const Step& step : line_.end(end).allowance->steps) {
        if (step.action == Action::cut && step.part == Part::rope && !is_cut) {
            is_cut = true; // this is the cut that is made aboard
        } else {
            add_kind_step(end, step);
        }
    }
}

/// The end made last. What has to be on the line goes on over an end that is still free: over this
/// one if the first is made, else over the first.
void Work::add_last(LineEnd last) {
    const bool first_is_free = !made(other(last));
    const bool put_on_before =
        !made(last) || !first_is_free || (line_.end(last).aboard && !hangs(last));
    if (put_on_before) {
        add_thread_and_reeve();
    }
    if (!made(last)) {
        add_plain_start(last);
        add_plain_rest(last);
        return;
    }
    if (line_.end(last).aboard) {
        add(last, Action::plain, make_aboard);
    }
    add_made(last);
    add_hanging(last);
    if (!put_on_before) {
        add_thread_and_reeve();
    }
}

void Work::add_open_line() {
    const LineEnd first = line_.ends.first_end;
    const LineEnd last = line_.ends.last_end();
    const bool hung_early = is_hung_early();
    if (made(first)) {
        if (line_.first().aboard) {
            add(first, Action::plain, make_first_aboard);
        }
        add_made(first);
    } else {
        add_plain_start(first);
    }
    if (made(first) && hung_early) {
        add_hanging(first);
    }
    add_check();
    add_last(last);
    if (made(first) && !hung_early) {
        add_hanging(first);
    }
    if (!made(first)) {
        add_plain_rest(first);
    }
}

void Work::add_line() {
    if (line_.ends.closing) {
        add_kind_steps(*line_.ends.closing, line_.end(*line_.ends.closing).allowance->steps);
        return;
    }
    add_open_line();
}

} // namespace

OrderOfWork order_of_work(const BoundLine& line) {
    Work work(line);
    work.add_line();
    return work.take();
}

} // namespace libsplice
