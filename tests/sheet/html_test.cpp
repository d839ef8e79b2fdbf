// Pages for a browser: whole, and with what a user wrote as plain text.
#include "libsplice/sheet/html/html_page.h"
#include "libsplice/sheet/html/html_text.h"
#include "libsplice/sheet/paper/paper.h"

#include "bench.h"

#include <gtest/gtest.h>

#include <string_view>
#include <vector>

namespace libsplice {
namespace {

constexpr std::string_view hostile = R"("><script>alert('1')</script>&)";

/// Every element that is begun is ended, in order.
void expect_balanced(std::string_view html) {
    std::vector<std::string_view> open;
    std::size_t at = 0;
    while ((at = html.find('<', at)) != std::string_view::npos) {
        const std::size_t end = html.find('>', at);
        ASSERT_NE(end, std::string_view::npos);
        const std::string_view tag = html.substr(at + 1, end - at - 1);
        at = end;
        const bool closes = tag.starts_with('/');
        const std::string_view name = tag.substr(closes ? 1 : 0, tag.find(' ') - (closes ? 1 : 0));
        if (name == "meta" || tag.starts_with('!') || tag.ends_with('/')) {
            continue;
        }
        if (!closes) {
            open.push_back(name);
            continue;
        }
        ASSERT_FALSE(open.empty()) << tag;
        ASSERT_EQ(open.back(), name);
        open.pop_back();
    }
    EXPECT_TRUE(open.empty()) << open.back();
}

std::ptrdiff_t count_of(std::string_view part, std::string_view text) {
    std::ptrdiff_t count = 0;
    for (std::size_t at = 0; (at = text.find(part, at)) != std::string_view::npos; ++at) {
        ++count;
    }
    return count;
}

std::string written(SheetWriter& writer, const Bench& bench, Output& output,
                    const std::string& text) {
    writer.begin();
    writer.piece(bench.piece);
    writer.end({1, 2, 0});
    output.flush();
    return text;
}

TEST(HtmlText, LeavesNothingThatABrowserReads) {
    EXPECT_EQ(html_text("5 < 6 & \"a\" > 'b'"), "5 &lt; 6 &amp; &quot;a&quot; &gt; &#39;b&#39;");
    EXPECT_EQ(html_text("façade 5\u00a0mm"), "façade 5\u00a0mm");
    EXPECT_EQ(html_text(std::string_view("a\x1b[0mb\0c", 8)).find('\x1b'), std::string::npos);
}

TEST(HtmlPage, EndsAListWhereAnotherPartBegins) {
    std::string text;
    {
        HtmlPage page(text);
        page.fact("Rope", "braid");
        page.fact("Bedded", "no");
        page.step(1, "Cut.");
        page.section("AFTER");
    }
    expect_balanced(text);
    EXPECT_EQ(count_of("<dl>", text), 1);
    EXPECT_LT(text.find("</dl>"), text.find("Cut."));
}

TEST(HtmlSheet, IsWholeAndTakesNamesAsText) {
    Bench bench;
    bench.piece.name = hostile;
    bench.piece.boat = hostile;
    const std::string sheet = bench.sheet(Format::html);
    expect_balanced(sheet);
    EXPECT_EQ(sheet.find("<script"), std::string::npos);
    EXPECT_NE(sheet.find("&quot;&gt;&lt;script&gt;"), std::string::npos);
    EXPECT_NE(sheet.find("2.765 m"), std::string::npos);
    expect_balanced(bench.end_sheet(Format::html));
}

TEST(HtmlSheet, SaysWhatCannotBeCut) {
    Bench bench;
    bench.refuse();
    const std::string sheet = bench.sheet(Format::html);
    expect_balanced(sheet);
    EXPECT_NE(sheet.find("the buries meet"), std::string::npos);
    EXPECT_EQ(sheet.find("<svg class=\"rope\""), std::string::npos);
}

TEST(WallChart, HasALineForThePiece) {
    Bench bench;
    bench.piece.name = hostile;
    std::string text;
    Output output = Output::to_string(text);
    const auto chart = wall_chart(output, {});
    const std::string page = written(*chart, bench, output, text);
    expect_balanced(page);
    EXPECT_EQ(page.find("<script"), std::string::npos);
    for (const char* part : {"2.765 m", "2.000 m", "12-strand HMPE 5 mm", "hand-eye", "No 1"}) {
        EXPECT_NE(page.find(part), std::string::npos) << part;
    }
}

TEST(Labels, OneForEveryPiece) {
    const Bench bench; // a line of which two are made
    const LabelSheet sheet{"test", "A4", 2, 3, 90.0, 80.0, 10.0, 10.0, 100.0, 90.0};
    std::string text;
    Output output = Output::to_string(text);
    const auto labels = label_sheet(output, {}, sheet);
    const std::string page = written(*labels, bench, output, text);
    expect_balanced(page);
    EXPECT_EQ(count_of("class=\"label\"", page), 2);
}

} // namespace
} // namespace libsplice
