// Marks lie on the piece, agree with the ledger, and the spare moves only those of the last end.
#include "jobs.h"

namespace libsplice::testing {
namespace {

double last_mark(const Piece& piece, LineEnd end) {
    double last = 0.0;
    for (const PieceMark& mark : piece.marks) {
        last = mark.end == end ? in_millimetres(mark.from_end) : last;
    }
    return last;
}

/// The standing marks of kinds: where a far throat, a knot's face or the bearing point lies.
double standing_mark(const Piece& piece, LineEnd end) {
    for (const MarkName name : {MarkName::far_throat, MarkName::knot_standing, MarkName::loop_far,
                                MarkName::knot_face, MarkName::bearing_point}) {
        if (const double mark = mark_of(piece, end, name); !std::isnan(mark)) {
            return mark;
        }
    }
    return not_there;
}

TEST(Marks, LastOnesAndWhatLiesBetweenAreThePiece) {
    for (const Made& made : cut_lines(many_sorts()).lines) {
        const Piece& piece = made.piece;
        EXPECT_NEAR(last_mark(piece, LineEnd::a) + in_millimetres(piece.between_marks) +
                        last_mark(piece, LineEnd::b),
                    in_millimetres(piece.cut), near);
    }
}

TEST(Marks, AscendAndLieOnThePiece) {
    for (const Made& made : cut_lines(many_sorts()).lines) {
        std::map<LineEnd, Nanometres> before;
        LineEnd end_before = LineEnd::a;
        for (const PieceMark& mark : made.piece.marks) {
            EXPECT_GE(mark.from_end, 0);
            EXPECT_LE(mark.from_end, made.piece.cut);
            EXPECT_GE(mark.end, end_before); // those of end a stand first
            EXPECT_TRUE(!before.contains(mark.end) || mark.from_end >= before[mark.end]);
            before[mark.end] = mark.from_end;
            end_before = mark.end;
        }
    }
}

/// What the finished length has become on the bench.
double length_at_marking_tension(const Piece& piece) {
    double length = length_of(piece, Item::finished_length);
    for (const Item item : {Item::stretch, Item::first_stretch, Item::slack}) {
        length += length_or_none(piece, item);
    }
    for (const LineEnd end : {LineEnd::a, LineEnd::b}) {
        length += length_or_none(piece, Item::fitting, end);
        length += length_or_none(piece, Item::pin_centre, end);
    }
    return length;
}

/// Length at the marking tension, less the eye (or loop) of the end made last, with its take-up and
/// whatever draws out or closes up.
double check_by_hand(const Piece& piece, LineEnd last) {
    double reads = length_at_marking_tension(piece);
    for (const Item item : {Item::throat_to_bearing, Item::knot_to_bearing, Item::take_up,
                            Item::settling, Item::crossing, Item::cover_take_up}) {
        reads += length_or_none(piece, item, last);
    }
    if (find_row(piece, Item::milk_out) != nullptr) {
        reads += length_of(piece, Item::milk_out);
    }
    return reads;
}

TEST(Check, ReadsTheLengthToTheFarThroatOfTheOtherEnd) {
    int seen = 0;
    for (const Made& made : cut_lines(many_sorts()).lines) {
        const auto& check = made.piece.check;
        if (check) {
            EXPECT_EQ(check->from, made.piece.line->ends.first_end);
            EXPECT_EQ(check->to, other(check->from));
            EXPECT_NEAR(in_millimetres(check->reads_loaded), check_by_hand(made.piece, check->to),
                        near);
            ++seen;
        }
    }
    EXPECT_GE(seen, 5);
}

TEST(Check, TwoEyesByHand) {
    // 4000 - 36 + 23.1550892, what a loaded bury takes up.
    const auto eyes = with(eye_at("end_a", "buried-eye", "36 mm", "12 mm"),
                           eye_at("end_b", "buried-eye", "36 mm", "12 mm"));
    const auto one = cut_one(with(with(plain_line, eyes), {{"fit", "exact"}}));
    ASSERT_TRUE(one.piece().check);
    EXPECT_NEAR(in_millimetres(one.piece().check->reads_loaded), 3987.1550891525, near);
}

TEST(Check, IsWhatTheRopeMeasuresFromTheFirstEyeToTheMark) {
    // Once the first end is made, its bearing point lies its allowance from its cut end; the mark
    // lies where it was put from the other cut end.
    for (const Made& made : cut_lines(many_sorts()).lines) {
        const Piece& piece = made.piece;
        if (!piece.check) {
            continue;
        }
        double first = 0.0;
        for (const LedgerRow& entry : piece.ledger) {
            const bool of_first = entry.end == piece.check->from &&
                                  entry.row.item != Item::fitting &&
                                  entry.row.item != Item::pin_centre;
            first += of_first ? in_millimetres(entry.row.length) : 0.0;
        }
        EXPECT_NEAR(in_millimetres(piece.check->reads_loaded),
                    in_millimetres(piece.cut) - first - standing_mark(piece, piece.check->to),
                    near);
    }
}

TEST(Check, IsMissingOnlyWhereTheLastEndIsFree) {
    const auto free = cut_one(with(plain_line, {{"end_a", "buried-eye"}}));
    EXPECT_FALSE(free.piece().check);
    const auto exact = cut_one(with(plain_line, {{"fit", "exact"}}));
    ASSERT_TRUE(exact.piece().check);
    EXPECT_NEAR(in_millimetres(exact.piece().check->reads_loaded), 4000.0, near);
}

TEST(Marks, SpareAndRoundingMoveOnlyTheEndMadeLast) {
    const auto eyes = with(eye_at("end_a", "buried-eye", "36 mm", "12 mm"),
                           eye_at("end_b", "locked-eye", "60 mm", "12 mm"));
    for (const auto& [first_letter, first] :
         {std::pair{"a", LineEnd::a}, std::pair{"b", LineEnd::b}}) {
        const Line line = with(with(plain_line, eyes), {{"first_end", first_letter}});
        const auto without = cut_one(with(line, {{"spare", "0 mm"}}), step_of(millimetres(1.0)));
        const auto over = cut_one(with(line, {{"spare", "73 mm"}}), step_of(millimetres(10.0)));
        for (const MarkName name : {MarkName::taper_start, MarkName::near_throat, MarkName::crown,
                                    MarkName::far_throat, MarkName::bury_end, MarkName::exit}) {
            EXPECT_EQ(mark_of(without.piece(), first, name), mark_of(over.piece(), first, name));
            EXPECT_NEAR(mark_of(over.piece(), other(first), name) -
                            mark_of(without.piece(), other(first), name),
                        in_millimetres(over.piece().outside(other(first)) -
                                       without.piece().outside(other(first))),
                        near);
        }
        EXPECT_EQ(without.piece().between_marks, over.piece().between_marks);
        EXPECT_EQ(without.piece().check->reads_loaded, over.piece().check->reads_loaded);
        EXPECT_NEAR(mark_of(over.piece(), other(first), MarkName::tail_end),
                    in_millimetres(over.piece().outside(other(first))), near);
        EXPECT_TRUE(std::isnan(mark_of(over.piece(), first, MarkName::tail_end)));
    }
}

TEST(Marks, MadeFirstMirrorsThePiece) {
    const auto at_a = eye_at("end_a", "buried-eye", "36 mm", "12 mm");
    const auto at_b = eye_at("end_b", "buried-eye", "36 mm", "12 mm");
    const auto one = cut_one(with(with(plain_line, at_a), {{"end_b", "figure-eight"}}));
    const auto turned =
        cut_one(with(with(plain_line, at_b), {{"end_a", "figure-eight"}, {"first_end", "b"}}));
    EXPECT_EQ(one.piece().cut, turned.piece().cut);
    EXPECT_EQ(one.piece().between_marks, turned.piece().between_marks);
    EXPECT_EQ(one.piece().check->reads_loaded, turned.piece().check->reads_loaded);
    EXPECT_EQ(turned.piece().check->from, LineEnd::b);
    ASSERT_EQ(one.piece().marks.size(), turned.piece().marks.size());
    for (const PieceMark& mark : one.piece().marks) {
        EXPECT_EQ(in_millimetres(mark.from_end),
                  mark_of(turned.piece(), other(mark.end), mark.name));
    }
}

TEST(Marks, FidThatComesOutInTheFirstBuryIsCautioned) {
    const Line eyes = with(eye_at("end_a", "buried-eye", "36 mm", "12 mm"),
                           eye_at("end_b", "buried-eye", "36 mm", "12 mm"));
    // The fid reaches 540 mm and the first bury 407.309: short of 947 mm between the throats.
    const auto tight = cut_one(with(with(plain_line, eyes), {{"length", "900 mm"}}));
    EXPECT_TRUE(cautions_about(tight.piece(), "inside the first end's bury"));
    const auto roomy = cut_one(with(with(plain_line, eyes), {{"length", "1100 mm"}}));
    EXPECT_FALSE(cautions_about(roomy.piece(), "inside the first end's bury"));
}

} // namespace
} // namespace libsplice::testing
