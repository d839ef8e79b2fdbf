// How much a rope stretches as JSON.
#include "libsplice/sheet/json/json_format.h"
#include "libsplice/sheet/json/json_parts.h"
#include "libsplice/sheet/panel/stretch_answer.h"

namespace libsplice {

namespace {

void write_rope(JsonText& json, const RopeUnderLoad& loaded, CitationLog& citing) {
    json.begin_object();
    json.text("rope", loaded.rope.id);
    json.metres("diameter_m", to_nanometres(loaded.rope.diameter));
    json.number("breaking_n", loaded.rope.breaking ? std::optional(loaded.rope.breaking->value.si())
                                                   : std::nullopt);
    json.number("strain", loaded.strain);
    json.metres("stretch_m", to_nanometres(loaded.longer));
    json.number("sd_m", loaded.sd.si());
    json.text("source", citing.text(loaded.source));
    json.end_object();
}

void write_choice(JsonText& json, std::string_view name, const EqualStretch& equal,
                  const std::optional<std::size_t>& choice) {
    json.key(name);
    choice ? json.text(equal.sizes[*choice].rope.id) : json.null();
}

} // namespace

void write_stretch_as_json(const StretchAnswer& answer, Output& output, Credits credits,
                           const SheetOptions& /*options*/) {
    JsonText json(output);
    CitationLog citing(credits);
    json.begin_answer();
    json.number("load_n", answer.force ? std::optional(answer.force->si()) : std::nullopt);
    json.metres("length_m", to_nanometres(answer.length));
    json.key("stretch");
    write_rope(json, answer.known, citing);
    json.key("against");
    if (answer.equal) {
        const EqualStretch& equal = *answer.equal;
        json.begin_object();
        json.key("base");
        write_rope(json, equal.base, citing);
        json.number("stiffness_ratio", equal.softer);
        json.metres("equal_size_m",
                    equal.size ? std::optional(to_nanometres(*equal.size)) : std::nullopt);
        write_choice(json, "no_more", equal, equal.no_more);
        write_choice(json, "one_size_up", equal, equal.one_size_up);
        json.key("sizes");
        json.begin_array();
        for (const RopeUnderLoad& size : equal.sizes) {
            write_rope(json, size, citing);
        }
        json.end_array();
        json.end_object();
    } else {
        json.null();
    }
    json.key("sources");
    write_sources(json, citing);
    json.end_object();
    output.write('\n');
}

} // namespace libsplice
