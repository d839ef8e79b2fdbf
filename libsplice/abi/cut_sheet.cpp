// Opening a sheet and cutting lines onto it.
#include "libsplice/abi/records.h"
#include "libsplice/abi/sheet.h"

#include <cmath>
#include <memory>

using namespace libsplice;
using namespace libsplice::abi;

namespace {

Result<CutSettings> read_settings(const splice_settings& given) {
    const auto out_of_range = [](std::string text, std::string field) {
        return Unexpected(Fault{Code::value_out_of_range, std::move(text), {}, std::move(field)});
    };
    CutSettings settings;
    const bool risk_given = std::fpclassify(given.risk) != FP_ZERO;
    if (risk_given) {
        if (!(given.risk > 0.0 && given.risk <= 0.5)) {
            return out_of_range("the risk must be over 0 and up to 0.5", "risk");
        }
        settings.risk = given.risk;
    }
    const bool step_given = std::fpclassify(given.step_m) != FP_ZERO;
    if (step_given) {
        if (!(given.step_m >= 1e-9 && given.step_m <= 1.0)) {
            return out_of_range("the step must be a nanometre to 1 m", "step_m");
        }
        settings.step = Length(given.step_m);
    }
    if (given.marking_tension != nullptr) {
        const auto pull = read_marking_tension(given.marking_tension);
        if (!pull) {
            return Unexpected(pull.error());
        }
        settings.marking_tension = *pull;
    }
    return settings;
}

splice_status add_job(splice_sheet* sheet, Sheet::Reader read, const char* text,
                      std::uint64_t text_size, const char* name, splice_fault* fault) {
    return guarded(fault, [&]() -> Outcome {
        if (sheet == nullptr) {
            return no_sheet();
        }
        if (text == nullptr && text_size != 0) {
            return wrong_call("the job's text is null");
        }
        const std::string_view job(text_size == 0 ? "" : text, text_size);
        return sheet->sheet.add(read, job, std::string(text_of(name)));
    });
}

} // namespace

splice_status splice_sheet_open(const splice_book* book, const splice_settings* settings,
                                splice_sheet** sheet, splice_fault* fault) {
    return guarded(fault, [&]() -> Outcome {
        if (sheet == nullptr) {
            return wrong_call("there is no place for the sheet: the pointer is null");
        }
        *sheet = nullptr;
        if (book == nullptr) {
            return wrong_call("the book is null");
        }
        const auto known = take_in(settings);
        if (!known) {
            return known.error();
        }
        const auto read = read_settings(*known);
        if (!read) {
            return read.error();
        }
        const bool with_steps = known->steps != 0;
        *sheet = new splice_sheet{Sheet(*book, *read, with_steps)};
        return std::nullopt;
    });
}

void splice_sheet_close(splice_sheet* sheet) {
    const std::unique_ptr<splice_sheet> closed(sheet);
}

splice_status splice_sheet_clear(splice_sheet* sheet, splice_fault* fault) {
    return guarded(fault, [&]() -> Outcome {
        if (sheet == nullptr) {
            return no_sheet();
        }
        sheet->sheet.clear();
        return std::nullopt;
    });
}

splice_status splice_sheet_add_csv(splice_sheet* sheet, const char* text, std::uint64_t text_size,
                                   const char* name, splice_fault* fault) {
    return add_job(sheet, read_csv_job, text, text_size, name, fault);
}

splice_status splice_sheet_add_toml(splice_sheet* sheet, const char* text, std::uint64_t text_size,
                                    const char* name, splice_fault* fault) {
    return add_job(sheet, read_toml_job, text, text_size, name, fault);
}

splice_status splice_sheet_add_line(splice_sheet* sheet, const splice_cell* cells,
                                    std::uint32_t cell_count, splice_fault* fault) {
    return guarded(fault, [&]() -> Outcome {
        if (sheet == nullptr) {
            return no_sheet();
        }
        if (cells == nullptr || cell_count == 0) {
            return wrong_call("a line needs cells; there are none");
        }
        return sheet->sheet.add_line({cells, cell_count});
    });
}
