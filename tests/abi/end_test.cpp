// One end, and many ends at once, through the C library.
#include "c_host.h"

#include <cmath>
#include <cstring>
#include <limits>

namespace libsplice::testing {
namespace {

constexpr double not_given = std::numeric_limits<double>::quiet_NaN();

EndHandle open_end(const char* kind, const char* rope, const std::vector<splice_cell>& fields) {
    auto fault = record<splice_fault>();
    splice_end* end = nullptr;
    EXPECT_EQ(splice_end_open(shipped(), kind, rope, fields.data(),
                              static_cast<std::uint32_t>(fields.size()), &end, &fault),
              0)
        << fault.text;
    return EndHandle(end);
}

splice_status refusal(const char* kind, const char* rope, const std::vector<splice_cell>& fields,
                      splice_fault& fault) {
    splice_end* end = nullptr;
    const splice_status status =
        splice_end_open(shipped(), kind, rope, fields.data(),
                        static_cast<std::uint32_t>(fields.size()), &end, &fault);
    EXPECT_EQ(end, nullptr);
    return status;
}

splice_end_facts facts_of(const EndHandle& end) {
    auto facts = record<splice_end_facts>();
    EXPECT_EQ(splice_end_describe(end.get(), &facts, nullptr), 0);
    return facts;
}

/// Eyes of 30 mm and so on round a pin of 6 mm, ready to be changed by a test.
struct EyeBatch {
    std::vector<double> eyes_m;
    std::vector<double> pins_m;
    std::vector<double> allowances_m;
    std::vector<double> tails_m;
    std::vector<std::int32_t> codes;
    std::vector<splice_field_column> fields;
    std::vector<splice_value_column> values;
    splice_batch batch = record<splice_batch>();

    explicit EyeBatch(std::vector<double> eyes)
        : eyes_m(std::move(eyes)),
          pins_m(eyes_m.size(), 0.006),
          allowances_m(eyes_m.size()),
          tails_m(eyes_m.size()),
          codes(eyes_m.size()),
          fields{{"eye", eyes_m.data()}, {"pin", pins_m.data()}},
          values{{"tail_m", tails_m.data()}} {
        batch.kind = "buried-eye";
        batch.rope = "demo-b12-hmpe-3";
        batch.fields = fields.data();
        batch.field_count = 2;
        batch.count = eyes_m.size();
        batch.allowances_m = allowances_m.data();
        batch.codes = codes.data();
        batch.values = values.data();
        batch.value_count = 1;
    }
    splice_status work_out(splice_fault* fault = nullptr) const {
        return splice_work_out_batch(shipped(), &batch, fault);
    }
};

TEST(End, AFigureEightIsWhatTheWorkedCaseSays) {
    const auto end = open_end("figure-eight", "double-braid polyester 6 mm", {});
    EXPECT_NEAR(facts_of(end).allowance_m, 0.16764, 5e-6); // tests/worked/knots.toml
}

TEST(End, ItsPartsAreComplete) {
    const auto end = open_end("buried-eye", "demo-b12-hmpe-3", {{"eye", "30 mm"}, {"pin", "6 mm"}});
    const splice_end_facts facts = facts_of(end);
    std::int64_t sum = 0;
    for (std::uint32_t i = 0; i < facts.row_count; ++i) {
        auto row = record<splice_row>();
        ASSERT_EQ(splice_end_row(end.get(), i, &row, nullptr), 0);
        sum += row.length_nm;
    }
    EXPECT_EQ(sum, facts.allowance_nm);
    EXPECT_DOUBLE_EQ(facts.retained_strength, 0.9); // samson-12-strand-class-2
    bool has_tail = false;
    for (std::uint32_t i = 0; i < facts.value_count; ++i) {
        auto value = record<splice_value>();
        ASSERT_EQ(splice_end_value(end.get(), i, &value, nullptr), 0);
        if (std::strcmp(value.name, "tail_m") == 0) {
            has_tail = true;
            EXPECT_DOUBLE_EQ(value.value, 0.216); // 72 D of 3 mm
        }
    }
    EXPECT_TRUE(has_tail);
    auto mark = record<splice_mark>();
    auto step = record<splice_step>();
    auto caution = record<splice_caution>();
    ASSERT_EQ(splice_end_mark(end.get(), facts.mark_count - 1, &mark, nullptr), 0);
    EXPECT_STREQ(mark.name, "exit");
    ASSERT_EQ(splice_end_step(end.get(), 0, &step, nullptr), 0);
    EXPECT_EQ(std::strchr(step.text, '{'), nullptr);
    for (std::uint32_t i = 0; i < facts.caution_count; ++i) {
        EXPECT_EQ(splice_end_caution(end.get(), i, &caution, nullptr), 0);
    }
}

TEST(End, WhatCannotBeMadeIsAFault) {
    auto fault = record<splice_fault>();
    EXPECT_EQ(refusal("no-such-kind", "demo-b12-hmpe-3", {}, fault), 209);
    EXPECT_EQ(refusal("bowline", "no-such-rope", {}, fault), 207);
    EXPECT_EQ(refusal("buried-eye", "demo-db-poly-6", {}, fault), 301);
    EXPECT_EQ(refusal("buried-eye", "demo-b12-hmpe-3", {{"eey", "30 mm"}}, fault), 302);
    EXPECT_STREQ(fault.field, "eey");
    EXPECT_EQ(refusal("buried-eye", "demo-b12-hmpe-3", {{"eye", "thirty"}}, fault), 303);
    EXPECT_EQ(refusal("buried-eye", "demo-b12-hmpe-3", {{"eye", "300 m"}}, fault), 304);
    EXPECT_EQ(refusal("buried-eye", "demo-b12-hmpe-3", {{"rule", "none such"}}, fault), 311);
    EXPECT_EQ(refusal(nullptr, nullptr, {}, fault), 209);
}

TEST(End, WrongCallsAreFaults) {
    const auto end = open_end("bowline", "demo-db-poly-6", {});
    auto fault = record<splice_fault>();
    splice_end* opened = nullptr;
    auto facts = record<splice_end_facts>();
    auto row = record<splice_row>();
    EXPECT_EQ(splice_end_open(nullptr, "bowline", "x", nullptr, 0, &opened, &fault), 801);
    EXPECT_EQ(splice_end_open(shipped(), "bowline", "x", nullptr, 0, nullptr, &fault), 801);
    EXPECT_EQ(splice_end_open(shipped(), "bowline", "x", nullptr, 1, &opened, &fault), 801);
    EXPECT_EQ(refusal("bowline", "demo-db-poly-6", {{nullptr, "x"}}, fault), 801);
    EXPECT_EQ(splice_end_describe(nullptr, &facts, &fault), 801);
    EXPECT_EQ(splice_end_describe(end.get(), nullptr, &fault), 801);
    EXPECT_EQ(splice_end_row(nullptr, 0, &row, &fault), 801);
    EXPECT_EQ(splice_end_row(end.get(), 1000, &row, &fault), 801);
    EXPECT_EQ(splice_end_mark(nullptr, 0, nullptr, &fault), 801);
    EXPECT_EQ(splice_end_value(nullptr, 0, nullptr, &fault), 801);
    EXPECT_EQ(splice_end_step(nullptr, 0, nullptr, &fault), 801);
    EXPECT_EQ(splice_end_caution(nullptr, 0, nullptr, &fault), 801);
    splice_end_close(nullptr);
}

TEST(Batch, GivesWhatOneEndAtATimeGives) {
    const EyeBatch eyes({0.030, 0.045, 0.060});
    auto fault = record<splice_fault>();
    ASSERT_EQ(eyes.work_out(&fault), 0) << fault.text;
    const std::vector<const char*> texts{"30 mm", "45 mm", "60 mm"};
    for (std::size_t i = 0; i < texts.size(); ++i) {
        const auto one =
            open_end("buried-eye", "demo-b12-hmpe-3", {{"eye", texts[i]}, {"pin", "6 mm"}});
        EXPECT_DOUBLE_EQ(eyes.allowances_m[i], facts_of(one).allowance_m) << texts[i];
        EXPECT_DOUBLE_EQ(eyes.tails_m[i], 0.216);
        EXPECT_EQ(eyes.codes[i], 0);
    }
}

TEST(Batch, AnEndThatCannotBeMadeDoesNotStopTheOthers) {
    constexpr double infinite = std::numeric_limits<double>::infinity();
    const EyeBatch eyes({0.030, 300.0, infinite, -infinite, 0.004, 0.030});
    ASSERT_EQ(eyes.work_out(), 0);
    EXPECT_EQ(eyes.codes, (std::vector<std::int32_t>{0, 304, 304, 304, eyes.codes[4], 0}));
    EXPECT_EQ(eyes.codes[4] / 100, 3);
    EXPECT_TRUE(std::isnan(eyes.allowances_m[1]));
    EXPECT_TRUE(std::isnan(eyes.tails_m[1]));
    EXPECT_DOUBLE_EQ(eyes.allowances_m[0], eyes.allowances_m[5]);
}

TEST(Batch, AFieldThatIsNotGivenTakesItsDefault) {
    EyeBatch eyes({0.030});
    eyes.batch.field_count = 1;
    ASSERT_EQ(eyes.work_out(), 0);
    const double soft = eyes.allowances_m[0];
    eyes.batch.field_count = 2;
    eyes.pins_m[0] = not_given;
    ASSERT_EQ(eyes.work_out(), 0);
    EXPECT_DOUBLE_EQ(eyes.allowances_m[0], soft);
}

TEST(Batch, CountsAreWholeNumbers) {
    const std::vector<double> tucks{5.0, 5.5};
    std::vector<std::int32_t> codes(2);
    const splice_field_column column{"tucks", tucks.data()};
    auto batch = record<splice_batch>();
    batch.kind = "tucked-eye";
    batch.rope = "3-strand polyester 12 mm";
    batch.fields = &column;
    batch.field_count = 1;
    batch.count = 2;
    batch.codes = codes.data();
    ASSERT_EQ(splice_work_out_batch(shipped(), &batch, nullptr), 0);
    EXPECT_EQ(codes, (std::vector<std::int32_t>{0, 303}));
}

TEST(Batch, AnswersMayBeLeftOut) {
    EyeBatch eyes({0.030});
    eyes.batch.allowances_m = nullptr;
    eyes.batch.codes = nullptr;
    eyes.batch.value_count = 0;
    EXPECT_EQ(eyes.work_out(), 0);
    eyes.batch.count = 0;
    EXPECT_EQ(eyes.work_out(), 0);
}

TEST(Batch, ANamedRuleIsFollowed) {
    EyeBatch eyes({0.030});
    auto fault = record<splice_fault>();
    eyes.batch.rule = "none such";
    EXPECT_EQ(eyes.work_out(&fault), 311);
}

TEST(Batch, WhatIsWrongWithTheWholeIsAFaultOfTheCall) {
    auto fault = record<splice_fault>();
    const auto status_of = [&](auto change) {
        EyeBatch eyes({0.030});
        change(eyes);
        return eyes.work_out(&fault);
    };
    EXPECT_EQ(status_of([](auto& eyes) { eyes.batch.kind = "no-such"; }), 209);
    EXPECT_EQ(status_of([](auto& eyes) { eyes.batch.rope = "no-such"; }), 207);
    EXPECT_EQ(status_of([](auto& eyes) { eyes.fields[0].field = "eey"; }), 302);
    EXPECT_EQ(status_of([](auto& eyes) { eyes.fields[0].values = nullptr; }), 801);
    EXPECT_EQ(status_of([](auto& eyes) { eyes.values[0].name = "tail"; }), 801);
    EXPECT_EQ(status_of([](auto& eyes) { eyes.values[0].values = nullptr; }), 801);
    EXPECT_EQ(status_of([](auto& eyes) { eyes.batch.fields = nullptr; }), 801);
    EXPECT_EQ(status_of([](auto& eyes) { eyes.batch.values = nullptr; }), 801);
    EXPECT_EQ(status_of([](auto& eyes) { eyes.batch.size = 0; }), 801);
    EXPECT_EQ(splice_work_out_batch(shipped(), nullptr, &fault), 801);
    const EyeBatch eyes({0.030});
    EXPECT_EQ(splice_work_out_batch(nullptr, &eyes.batch, &fault), 801);
    EXPECT_EQ(status_of([](auto& wrong) { // the rope does not suit the kind: each end says so
                  wrong.batch.rope = "demo-db-poly-6";
              }),
              0);
}

} // namespace
} // namespace libsplice::testing
