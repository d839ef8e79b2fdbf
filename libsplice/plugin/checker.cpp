// Checks texts, names and numbers of a record, whatever its size.
#include "libsplice/plugin/checker.h"

#include "libsplice/base/text.h"

#include <algorithm>
#include <cstring>

namespace libsplice {

namespace {

constexpr std::size_t largest_record = 4096;
constexpr std::size_t longest_text = 4000;
constexpr std::size_t longest_name = 60;
constexpr std::size_t most_texts = 64;

bool is_control(char c) {
    return static_cast<unsigned char>(c) < 0x20 || c == 0x7f;
}

bool is_lower(char c) {
    return c >= 'a' && c <= 'z';
}

bool is_made_of(std::string_view name, Letters letters) {
    if (letters == Letters::any) {
        return name.find_first_of("{}") == std::string_view::npos;
    }
    const char joint = letters == Letters::hyphenated ? '-' : '_';
    return is_lower(name.front()) && std::ranges::all_of(name, [joint](char c) {
               return is_lower(c) || (c >= '0' && c <= '9') || c == joint;
           });
}

std::string_view described(Letters letters) {
    switch (letters) {
    case Letters::hyphenated:
        return "lower-case letters, digits and hyphens";
    case Letters::underlined:
        return "lower-case letters, digits and underlines";
    case Letters::any:
        break;
    }
    return "anything but braces";
}

} // namespace

void Checker::fail(Code code, const std::string& text) {
    if (fault_) {
        return;
    }
    const std::string who = name_.empty() ? "this plug-in" : "the plug-in \"" + name_ + '"';
    fault_ = Fault{code, who + ": " + text, Place{path_}};
}

std::string_view Checker::text(const char* text, std::string_view what) {
    if (!ok()) {
        return {};
    }
    if (text == nullptr) {
        fail(Code::plug_in_text, std::string(what) + " is null");
        return {};
    }
    const std::string_view view(text, ::strnlen(text, longest_text + 1));
    if (view.size() > longest_text) {
        fail(Code::plug_in_text, std::string(what) + " is longer than " +
                                     std::to_string(longest_text) + " bytes, or has no end");
    } else if (const auto at = first_bad_utf8(view)) {
        fail(Code::plug_in_text,
             std::string(what) + " is not UTF-8 from byte " + std::to_string(*at + 1) + " on");
    } else if (trimmed(view).empty()) {
        fail(Code::plug_in_text, std::string(what) + " is blank");
    } else if (std::ranges::any_of(view, is_control)) {
        fail(Code::plug_in_text, std::string(what) + " holds control characters");
    }
    return ok() ? view : std::string_view();
}

std::string_view Checker::name(const char* text, std::string_view what, Letters letters) {
    const std::string_view name = this->text(text, what);
    if (ok() && (name.size() > longest_name || !is_made_of(name, letters))) {
        fail(Code::plug_in_text, std::string(what) + " \"" + std::string(name) +
                                     "\" must be made of " + std::string(described(letters)) +
                                     ", " + std::to_string(longest_name) + " of them at most");
    }
    return ok() ? name : std::string_view();
}

std::vector<std::string_view> Checker::names(const splice_plugin_texts& list, std::string_view what,
                                             Letters letters) {
    std::vector<std::string_view> names;
    if (!check_list(list.texts, list.count, most_texts, what)) {
        return names;
    }
    for (std::uint32_t i = 0; i < list.count && ok(); ++i) {
        const std::string_view each = name(list.texts[i], what, letters);
        if (ok() && std::ranges::count(names, each) != 0) {
            fail(Code::plug_in_declaration,
                 std::string(what) + " name \"" + std::string(each) + "\" twice");
        }
        names.push_back(each);
    }
    return names;
}

std::vector<std::string_view> Checker::texts(const splice_plugin_texts& list,
                                             std::string_view what) {
    std::vector<std::string_view> texts;
    if (!check_list(list.texts, list.count, most_texts, what)) {
        return texts;
    }
    for (std::uint32_t i = 0; i < list.count; ++i) {
        texts.push_back(text(list.texts[i], what));
    }
    return texts;
}

void Checker::copy_record(const void* at, const Room& room, std::string_view what) {
    if (!ok()) {
        return;
    }
    std::uint32_t size = 0;
    std::memcpy(&size, at, sizeof(size));
    if (size < room.first_size || size > largest_record || size % alignof(double) != 0) {
        fail(Code::plug_in_size, "the size of " + std::string(what) + ", " + std::to_string(size) +
                                     ", is wrong; it is " + std::to_string(room.first_size) +
                                     " at least, as sizeof gives it");
        return;
    }
    std::memcpy(room.to, at, std::min<std::size_t>(size, room.size));
    const auto* bytes = static_cast<const char*>(at);
    if (size > room.size &&
        std::any_of(bytes + room.size, bytes + size, [](char c) { return c != 0; })) {
        fail(Code::plug_in_size, std::string(what) +
                                     " ask for something that this version does not know; use a "
                                     "newer libsplice");
    }
}

bool Checker::check_list(const void* first, std::uint32_t count, std::size_t most,
                         std::string_view what) {
    if (count > most) {
        fail(Code::plug_in_declaration, "there are " + std::to_string(count) + ' ' +
                                            std::string(what) + "; at most " +
                                            std::to_string(most) + " are read");
    } else if (count != 0 && first == nullptr) {
        fail(Code::plug_in_text, "the list of " + std::string(what) + " is null");
    }
    return ok() && count != 0;
}

} // namespace libsplice
