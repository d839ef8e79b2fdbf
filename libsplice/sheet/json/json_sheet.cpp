// A cut sheet as JSON, piece by piece.
#include "libsplice/base/version.h"
#include "libsplice/sheet/json/json_format.h"
#include "libsplice/sheet/json/json_line.h"
#include "libsplice/sheet/json/json_parts.h"
#include "libsplice/sheet/json/json_stretch.h"
#include "libsplice/sheet/panel/panel_marks.h"
#include "libsplice/sheet/panel/working.h"
#include "libsplice/sheet/words/piece_text.h"
#include "libsplice/sheet/words/route_words.h"
#include "libsplice/sheet/words/words.h"

namespace libsplice {

namespace {

class JsonSheet : public SheetWriter {
  public:
    JsonSheet(Output& output, Credits credits, bool working)
        : output_(output), json_(output), credits_(credits), citing_(credits), working_(working) {}

    void begin() override;
    void piece(const Piece& piece) override;
    void end(const Counts& counts) override;

  private:
    void write_lengths(const Piece& piece);
    void write_marks(const Piece& piece);
    void write_check(const Piece& piece);
    void write_strength(const Piece& piece);
    void write_load_working(const Piece& piece);
    void write_cautions(const Piece& piece);
    void write_sleeve(const Piece& piece);
    void write_making(const Piece& piece);
    void write_chance_cause(const Piece& piece);
    void write_plan(const Piece& piece);
    void write_job_texts(const Piece& piece);

    Output& output_;
    JsonText json_;
    Credits credits_;
    CitationLog citing_;
    std::string text_;
    bool working_;
};

void JsonSheet::begin() {
    json_.begin_answer();
    json_.text("version", version());
    json_.text("tables", credits_.tables_version());
    write_plug_ins(json_, credits_);
    json_.key("pieces");
    json_.begin_array();
}

void JsonSheet::piece(const Piece& piece) {
    json_.new_line();
    json_.begin_object();
    write_lengths(piece);
    json_.key("ledger");
    const bool routed = piece.line != nullptr && piece.line->route;
    write_ledger(json_, piece.ledger, "line", citing_,
                 routed ? route_working(*piece.line->route, UnitSystem::metric) : std::string());
    write_marks(piece);
    write_check(piece);
    write_strength(piece);
    write_cautions(piece);
    json_.key("error");
    if (piece.fault != nullptr) {
        write_error(json_, *piece.fault);
    } else {
        json_.null();
    }
    write_making(piece);
    write_plan(piece);
    write_job_texts(piece);
    json_.number("design_factor", piece.strength.design_factor);
    json_.number("load_n", piece.line != nullptr && piece.line->strength.load
                               ? std::optional(piece.line->strength.load->si())
                               : std::nullopt);
    write_load_working(piece);
    json_.key("carries_person");
    piece.line != nullptr ? json_.boolean(piece.line->person.carries) : json_.null();
    write_person_rules(json_, piece, citing_);
    write_sleeve(piece);
    write_route(json_, piece);
    write_stretch(json_, piece, citing_);
    if (working_) {
        write_lengths_at_pulls(json_, piece);
    }
    json_.end_object();
}

void JsonSheet::write_sleeve(const Piece& piece) {
    json_.key("sleeve");
    if (piece.line == nullptr || !piece.line->along.sleeve) {
        json_.null();
        return;
    }
    const Sleeve& sleeve = *piece.line->along.sleeve;
    json_.begin_object();
    json_.metres("finished_m", to_nanometres(sleeve.finished));
    json_.metres("from_m", to_nanometres(sleeve.from));
    json_.metres("cut_m", to_nanometres(sleeve.cut));
    json_.number("sd_m", sleeve.sd.si());
    json_.text("source", citing_.text(sleeve.source));
    json_.end_object();
}

void JsonSheet::end(const Counts& counts) {
    json_.end_array();
    json_.new_line();
    json_.key("sources");
    write_sources(json_, citing_);
    json_.new_line();
    json_.key("counts");
    json_.begin_object();
    for (const auto& [name, count] : {std::pair{"lines", counts.lines},
                                      {"pieces", counts.pieces},
                                      {"refused", counts.refused}}) {
        json_.key(name);
        json_.whole(static_cast<long long>(count));
    }
    json_.end_object();
    json_.end_object();
    output_.write('\n');
}

void JsonSheet::write_lengths(const Piece& piece) {
    json_.text("name", piece.name);
    json_.text("boat", piece.boat);
    json_.key("quantity");
    json_.whole(piece.quantity);
    json_.text("rope", piece.rope);
    json_.metres("finished_m", piece.finished);
    json_.metres("cut_m", piece.fault == nullptr ? std::optional(piece.cut) : std::nullopt);
}

void JsonSheet::write_marks(const Piece& piece) {
    json_.key("marks");
    json_.begin_array();
    if (piece.line != nullptr) {
        libsplice::write_marks(json_, piece.marks, *piece.line->names, true);
    }
    json_.end_array();
}

void JsonSheet::write_check(const Piece& piece) {
    json_.key("check");
    if (!piece.check) {
        json_.null();
        return;
    }
    json_.begin_object();
    json_.text("from", letter_of(piece.check->from));
    json_.text("to", letter_of(piece.check->to));
    json_.metres("reads_m", piece.check->reads);
    json_.metres("reads_loaded_m", piece.check->reads_loaded);
    json_.end_object();
}

void JsonSheet::write_strength(const Piece& piece) {
    json_.key("retained_strength");
    if (!piece.strength.retained) {
        json_.null();
        return;
    }
    citing_.use(piece.strength.retained->source);
    json_.number(piece.strength.retained->share);
}

void JsonSheet::write_load_working(const Piece& piece) {
    json_.key("load");
    if (piece.line == nullptr || !piece.line->strength.load_working) {
        json_.null();
        return;
    }
    const LoadWorking& load = *piece.line->strength.load_working;
    json_.begin_object();
    json_.text("working", show_working(load.working, UnitSystem::metric));
    json_.text("source", citing_.text(load.source));
    json_.end_object();
}

void JsonSheet::write_cautions(const Piece& piece) {
    json_.key("cautions");
    json_.begin_array();
    for (const PieceCaution& caution : piece.cautions) {
        text_.clear();
        append_caution_with_end(text_, piece, caution, UnitSystem::metric, citing_);
        json_.text(text_);
    }
    json_.end_array();
}

void JsonSheet::write_making(const Piece& piece) {
    json_.key("steps");
    json_.begin_array();
    for (const PieceStep& step : piece.steps) {
        text_.clear();
        append_step(text_, piece, step, UnitSystem::metric);
        write_step(json_, step, text_);
    }
    json_.end_array();
    json_.metres("between_marks_m",
                 piece.line != nullptr ? std::optional(piece.between_marks) : std::nullopt);
}

void JsonSheet::write_chance_cause(const Piece& piece) {
    json_.key("outside_cause");
    if (!piece.chance_cause) {
        json_.null();
        return;
    }
    json_.begin_object();
    json_.text("item", piece.line->names->of(piece.chance_cause->item));
    json_.text("cure", piece.chance_cause->cure);
    json_.number("after", piece.chance_cause->after);
    json_.end_object();
}

void JsonSheet::write_plan(const Piece& piece) {
    const BoundLine* plan = piece.line;
    const bool pulled = plan != nullptr && plan->states.marking_tension > Force();
    json_.number("marking_tension_n",
                 pulled ? std::optional(plan->states.marking_tension.si()) : std::nullopt);
    json_.key("prestretched");
    plan != nullptr ? json_.boolean(plan->states.prestretched) : json_.null();
    json_.key("fit");
    plan != nullptr ? json_.text(name_of(plan->fit.fit)) : json_.null();
    json_.metres("tolerance_m", plan != nullptr ? plan->fit.tolerance : std::nullopt);
    json_.number("outside_tolerance", piece.chance_outside);
    write_chance_cause(piece);
    json_.number("pair_apart", piece.chance_apart);
    json_.key("first_end");
    plan != nullptr ? json_.text(letter_of(plan->ends.first_end)) : json_.null();
}

void JsonSheet::write_job_texts(const Piece& piece) {
    json_.text("state", piece.state);
    json_.text("pair", piece.pair);
    json_.text("lot", piece.lot);
    json_.text("colour", piece.colour);
    json_.text("fit_first", piece.fit_first);
    json_.text("note", piece.note);
}

} // namespace

std::unique_ptr<SheetWriter> json_sheet(Output& output, Credits credits,
                                        const SheetOptions& options) {
    return std::make_unique<JsonSheet>(output, credits, options.working);
}

} // namespace libsplice
