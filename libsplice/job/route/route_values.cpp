// The limits that the lengths of a route keep to.
#include "libsplice/job/route/route_values.h"

#include "libsplice/base/text.h"
#include "libsplice/units/read.h"

namespace libsplice {

Result<Length> read_route_length(std::string_view text, Length lowest,
                                 std::optional<LengthUnit> bare) {
    const auto written = read_length(text, bare);
    if (!written) {
        return Unexpected(written.error());
    }
    if (written->length < lowest || written->length > farthest) {
        return Unexpected(
            Fault{Code::value_out_of_range,
                  in_quotes(text) + " is out of range; it may be " +
                      (lowest < Length() ? "100,000 m to either side" : "0 to 100,000 m")});
    }
    return written->length;
}

} // namespace libsplice
