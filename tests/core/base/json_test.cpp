// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/json.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <cstring>
#include <limits>
#include <random>

#include "core/base/json_quick.h"
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

// RFC 8259 (2017), sections 2 to 8: two libraries read it, and either says the same of every text.
TEST_CASE("what is read quickly is what the parser that judges reads")
{
    for (const char* text : {"0",
                             "-0",
                             "-0.0",
                             "1e5",
                             "1E+05",
                             "0.1",
                             "5e-05",
                             "1343.9013049741563",
                             "9223372036854775807",
                             "9223372036854775808",
                             "18446744073709551615",
                             "18446744073709551616",
                             "-9223372036854775808",
                             "-9223372036854775809",
                             "1e308",
                             "5e-324",
                             "[]",
                             "{}",
                             "\"\"",
                             R"("\"\\\/\b\f\n\r\t")",
                             R"("\u001d\u0000\u000A")",
                             R"("\u00e4\ud83d\ude00")",
                             R"({"\u0061":1,"a\"b":2})",
                             "\"\xC3\xA9\xE2\x82\xAC\"",
                             R"( { "a" : [ 1 , true , false , null ] , "b" : { "c" : "" } } )"}) {
        CAPTURE(text);
        const auto json = Json::parse(text), judged = judgedJson(text);
        REQUIRE(judged);
        REQUIRE(json);
        CHECK(*json == *judged);
        CHECK(json->dump() == judged->dump());
        CHECK(json->isWhole() == judged->isWhole());
    }
}

TEST_CASE("what no parser may read is refused in the same words by whichever looks at it")
{
    const std::string deep = std::string(201, '[') + std::string(201, ']');
    for (const std::string& text : {std::string(),
                                    std::string("{"),
                                    std::string("[1,]"),
                                    std::string("{\"a\":1,}"),
                                    std::string("{\"a\" 1}"),
                                    std::string("{a:1}"),
                                    std::string("[01]"),
                                    std::string("[1.]"),
                                    std::string("[.5]"),
                                    std::string("[+1]"),
                                    std::string("[1e]"),
                                    std::string("[1e999]"),
                                    std::string("[-]"),
                                    std::string("[tru]"),
                                    std::string("[1] 2"),
                                    std::string("[\"a\nb\"]"),
                                    std::string("[\"\\x\"]"),
                                    std::string("[\"\\u001\"]"),
                                    std::string("[\"\\ud800\"]"),
                                    std::string("[\"\\"),
                                    std::string("[\"a"),
                                    std::string("[\"\xC3\"]"),
                                    std::string("[\"\xED\xA0\x80\"]"),
                                    std::string("[\"12345678\x01\"]"),
                                    std::string("{\"a\":1,\"a\":2}"),
                                    std::string("{\"a\":1,\"\\u0061\":2}"),
                                    std::string("[{\"k\":{},\"j\":0,\"k\":[]}]"),
                                    deep}) {
        CAPTURE(text);
        const auto json = Json::parse(text), judged = judgedJson(text);
        REQUIRE_FALSE(json);
        REQUIRE_FALSE(judged);
        CHECK(json.error() == judged.error());
        CHECK_FALSE(quickJson(text, {}));
    }
    CHECK(quickJson(std::string(200, '[') + std::string(200, ']'), {}));
}

TEST_CASE("a number is equal to what its own text reads back as")
{
    for (const double value :
         {0.0, -0.0, 1.0, -3.0, 2.5, 99999.0, 100000.0, 123456.0, 138750.0, -2000000.0, 1e15, 4503599627370497.0,
          9007199254740991.0, 9007199254740992.0, 9007199254740994.0, 1e22, 1e300, 0.1, 5e-324}) {
        CAPTURE(value);
        const Json json(value);
        const auto back = Json::parse(json.dump());
        REQUIRE(back);
        CHECK(*back == json);
        CHECK(back->dump() == json.dump());
        CHECK(json.number() == value);
    }
}

TEST_CASE("doubles are read to the last bit by either parser")
{
    std::mt19937_64 random(20261127);
    for (int i = 0; i < 50'000; ++i) {
        const std::uint64_t bits = random();
        double value = 0;
        std::memcpy(&value, &bits, sizeof value);
        if (!std::isfinite(value)) continue;
        const auto json = quickJson(shortest(value), {});
        const auto judged = judgedJson(shortest(value));
        REQUIRE(json);
        REQUIRE(judged);
        REQUIRE(*json == *judged);
        REQUIRE(json->number() == value);
    }
}

TEST_CASE("of a text only what is wanted becomes a value")
{
    const JsonMask wanted{"", {{"kind", {}}, {"press", {{"id", {}}}}, {"events", {{"what", {}}, {"by", {}}}}}};
    const char* text =
        R"({"kind":"run","rest":[1,2,{"x":3}],"press":{"name":"n","id":"north"},"events":[{"what":"a","by":"p","n":1},7,{"n":2}]})";
    const auto json = Json::parse(text, wanted);
    REQUIRE(json);
    CHECK(json->dump() == R"({"kind":"run","press":{"id":"north"},"events":[{"what":"a","by":"p"},7,{}]})");
    CHECK(*json == Json::parse(text)->narrowed(wanted));
    CHECK(*Json::parse("[3]", wanted) == *Json::parse("[3]"));
    CHECK(Json::parse(R"({"press":"a text"})", wanted)->dump() == R"({"press":"a text"})");
    // What is not wanted is judged all the same.
    CHECK_FALSE(Json::parse(R"({"kind":"run","rest":{"a":1,"a":2}})", wanted));
    CHECK_FALSE(Json::parse(R"({"kind":"run","rest":[01]})", wanted));
}

TEST_CASE("a name that stands twice among many is found")
{
    std::string text = "{";
    constexpr int kMany = 60;
    for (int i = 0; i < kMany; ++i) text += "\"key" + std::to_string(i) + "\":" + std::to_string(i) + ",";
    CHECK(Json::parse(text + "\"last\":0}")->members().size() == kMany + 1);
    CHECK_FALSE(Json::parse(text + "\"key7\":0}"));
}

TEST_CASE("a text that was damaged anywhere is read or refused alike by both parsers")
{
    const std::string whole =
        R"({"format":1,"kind":"run","n":[-0.5,12e-3,0,true,null],"o":{"a":{},"b":[[],{"c":"é\n\\\" 0123456789"}]}})";
    const JsonMask wanted{"", {{"kind", {}}, {"o", {{"b", {}}}}}};
    REQUIRE(quickJson(whole, wanted));
    std::mt19937 random(7);
    const std::string signs = "{}[]:,\"\\0123456789.eE+-tfn \n\xC3\xA9x";
    int read = 0;
    for (int i = 0; i < 60'000; ++i) {
        std::string text = whole;
        for (std::size_t n = random() % 3 + 1; n > 0; --n) {
            const std::size_t at = random() % text.size();
            if (random() % 3 == 0)
                text.erase(at, 1);
            else
                text[at] = signs[random() % signs.size()];
        }
        const auto json = Json::parse(text), judged = judgedJson(text), part = Json::parse(text, wanted);
        CAPTURE(text);
        REQUIRE(static_cast<bool>(json) == static_cast<bool>(judged));
        REQUIRE(static_cast<bool>(part) == static_cast<bool>(judged));
        if (!judged) {
            REQUIRE(json.error() == judged.error());
            continue;
        }
        ++read;
        REQUIRE(*json == *judged);
        REQUIRE(*part == judged->narrowed(wanted));
    }
    CHECK(read > 1000);
}
