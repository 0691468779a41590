// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/shared_string.h"

#include <catch2/catch.hpp>
#include <cstring>
#include <sstream>
#include <thread>
#include <vector>

using taut::SharedString;

TEST_CASE("A shared string refers to a literal and copies anything else", "[base]")
{
    static const char kLiteral[] = "lift.pressure";
    const SharedString literal = kLiteral;
    CHECK(literal.view().data() == kLiteral);
    CHECK(literal == "lift.pressure");

    std::string text = "a text that is longer than fifteen letters";
    const SharedString kept = text;
    text.assign(text.size(), '-');
    CHECK(kept == "a text that is longer than fifteen letters");

    const char* pointer = text.c_str();
    const SharedString copied = pointer;
    CHECK(copied.view().data() != pointer);
}

TEST_CASE("Copies of a shared string are one text, which outlives the first of them", "[base]")
{
    SharedString last;
    {
        const SharedString first = std::string("unwind brake, station 3");
        const SharedString second = first;
        CHECK(second.view().data() == first.view().data());
        last = second;
    }
    CHECK(last == "unwind brake, station 3");
    const SharedString& itself = last;
    last = itself;
    CHECK(last == "unwind brake, station 3");
    const SharedString moved = std::move(last);
    CHECK(moved == "unwind brake, station 3");
    CHECK(last.empty());  // NOLINT: what is left of one that was moved is empty
}

TEST_CASE("A shared string ends with a zero and reads like any text", "[base]")
{
    for (const SharedString& text : {SharedString("bar"), SharedString(std::string("bar")), SharedString()}) {
        CHECK(std::strlen(text.c_str()) == text.size());
        CHECK(text.empty() == (text.size() == 0));
    }
    const SharedString text = "T1 of zone";
    CHECK(text.starts_with("T1"));
    CHECK(text.find("zone") == 6);
    CHECK(text.find("web") == std::string_view::npos);
    CHECK(text[1] == '1');
    CHECK(text + ", held" == "T1 of zone, held");
    CHECK("see " + text == "see T1 of zone");
    CHECK(text + text == "T1 of zoneT1 of zone");
    CHECK(text != "T1 of zones");
    std::ostringstream out;
    out << text;
    CHECK(out.str() == text.view());
}

TEST_CASE("A text with a zero in it is kept whole", "[base]")
{
    const std::string with("a\0b", 3);
    CHECK(SharedString(with).size() == 3);
    CHECK(SharedString(with) == with);
}

TEST_CASE("Several threads may copy one shared string", "[base]")
{
    const SharedString text = std::string("a diameter that was measured");
    std::vector<std::thread> threads;
    for (int i = 0; i < 4; ++i)
        threads.emplace_back([&text] {
            for (int n = 0; n < 20000; ++n) {
                SharedString mine = text;
                SharedString other = mine;
                mine = SharedString();
            }
        });
    for (std::thread& thread : threads) thread.join();
    CHECK(text == "a diameter that was measured");
}
