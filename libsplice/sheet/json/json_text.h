// JSON written as text, a value at a time.
#pragma once

#include "libsplice/base/output.h"
#include "libsplice/units/quantity.h"

#include <optional>
#include <string>
#include <string_view>

namespace libsplice {

/// Writes JSON in the order in which it is called; it keeps track of commas. Calls must nest as
/// JSON does.
class JsonText {
  public:
    explicit JsonText(Output& output) : output_(output) {}

    /// The object of a whole answer, with the number of its form as `schema`.
    void begin_answer();
    void begin_object();
    void end_object();
    void begin_array();
    void end_array();
    void key(std::string_view name);
    void text(std::string_view value); ///< escaped; bytes that are not UTF-8 become U+FFFD
    void number(double value);         ///< to 12 digits; finite
    void metres(Nanometres count);     ///< exact
    void whole(long long value);
    void boolean(bool value);
    void null();
    /// The next value or key starts on a line of its own.
    void new_line() { starts_line_ = true; }

    /// A key with its value; what is absent is null. A number whose key ends in `_m` is a length,
    /// and is rounded to nanometres.
    void text(std::string_view name, std::string_view value);
    void metres(std::string_view name, std::optional<Nanometres> count);
    void number(std::string_view name, std::optional<double> value);

  private:
    void separate();
    void open(char bracket);
    void close(char bracket);
    void write_escaped(std::string_view value);

    Output& output_;
    std::string digits_;
    bool first_ = true;
    bool after_key_ = false;
    bool starts_line_ = false;
};

} // namespace libsplice
