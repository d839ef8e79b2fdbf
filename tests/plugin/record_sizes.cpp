// The record sizes of the header, as C++ sees them.
#include "record_sizes.h"
