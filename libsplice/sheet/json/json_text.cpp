// JSON written as text, a value at a time; commas follow from the order of calls.
#include "libsplice/sheet/json/json_text.h"

#include "libsplice/base/text.h"
#include "libsplice/units/show.h"

#include <gsl/assert>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace libsplice {

namespace {

/// Grows when a key of an answer goes or changes its meaning. The schemas of docs/json have it.
constexpr long long form_of_answers = 1;

/// More than any figure is worth, and few enough to hide how a sum was rounded.
constexpr int digits_of_numbers = 12;

bool needs_escape(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return byte < 0x20 || byte == 0x7F || c == '"' || c == '\\';
}

void write_escape(Output& output, char c) {
    constexpr std::string_view digits = "0123456789abcdef";
    if (c == '"' || c == '\\') {
        output.write('\\');
        output.write(c);
        return;
    }
    const auto byte = static_cast<unsigned char>(c);
    const std::array escape{'\\', 'u', '0', '0', digits[byte >> 4U], digits[byte & 0xFU]};
    output.write(std::string_view(escape.data(), escape.size()));
}

} // namespace

void JsonText::separate() {
    if (after_key_) {
        after_key_ = false;
        return;
    }
    if (!first_) {
        output_.write(',');
    }
    first_ = false;
    if (starts_line_) {
        output_.write('\n');
        starts_line_ = false;
    }
}

void JsonText::open(char bracket) {
    separate();
    output_.write(bracket);
    first_ = true;
}

void JsonText::close(char bracket) {
    Expects(!after_key_);
    output_.write(bracket);
    first_ = false;
}

void JsonText::begin_answer() {
    begin_object();
    key("schema");
    whole(form_of_answers);
}

void JsonText::begin_object() {
    open('{');
}

void JsonText::end_object() {
    close('}');
}

void JsonText::begin_array() {
    open('[');
}

void JsonText::end_array() {
    close(']');
}

void JsonText::key(std::string_view name) {
    text(name);
    output_.write(':');
    after_key_ = true;
}

void JsonText::write_escaped(std::string_view value) {
    while (!value.empty()) {
        const auto special = std::ranges::find_if(value, needs_escape);
        const auto plain = static_cast<std::size_t>(special - value.begin());
        output_.write(value.substr(0, plain));
        value.remove_prefix(plain);
        if (!value.empty()) {
            write_escape(output_, value.front());
            value.remove_prefix(1);
        }
    }
}

void JsonText::text(std::string_view value) {
    separate();
    output_.write('"');
    while (const auto bad = first_bad_utf8(value)) {
        write_escaped(value.substr(0, *bad));
        output_.write("\\ufffd");
        value.remove_prefix(*bad + 1);
    }
    write_escaped(value);
    output_.write('"');
}

void JsonText::number(double value) {
    Expects(std::isfinite(value));
    separate();
    std::array<char, 32> digits; // the longest double is shorter
    const auto [end, error] = std::to_chars(digits.data(), digits.data() + digits.size(), value,
                                            std::chars_format::general, digits_of_numbers);
    Ensures(error == std::errc());
    output_.write(std::string_view(digits.data(), static_cast<std::size_t>(end - digits.data())));
}

void JsonText::metres(Nanometres count) {
    separate();
    digits_.clear();
    append_metres(digits_, count);
    output_.write(digits_);
}

void JsonText::whole(long long value) {
    separate();
    output_.write(std::to_string(value));
}

void JsonText::boolean(bool value) {
    separate();
    output_.write(value ? "true" : "false");
}

void JsonText::null() {
    separate();
    output_.write("null");
}

void JsonText::text(std::string_view name, std::string_view value) {
    key(name);
    text(value);
}

void JsonText::metres(std::string_view name, std::optional<Nanometres> count) {
    key(name);
    count ? metres(*count) : null();
}

void JsonText::number(std::string_view name, std::optional<double> value) {
    if (name.ends_with("_m")) {
        metres(name, value ? std::optional(to_nanometres(Length(*value))) : std::nullopt);
        return;
    }
    key(name);
    value ? number(*value) : null();
}

} // namespace libsplice
