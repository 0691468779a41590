// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <set>

#include "core/inputs/roll_tag.h"
#include "core/units/plain.h"
#include "tests/core/inputs/tag_text.h"

using namespace taut;
using namespace taut::inputs;

namespace {

std::string fieldsOf(const std::string& text, const TagOptions& options = {})
{
    const Result<Tag> tag = readTag(scanned(text), options);
    return tag ? listed(*tag) : sentence(tag.error());
}

std::set<std::string> notesOf(const std::string& text)
{
    const Result<Tag> tag = readTag(scanned(text));
    REQUIRE(tag);
    std::set<std::string> out;
    for (const Finding& note : tag->notes) {
        CHECK(tagPlace(note));
        out.insert(note.code);
    }
    return out;
}

TagDate dateOf(const std::string& text, int year)
{
    const Result<Tag> tag = readTag(scanned(text), {year, true});
    REQUIRE(tag);
    return std::get<TagDate>(tag->fields.back().value);
}

double amountOf(const std::string& text)
{
    const Result<Tag> tag = readTag(scanned(text), {{}, true});
    REQUIRE(tag);
    return std::get<Quantity>(tag->fields.back().value).si();
}

}  // namespace

// GS1 Barcode Syntax Dictionary (GS1 AISBL, 2023): length, components and separator of each identifier; GS1 General
// Specifications for AI 8001. The strings were composed by hand.
TEST_CASE("every field of a tag is kept in order, as it stands there")
{
    CHECK(fieldsOf("]C10199521000001018800103300250007603<GS>10LOT7A<GS>21R0042") ==
          "01 99521000001018, 8001 0330|02500|076|0|3, 10 LOT7A, 21 R0042");
    CHECK(fieldsOf("]d2019952100000101810LOT7A<GS>11250304800103300250007603<GS>21R0042") ==
          "01 99521000001018, 10 LOT7A, 11 250304, 8001 0330|02500|076|0|3, 21 R0042");
    CHECK(fieldsOf("]Q30199521000001018800103300250007610") == "01 99521000001018, 8001 0330|02500|076|1|0");
    CHECK(fieldsOf("]C10199521000001018311000250031230003303101001825") ==
          "01 99521000001018, 3110 002500, 3123 000330, 3101 001825");
    CHECK(fieldsOf("]C10039521000000000001902095210000010153712") == "00 395210000000000019, 02 09521000001015, 37 12");
    CHECK(fieldsOf("00095210000123456785") == "00 095210000123456785");
    CHECK(fieldsOf("01095210000010153000000250") == "01 09521000001015, 30 00000250");
    CHECK(fieldsOf("<GS>010952100000101510L1<GS>") == "01 09521000001015, 10 L1");
    CHECK(fieldsOf("]C1010952100000101511250200") == "01 09521000001015, 11 250200");
    CHECK(fieldsOf("]e00109521000001015200713250301152503021725030330123") ==
          "01 09521000001015, 20 07, 13 250301, 15 250302, 17 250303, 30 123");
    // The worked examples of the check digit page of GS1 and of GS1 India, as items of 14 figures.
    CHECK(fieldsOf("0106291041500213") == "01 06291041500213");
    CHECK(fieldsOf("0108904000210037") == "01 08904000210037");
}

TEST_CASE("a field has its name, its value and its place")
{
    const Result<Tag> tag = readTag(scanned("]C10199521000001018800103300250007603<GS>10LOT7A<GS>3720"));
    CHECK_FALSE(tag);  // an item and a count of what is inside
    const Result<Tag> read = readTag(scanned("]C10199521000001018800103300250007693<GS>10LOT7A<GS>30250"));
    REQUIRE(read);
    REQUIRE(read->fields.size() == 8);
    struct Row {
        const char* name;
        std::size_t first, length;
    };
    const Row rows[] = {{"item", 4, 16},    {"slit width", 20, 8}, {"length", 28, 5}, {"inside of the core", 33, 3},
                        {"winding", 36, 1}, {"splices", 37, 1},    {"lot", 39, 7},    {"count", 47, 5}};
    for (std::size_t i = 0; i < std::size(rows); ++i) {
        CHECK(plain(read->fields[i].name) == rows[i].name);
        CHECK(read->fields[i].first == rows[i].first);
        CHECK(read->fields[i].length == rows[i].length);
    }
    CHECK(std::get<Quantity>(read->fields[1].value) == Quantity(0.33, Kind::Length));
    CHECK(plain(std::get<Text>(read->fields[4].value)) == "not known");
    CHECK(std::get<Quantity>(read->fields[7].value) == Quantity(250, Kind::Count));
}

// Syntax Dictionary and General Specifications as above; the characters were counted by hand.
TEST_CASE("a refusal says at which character the tag is wrong")
{
    struct Row {
        std::string text, code;
        std::size_t place;
    };
    const std::vector<Row> rows{{"]C10199521000001019800103300250007603", "tag.check_digit", 19},
                                {"]C10199521000001018800103300250007623", "tag.bad_value", 36},
                                {"]C10199521000001018800100000250007603", "tag.bad_value", 24},
                                {"]C10199521000001018800103300000007603", "tag.bad_value", 28},
                                {"]C10199521000001018800103300250000003", "tag.bad_value", 33},
                                {"]C1019952100000101880010330025000760", "tag.too_short", 37},
                                {"]C1019952100000101880010330025000760321R0042", "tag.separator_missing", 38},
                                {"]C1800103300250007603", "tag.alone", 4},
                                {"]C1010952100000101510ABCDEFGHIJKLMNOPQRSTU", "tag.bad_value", 42},
                                {"]C1010952100000101511250230", "tag.bad_value", 26},
                                {"]C1010952100000101511250229", "tag.bad_value", 26},
                                {"]C1010952100000101511251301", "tag.bad_value", 24},
                                {"]C1010952100000101510LOT^7", "tag.bad_value", 25},
                                {"]C1010952100000101510LOT 7", "tag.bad_value", 25},
                                {"]C1010952100000101510LOT#7", "tag.bad_value", 25},
                                {"]C10039521000000000001901095210000010153712", "tag.fields_disagree", 24},
                                {"]C00109521000001015", "tag.not_gs1", 1},
                                {"]d10109521000001015", "tag.not_gs1", 1},
                                {"]Q10109521000001015", "tag.not_gs1", 1},
                                {"]C10512345", "tag.unknown_field", 4},
                                {"]C10109521000", "tag.too_short", 14},
                                {"]C1", "tag.empty", 4},
                                {"", "tag.empty", 1},
                                {"<GS>", "tag.empty", 2},
                                {"]C1<GS>010952100000101510A<GS>10B", "tag.fields_disagree", 25},
                                {"010952100000101531000000013101000020", "tag.fields_disagree", 27},
                                {"01095210000010153106000001", "tag.unknown_field", 17}};
    for (const Row& row : rows) {
        CAPTURE(row.text);
        const Result<Tag> tag = readTag(scanned(row.text));
        REQUIRE_FALSE(tag);
        CHECK(tag.error().code == row.code);
        CHECK(tagPlace(tag.error()) == row.place);
        CHECK(sentence(tag.error()).find("Character " + std::to_string(row.place) + ":") != std::string::npos);
        CHECK_FALSE(tag.error().remedy.empty());
    }
    CHECK(sentence(readTag("]C10199521000001019").error()).find("is 9, and \"99521000001019\" needs 8") !=
          std::string::npos);
    CHECK_FALSE(tagPlace(refuse("run.none", "x", {"%1", {std::int64_t{1}}})));
}

// Syntax Dictionary, keys req and ex: that another bar code of the label may bring the missing field is its own note.
TEST_CASE("a field that needs another is noted, or refused where the roll would be of no item")
{
    const std::string item = "0109521000001015";
    for (const char* alone :
         {"10L1", "21R1", "11250304", "13250304", "15250304", "17250304", "2007", "3012", "3100000001", "3110000001",
          "3120000001", "3200000001", "3210000001", "3220000001", "3230000001", "3240000001"}) {
        CAPTURE(alone);
        CHECK(notesOf(alone) == std::set<std::string>{"tag.alone"});
        CHECK(notesOf(item + alone).empty());
    }
    CHECK(notesOf("0209521000001015") == std::set<std::string>{"tag.alone"});
    CHECK(notesOf("00395210000000000019") == std::set<std::string>{});
    CHECK(notesOf("3712<GS>0209521000001015").size() == 1);
    CHECK(notesOf("3712<GS>020952100000101500395210000000000019").empty());
    CHECK(codeOf(item + "3712") == "tag.fields_disagree");
    CHECK(codeOf(item + "0209521000001015") == "tag.fields_disagree");
    CHECK(notesOf(item + "800103300250007603") == std::set<std::string>{"tag.not_variable"});
    CHECK(notesOf("0199521000001018800103300250007603").empty());
}

TEST_CASE("a tag that tells a length or a width twice is asked about beyond its roundings")
{
    const std::string roll = "0199521000001018800103300250007603<GS>";
    CHECK(notesOf(roll + "3110002501").empty());
    CHECK(notesOf(roll + "3110002502") == std::set<std::string>{"tag.fields_disagree"});
    CHECK(notesOf(roll + "3124003305").empty());
    CHECK(notesOf(roll + "3124003321") == std::set<std::string>{"tag.fields_disagree"});
    CHECK(notesOf(roll + "31010010003201002205").empty());  // 100 kg and 220.5 lb
    CHECK(notesOf(roll + "31010010003201002305") == std::set<std::string>{"tag.fields_disagree"});
    // What was wound counts before what was ordered.
    CHECK(readRollTag(scanned(roll + "3110002600"))->length->si() == 2500);
    CHECK(readRollTag("0199521000001018"
                      "3110002600"
                      "800103300250007603")
              ->length->si() == 2500);
}

// Syntax Dictionary, lint of YYMMD0 and the rule of the century that stands with it.
TEST_CASE("dates are read with the century that this year gives them")
{
    const std::string item = "0109521000001015";
    CHECK(dateOf(item + "11250304", 2025) == TagDate{2025, 3, 4, false});
    CHECK(dateOf(item + "11250200", 2025) == TagDate{2025, 2, 28, true});
    CHECK(dateOf(item + "17240200", 2025) == TagDate{2024, 2, 29, true});
    CHECK(dateOf(item + "17751231", 2025) == TagDate{2075, 12, 31, false});  // 50 ahead
    CHECK(dateOf(item + "17761231", 2025) == TagDate{1976, 12, 31, false});  // 51 ahead
    CHECK(dateOf(item + "17260101", 2075) == TagDate{2026, 1, 1, false});    // 49 back
    CHECK(dateOf(item + "17250101", 2075) == TagDate{2125, 1, 1, false});    // 50 back
    CHECK(std::holds_alternative<std::monostate>(readTag(item + "11250304")->fields.back().value));
    // MH10: 6D has a qualifier behind its date, 14D and 16D have none.
    CHECK(dateOf("16D20250304", 2025) == TagDate{2025, 3, 4, false});
    CHECK(dateOf("14D20240229", 2025) == TagDate{2024, 2, 29, false});
    CHECK(dateOf("6D20250304094", 2025) == TagDate{2025, 3, 4, false});
    for (const char* bad : {"16D20250300", "16D20251301", "14D20250229", "16D250304", "16D202503041", "6D20250304"}) {
        CAPTURE(bad);
        CHECK_FALSE(codeOf(bad, {2025, true}).empty());
    }
}

// Syntax Dictionary: net mass, length and width in metric and US units, so many decimals as the last figure says. The
// inch is 25.4 mm, the pound 0.45359237 kg (international yard and pound agreement, 1959).
TEST_CASE("a measure has the decimals that its identifier gives")
{
    const std::string item = "0109521000001015";
    const double values[] = {123456, 12345.6, 1234.56, 123.456, 12.3456, 1.23456};
    for (int n = 0; n <= 5; ++n) {
        const std::string text = std::to_string(n) + "123456";
        CHECK(amountOf(item + "310" + text) == Approx(values[n]));
        CHECK(amountOf(item + "311" + text) == Approx(values[n]));
        CHECK(amountOf(item + "312" + text) == Approx(values[n]));
        CHECK(amountOf(item + "320" + text) == Approx(values[n] * 0.45359237));
        CHECK(amountOf(item + "321" + text) == Approx(values[n] * 0.0254));
        CHECK(amountOf(item + "322" + text) == Approx(values[n] * 0.3048));
        CHECK(amountOf(item + "323" + text) == Approx(values[n] * 0.9144));
        CHECK(amountOf(item + "324" + text) == Approx(values[n] * 0.0254));
    }
    const Result<RollTag> us = readRollTag(item + "3242001325"
                                                  "3220008200"
                                                  "3201004020");
    REQUIRE(us);
    CHECK(us->width->si() == Approx(0.33655));
    CHECK(us->width->quantity().unit() == "in");
    CHECK(us->length->si() == Approx(2499.36));
    CHECK(us->mass->si() == Approx(182.344133));
}

// ISO/IEC 15434 and ANSI MH10.8.2, from memory; the strings were composed by hand.
TEST_CASE("data identifiers are read in their envelope, and alone where a bar code was surely scanned")
{
    const std::string whole = "[)><RS>06<GS>Q2500<GS>1TLOT7A<GS>1PSUB-60<GS>SR0042<RS><EOT>";
    CHECK(fieldsOf(whole) == "Q 2500, 1T LOT7A, 1P SUB-60, S R0042");
    CHECK(fieldsOf("]d1" + whole) == fieldsOf(whole));
    const Result<RollTag> roll = readRollTag(scanned(whole));
    REQUIRE(roll);
    CHECK(roll->item == "SUB-60");
    CHECK(roll->lot == "LOT7A");
    CHECK(roll->serial == "R0042");
    CHECK(roll->fields[1].first == 14);
    CHECK(roll->fields[1].length == 7);
    CHECK(fieldsOf("[)><RS>05<GS>0199521000001018<GS>10LOT7A<RS>06<GS>7Q2500MR<GS>4LXX<RS><EOT>") ==
          "01 99521000001018, 10 LOT7A, 7Q 2500MR, 4L XX");
    CHECK(readRollTag(scanned("[)><RS>06<GS>7Q2500MR<GS>7Q182.5KG<RS><EOT>")).error().code == "tag.fields_disagree");
    CHECK(readRollTag(scanned("[)><RS>06<GS>7Q2500MR<RS><EOT>"))->length->si() == 2500);
    CHECK(readRollTag(scanned("[)><RS>06<GS>7Q182.5KG<RS><EOT>"))->mass->si() == 182.5);

    const TagOptions alone{{}, true};
    CHECK(fieldsOf("Q2500", alone) == "Q 2500");
    CHECK(fieldsOf("]C01TLOT7A", alone) == "1T LOT7A");
    CHECK(plain(readTag("HACME", alone)->fields[0].name) == "name of a party");
    CHECK(plain(readTag("1HACME", alone)->fields[0].name) == "employee");
    for (const char* one : {"P", "1P", "K", "V", "S", "3S", "4S", "5S", "J", "1J", "2J", "3J", "4J", "5J", "6J"})
        CHECK(fieldsOf(one + std::string("A 1#"), alone) == one + std::string(" A 1#"));
    CHECK(amountOf("7Q8200FT") == Approx(2499.36));
    CHECK(amountOf("7Q12EA") == 12);
    CHECK(std::holds_alternative<std::monostate>(readTag("7Q12ZZ", alone)->fields[0].value));

    struct Row {
        std::string text, code;
        std::size_t place;
    };
    for (const Row& row : std::vector<Row>{{"Q25A", "tag.bad_value", 4},
                                           {"Q", "tag.too_short", 2},
                                           {"7Q1.2.3MR", "tag.bad_value", 6},
                                           {"7Q12mr", "tag.bad_value", 5},
                                           {"1TL\xc3\xa9", "tag.bad_value", 4},
                                           {"R0042", "tag.unknown_field", 1},
                                           {"]C10512345", "tag.unknown_field", 4},
                                           {"[)>06", "tag.too_short", 4},
                                           {"[)><RS>06<GS>Q2500", "tag.too_short", 13},
                                           {"[)><RS>06<GS>Q2500<RS>", "tag.too_short", 14},
                                           {"[)><RS>07<GS>Q2500<RS><EOT>", "tag.unknown_format", 5},
                                           {"[)><RS>06<GS>?2500<RS><EOT>", "tag.unknown_field", 8},
                                           {"[)><RS>06<GS>Q2500<RS><EOT>X", "tag.unknown_format", 15},
                                           {"[)><RS>06<GS>1JA<GS>2JB<RS><EOT>", "tag.fields_disagree", 12},
                                           {"[)><RS><EOT>", "tag.empty", 6}}) {
        CAPTURE(row.text);
        const Result<Tag> tag = readTag(scanned(row.text), alone);
        REQUIRE_FALSE(tag);
        CHECK(tag.error().code == row.code);
        CHECK(tagPlace(tag.error()) == row.place);
    }
}

TEST_CASE("a roll's own number that begins like a data identifier is no tag where it may have been typed")
{
    for (const char* number : {"S0042", "K12", "Q2500", "1TLOT7A"}) CHECK(codeOf(number) == "tag.unknown_field");
}

// GS1 Digital Link, key 01 with its qualifiers in the order of the Syntax Dictionary (dlpkey).
TEST_CASE("a digital link says what the element string says")
{
    const std::string query = "?8001=03300250007603&11=250304";
    const std::string good = "https://example.com/01/99521000001018/10/LOT7A/21/R0042" + query;
    CHECK(fieldsOf(good) == "01 99521000001018, 10 LOT7A, 21 R0042, 8001 0330|02500|076|0|3, 11 250304");
    CHECK(fieldsOf("]Q1" + good + "&linkType=all#top") == fieldsOf(good));
    CHECK(fieldsOf("HTTPS://example.com/some/stem/01/99521000001018/?linkType=all&30=12") ==
          "01 99521000001018, 30 12");
    const Result<RollTag> tag = readRollTag(good);
    REQUIRE(tag);
    CHECK(tag->serial == "R0042");
    CHECK(tag->width->si() == Approx(0.33));
    CHECK(tag->fields[0].first == 21);
    CHECK(tag->fields[0].length == 17);
    CHECK(fieldsOf("https://example.com/01/99521000001018/10/L%2F7%25") == "01 99521000001018, 10 L/7%");
    struct Row {
        std::string text, code;
        std::size_t place;
    };
    const std::string item = "https://example.com/01/99521000001018";
    for (const Row& row : std::vector<Row>{{item + "/21/R0042/10/LOT7A", "tag.order", 48},
                                           {item + "/10/A/10/B", "tag.order", 44},
                                           {item + "/11/250304", "tag.order", 39},
                                           {item + "?21=R0042", "tag.order", 39},
                                           {item + "?05=1", "tag.unknown_field", 39},
                                           {item + "/seller/x", "tag.unknown_field", 39},
                                           {item + "/10/L%2", "tag.bad_value", 43},
                                           {item + "/10/L%2F%5E", "tag.bad_value", 46},
                                           {item + "/10", "tag.too_short", 41},
                                           {item + "?11=", "tag.too_short", 42},
                                           {"https://example.com/01/99521000001019", "tag.check_digit", 37},
                                           {"https://example.com/roll/7", "tag.not_gs1", 1},
                                           {"https://example.com", "tag.not_gs1", 1}}) {
        CAPTURE(row.text);
        const Result<Tag> read = readTag(row.text);
        REQUIRE_FALSE(read);
        CHECK(read.error().code == row.code);
        CHECK(tagPlace(read.error()) == row.place);
    }
}
