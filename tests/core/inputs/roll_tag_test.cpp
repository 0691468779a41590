// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <filesystem>

#include "core/base/utf8.h"
#include "core/inputs/roll_tag.h"
#include "core/units/plain.h"
#include "tests/core/inputs/demo.h"

using namespace taut;
using namespace taut::inputs;

namespace {

/// "<GS>" stands for the separator.
std::string scan(std::string text)
{
    for (std::size_t at = text.find("<GS>"); at != std::string::npos; at = text.find("<GS>"))
        text.replace(at, 4, "\x1d");
    return text;
}

std::string codeOf(const std::string& text)
{
    const Result<RollTag> tag = readRollTag(scan(text));
    return tag ? "" : tag.error().code;
}

}  // namespace

// GS1 General Specifications: AI 8001 roll products (width 4, length 5, core 3, winding 1, splices 1), AI 310n to 312n,
// 01, 10, 21; the separator after a field that is not of predefined length. The strings were composed by hand.
TEST_CASE("a roll's tag is read field by field")
{
    const Result<RollTag> tag = readRollTag(scan("]C10199521000001018800103300250007603<GS>10LOT7A<GS>21R0042"));
    REQUIRE(tag);
    CHECK(tag->item == "99521000001018");
    CHECK(tag->lot == "LOT7A");
    CHECK(tag->serial == "R0042");
    CHECK(tag->width->si() == Approx(0.330));
    CHECK(tag->length->si() == 2500);
    CHECK(tag->core->si() == Approx(0.076));
    CHECK(tag->winding == Winding::FaceOut);
    CHECK(tag->splices == 3);

    const Result<RollTag> faceIn = readRollTag("]Q30199521000001018800103300250007610");
    REQUIRE(faceIn);
    CHECK(faceIn->winding == Winding::FaceIn);
    CHECK(faceIn->splices == 0);

    const Result<RollTag> weighed = readRollTag("]C10199521000001018311000250031230003303101001825");
    REQUIRE(weighed);
    CHECK(weighed->length->si() == 2500);
    CHECK(weighed->width->si() == Approx(0.330));
    CHECK(weighed->mass->si() == Approx(182.5));

    const Result<RollTag> unknown = readRollTag("0199521000001018800103300250007699");
    REQUIRE(unknown);
    CHECK_FALSE(unknown->winding);
    CHECK_FALSE(unknown->splices);
}

TEST_CASE("separators at the ends do no harm, dates and counts are passed by")
{
    CHECK(codeOf("<GS>010952100000101510L1<GS>").empty());
    CHECK(codeOf("]d2019952100000101810LOT7A<GS>11250304800103300250007603<GS>21R0042").empty());
    CHECK(codeOf("01095210000010153000000250").empty());
    CHECK(codeOf("]C1010952100000101511250200").empty());
    CHECK(codeOf("]C10039521000000000001902095210000010153712").empty());
}

TEST_CASE("a tag that cannot be trusted whole is refused whole")
{
    struct Row {
        std::string text, code;
    };
    const std::vector<Row> rows{
        {"]C10199521000001019800103300250007603", "tag.check_digit"},
        {"]C10199521000001018800103300250007623", "tag.bad_value"},  // winding 2
        {"]C10199521000001018800100000250007603", "tag.bad_value"},  // width 0
        {"]C1019952100000101880010330025000760", "tag.too_short"},   // 13 digits
        {"]C1019952100000101880010330025000760321R0042", "tag.separator_missing"},
        {"]C1800103300250007603", "tag.alone"},                           // no item
        {"]C1010952100000101510ABCDEFGHIJKLMNOPQRSTU", "tag.bad_value"},  // lot of 21 characters
        {"]C1010952100000101511250230", "tag.bad_value"},
        {"]C1010952100000101511251301", "tag.bad_value"},
        {"]C1010952100000101510LOT^7", "tag.bad_value"},
        {"]C10039521000000000001901095210000010153712", "tag.fields_disagree"},
        {"]C00109521000001015", "tag.not_gs1"},
        {"]C10512345", "tag.unknown_field"},
        {"]C10109521000", "tag.too_short"},
        {"]C1", "tag.empty"},
        {"", "tag.empty"},
        {"01A9521000001018", "tag.bad_value"},
        {"019952100000101821R1<GS>21R2", "tag.fields_disagree"},
    };
    for (const Row& row : rows) {
        CAPTURE(row.text);
        CHECK(codeOf(row.text) == row.code);
        const Result<RollTag> tag = readRollTag(scan(row.text));
        if (!tag) CHECK_FALSE(tag.error().remedy.empty());
    }
}

TEST_CASE("a refused tag is quoted in whole characters, whatever the scanner sent")
{
    // The fourth byte of the first two stands inside a character, the others are no text at all.
    for (const char* scanned : {"abc\u00e9", "]\u00e9\u00e9", "]d210L\xc3(", "\xff\xfe\x80", "]\xff\xff", "0199\xff"}) {
        const Result<RollTag> tag = readRollTag(scanned);
        REQUIRE_FALSE(tag);
        CAPTURE(tag.error().code);
        CHECK(taut::firstBadUtf8(taut::sentence(tag.error())) == std::string::npos);
    }
    CHECK(taut::plain(readRollTag("abc\u00e9").error().text).find("\"abc\"") != std::string::npos);
}

TEST_CASE("any single wrong figure of the item is noticed")
{
    const std::string good = "0199521000001018";
    REQUIRE(codeOf(good).empty());
    for (std::size_t i = 2; i < good.size(); ++i)
        for (char c = '0'; c <= '9'; ++c) {
            if (c == good[i]) continue;
            std::string bad = good;
            bad[i] = c;
            CHECK(codeOf(bad) == "tag.check_digit");
        }
}

TEST_CASE("the tags of the demo rolls read, and say what their files say")
{
    for (int n = 41; n <= 50; ++n) {
        const Roll roll = demoRoll("R00" + std::to_string(n));
        CAPTURE(roll.id);
        const Result<RollTag> tag = readRollTag(roll.tag);
        REQUIRE(tag);
        CHECK(tag->serial == roll.id);
        CHECK(tag->width->si() == Approx(roll.width->si()).margin(0.0005));
        CHECK(tag->core->si() == Approx(roll.core->si()).margin(0.0005));
        CHECK(tag->winding == roll.winding);
        CHECK(tag->splices == roll.splices);
        if (roll.length) CHECK(tag->length->si() == Approx(roll.length->si()).margin(0.5));
    }
}
