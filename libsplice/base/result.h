// A value, or the fault that stands in its place.
#pragma once

#include "libsplice/base/fault.h"

#include <gsl/assert>

#include <type_traits>
#include <utility>
#include <variant>

namespace libsplice {

/// Wraps a fault on its way into a Result, as `std::unexpected` does.
class Unexpected {
  public:
    explicit Unexpected(Fault fault) : fault_(std::move(fault)) {}
    [[nodiscard]] const Fault& error() const& { return fault_; }
    [[nodiscard]] Fault&& error() && { return std::move(fault_); }

  private:
    Fault fault_;
};

/// One thing that may not be there: a `T`, or a `Fault` that says why. The interface is a subset of
/// `std::expected<T, Fault>`, so that the type can become an alias of it one day.
template <class T>
class Result {
  public:
    using value_type = T;

    Result(T value) : state_(std::in_place_index<0>, std::move(value)) {}
    Result(Unexpected fault) : state_(std::in_place_index<1>, std::move(fault).error()) {}

    [[nodiscard]] bool has_value() const { return state_.index() == 0; }
    explicit operator bool() const { return has_value(); }

    [[nodiscard]] T& value() & { return checked(*this); }
    [[nodiscard]] const T& value() const& { return checked(*this); }
    [[nodiscard]] T&& value() && { return std::move(checked(*this)); }
    [[nodiscard]] T& operator*() & { return value(); }
    [[nodiscard]] const T& operator*() const& { return value(); }
    [[nodiscard]] T&& operator*() && { return std::move(*this).value(); }
    T* operator->() { return &value(); }
    const T* operator->() const { return &value(); }

    [[nodiscard]] const Fault& error() const& {
        Expects(!has_value());
        return *std::get_if<1>(&state_);
    }
    [[nodiscard]] Fault&& error() && {
        Expects(!has_value());
        return std::move(*std::get_if<1>(&state_));
    }

  private:
    template <class Self>
    static auto& checked(Self& self) {
        Expects(self.has_value());
        return *std::get_if<0>(&self.state_);
    }

    std::variant<T, Fault> state_;
};

} // namespace libsplice
