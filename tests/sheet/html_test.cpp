// Pages for a browser: whole, and with what a user wrote as plain text.
#include "libsplice/sheet/html/html_page.h"
#include "libsplice/sheet/html/html_text.h"
#include "libsplice/sheet/paper/paper.h"

#include "bench.h"

#include <gtest/gtest.h>

#include <string_view>
#include <vector>

namespace libsplice::testing {
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

Line with_hostile_texts() {
    const std::string text(hostile);
    return with(two_eyes(), {{"name", text}, {"boat", text}, {"note", text}, {"colour", text}});
}

/// What the writer makes of the lines.
template <class MakeWriter>
std::string written(const MakeWriter& make_writer, const std::vector<Line>& lines) {
    std::string text;
    Output output = Output::to_string(text);
    write_lines(*make_writer(output), lines);
    output.flush();
    return text;
}

TEST(HtmlSheet, IsWholeAndTakesNamesAsText) {
    const std::string sheet = sheet_of({with_hostile_texts()}, Format::html);
    expect_balanced(sheet);
    EXPECT_EQ(sheet.find("<script"), std::string::npos);
    EXPECT_NE(sheet.find("&quot;&gt;&lt;script&gt;"), std::string::npos);
    EXPECT_NE(sheet.find(show_length(cut_one(two_eyes()).piece().cut, UnitSystem::metric)),
              std::string::npos);
    expect_balanced(end_sheet_of("buried-eye", "12-strand HMPE 5 mm",
                                 {{"eye", "40 mm", {}}, {"pin", "8 mm", {}}}, Format::html));
}

TEST(HtmlSheet, LikeLinesShareACardWithATickForEachPiece) {
    const std::string sheet =
        sheet_of({two_eyes(), plain_line, with(two_eyes(), {{"boat", "No 2"}})}, Format::html);
    EXPECT_EQ(count_of("id=\"card-2\"", sheet), 1);
    EXPECT_EQ(count_of("id=\"card-3\"", sheet), 0);
    EXPECT_NE(sheet.find("make 4: No 1 (2), No 2 (2)"), std::string::npos);
    const std::string boxes = sheet.substr(sheet.find("<table class=\"boxes\">"));
    const std::string rows = boxes.substr(0, boxes.find("</table>"));
    EXPECT_EQ(count_of("class=\"tick\"", rows), 4);
}

TEST(HtmlSheet, SaysWhatCannotBeCut) {
    const std::string sheet = sheet_of({refused_line()}, Format::html);
    expect_balanced(sheet);
    EXPECT_NE(sheet.find("not cut"), std::string::npos);
    EXPECT_EQ(sheet.find("<svg class=\"rope\""), std::string::npos);
}

// A path of the strip at x lies x millimetres from the cut end: the picture is 190 mm wide and
// counts in millimetres.
TEST(HtmlSheet, TheStripIsAtTrueSize) {
    const One one = cut_one(two_eyes());
    const std::string sheet = sheet_of({two_eyes()}, Format::html);
    EXPECT_NE(sheet.find("width=\"190mm\""), std::string::npos);
    EXPECT_NE(sheet.find("viewBox=\"0 0 190 "), std::string::npos);
    std::ptrdiff_t within = 0;
    for (const PieceMark& mark : one.piece().marks) {
        const double at = in_millimetres(mark.from_end);
        if (at > 0.0 && at <= 190.0) {
            ++within;
            const std::string place =
                "data-at=\"" + show_number(at, 3) + "\" d=\"M" + show_number(at, 3) + ' ';
            EXPECT_NE(sheet.find(place), std::string::npos) << place;
        }
    }
    EXPECT_GT(within, 4);
    EXPECT_EQ(count_of("data-strip=", sheet), within);
}

TEST(WallChart, HasALineForThePiece) {
    const std::string page =
        written([](Output& output) { return wall_chart(output, {}); }, {with_hostile_texts()});
    expect_balanced(page);
    EXPECT_EQ(page.find("<script"), std::string::npos);
    for (const char* part : {">2.000<", "12-strand HMPE", ">5 mm<", "locked-eye / buried-eye"}) {
        EXPECT_NE(page.find(part), std::string::npos) << part;
    }
}

TEST(WallChart, LikeBoatsShareAChart) {
    std::vector<Line> job;
    for (const char* boat : {"Cat 1", "Cat 2", "Cat 3", "Dory"}) {
        job.push_back(with(two_eyes(), {{"boat", boat}}));
    }
    job.push_back(with(plain_line, {{"boat", "Dory"}}));
    const std::string page = written([](Output& output) { return wall_chart(output, {}); }, job);
    EXPECT_EQ(count_of("<section class=\"chart", page), 2);
    EXPECT_NE(page.find("<h2>Cat 1 to Cat 3</h2>"), std::string::npos);
}

TEST(Labels, OneForEveryPiece) {
    const LabelSheet sheet{"test", "A4", 2, 3, 90.0, 80.0, 10.0, 10.0, 100.0, 90.0};
    const std::string page = written([&](Output& output) { return label_sheet(output, {}, sheet); },
                                     {two_eyes(), refused_line()});
    expect_balanced(page);
    EXPECT_EQ(count_of("class=\"label\"", page), 2);
    EXPECT_NE(page.find("<span>5 mm</span>"), std::string::npos);
}

} // namespace
} // namespace libsplice::testing
