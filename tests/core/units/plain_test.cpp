// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/plain.h"

#include <catch2/catch.hpp>
#include <set>

using namespace taut;

namespace {

Finding sample()
{
    Finding finding = refuse(
        "lift.too_heavy", "roll.R0042",
        {"The roll weighs %1; the lift carries %2 with %3 of %4.",
         {Magnitude{95.464, Kind::Mass, "kg"}, Magnitude{80, Kind::Mass, ""}, std::int64_t{2}, "pistons 100 %1"}},
        {"Choose another press than %1.", {"north"}});
    finding.severity = Severity::Warn;
    return finding;
}

}  // namespace

TEST_CASE("arguments stand where their numbers are, in the system's units")
{
    CHECK(plain(sample().text) == "The roll weighs 95.5 kg; the lift carries 80.0 kg with 2 of pistons 100 %1.");
    CHECK(plain(sample().text, UnitSystem::Us) ==
          "The roll weighs 210 lb; the lift carries 176 lb with 2 of pistons 100 %1.");
    CHECK(plain(Text{"%2 before %1, %2 again", {"one", "two"}}) == "two before one, two again");
    CHECK(plain(Text{"%9 %8 %7 %6 %5 %4 %3 %2 %1", {"a", "b", "c", "d", "e", "f", "g", "h", "i"}}) ==
          "i h g f e d c b a");
    CHECK(plain(Text{}).empty());
}

TEST_CASE("a per cent sign that names no argument stays as it is")
{
    CHECK(plain(Text{"100 % of it, 5 %0 and %"}) == "100 % of it, 5 %0 and %");
    CHECK(plain(Text{"%1%", {std::int64_t{5}}}) == "5%");
    // Stored texts may come from anywhere.
    const auto stored = Json::parse(R"({"source":"%1 of %2, not %9","args":["one"]})");
    REQUIRE(stored);
    CHECK(plain(textFrom(*stored)) == "one of %2, not %9");
}

TEST_CASE("a quantity in a sentence keeps the unit in which the press speaks of it")
{
    CHECK(plain(Text{"%1", {Magnitude{138750, Kind::Pressure, "kPa"}}}) == "138.8 kPa");
    CHECK(plain(Text{"%1", {Magnitude{138750, Kind::Pressure, "psi"}}}) == "1.39 bar");
    CHECK(plain(Text{"%1", {Magnitude{138750, Kind::Pressure, "psi"}}}, UnitSystem::Us) == "20.1 psi");
}

TEST_CASE("a finding is one line: where, what, what to do")
{
    Finding finding = refuse("x.y", "north.toml:41:1", "This is wrong.", "Mend it.");
    CHECK(sentence(finding) == "north.toml:41:1: This is wrong. Mend it.");
    finding.subject.clear();
    CHECK(sentence(finding) == "This is wrong. Mend it.");
    finding.remedy = {};
    CHECK(sentence(finding) == "This is wrong.");
}

TEST_CASE("a text and its remedy are two sentences, with one full stop between them however they were typed")
{
    struct Row {
        const char *first, *second, *says;
    };
    for (const Row& row : {Row{"The core is broken", "Bring another roll.", "The core is broken. Bring another roll."},
                           Row{"The core is broken.", "Bring another.", "The core is broken. Bring another."},
                           Row{"The core is broken. ", "Bring another.", "The core is broken. Bring another."},
                           Row{"Is it broken?", "Look.", "Is it broken? Look."},
                           Row{"He said \u201cit is broken\u201d", "Look.", "He said \u201cit is broken\u201d. Look."},
                           Row{"He said \u201cit is broken.\u201d", "Look.", "He said \u201cit is broken.\u201d Look."},
                           Row{"Broken (on the drive side)", "Look.", "Broken (on the drive side). Look."},
                           Row{"Broken at:", "Look.", "Broken at: Look."}, Row{"Broken", "", "Broken"},
                           Row{"", "Look.", "Look."}, Row{"", "", ""}}) {
        CHECK(joinedSentences(row.first, row.second) == row.says);
        CHECK(sentence(refuse("x.y", "", Text(std::string(row.first)), Text(std::string(row.second)))) == row.says);
    }
    CHECK(sentence(refuse("x.y", "the roll", "Crushed", "Bring another.")) == "the roll: Crushed. Bring another.");
    CHECK(closedSentence("Guide at rest") == "Guide at rest.");
    CHECK(closedSentence("Guide at rest.") == "Guide at rest.");
    CHECK(closedSentence("").empty());
}

TEST_CASE("a finding as JSON reads as sentences and comes back whole")
{
    const Finding finding = sample();
    const Json json = findingJson(finding);
    CHECK(json["code"].text() == "lift.too_heavy");
    CHECK(json["severity"].text() == "warn");
    CHECK(json["subject"].text() == "roll.R0042");
    CHECK(json["text"].text() == plain(finding.text));
    CHECK(json["remedy"].text() == "Choose another press than north.");
    CHECK(findingFrom(*Json::parse(json.dump())) == finding);
    CHECK(findingFrom(*Json::parse(findingJson(finding, UnitSystem::Us).dump())) == finding);
    for (const Severity severity : {Severity::Note, Severity::Warn, Severity::Stop}) {
        Finding other = finding;
        other.severity = severity;
        CHECK(findingFrom(findingJson(other)).severity == severity);
    }
}

TEST_CASE("a finding that holds sentences alone is read as they stand")
{
    const Finding finding = findingFrom(
        *Json::parse(R"({"code":"a.b","severity":"note","subject":"s","text":"It is so.","remedy":"Go on."})"));
    CHECK(finding.severity == Severity::Note);
    CHECK(sentence(finding) == "s: It is so. Go on.");
    CHECK(findingFrom(Json()).severity == Severity::Stop);
}

TEST_CASE("a text as JSON has its source and its arguments")
{
    const Text text{"%1 %2 %3", {"words", std::int64_t{7}, Magnitude{0.33, Kind::Length, "mm"}}};
    CHECK(textJson(text).dump() ==
          R"({"source":"%1 %2 %3","args":["words",7,{"si":0.33,"kind":"length","unit":"mm"}]})");
    CHECK(textFrom(textJson(text)) == text);
    CHECK(textFrom(*Json::parse(textJson({"whole %1", {Magnitude{3, Kind::Count, ""}}}).dump())) ==
          Text{"whole %1", {Magnitude{3, Kind::Count, ""}}});
}

TEST_CASE("texts as an argument are said in turn, and survive JSON")
{
    const Text inner{"%1 is not held", {"the roll"}};
    const Text text{"Not yet said: %1. Go on.", {std::vector<Text>{"Nobody is in the press", inner}}};
    CHECK(plain(text) == "Not yet said: Nobody is in the press, the roll is not held. Go on.");
    CHECK(textFrom(textJson(text)) == text);
    CHECK(plain(Text{"None: %1.", {std::vector<Text>{}}}) == "None: .");
}

TEST_CASE("every kind has a word and a name of its own")
{
    std::set<std::string> words;
    std::set<std::string> names;
    for (std::size_t i = 0; i < kKindCount; ++i) {
        const auto kind = static_cast<Kind>(i);
        words.insert(kindWord(kind));
        names.insert(kindName(kind));
        Kind back{};
        INFO(kindWord(kind));
        REQUIRE(kindFromWord(kindWord(kind), back));
        REQUIRE(back == kind);
        REQUIRE(std::string(kindName(kind)).rfind("a", 0) == 0);
    }
    CHECK(words.size() == kKindCount);
    CHECK(names.size() == kKindCount);
    CHECK(words.count("force_per_width") == 1);
    Kind kept = Kind::Force;
    CHECK_FALSE(kindFromWord("forces", kept));
    CHECK(kept == Kind::Force);
}
