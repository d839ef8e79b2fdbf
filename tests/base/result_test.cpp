// A value or a fault, and nothing between.
#include "libsplice/base/result.h"

#include <gtest/gtest.h>

#include <memory>
#include <string>

namespace libsplice::testing {
namespace {

Result<int> half(int number) {
    if (number % 2 != 0) {
        return Unexpected(Fault{Code::not_a_number, "odd"});
    }
    return number / 2;
}

TEST(Result, HoldsAValue) {
    const auto result = half(8);
    ASSERT_TRUE(result);
    EXPECT_TRUE(result.has_value());
    EXPECT_EQ(*result, 4);
    EXPECT_EQ(result.value(), 4);
}

TEST(Result, HoldsAFault) {
    const auto result = half(7);
    ASSERT_FALSE(result);
    EXPECT_EQ(result.error().code, Code::not_a_number);
    EXPECT_EQ(result.error().text, "odd");
}

TEST(Result, HandsOutWhatCannotBeCopied) {
    Result<std::unique_ptr<std::string>> result(std::make_unique<std::string>("rope"));
    EXPECT_EQ((*result)->size(), 4U);
    const std::unique_ptr<std::string> taken = *std::move(result);
    EXPECT_EQ(*taken, "rope");
}

TEST(Result, ReachesIntoItsValue) {
    Result<std::string> result(std::string("rope"));
    result->push_back('s');
    EXPECT_EQ(*result, "ropes");
}

TEST(Result, PassesItsFaultOn) {
    auto first = half(3);
    const Result<std::string> second = Unexpected(std::move(first).error());
    ASSERT_FALSE(second);
    EXPECT_EQ(second.error().text, "odd");
}

TEST(ResultDeathTest, StopsAProgramThatTakesWhatIsNotThere) {
    const auto fault = half(1);
    const auto value = half(2);
    EXPECT_DEATH((void)fault.value(), "");
    EXPECT_DEATH((void)value.error(), "");
}

} // namespace
} // namespace libsplice::testing
