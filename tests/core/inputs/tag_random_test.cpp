// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <random>

#include "core/base/utf8.h"
#include "core/inputs/roll_tag.h"
#include "core/units/plain.h"
#include "tests/core/inputs/tag_text.h"

using namespace taut;
using namespace taut::inputs;

namespace {

const std::vector<std::string> kGood{
    "]C10199521000001018800103300250007603<GS>10LOT7A<GS>21R0042",
    "]d2019952100000101810LOT7A<GS>11250304800103300250007603<GS>21R0042",
    "]Q30199521000001018800103300250007610",
    "]C10199521000001018311000250031230003303101001825",
    "]C10039521000000000001902095210000010153712",
    "01095210000010153000000250",
    "<GS>010952100000101510L1<GS>",
    "]C1010952100000101511250200",
    "[)><RS>06<GS>Q2500<GS>1TLOT7A<GS>1PSUB-60<GS>SR0042<RS><EOT>",
    "https://example.com/01/99521000001018/10/LOT7A/21/R0042?8001=03300250007603&11=250304"};

/// By another way than the reader's: every figure three times and once in turn, the check digit once.
bool modTenHolds(const std::string& digits)
{
    int sum = 0;
    for (std::size_t i = 0; i < digits.size(); ++i) sum += (digits[i] - '0') * ((digits.size() - i) % 2 == 0 ? 3 : 1);
    return sum % 10 == 0;
}

std::string withCheckDigit(std::string body)
{
    for (char c = '0'; c <= '9'; ++c)
        if (modTenHolds(body + c)) return body + c;
    return {};
}

}  // namespace

// GS1, "How to calculate a check digit manually": the worked example 629104150021 and 3; GS1 India 890400021003 and 7.
// The facts of the sum: every single wrong figure shows, neighbours that differ by 5 can change places unseen.
TEST_CASE("the check digit shows every wrong figure, and no swap of neighbours five apart")
{
    for (const char* item : {"06291041500213", "08904000210037", "99521000001018", "09521000001015"})
        CHECK(codeOf("01" + std::string(item)).empty());
    for (const char* unit : {"395210000000000019", "095210000123456785"}) {
        const std::string good = "00" + std::string(unit);
        CHECK(codeOf(good).empty());
        for (std::size_t i = 2; i < good.size(); ++i)
            for (char c = '0'; c <= '9'; ++c) {
                std::string bad = good;
                bad[i] = c;
                CHECK(codeOf(bad) == (c == good[i] ? "" : "tag.check_digit"));
            }
    }
    CHECK(codeOf("01" + withCheckDigit("0952100000161")).empty());
    std::string swapped = withCheckDigit("0952100000161");
    std::swap(swapped[10], swapped[11]);  // 16 becomes 61
    REQUIRE(swapped.substr(10, 2) == "61");
    CHECK(codeOf("01" + swapped).empty());
    std::swap(swapped[9], swapped[10]);  // 06 becomes 60
    CHECK(codeOf("01" + swapped) == "tag.check_digit");
}

// A fact of the carrier: a field of free length ends only at a separator, so one that was lost cannot be missed.
TEST_CASE("a lot that swallowed the next field is shown whole")
{
    const Result<RollTag> tag = readRollTag("]C1010952100000101510LOT7A21R0042");
    REQUIRE(tag);
    CHECK(tag->lot == "LOT7A21R0042");
    CHECK(tag->serial.empty());
    REQUIRE(tag->fields.size() == 2);
    CHECK(tag->fields[1].text == "LOT7A21R0042");
    CHECK(tag->fields[1].first == 20);
    CHECK(tag->fields[1].length == 14);
}

TEST_CASE("a list of fields that is written reads back the same")
{
    std::mt19937 chance(20250304);
    const auto figures = [&](std::size_t n) {
        std::string out;
        while (out.size() < n) out += static_cast<char>('0' + chance() % 10);
        return out;
    };
    const std::string signs = "!\"%&'()*+,-./0123456789:;<=>?ABCDEFGHIJKLMNOPQRSTUVWXYZ_abcdefghijklmnopqrstuvwxyz";
    REQUIRE(signs.size() == 82);
    const auto words = [&] {
        std::string out;
        for (std::size_t n = 1 + chance() % 20; n > 0; --n) out += signs[chance() % signs.size()];
        return out;
    };
    const auto date = [&] {
        const std::string month = std::to_string(101 + chance() % 12).substr(1);
        return figures(2) + month + std::to_string(100 + chance() % 29).substr(1);
    };
    for (int round = 0; round < 2000; ++round) {
        std::vector<TagField> fields;
        const auto add = [&](const std::string& id, const std::string& text, int part = 0) {
            TagField field;
            field.id = id;
            field.part = part;
            field.text = text;
            fields.push_back(field);
        };
        add("01", withCheckDigit('9' + figures(12)));
        std::vector<std::string> ids{"10", "11",  "13",  "15",  "17",  "20",  "21",
                                     "30", "310", "311", "312", "320", "8001"};
        std::shuffle(ids.begin(), ids.end(), chance);
        ids.resize(1 + chance() % ids.size());
        for (const std::string& id : ids) {
            if (id == "8001") {
                const std::string parts[] = {"0" + std::to_string(100 + chance() % 900), '1' + figures(4),
                                             '1' + figures(2), std::string(1, "019"[chance() % 3]), figures(1)};
                for (int part = 0; part < 5; ++part) add(id, parts[part], part);
            } else if (id == "10" || id == "21") {
                add(id, words());
            } else if (id == "20") {
                add(id, figures(2));
            } else if (id == "30") {
                add(id, figures(1 + chance() % 8));
            } else if (id.size() == 3) {
                add(id + static_cast<char>('0' + chance() % 6), figures(6));
            } else {
                add(id, date());
            }
        }
        const std::string text = written(fields);
        CAPTURE(text);
        const Result<Tag> back = readTag(text, {2025, false});
        REQUIRE(back);
        REQUIRE(back->fields.size() == fields.size());
        std::size_t end = 1;
        for (std::size_t i = 0; i < fields.size(); ++i) {
            const TagField& field = back->fields[i];
            CHECK((field.id == fields[i].id && field.text == fields[i].text && field.part == fields[i].part));
            CHECK((field.first == end || (field.first == end + 1 && text[end - 1] == '\x1d')));
            CHECK(text.substr(field.first - 1, field.length) == (field.part == 0 ? field.id : "") + field.text);
            end = field.first + field.length;
        }
        CHECK(written(back->fields) == text);
    }
}

TEST_CASE("whatever single character changes, a tag is refused with its place or its check digits hold")
{
    int refused = 0;
    for (const std::string& vector : kGood) {
        const std::string good = scanned(vector);
        REQUIRE(readTag(good));
        for (std::size_t i = 0; i < good.size(); ++i)
            for (int c = 0; c < 256; ++c) {
                std::string text = good;
                text[i] = static_cast<char>(c);
                const Result<Tag> tag = readTag(text, {2025, true});
                if (tag) {
                    for (const TagField& field : tag->fields)
                        if (field.id == "00" || field.id == "01" || field.id == "02") REQUIRE(modTenHolds(field.text));
                    continue;
                }
                ++refused;
                const auto place = tagPlace(tag.error());
                REQUIRE(place);
                REQUIRE(*place >= 1);
                REQUIRE(*place <= text.size() + 1);
                REQUIRE(firstBadUtf8(sentence(tag.error())) == std::string::npos);
            }
    }
    CHECK(refused > 50'000);
}
