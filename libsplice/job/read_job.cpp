// Chooses the reader of a job by the name of its file.
#include "libsplice/job/read_job.h"

namespace libsplice {

Result<bool> read_job(Input& input, std::span<const std::string_view> end_fields, FaultSink& faults,
                      const OnRow& on_row) {
    const bool is_toml = input.name().ends_with(".toml");
    return is_toml ? read_toml_job(input, end_fields, faults, on_row)
                   : read_csv_job(input, end_fields, faults, on_row);
}

} // namespace libsplice
