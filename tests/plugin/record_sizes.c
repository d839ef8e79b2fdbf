#include "record_sizes.h"
