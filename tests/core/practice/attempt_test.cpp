// SPDX-License-Identifier: GPL-3.0-or-later
// An attempt as it is kept, and played again.
#include "core/practice/attempt.h"

#include <functional>
#include <map>

#include "core/practice/replay.h"
#include "core/units/plain.h"
#include "tests/core/practice/basis.h"
#include "tests/core/practice/shift.h"

using namespace taut;
using namespace taut::practice;
using namespace taut::practice::shift;

namespace {

const char* const kScenario = "format = 1\n[scenario]\nid = \"knocked\"\npress = \"north\"\njob = \"J-2101\"\n"
                              "roll = \"R0041\"\nseed = 3\nmode = \"test\"\nparts = [\"safety\", \"splice.table\"]\n"
                              "[[fault]]\nwhat = \"tail.left\"\n";

std::vector<Action> actions()
{
    Findings notes;
    const auto hurried = readActions(demo::text("demo/actions/in_a_hurry.toml"), "a.toml", basis(), notes);
    REQUIRE(hurried);
    const auto said = readActions("format = 1\naction = [\n"
                                  "{ do = \"answer\", step = \"safety.walk_round.all_round\", tick = true },\n"
                                  "{ after = \"1 s\", do = \"hint\", step = \"splice.table.trim\" },\n"
                                  "{ do = \"answer\", step = \"splice.table.trim\", tick = true },\n"
                                  "{ do = \"found\", what = \"air.low\" },\n]\n",
                                  "b.toml", basis(), notes);
    REQUIRE(said);
    REQUIRE(notes.empty());
    std::vector<Action> all = *hurried;
    all.insert(all.begin() + 12, said->begin(), said->end());
    return all;
}
Attempt attempt()
{
    Findings notes;
    const auto scenario = readScenario(kScenario, "s.toml", notes);
    REQUIRE(scenario);
    auto lesson = Lesson::begin(basis(), *scenario);
    REQUIRE(lesson);
    play(*lesson, actions());
    return attemptOf(*lesson, run::sourceOf("knocked", 0, kScenario), {"p-4", "Lotte Wren"}, "a-1", {1000, 60},
                     {400000, 60});
}

}  // namespace

TEST_CASE("an attempt is written and read back the same, and nothing else is taken for one")
{
    const Attempt made = attempt();
    CHECK_FALSE(made.contradictions.empty());
    CHECK_FALSE(made.consequences.empty());
    CHECK(made.detection.falseAlarms == 1);
    CHECK(made.detection.misses == 1);
    const seal::Document document = attemptDocument(made);
    const auto written = seal::read(seal::write(document));
    REQUIRE(written);
    CHECK(written->kind == seal::Kind::Attempt);
    const auto back = attemptFrom(*written);
    REQUIRE(back);
    CHECK(seal::write(attemptDocument(*back)) == seal::write(document));
    CHECK(back->score == made.score);
    CHECK(back->who == made.who);
    CHECK(back->log.size() == made.log.size());
    CHECK(seal::headOf(document).subject == "p-4");

    const auto changed = [&](const std::function<void(Json&)>& change) {
        seal::Document other = *written;
        change(other.body);
        const auto read = attemptFrom(other);
        return read ? std::string("read") : read.error().code;
    };
    CHECK(changed([](Json&) {}) == "read");
    CHECK(changed([](Json& b) { b.set("sealed_at", "2026-01-01T00:00:00.000Z"); }) == "read");
    CHECK(changed([](Json& b) { b.set("more", 1); }) == "document.broken");
    CHECK(changed([](Json& b) { b.set("mode", "exam"); }) == "document.broken");
    CHECK(changed([](Json& b) { b.set("seed", "3"); }) == "document.broken");
    CHECK(changed([](Json& b) { b.set("actions", Json::array().add(Json::object().set("at", 1))); }) ==
          "document.broken");
    // The scenario's text is of its hash.
    CHECK(changed([](Json& b) {
              Json scenario = b["scenario"];
              b.set("scenario", scenario.set("text", scenario["text"].text() + " "));
          }) == "document.broken");
    CHECK(attemptFrom({seal::Kind::Run, written->body}).error().code == "document.broken");
}

TEST_CASE("a replay is the attempt to the last figure, and shows the press at any time of it")
{
    const Attempt made = attempt();
    const auto replay = Replay::of(made, basis());
    REQUIRE(replay);
    CHECK(replay->isFaithful());
    CHECK(replay->length() == Approx(made.simulated));

    // Beside it, the world that is played straight through and looked at where it comes by.
    auto straight = World::build({basis().inputs, made.seed, made.faults});
    REQUIRE(straight);
    std::size_t next = 0;
    std::vector<double> times;
    for (double t = 0; t <= made.simulated; t += 7.3) times.push_back(t);
    std::vector<World> seen;
    double now = 0;
    for (const double t : times) {
        for (; next < made.log.size() && made.log[next].at <= t + 1e-9; ++next) {
            straight->advance(Time::si(made.log[next].at - now));
            now = made.log[next].at;
            if (const auto* deed = std::get_if<Deed>(&made.log[next].act)) (void)straight->perform(*deed);
        }
        straight->advance(Time::si(t - now));
        now = t;
        seen.push_back(*straight);
    }
    // Backwards, as somebody drags the time line.
    for (std::size_t i = times.size(); i-- > 0;) {
        CAPTURE(times[i]);
        const World then = replay->at(times[i]);
        CHECK(then.web() == seen[i].web());
        CHECK(then.press() == seen[i].press());
        CHECK(then.lateral() == seen[i].lateral());
        CHECK(then.consequences().size() == seen[i].consequences().size());
    }
    CHECK(replay->at(-1).time() == 0);
    CHECK(replay->at(1e9).time() == Approx(made.simulated));
}

TEST_CASE("the time line has everything that was done and that came of it, in its order")
{
    const Attempt made = attempt();
    const auto line = timeLineOf(made);
    CHECK(line.size() == made.log.size() + made.contradictions.size() + made.consequences.size());
    std::map<TimeMark::What, std::size_t> counted;
    for (std::size_t i = 0; i < line.size(); ++i) {
        ++counted[line[i].what];
        if (i > 0) CHECK(line[i].at >= line[i - 1].at);
    }
    CHECK(counted[TimeMark::What::Answer] == 2);
    CHECK(counted[TimeMark::What::Hint] == 1);
    CHECK(counted[TimeMark::What::Found] == 1);
    CHECK(counted[TimeMark::What::Contradiction] == made.contradictions.size());
    CHECK(counted[TimeMark::What::Consequence] == made.consequences.size());
}

TEST_CASE("a replay of other inputs is refused by name, and one whose record was changed is not faithful")
{
    Attempt made = attempt();
    const auto other = Replay::of(made, basis("north", "quince-jelly", "R0042"));
    REQUIRE_FALSE(other);
    CHECK(other.error().code == "practice.other_inputs");
    CHECK(other.error().subject == "R0041");
    made.log.erase(made.log.begin() + 3);
    const auto changed = Replay::of(made, basis());
    REQUIRE(changed);
    CHECK_FALSE(changed->isFaithful());
}
