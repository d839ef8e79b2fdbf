// A plug-in in C++ that lets an exception escape.
#include "splice_plugin.h"

#include <stdexcept>

namespace {

constexpr const char* item = "tail";
constexpr const char* mark = "far throat";
constexpr const char* step = "Do not.";
constexpr splice_plugin_texts way{1, &step};
constexpr splice_plugin_kind kind{.size = sizeof(splice_plugin_kind),
                                  .reach = SPLICE_REACH_ONE_END,
                                  .name = "thrown-end",
                                  .title = "an end that throws",
                                  .datum = "nowhere",
                                  .constructions = {},
                                  .field_count = 0,
                                  .fields = nullptr,
                                  .items = {1, &item},
                                  .marks = {1, &mark},
                                  .values = {},
                                  .caution_count = 0,
                                  .cautions = nullptr,
                                  .way_count = 1,
                                  .ways = &way,
                                  .cut = SPLICE_CUT_USUAL};

splice_status work_out(const splice_plugin_request*, splice_plugin_answer*,
                       const splice_plugin_sink_1*, splice_fault*) {
    throw std::runtime_error("thrown");
}

constexpr splice_plugin_allowance_1 allowance{work_out};
constexpr splice_plugin_functions functions{SPLICE_ALLOWANCE_1, &allowance};

} // namespace

constinit const splice_plugin splice_plugin_entry{.size = sizeof(splice_plugin),
                                                  .epoch = SPLICE_PLUGIN_EPOCH,
                                                  .name = "thrower",
                                                  .version = "1",
                                                  .title = "an end that throws",
                                                  .function_count = 1,
                                                  .functions = &functions,
                                                  .source_count = 0,
                                                  .sources = nullptr,
                                                  .citation_count = 0,
                                                  .citations = nullptr,
                                                  .kind_count = 1,
                                                  .kinds = &kind,
                                                  .ropes = nullptr};
