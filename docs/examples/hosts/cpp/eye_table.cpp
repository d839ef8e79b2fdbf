// A table for the wall of a loft: what a buried eye takes, by its size. Every eye is worked out in
// one call.
#include <cstdio>
#include <memory>
#include <splice.h>
#include <vector>

namespace {

struct Close {
    void operator()(splice_book* book) const { splice_book_close(book); }
};

} // namespace

int main() {
    splice_fault fault{};
    fault.size = sizeof fault;
    splice_book* opened = nullptr;
    if (splice_book_open(nullptr, &opened, &fault) != 0) {
        std::fprintf(stderr, "fault %d: %s\n", fault.code, fault.text);
        return 1;
    }
    const std::unique_ptr<splice_book, Close> book(opened);

    const std::vector<double> eyes_m{0.008, 0.030, 0.040, 0.060, 0.090};
    const std::vector<double> pins_m(eyes_m.size(), 0.006);
    std::vector<double> allowances_m(eyes_m.size());
    std::vector<double> tails_m(eyes_m.size());
    std::vector<splice_status> codes(eyes_m.size());
    const splice_field_column fields[] = {{"eye", eyes_m.data()}, {"pin", pins_m.data()}};
    const splice_value_column values[] = {{"tail_m", tails_m.data()}};

    splice_batch batch{};
    batch.size = sizeof batch;
    batch.kind = "buried-eye";
    batch.rope = "demo-b12-hmpe-3";
    batch.fields = fields;
    batch.field_count = 2;
    batch.values = values;
    batch.value_count = 1;
    batch.count = eyes_m.size();
    batch.allowances_m = allowances_m.data();
    batch.codes = codes.data();
    if (splice_work_out_batch(book.get(), &batch, &fault) != 0) {
        std::fprintf(stderr, "fault %d: %s\n", fault.code, fault.text);
        return 1;
    }
    for (std::size_t i = 0; i < eyes_m.size(); ++i) {
        if (codes[i] != 0) {
            std::printf("eye %3.0f mm: cannot be made, fault %d\n", eyes_m[i] * 1000, codes[i]);
        } else {
            std::printf("eye %3.0f mm: %3.0f mm of rope, tail %3.0f mm\n", eyes_m[i] * 1000,
                        allowances_m[i] * 1000, tails_m[i] * 1000);
        }
    }
    return 0;
}
