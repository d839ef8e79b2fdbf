// A piece made up by hand, with round figures, for the sheets to print.
#pragma once

#include "libsplice/sheet/formats.h"

#include <gtest/gtest.h>

#include <array>
#include <memory>
#include <string>

namespace libsplice {

inline Nanometres mm(std::int64_t count) {
    return count * 1'000'000;
}

inline Book shipped_book() {
    FaultSink faults;
    const std::array<std::string, 1> folders{LIBSPLICE_TABLES_DIR};
    auto catalogue = Catalogue::load(folders, faults);
    EXPECT_TRUE(catalogue.has_value());
    auto book = Book::open(*std::move(catalogue));
    EXPECT_TRUE(book.has_value());
    return *std::move(book);
}

/// The first citation of the tables that names a document.
inline CitationId document_of(const Book& book) {
    for (std::uint16_t i = 0; i < book.catalogue().citations().size(); ++i) {
        if (!book.citation(CitationId{i}).key.empty()) {
            return CitationId{i};
        }
    }
    ADD_FAILURE() << "the tables cite no document";
    return cited_job;
}

inline constexpr std::array bench_steps{
    Step{Action::lead_in,
         {MarkName::far_throat},
         "Lead {tail} of tail inside, past the far throat at {@far throat}."},
    Step{Action::tuck, {MarkName::near_throat, MarkName::far_throat}, "Put in {tucks} tucks."}};

/// 100 - 40 + 300 + 20 = 380 mm beyond the bearing point, far throat at 400 mm.
inline End hand_eye(CitationId document) {
    End eye;
    const auto none = SpreadOrigin::none;
    eye.add(Row{Item::eye_legs, Group::own, none, cited_geometry, mm(100), 0.0});
    eye.add(Row{Item::throat_to_bearing, Group::own, none, cited_job, mm(-40), 0.0});
    eye.add(Row{Item::tail, Group::own, none, document, mm(300), 0.0});
    eye.add(Row{Item::take_up, Group::take_up, none, document, mm(20), 0.01});
    eye.add(Mark{MarkName::taper_start, mm(100)});
    eye.add(Mark{MarkName::near_throat, mm(300)});
    eye.add(Mark{MarkName::far_throat, mm(400)});
    BuryFacts bury;
    bury.tail = millimetres(300.0);
    bury.minimum = millimetres(200.0);
    bury.over = millimetres(7.1);
    eye.bury = bury;
    eye.add(Value{ValueName::tucks, 5.0});
    eye.add(Value{ValueName::throat_angle_deg, 23.4});
    eye.add(Caution{"a tail of {tail} is short", document});
    eye.steps = bench_steps;
    eye.standing_mark = mm(400);
    eye.retained = Retained{0.9, document};
    return eye;
}

/// A line of 2 m between two such eyes: 2000 - 10 + 380 + 380 + 13 + 2 = 2765 mm of rope.
class Bench {
  public:
    Bench() : book(shipped_book()), eye(hand_eye(document_of(book))) {
        kind.declaration.name = "hand-eye";
        kind.declaration.title = "an eye made up for a test";
        kind.declaration.datum = "inside of the eye's crown";
        rope.id = "12-strand HMPE 5 mm";
        rope.title = rope.id;
        rope.construction = Construction::twelve_strand;
        rope.diameter = millimetres(5.0);
        plan.rope = &rope;
        plan.names = &book.names();
        for (BoundEnd& end : plan.ends.ends) {
            end.kind = &kind;
            end.allowance = &eye;
        }
        plan.fit.fit = Fit::exact;
        plan.fit.tolerance = mm(3);
        plan.states.marking_tension = newtons(4.5 * newtons_per_kgf);
        fill_piece();
    }

    std::string sheet(Format format, const SheetOptions& options = {}) {
        std::string text;
        Output output = Output::to_string(text);
        const auto writer = row_of(format).cut(output, book, options);
        writer->begin();
        writer->piece(piece);
        writer->piece(piece);
        writer->end({2, 4, 0});
        output.flush();
        return text;
    }

    std::string end_sheet(Format format, const SheetOptions& options = {}) const {
        std::string text;
        Output output = Output::to_string(text);
        row_of(format).end({kind, rope, eye}, output, book, options);
        output.flush();
        return text;
    }

    /// Turns the piece into one that cannot be cut.
    void refuse() {
        fault = Fault{Code::buries_overlap, "the buries meet", {"job.csv", 7, 3}, "length", {}};
        piece = Piece::refused(piece, piece.finished, fault);
    }

    Book book;
    End eye;
    Kind kind;
    Rope rope;
    BoundLine plan;
    Piece piece;
    Fault fault{};

  private:
    void fill_piece() {
        const auto none = SpreadOrigin::none;
        piece.name = "trapeze line";
        piece.boat = "No 1";
        piece.quantity = 2;
        piece.rope = rope.id;
        piece.end_a = piece.end_b = "hand-eye";
        piece.fit_first = "ball, ring";
        piece.line = &plan;
        piece.finished = mm(2000);
        piece.cut = mm(2765);
        piece.over = mm(15);
        piece.between_marks = mm(1950);
        const auto add = [&](Item item, Group group, std::int64_t length, double sd,
                             std::optional<LineEnd> end) {
            piece.ledger.push_back({Row{item, group, none, cited_job, mm(length), sd}, end});
        };
        add(Item::finished_length, Group::tape, 2000, 0.001, {});
        add(Item::stretch, Group::own, -10, 0.002, {});
        for (const LineEnd end : {LineEnd::a, LineEnd::b}) {
            const Nanometres shift = end == LineEnd::a ? 0 : piece.over;
            std::size_t number = 0;
            for (const Row& row : eye.rows) {
                piece.ledger.push_back({row, end});
            }
            if (shift != 0) {
                piece.marks.push_back({end, MarkName::tail_end, shift, ++number});
            }
            for (const Mark& mark : eye.marks) {
                piece.marks.push_back({end, mark.name, shift + mark.from_tail_end, ++number});
            }
            piece.cautions.push_back({eye.cautions[0], end});
        }
        add(Item::spare, Group::own, 13, 0.0, LineEnd::b);
        add(Item::rounding, Group::own, 2, 0.0, LineEnd::b);
        piece.check = Check{LineEnd::a, LineEnd::b, mm(1970)}; // 2765 - 380 - 415
        piece.strength.retained = eye.retained;
        piece.strength.weaker = LineEnd::a;
        piece.chance_outside = 0.25;
    }
};

} // namespace libsplice
