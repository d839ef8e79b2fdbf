/* Cuts one line and prints its ledger: what a program in C has to do, from first to last. */
#include <splice.h>
#include <stdio.h>

static int say(const splice_fault* fault) {
    fprintf(stderr, "fault %d: %s\n", (int)fault->code, fault->text);
    return 1;
}

static int print_piece(const splice_sheet* sheet, splice_fault* fault) {
    splice_piece piece = {.size = sizeof piece};
    if (splice_sheet_piece(sheet, 0, &piece, fault) != 0) {
        return say(fault);
    }
    if (piece.fault_code != 0) { /* the line cannot be cut: the sheet knows why */
        splice_sheet_piece_fault(sheet, 0, fault, NULL);
        return say(fault);
    }
    for (uint32_t i = 0; i < piece.row_count; ++i) {
        splice_row row = {.size = sizeof row};
        if (splice_sheet_row(sheet, 0, i, &row, fault) != 0) {
            return say(fault);
        }
        printf("%-26s %10.6f m   %s\n", row.item, row.length_m, row.source);
    }
    printf("cut %s at %.3f m\n", piece.name, piece.cut_m);
    return 0;
}

static int cut_onto(splice_sheet* sheet, splice_fault* fault) {
    const splice_cell cells[] = {
        {"name", "outhaul"},    {"rope", "demo-b12-hmpe-3"}, {"length", "2.4 m"},
        {"fit", "trim-aboard"}, {"prestretched", "yes"},     {"end_a", "buried-eye"},
        {"end_a.eye", "30 mm"}, {"end_a.pin", "6 mm"},
    };
    if (splice_sheet_add_line(sheet, cells, sizeof cells / sizeof cells[0], fault) != 0) {
        return say(fault);
    }
    return print_piece(sheet, fault);
}

int main(void) {
    splice_fault fault = {.size = sizeof fault};
    splice_book* book = NULL;
    splice_sheet* sheet = NULL;
    if (splice_book_open(NULL, &book, &fault) != 0) {
        return say(&fault);
    }
    int status = 1;
    if (splice_sheet_open(book, NULL, &sheet, &fault) != 0) {
        say(&fault);
    } else {
        status = cut_onto(sheet, &fault);
    }
    splice_sheet_close(sheet);
    splice_book_close(book);
    return status;
}
