/* The C headers, side by side, under each standard that they promise to compile under. */
#include "splice.h"
#include "splice_plugin.h"

/* A use of each sort of declaration, so that the file holds something. */
splice_status open_nothing(splice_fault* fault);

splice_status open_nothing(splice_fault* fault) {
    splice_settings settings;
    settings.size = (uint32_t)sizeof settings;
    return splice_sheet_open(0, &settings, 0, fault);
}
