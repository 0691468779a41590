// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/units/plain.h"
#include "small.h"

using namespace taut;
using namespace taut::procedure;
using namespace taut::procedure::small;

namespace {

struct Spoil {
    const char *code, *from, *to;
};

std::string times(int n, const std::string& text)
{
    std::string all;
    for (int i = 0; i < n; ++i) all += text;
    return all;
}

std::string steps(int n)
{
    std::string all;
    for (int i = 0; i < n; ++i)
        all += "    [[stage.place.step]]\n    id = \"extra_" + std::to_string(i) +
               "\"\n    kind = \"confirm\"\n    say = \"One more\"\n";
    return all;
}

/// One fault each. What follows `from` in the small procedure is left as it is.
const Spoil kSpoils[] = {
    {"lint.unknown_key", "vital = true", "vitl = true"},
    {"lint.unknown_key", "purpose =", "purposes = \"x\"\npurpose ="},
    {"lint.missing_key", "say = \"Tape it\"", "#"},
    {"lint.bad_edition", "edition = 1", "edition = 0"},
    {"lint.bad_edition", "edition = 1", "edition = 9000000000"},
    {"lint.bad_date", "revised = \"2026-11-25\"", "revised = \"2026-02-30\""},
    {"lint.bad_date", "revised = \"2026-11-25\"", "revised = \"25.11.2026\""},
    {"lint.bad_date", "revised = \"2026-11-25\"", "revised = \"2026-13-01\""},
    {"lint.missing_key", "revised = \"2026-11-25\"", "#"},
    {"lint.missing_key", "stops = true, remedy = \"Mend it\"", "stops = true"},
    {"lint.wrong_type", "edition = 1", "edition = \"1\""},
    {"lint.wrong_type", "vital = true", "vital = \"yes\""},
    {"lint.wrong_type", "uses = [\"roll\"]", "uses = \"roll\""},
    {"lint.unknown_word", "style = \"read_do\"", "style = \"read\""},
    {"lint.unknown_word", "word = \"caution\"", "word = \"careful\""},
    {"lint.unknown_word", "uses = [\"roll\"]", "valid_for = \"week\""},
    {"lint.unknown_word", "uses = [\"roll\"]", "in = [\"full\", \"next\"]"},
    {"lint.bad_id", "id = \"tape\"", "id = \"tape it\""},
    {"lint.duplicate_id", "id = \"out\"", "id = \"tape\""},
    {"lint.duplicate_id", "id = \"set\"", "id = \"safety\""},
    {"lint.duplicate_id", "word = \"bad\"", "word = \"good\""},
    {"lint.contradiction", "hands = true", "hands = true\nexternal = true\nset_up = \"internal\""},
    {"lint.unknown_fact", "has_lift", "has_lifts"},
    {"lint.unknown_condition", "gives = [\"web_joined\"]", "gives = [\"web_joint\"]"},
    {"lint.unknown_input", "uses = [\"roll\"]", "uses = [\"rolls\"]"},
    {"lint.unknown_input", "uses = [\"roll\"]", "fills = [\"roll.colour\"]"},
    {"lint.unknown_input", "uses = [\"roll\"]", "fills = [\"roll.condition\"]"},       // a reading is no word
    {"lint.unknown_input", "hands = true", "hands = true\nfills = [\"roll.width\"]"},  // a confirmation says nothing
    {"lint.fills_too_much", "uses = [\"roll\"]", "fills = [\"roll.width\", \"roll.length\"]"},
    {"lint.unknown_word", "at = \"unwind\"", "at = \"unwind\"\nfills = [\"roll.condition\"]"},
    {"lint.placeholder", "say = \"{zone}: set {control} to {target}\"", "say = \"{register_mark}\""},
    {"lint.placeholder", "say = \"{zone}: set {control} to {target}\"", "say = \"{frames}\""},
    {"lint.unknown_at", "at = \"unwind\"", "at = \"unwinder\""},
    {"lint.unknown_at", "at = \"splice_table\"", "at = \"table\""},
    {"lint.unknown_role", "control = \"run\"", "control = \"go\""},
    {"lint.unknown_target", "tension.{zone}.setting", "tension.{zone}.settings"},
    {"lint.reading_without_target",
     "target = \"tension.{zone}.setting\"\n    control = \"{zone}_setting\"\n    wait = \"5 s\"\n    uses = "
     "[\"roll\"]\n    say = \"{zone}: set {control} to {target}\"",
     "control = \"{zone}_setting\"\n    say = \"{zone}: set {control}\""},
    {"lint.no_kind_of_run", "hands = true", "in = []"},
    {"lint.done_without_motion", "hands = true", "hands = true\n    done = \"it stood\""},
    {"lint.must_not_be_waivable", "waivable = false\n    in", "in"},
    {"lint.must_not_be_waivable", "waivable = false\n    control = \"hold_stop\"", "control = \"hold_stop\""},
    {"lint.must_not_be_waivable", "kind = \"motion\"\n    waivable = false", "kind = \"motion\""},
    {"lint.must_not_be_waivable", "    [[stage.place.step]]\n    id = \"seen\"",
     "    [[stage.place.step]]\n    id = \"lift\"\n    kind = \"reading\"\n    target = \"lift.pressure\"\n    say = "
     "\"Read it\"\n    [[stage.place.step]]\n    id = \"seen\""},
    {"lint.hold_without_stop", "gives = [\"stop_held\"]", "gives = [\"power_on\"]"},
    {"lint.hands_without_stop", "hands = true", "hands = true\n    in = [\"full\", \"restart\"]"},
    {"lint.hands_without_stop", "uses = [\"roll\"]", "hands = true"},
    {"lint.hands_without_stop", "say = \"{guard} is closed\"", "hands = true\n    say = \"{guard} is closed\""},
    {"lint.hands_without_stop", "control = \"hold_stop\"", "when = [\"has_air\"]\n    control = \"hold_stop\""},
    {"lint.hands_in_motion", "control = \"run\"", "control = \"run\"\n    hands = true"},
    {"lint.motion_while_held", "    ends = [\"stop_held\"]\n", ""},
    {"lint.motion_while_held", "ends = [\"stop_held\"]", "ends = [\"stop_held\"]\n    when = [\"has_air\"]"},
    {"lint.motion_needs", "needs = [\"guards_closed\", \"stops_released\", \"people_clear\"]",
     "needs = [\"guards_closed\", \"stops_released\"]"},
    {"lint.motion_asks_gloves", "why = \"The web must move.\"", "why = \"Gloves on.\""},
    {"lint.motion_asks_gloves", "why = \"The web must move.\"",
     "why = \"x\"\n    caution = { word = \"caution\", text = \"Wear gloves\" }"},
    {"lint.need_not_given", "needs = [\"guards_closed\"", "needs = [\"air_on\", \"guards_closed\""},
    {"lint.need_not_given", "in = [\"full\", \"restart\"]\n    say = \"Everybody", "say = \"Everybody"},
    {"lint.need_not_given", "ends = [\"stop_held\"]", "ends = [\"stop_held\", \"people_clear\"]"},
    {"lint.too_many_tries", "tries = [\"Is the gauge at rest on zero?\"]",
     "tries = [\"1\", \"2\", \"3\", \"4\", \"5\"]"},
    {"lint.choices_missing", ", { word = \"bad\", say = \"Bad\", stops = true, remedy = \"Mend it\" }", ""},
    {"lint.choices_without_question", "kind = \"choice\"", "kind = \"confirm\""},
    {"lint.placeholder", "say = \"Tape it\"", "say = \"Tape {it}\""},
    {"lint.placeholder", "say = \"Tape it\"", "say = \"Tape to {target}\""},
    {"lint.placeholder", "say = \"Tape it\"", "say = \"Tape with {control}\""},
    {"lint.placeholder", "say = \"Tape it\"", "say = \"Tape it at {zone}\""},
    {"lint.placeholder", "say = \"Tape it\"", "say = \"Tape %1\""},
    {"lint.placeholder", "control = \"{zone}_setting\"", "control = \"{guard}_setting\""},
    {"lint.placeholder", "say = \"Bad\"", "say = \"Bad {zone}\""},
    {"lint.wait_not_a_time", "wait = \"5 s\"", "wait = \"5 mm\""},
    {"lint.vital_without_why", "    why = \"A nip takes a hand.\"\n", ""},
    {"lint.vital_late", "kind = \"motion\"", "kind = \"motion\"\n    vital = true"},
    {"lint.stage_without_call", "kind = \"call\"\n    in = [\"full\", \"restart\"]\n    say = \"Set\"",
     "kind = \"confirm\"\n    in = [\"full\", \"restart\"]\n    say = \"Set\""},
    {"lint.stage_without_call", "in = [\"full\", \"restart\"]\n    say = \"Set\"", "say = \"Set\""},
    {"lint.stage_without_call", "in = [\"full\", \"restart\"]\n    say = \"Set\"",
     "when = [\"has_air\"]\n    in = [\"full\", \"restart\"]\n    say = \"Set\""},
    {"lint.call_not_last", "    [[stage.place.step]]\n    id = \"seen\"",
     "    [[stage.place.step]]\n    id = \"early\"\n    kind = \"call\"\n    say = \"Set already\"\n    "
     "[[stage.place.step]]\n    id = \"seen\""},
};

}  // namespace

TEST_CASE("the small procedure passes")
{
    Findings lint;
    const Result<Procedure> read = readProcedure(kProcedure, "small.toml", known(), lint);
    REQUIRE(read);
    for (const Finding& f : lint) UNSCOPED_INFO(sentence(f));
    CHECK(lint.empty());
    REQUIRE(read->stages.size() == 2);
    CHECK(read->edition == 1);
    CHECK(read->text == kProcedure);
    const StepSpec& setting = read->stages[1].places[0].steps[3];
    CHECK(setting.id == "setting");
    CHECK(setting.forEach == "zone");
    CHECK(setting.kind == StepKind::Reading);
    CHECK(setting.kinds == std::vector<std::string>{"full"});
    CHECK(setting.wait == "5 s");
    CHECK(setting.line > 50);
    const StepSpec& seen = read->stages[1].places[0].steps[4];
    REQUIRE(seen.choices.size() == 2);
    CHECK(seen.choices[1] == Choice{"bad", "Bad", true, "Mend it"});
}

TEST_CASE("one fault is refused by its code and no other")
{
    for (const Spoil& spoil : kSpoils) {
        Findings lint;
        const Result<Procedure> read = readProcedure(spoilt(spoil.from, spoil.to), "small.toml", known(), lint);
        INFO(spoil.code << " by " << spoil.to);
        for (const Finding& f : lint) UNSCOPED_INFO(sentence(f));
        REQUIRE(read);
        CHECK(codesOf(lint) == std::set<std::string>{spoil.code});
        CHECK(stops(lint));
        for (const Finding& f : lint) {
            CHECK(f.subject.rfind("small.toml", 0) == 0);
            CHECK_FALSE(f.text.empty());
            CHECK_FALSE(f.remedy.empty());
        }
    }
}

TEST_CASE("a place of ten steps is refused and one of nine is not")
{
    const std::string at = "    [[stage.place.step]]\n    id = \"guard\"";
    for (const auto& [extra, codes] :
         {std::pair<int, std::set<std::string>>{6, {}}, {7, {std::string("lint.too_many_steps")}}}) {
        Findings lint;
        REQUIRE(readProcedure(spoilt(at, steps(extra) + at), "small.toml", known(), lint));
        CHECK(codesOf(lint) == codes);
    }
}

TEST_CASE("texts are measured in characters")
{
    for (const auto& [key, longest] : {std::pair<std::string, int>{"say", 240}, {"why", 400}}) {
        for (const int n : {longest, longest + 1}) {
            const std::string from = key == "say" ? "say = \"Tape it\"" : "why = \"A weak joint parts.\"";
            const std::string to = key + " = \"" + times(n, "é") + '"';
            Findings lint;
            REQUIRE(readProcedure(spoilt(from, to), "small.toml", known(), lint));
            CHECK(codesOf(lint).count("lint.text_too_long") == (n > longest ? 1U : 0U));
            CHECK(lint.size() == (n > longest ? 1U : 0U));
        }
    }
}

TEST_CASE("a finding says where, what and what to do instead")
{
    Findings lint;
    REQUIRE(readProcedure(spoilt("vital = true", "vitl = true"), "small.toml", known(), lint));
    REQUIRE(lint.size() == 1);
    CHECK(sentence(lint[0]) ==
          "small.toml:21 safety.walk.clear: The key vitl is not known here. Did you mean vital? Else take it out.");
    lint.clear();
    REQUIRE(readProcedure(spoilt("has_lift", "hast_lift"), "small.toml", known(), lint));
    REQUIRE(lint.size() == 1);
    CHECK(sentence(lint[0]).find("set.table.tape: There is no fact called hast_lift. Did you mean has_lift?") !=
          std::string::npos);
}

TEST_CASE("what is no procedure is an error and not a lint")
{
    struct Case {
        const char *text, *code;
    };
    for (const Case& c : {Case{"format = 1\n[press]\nid = \"x\"\n", "procedure.not_a_procedure"},
                          Case{"[procedure]\nid = \"x\"\n", "procedure.no_format"},
                          Case{"format = 0\n[procedure]\nid = \"x\"\n", "procedure.no_format"},
                          Case{"format = 1\n[procedure\n", "toml.syntax"}}) {
        Findings lint;
        const Result<Procedure> read = readProcedure(c.text, "x.toml", known(), lint);
        REQUIRE_FALSE(read);
        CHECK(read.error().code == c.code);
        CHECK(lint.empty());
    }
}

TEST_CASE("a newer format's unknown keys are noted and not refused")
{
    Findings lint;
    const std::string newer =
        spoilt("vital = true", "vital = true\nsmell = \"none\"", spoilt("format = 1", "format = 2"));
    REQUIRE(readProcedure(newer, "small.toml", known(), lint));
    CHECK_FALSE(stops(lint));
    CHECK(codesOf(lint) == std::set<std::string>{"lint.unknown_key", "procedure.newer_format"});
}

TEST_CASE("what a shift keeps standing need not be given in a run that goes on")
{
    const std::string needing = spoilt("needs = [\"guards_closed\"", "needs = [\"stops_tested\", \"guards_closed\"");
    const std::string giving = "    [[stage.place.step]]\n    id = \"test\"\n    kind = \"confirm\"\n    waivable = "
                               "false\n    gives = [\"stops_tested\"]\n    say = \"Tested\"\n";
    const std::string at = "    [[stage.place.step]]\n    id = \"guard\"";
    Findings run, shift;
    REQUIRE(readProcedure(spoilt(at, giving + at, needing), "small.toml", known(), run));
    CHECK(codesOf(run) == std::set<std::string>{"lint.need_not_given"});
    REQUIRE(
        readProcedure(spoilt(at, giving + "    valid_for = \"shift\"\n" + at, needing), "small.toml", known(), shift));
    CHECK(shift.empty());
}

TEST_CASE("a procedure without a stage is refused")
{
    const std::string text = kProcedure;
    Findings lint;
    REQUIRE(readProcedure(text.substr(0, text.find("[[stage]]")), "empty.toml", known(), lint));
    REQUIRE(lint.size() == 1);
    CHECK(lint.front().code == "lint.no_stage");
    CHECK(lint.front().severity == Severity::Stop);
    CHECK(lint.front().subject == "empty.toml");
}
