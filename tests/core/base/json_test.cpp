// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/json.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <cstring>
#include <limits>
#include <random>

#include "core/base/utf8.h"

using namespace taut;

TEST_CASE("the shortest text of a double is plain while a person can read it")
{
    struct Row {
        double value;
        const char* text;
    };
    for (const Row& row :
         {Row{0, "0"}, Row{-0.0, "0"}, Row{1, "1"}, Row{-1.5, "-1.5"}, Row{110000, "110000"}, Row{0.1, "0.1"},
          Row{1343.9013049741563, "1343.9013049741563"}, Row{109557.352, "109557.352"}, Row{0.0001, "0.0001"},
          Row{0.00014, "0.00014"}, Row{0.00005, "5e-05"}, Row{1e15, "1000000000000000"},
          Row{9007199254740993.0, "9007199254740992"}, Row{1e16, "1e+16"}, Row{1e22, "1e+22"}, Row{5e-324, "5e-324"},
          Row{1.7976931348623157e308, "1.7976931348623157e+308"}, Row{1.0 / 3.0, "0.3333333333333333"},
          Row{0.1 + 0.2, "0.30000000000000004"}}) {
        INFO(row.text);
        CHECK(shortest(row.value) == row.text);
    }
}

TEST_CASE("the shortest text of any double reads back to that double")
{
    std::mt19937_64 random(20261125);
    for (int i = 0; i < 100'000; ++i) {
        const std::uint64_t bits = random();
        double value = 0;
        std::memcpy(&value, &bits, sizeof value);
        if (!std::isfinite(value)) continue;
        REQUIRE(std::strtod(shortest(value).c_str(), nullptr) == value);
    }
}

TEST_CASE("members keep the order in which they were set and a second value replaces the first")
{
    Json json;
    json.set("zone", 1).set("anilox", 2).set("mandrel", 3).set("zone", "again");
    CHECK(json.dump() == R"({"zone":"again","anilox":2,"mandrel":3})");
    const auto read = Json::parse(R"({"z":1,"a":{"y":[],"b":{}},"m":null})");
    REQUIRE(read);
    CHECK(read->dump() == R"({"z":1,"a":{"y":[],"b":{}},"m":null})");
}

TEST_CASE("values are asked with a fallback for the wrong type")
{
    const Json json = *Json::parse(R"({"text":"x","whole":3,"number":2.5,"three":3.0,"yes":true,"list":[1,2]})");
    CHECK(json["text"].text() == "x");
    CHECK(json["whole"].text("none") == "none");
    CHECK(json["whole"].integer() == 3);
    CHECK(json["whole"].number() == 3.0);
    CHECK(json["number"].number() == 2.5);
    CHECK(json["number"].integer(-1) == -1);
    CHECK(json["three"].integer(-1) == 3);
    CHECK(json["yes"].boolean());
    CHECK(json["text"].number(7) == 7);
    CHECK(json["list"].items().size() == 2);
    CHECK(json["text"].items().empty());
    CHECK(json["list"].members().empty());
    CHECK(json["absent"].isNull());
    CHECK(json["absent"]["deeper"].isNull());
    CHECK_FALSE(json.has("absent"));
    CHECK(json.has("yes"));
    CHECK(Json(1e300).integer(-1) == -1);
    CHECK(Json(9223372036854775808.0).integer(-1) == -1);
    Json list;
    list.add(1).add("two").add(nullptr);
    CHECK(list.dump() == R"([1,"two",null])");
    CHECK(Json::array().dump() == "[]");
    CHECK(Json::object().dump() == "{}");
}

TEST_CASE("whole numbers stay whole up to the ends of 64 bits")
{
    const Json json = *Json::parse("[9223372036854775807,-9223372036854775808,9223372036854775808,1.0,1e2]");
    CHECK(json.dump() == "[9223372036854775807,-9223372036854775808,9.223372036854776e+18,1,100]");
    CHECK(json.items()[0].integer() == std::numeric_limits<std::int64_t>::max());
    CHECK(json.items()[1].integer() == std::numeric_limits<std::int64_t>::min());
}

TEST_CASE("strings are escaped as RFC 8259 section 7 says and UTF-8 passes through")
{
    const std::string text = std::string("a\"b\\c/\b\f\n\r\t\x01\x1f") + '\0' + "\x7f µ Größe 紙 🧻";
    const std::string dumped = Json(text).dump();
    CHECK(dumped == "\"a\\\"b\\\\c/\\b\\f\\n\\r\\t\\u0001\\u001f\\u0000\x7f µ Größe 紙 🧻\"");
    CHECK(Json::parse(dumped)->text() == text);
    CHECK(Json::parse(R"("\u00b5 \uD83E\uDDFB \/")")->text() == "µ 🧻 /");
    CHECK(Json("cut \xC3").dump() == "\"cut \xEF\xBF\xBD\"");
}

TEST_CASE("what JSON cannot hold is written as null")
{
    CHECK(Json(std::numeric_limits<double>::infinity()).dump() == "null");
    CHECK(Json(std::numeric_limits<double>::quiet_NaN()).dump() == "null");
}

TEST_CASE("broken JSON is refused with the byte where it breaks")
{
    struct Row {
        std::string text;
        const char* byte;
    };
    const std::vector<Row> rows{
        {"", "byte 1"},
        {"  ", "byte 3"},
        {"{\"a\":1", "byte 7"},
        {"{\"a\":1}x", "byte 8"},
        {"{\"a\":1} {}", "byte 9"},
        {"[1,]", "byte 4"},
        {"[1 2]", "byte 4"},
        {"{a:1}", "byte 2"},
        {"{'a':1}", "byte 2"},
        {"[1e999]", "byte 6"},
        {"[-1e999]", "byte 7"},
        {"[01]", "byte 3"},
        {"[.5]", "byte 2"},
        {"[NaN]", "byte 2"},
        {"nul", "byte 4"},
        {"\"\\x\"", "byte 3"},
        {"\"\\uD800\"", "byte 8"},
        {"\"a\nb\"", "byte 3"},
        {"[\"\xC3\x28\"]", "byte 3"},
        {"\"\xED\xA0\x80\"", "byte 2"},
        {"\"\xC0\xAF\"", "byte 2"},
        {"\"\xF4\x90\x80\x80\"", "byte 2"},
        {"// no comments\n1", "byte 1"},
        {std::string(201, '['), "byte 201"},
        {std::string(100'000, '['), "byte 201"},
    };
    for (const Row& row : rows) {
        INFO(row.text.substr(0, 40));
        const auto read = Json::parse(row.text);
        REQUIRE_FALSE(read);
        CHECK(read.error().code == "json.broken");
        CHECK(read.error().subject == row.byte);
        CHECK_FALSE(read.error().remedy.empty());
    }
}

TEST_CASE("two hundred levels are read and brackets inside strings are no levels")
{
    const std::string deep = std::string(200, '[') + std::string(200, ']');
    const auto read = Json::parse(deep);
    REQUIRE(read);
    CHECK(read->dump() == deep);
    CHECK(Json::parse('"' + std::string(500, '[') + "\\\"" + std::string(500, '{') + '"'));
}

TEST_CASE("a name that stands twice in one object is refused by name")
{
    const auto read = Json::parse(R"({"a":{"seq":1,"link":"x","seq":2}})");
    REQUIRE_FALSE(read);
    CHECK(read.error().code == "json.broken");
    CHECK(read.error().subject == "seq");
    CHECK(Json::parse(R"({"a":{"seq":1},"b":{"seq":2}})"));
}

namespace {

class Generator {
public:
    explicit Generator(unsigned seed) : m_random(seed) {}

    Json value(int depth)
    {
        switch (upTo(depth > 0 ? 7 : 5)) {
        case 0: return {};
        case 1: return upTo(1) == 0;
        case 2: return static_cast<std::int64_t>(m_random());
        case 3: return number();
        case 4:
        case 5: return text();
        case 6: {
            Json array = Json::array();
            for (int n = upTo(5); n > 0; --n) array.add(value(depth - 1));
            return array;
        }
        default: {
            Json object = Json::object();
            for (int n = upTo(5); n > 0; --n) object.set(text(), value(depth - 1));
            return object;
        }
        }
    }

private:
    int upTo(int most) { return std::uniform_int_distribution<int>(0, most)(m_random); }
    double number()
    {
        for (;;) {
            const std::uint64_t bits = m_random();
            double d = 0;
            std::memcpy(&d, &bits, sizeof d);
            // whole doubles come back as whole numbers: the same number, but not the same alternative
            if (std::isfinite(d) && std::floor(d) != d) return d;
        }
    }
    std::string text()
    {
        static const std::vector<std::string> kPieces{
            "a",    "Z",    "0", " ", "\"", "\\", "\n", "\t", "/", "µ", "紙", "🧻", std::string(1, '\0'),
            "\x1f", "\x7f", "{", "]"};
        std::string s;
        for (int n = upTo(12); n > 0; --n) s += kPieces[static_cast<std::size_t>(upTo(16))];
        return s;
    }
    std::mt19937_64 m_random;
};

}  // namespace

TEST_CASE("any value that is written is read back the same")
{
    for (unsigned seed = 1; seed <= 2000; ++seed) {
        const Json value = Generator(seed).value(6);
        const std::string text = value.dump();
        INFO("seed " << seed << ": " << text);
        REQUIRE(firstBadUtf8(text) == std::string::npos);
        REQUIRE(text.find('\n') == std::string::npos);
        const auto read = Json::parse(text);
        REQUIRE(read);
        REQUIRE(*read == value);
        REQUIRE(read->dump() == text);
    }
}

TEST_CASE("text cut or spoilt at any byte never crashes and is read only when it is JSON")
{
    std::mt19937 random(7);
    const std::string whole = Generator(77).value(6).dump() + Generator(4).value(6).dump();
    for (int i = 0; i < 5000; ++i) {
        std::string text = whole.substr(0, random() % (whole.size() + 1));
        if (!text.empty()) text[random() % text.size()] = static_cast<char>(random());
        const auto read = Json::parse(text);
        if (read) REQUIRE(Json::parse(read->dump()));
    }
}
