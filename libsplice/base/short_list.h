// A list of a few things that lives inside its owner: no allocation, a capacity known beforehand.
#pragma once

#include <gsl/assert>

#include <array>
#include <cstddef>

namespace libsplice {

/// At most `Capacity` values in place. Adding to a full list is our own mistake, never the user's.
template <class T, std::size_t Capacity>
class ShortList {
  public:
    void push_back(const T& value) {
        Expects(size_ < Capacity);
        values_[size_++] = value;
    }
    void insert(std::size_t at, const T& value) {
        Expects(at <= size_ && size_ < Capacity);
        for (std::size_t i = size_++; i > at; --i) {
            values_[i] = values_[i - 1];
        }
        values_[at] = value;
    }

    [[nodiscard]] std::size_t size() const { return size_; }
    [[nodiscard]] bool empty() const { return size_ == 0; }
    [[nodiscard]] const T& operator[](std::size_t at) const {
        Expects(at < size_);
        return values_[at];
    }
    [[nodiscard]] const T& back() const { return (*this)[size_ - 1]; }
    [[nodiscard]] const T* begin() const { return values_.data(); }
    [[nodiscard]] const T* end() const { return values_.data() + size_; }
    [[nodiscard]] T* begin() { return values_.data(); }
    [[nodiscard]] T* end() { return values_.data() + size_; }

  private:
    std::array<T, Capacity> values_{};
    std::size_t size_ = 0;
};

} // namespace libsplice
