/* A host built against a header with shorter records, as an early release might have had: what a
   library of today must go on serving. It includes no header of ours, and is never brought up to
   date. It cuts one line and ends with 0 if every answer is as it was. */
#include <stdint.h>
#include <stdio.h>
#include <string.h>

typedef struct {
    uint32_t size;
    int32_t code;
    char text[512];
} old_fault;

typedef struct {
    uint32_t size;
    uint32_t steps;
    double risk;
} old_settings;

typedef struct {
    uint32_t size;
    int32_t fault_code;
    const char* texts[11];
    int64_t quantity;
    int64_t cut_nm;
    double cut_m;
} old_piece;

typedef struct {
    uint32_t size;
    uint32_t end;
    const char* item;
} old_row;

typedef struct {
    const char* name;
    const char* text;
} old_cell;

int32_t splice_book_open(const void* options, void** book, old_fault* fault);
void splice_book_close(void* book);
int32_t splice_sheet_open(const void* book, const old_settings* settings, void** sheet,
                          old_fault* fault);
void splice_sheet_close(void* sheet);
int32_t splice_sheet_add_line(void* sheet, const old_cell* cells, uint32_t cell_count,
                              old_fault* fault);
int32_t splice_sheet_piece(const void* sheet, uint64_t index, old_piece* piece, old_fault* fault);
int32_t splice_sheet_row(const void* sheet, uint64_t piece, uint32_t index, old_row* row,
                         old_fault* fault);

/* What lies behind a record must stay as it was. */
typedef struct {
    old_piece piece;
    unsigned char guard[64];
} guarded_piece;

static int guard_is_whole(const guarded_piece* guarded) {
    for (size_t i = 0; i < sizeof guarded->guard; ++i) {
        if (guarded->guard[i] != 0xA5) {
            return 0;
        }
    }
    return 1;
}

static int check(int holds, const char* what) {
    if (!holds) {
        fprintf(stderr, "old host: %s\n", what);
    }
    return holds;
}

static int cut_a_line(void* sheet) {
    static const old_cell cells[] = {
        {"name", "outhaul"},    {"rope", "demo-b12-hmpe-3"}, {"length", "2.4 m"},
        {"fit", "trim-aboard"}, {"prestretched", "yes"},     {"end_a", "buried-eye"},
        {"end_a.eye", "30 mm"}, {"end_a.pin", "6 mm"},
    };
    old_fault fault = {sizeof fault, 0, ""};
    old_row row = {sizeof row, 0, NULL};
    guarded_piece guarded;
    memset(&guarded, 0xA5, sizeof guarded);
    guarded.piece.size = sizeof guarded.piece;
    if (!check(splice_sheet_add_line(sheet, cells, 8, &fault) == 0, fault.text) ||
        !check(splice_sheet_piece(sheet, 0, &guarded.piece, &fault) == 0, fault.text) ||
        !check(splice_sheet_row(sheet, 0, 0, &row, &fault) == 0, fault.text)) {
        return 0;
    }
    return check(guarded.piece.cut_nm == INT64_C(2685000000), "the cut length is another") &&
           check(strcmp(guarded.piece.texts[0], "outhaul") == 0, "the name is another") &&
           check(strcmp(row.item, "finished length") == 0, "the first row is another") &&
           check(guard_is_whole(&guarded), "memory behind a record was written") &&
           check(splice_sheet_piece(sheet, 9, &guarded.piece, &fault) == 801 && fault.code == 801,
                 "a wrong call has another code");
}

int main(void) {
    old_fault fault = {sizeof fault, 0, ""};
    old_settings settings = {sizeof settings, 0, 0.01};
    void* book = NULL;
    void* sheet = NULL;
    int well = check(splice_book_open(NULL, &book, &fault) == 0, fault.text) &&
               check(splice_sheet_open(book, &settings, &sheet, &fault) == 0, fault.text) &&
               cut_a_line(sheet);
    splice_sheet_close(sheet);
    splice_book_close(book);
    return well ? 0 : 1;
}
