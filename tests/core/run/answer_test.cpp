// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/run/answer.h"

#include <catch2/catch.hpp>

#include "core/run/words.h"
#include "core/units/plain.h"
#include "tests/core/run/demo_walk.h"
#include "tests/core/run/small_press.h"

using namespace taut;
using namespace taut::run;
using namespace taut::run::small;
using verdict::Verdict;

namespace {

std::string codeOf(Walk& walk, const std::string& step, const std::string& entered,
                   const std::vector<std::string>& stated = {})
{
    return walk.codeOf(Answer{{step}, entered, stated});
}
constexpr const char* kUnwind = "tension.settings.setting/unwind";

Walk atTension()
{
    Walk walk;
    walk.upTo(kUnwind);
    return walk;
}

}  // namespace

TEST_CASE("a statement is answered with yes and with nothing else")
{
    Walk walk;
    for (const char* entered : {"", "no", "Yes", "y", "1", "done"}) {
        INFO("'" << entered << "'");
        CHECK(codeOf(walk, "safety.walk.guard/a", entered) == "answer.not_yes");
    }
    CHECK(walk.state("safety.walk.guard/a") == StepState::Open);
    CHECK(codeOf(walk, "safety.walk.guard/a", " yes ").empty());
}

// Statements about the machine hold for one movement and are asked with nothing pre-answered (common practice, no
// source).
TEST_CASE("a movement wants each statement said for it, and the refusal names what is missing")
{
    Walk walk;
    walk.upTo("threading.splice.draw");
    walk.must(GiveUpStop{"Ana"});
    CHECK(codeOf(walk, "threading.splice.draw", "yes", allStates()) == "answer.not_done");
    const auto refused = walk.tryTo(Answer{{"threading.splice.draw"}, "done", {"guards_closed"}});
    REQUIRE(refused);
    CHECK(refused->code == "answer.not_stated");
    CHECK(plain(refused->text).find("Everybody is clear of the press") != std::string::npos);
    CHECK(plain(refused->text).find("Every emergency stop is released") != std::string::npos);
    CHECK(plain(refused->text).find("Every guard is closed") == std::string::npos);
    // A thing that is no statement about the machine's state cannot be had by saying it.
    CHECK(codeOf(walk, "threading.splice.draw", "done", {"guards_closed", "people_clear", "web_joined"}) ==
          "answer.not_stated");
    CHECK(codeOf(walk, "threading.splice.draw", "done", allStates()).empty());
    CHECK(walk.run().standing({"threading.splice.draw"}).answer->stated == allStates());
}

TEST_CASE("the statements of an earlier card do not answer for a movement")
{
    Walk walk;
    walk.upTo("threading.splice.draw");
    REQUIRE(walk.has("guards_closed"));
    REQUIRE(walk.has("people_clear"));
    walk.must(GiveUpStop{"Ana"});
    CHECK(codeOf(walk, "threading.splice.draw", "done", {"stops_released"}) == "answer.not_stated");
}

TEST_CASE("a held stop has a holder and the place of its step")
{
    Walk walk;
    walk.upTo("threading.splice.stop");
    CHECK(codeOf(walk, "threading.splice.stop", "   ") == "answer.no_holder");
    CHECK_FALSE(walk.has("stop_held"));
    CHECK(codeOf(walk, "threading.splice.stop", " Ana ").empty());
    CHECK(walk.run().heldStops() == std::vector<HeldStop>{{"Ana", "latch at the table", false}});
    CHECK(walk.has("stop_held"));
}

TEST_CASE("where a place names no stop the place is written down by its id and told by its title")
{
    Plan p = plan();
    p.places[2].holdStop.clear();
    Walk walk(basis(p));
    walk.upTo("threading.splice.clamp");
    CHECK(walk.run().heldStops().front().where == "place:splice");
    // The title is a text of its own, so that it is told in the reader's language.
    CHECK(stopSaid(walk.run().plan(), "place:splice") == walk.run().plan().places[2].title);
    CHECK(plain(holderSaid(walk.run().plan(), "Ana", "place:splice")) == "Ana (At the splice table)");
}

TEST_CASE("a held stop of a record of before, with its place in English, is told as one of today")
{
    const Plan p = plan();
    CHECK(stopSaid(p, "At the splice table") == p.places[2].title);
    CHECK(plain(stopSaid(p, "latch at the table")) == "latch at the table");
    CHECK(plain(stopSaid(p, "by the old dryer")) == "by the old dryer");
    CHECK(plain(stopSaid(p, "place:gone")) == "gone");
    const Event old = *eventFrom(R"({"n":1,"at":"2026-11-25T06:41:03.120Z","offset":"+01:00","by":"ana",)"
                                 R"("name":"Ana","role":"operator","what":"stop_held","holder":"Ana",)"
                                 R"("where":"At the splice table"})");
    CHECK(stopSaid(p, std::get<StopHeld>(old.happening()).where) == p.places[2].title);
}

TEST_CASE("a choice is one of its words, and one that stops the run is outside")
{
    Walk walk;
    walk.upTo("threading.roll.feed");
    const auto refused = walk.tryTo(Answer{{"threading.roll.feed"}, "sideways", {}});
    REQUIRE(refused);
    CHECK(refused->code == "answer.not_a_choice");
    CHECK(plain(refused->remedy).find("over, under, loose") != std::string::npos);
    walk.must(Answer{{"threading.roll.feed"}, "loose", {}});
    CHECK(walk.state("threading.roll.feed") == StepState::Outside);
    CHECK(walk.closed("threading.splice.stop") == "gate.earlier_open");
    CHECK(walk.codeOf(AcceptDeviation{{"threading.roll.feed"}, "never mind", signer("sue")}) == "gate.not_deviable");
    walk.must(Answer{{"threading.roll.feed"}, "over", {}});
    CHECK(walk.state("threading.roll.feed") == StepState::Answered);
}

TEST_CASE("a choice that contradicts its target's word is outside")
{
    Walk walk;
    walk.upTo("threading.roll.feed");
    walk.must(Answer{{"threading.roll.feed"}, "under", {}});  // the target says over
    CHECK(walk.state("threading.roll.feed") == StepState::Outside);
}

// GS1 General Specifications 7.8.3 and ISO/IEC 15424 (from memory): FNC1 inside a symbol is sent as GS (1D hex), and
// ]C1 before it names the symbology; in human-readable form identifiers stand in brackets.
TEST_CASE("a tag is known in every form a scanner or a hand gives it")
{
    struct Row {
        const char* entered;
        bool known;
    };
    const Row rows[] = {
        {"]C10199521000001018\x1d"
         "10LOT31C\x1d"
         "21R0042",
         true},
        {"0199521000001018\x1d"
         "10LOT31C\x1d"
         "21R0042",
         true},
        {"]C10199521000001018<GS>10LOT31C<GS>21R0042", true},
        {"(01)99521000001018 (10)LOT31C (21)R0042", true},
        {"R0042", true},
        {" r0042 ", true},
        {"R0043", false},
        {"]C10199521000001018\x1d"
         "10LOT31C\x1d"
         "21R0043",
         false},
        {"42", false},
    };
    for (const Row& row : rows) {
        INFO(row.entered);
        Walk walk;
        walk.must(Answer{{"threading.roll.tag"}, row.entered, {}});
        CHECK(walk.state("threading.roll.tag") == (row.known ? StepState::Answered : StepState::Outside));
        CHECK(walk.run().standing({"threading.roll.tag"}).answer->judgement.verdict ==
              (row.known ? Verdict::Recorded : Verdict::Outside));
    }
    Walk walk;
    CHECK(codeOf(walk, "threading.roll.tag", " ]C1 ") == "answer.nothing_scanned");
    CHECK(codeOf(walk, "threading.roll.tag", "") == "answer.nothing_scanned");
}

TEST_CASE("the parser's refusal of a reading reaches the person with the step as its subject")
{
    Walk walk = atTension();
    struct Row {
        const char* entered;
        const char* code;
    };
    const Row rows[] = {{"", "quantity.empty"},
                        {"1.4", "quantity.no_unit"},
                        {"20 mm", "quantity.wrong_kind"},
                        {"1.4 barn", "quantity.unknown_unit"},
                        {"high", "quantity.not_a_number"}};
    for (const Row& row : rows) {
        INFO(row.entered);
        const auto refused = walk.tryTo(Answer{{kUnwind}, row.entered, {}});
        REQUIRE(refused);
        CHECK(refused->code == row.code);
        CHECK(refused->subject == kUnwind);
    }
    CHECK(walk.state(kUnwind) == StepState::Open);
}

TEST_CASE("a reading is judged with its window and the instrument, and what was typed is kept")
{
    Walk walk = atTension();  // 1.1 to 1.7 bar, read to 0.1 bar
    struct Row {
        const char* entered;
        Verdict verdict;
        bool doubtful;
        StepState state;
    };
    const Row rows[] = {{"2.0 bar", Verdict::Outside, false, StepState::Outside},
                        {"1,75 bar", Verdict::Outside, true, StepState::Outside},
                        {"1.65 bar", Verdict::Near, false, StepState::Answered}};
    for (const Row& row : rows) {
        INFO(row.entered);
        walk.must(Answer{{kUnwind}, row.entered, {}});
        const StepStanding s = walk.run().standing({kUnwind});
        CHECK(s.state == row.state);
        REQUIRE(s.answer);
        CHECK(s.answer->judgement == verdict::Judgement{row.verdict, row.doubtful});
        CHECK(s.answer->entered == row.entered);
        CHECK(s.answer->value->entered() == row.entered);
        CHECK(s.answer->value->unit() == "bar");
        CHECK(s.answer->uncertainty == Approx(0.1e5));
        CHECK(s.answer->window == walk.run().targets().find("tension.unwind.setting")->ready()->window);
        CHECK(s.by == "ana");
    }
}

TEST_CASE("a reading without a window, or of a target that is not known, is recorded")
{
    Walk walk;
    walk.upTo("threading.roll.lift");
    walk.must(Answer{{"threading.roll.lift"}, "9 bar", {}});
    CHECK(walk.run().standing({"threading.roll.lift"}).answer->judgement.verdict == Verdict::Recorded);
    walk.upTo("tension.settings.strain");
    CHECK(codeOf(walk, "tension.settings.strain", "soft") == "quantity.not_a_number");
    CHECK(codeOf(walk, "tension.settings.strain", "3 furlong") == "quantity.unknown_unit");
    walk.must(Answer{{"tension.settings.strain"}, "0.05 %", {}});
    const StepStanding s = walk.run().standing({"tension.settings.strain"});
    CHECK(s.state == StepState::Answered);
    CHECK(s.answer->value->kind() == Kind::Share);
    CHECK(s.answer->value->si() == Approx(0.0005));
}

TEST_CASE("a correction wants a reason and a standing answer, and is judged like an answer")
{
    Walk walk = atTension();
    CHECK(walk.codeOf(Correct{{kUnwind}, "1.4 bar", "misread"}) == "gate.not_answered");
    walk.answer(kUnwind);
    CHECK(walk.codeOf(Correct{{kUnwind}, "1.5 bar", "  "}) == "gate.no_reason");
    CHECK(walk.codeOf(Correct{{kUnwind}, "1.5", "misread"}) == "quantity.no_unit");
    walk.must(Correct{{kUnwind}, "1.5 bar", "misread"});
    StepStanding s = walk.run().standing({kUnwind});
    CHECK(s.state == StepState::Answered);
    CHECK(s.answer->correction);
    CHECK(s.answer->reason == "misread");
    CHECK(s.answer->entered == "1.5 bar");
    walk.must(Correct{{kUnwind}, "2.5 bar", "the other gauge"});
    CHECK(walk.state(kUnwind) == StepState::Outside);
    walk.must(Correct{{kUnwind}, "1.4 bar", "no, this one"});
    CHECK(walk.state(kUnwind) == StepState::Answered);
}

TEST_CASE("a movement and a held stop happened as they happened")
{
    Walk walk = atTension();
    CHECK(walk.codeOf(Correct{{"threading.splice.draw"}, "done", "again"}) == "gate.not_correctable");
    CHECK(walk.codeOf(Correct{{"threading.splice.stop"}, "Ben", "it was Ben"}) == "gate.not_correctable");
}

TEST_CASE("a correction does not make an old deed young")
{
    Walk walk;
    walk.upTo("threading.splice.draw");
    REQUIRE_FALSE(walk.has("webs_clamped"));  // ended by the step after it
    walk.must(Correct{{"threading.splice.clamp"}, "yes", "said it of the wrong clamp"});
    CHECK_FALSE(walk.has("webs_clamped"));
    CHECK(walk.has("web_joined"));
}

TEST_CASE("a gauge without a window takes no pressure below nothing and none beyond its end, when read or corrected")
{
    Basis b = basis();
    for (targets::Target& target : b.targets.all)
        if (target.id == "lift.pressure")
            std::get<targets::Ready>(target.state).most = Quantity(6e5, Kind::Pressure, "bar");
    Walk walk(b);
    const std::string lift = "threading.roll.lift";
    walk.upTo(lift);
    CHECK(codeOf(walk, lift, "-1 bar") == "reading.below_zero");
    const auto refused = walk.tryTo(Answer{{lift}, "1000000000 psi", {}});
    REQUIRE(refused);
    CHECK(refused->code == "reading.beyond_end");
    CHECK(refused->subject == lift);
    CHECK(walk.state(lift) == StepState::Open);
    walk.must(Answer{{lift}, "1.2 bar", {}});
    CHECK(walk.codeOf(Correct{{lift}, "12 bar", "misread"}) == "reading.beyond_end");
    CHECK(walk.run().standing({lift}).answer->entered == "1.2 bar");
}

TEST_CASE("what the profile says of lift and zones is where their readings end")
{
    const Run run = Run::fold(
        std::vector<Event>{demo::begun(demo::sources("north", "quince-jelly", "R0041"), {"full", true, std::nullopt})});
    for (const char* id : {"lift.pressure", "tension.unwind.setting", "tension.rewind.setting"}) {
        INFO(id);
        const targets::Target* target = run.targets().find(id);
        REQUIRE(target != nullptr);
        REQUIRE(target->ready() != nullptr);
        REQUIRE(target->ready()->most);
        CHECK(target->ready()->most->si() == Approx(6e5));  // resources/presses/north.toml
    }
}

TEST_CASE("an answer of a record that nobody would be allowed now is still read as it stands")
{
    Walk walk;
    walk.upTo("threading.roll.lift");
    walk.must(Answer{{"threading.roll.lift"}, "9 bar", {}});
    std::vector<Event> stored = walk.run().events();
    std::string old = stored.back().json();
    for (std::size_t at = old.find("9 bar"); at != std::string::npos; at = old.find("9 bar", at + 6))
        old.replace(at, 5, "-9 bar");
    const std::size_t value = old.find("900000");
    REQUIRE(value != std::string::npos);
    old.insert(value, "-");
    const auto back = eventFrom(old);
    REQUIRE(back);
    stored.back() = *back;
    const StepStanding s = Run::fold(stored).standing({"threading.roll.lift"});
    CHECK(s.state == StepState::Answered);
    CHECK(s.answer->value->si() == Approx(-9e5));
}
