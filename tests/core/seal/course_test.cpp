// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/course.h"

#include "core/seal/words.h"
#include "tests/core/seal/walk.h"

using namespace taut;
using namespace taut::run;
using seal::Course;

namespace {

constexpr const char* kUnwind = "set.lift.setting/unwind";
constexpr const char* kPressure = "set.lift.pressure";

/// A run begun from a procedure of which two steps say more: one is watched for half a minute, for one somebody goes
/// elsewhere.
struct Walk : mini::Walk {
    Walk()
    {
        std::string text = mini::kProcedure;
        const auto put = [&](const std::string& behind, const std::string& line) {
            const std::size_t at = text.find(behind);
            REQUIRE(at != std::string::npos);
            text.insert(at + behind.size(), line);
        };
        put("say = \"Walked\"\n", "    wait = \"30 s\"\n");
        put("say = \"How does the web look?\"\n", "    external = true\n");
        Sources changed = mini::sources();
        changed.procedure = sourceOf("mini", 1, text);
        auto made = basisFor(changed, {});
        if (!made) FAIL(made.error().text.source);
        basis = *std::move(made);
        run.reset();
        const auto event = begin(basis, {"north-2025-11-25-01", "pc-1", false, {}, nullptr}, stamp(inka), inka);
        REQUIRE(event);
        run = Run::fold(std::span(&*event, 1));
    }
    /// The next thing happens so much later.
    void later(std::int64_t ms) { now += ms - betweenMs; }
    [[nodiscard]] std::int64_t whole() const { return run->events().back().stamp().utcMs - begun(); }
    [[nodiscard]] std::int64_t begun() const { return run->events().front().stamp().utcMs; }
    [[nodiscard]] double target(const std::string& id) const { return run->targets().find(id)->quantity()->si(); }
};

Course courseOf(const Run& run) { return seal::CourseReader({}).of(seal::documentOf(run).body); }

const seal::StageCourse& stage(const Course& course, const std::string& name)
{
    for (const seal::StageCourse& one : course.stages)
        if (one.stage == name) return one;
    FAIL("no stage " << name);
    return course.stages.front();
}

std::int64_t sum(const Course& course)
{
    std::int64_t all = 0;
    for (const seal::StageCourse& one : course.stages) all += one.workedMs + one.watchedMs + one.awayMs;
    return all;
}

/// "corrected set.lift.setting/unwind: read the wrong gauge"
std::vector<std::string> told(const Course& course)
{
    std::vector<std::string> all;
    for (const seal::CourseIncident& one : course.incidents)
        all.push_back(one.what + " " + one.step + ": " + one.detail);
    return all;
}

}  // namespace

TEST_CASE("the times of a run's stages make up the whole run, and each second counts once")
{
    Walk walk;
    walk.answerUpTo(kPressure);
    walk.must(Interrupt{"break"});
    walk.later(3'600'000);
    walk.must(Resume{{std::begin(kMakeSafe), std::end(kMakeSafe)}, true});
    walk.later(90'000);
    walk.must(Note{{}, "began again after the break"});
    walk.answerAll();
    walk.must(Note{{}, "nothing more"});
    walk.must(SignOff{""});
    const Course course = courseOf(*walk.run);
    REQUIRE(course.stages.size() == 2);
    CHECK(course.stages[0].stage == "safety");
    CHECK(course.stages[1].stage == "set");
    CHECK(sum(course) == walk.whole());
    std::int64_t away = 0;
    for (const seal::StageCourse& one : course.stages) away += one.awayMs;
    CHECK(away == 3'600'000);
}

TEST_CASE("a run that came to no step has no stages, and time before the first step is its stage's")
{
    Walk walk;
    walk.must(Abandon{"the order was cancelled"});
    CHECK(courseOf(*walk.run).stages.empty());
    Walk other;
    other.later(60'000);
    other.must(Note{{}, "where is the key?"});
    other.must(Answer{{"safety.walk.clear"}, "yes", {}});
    other.later(20'000);
    other.must(Abandon{"the order was cancelled"});
    const Course course = courseOf(*other.run);
    REQUIRE(course.stages.size() == 1);
    CHECK(course.stages[0].stage == "safety");
    CHECK(course.stages[0].workedMs == 81'000);
}

TEST_CASE("of a step that is watched its wait counts as watched, the rest as worked, elsewhere is told beside it")
{
    Walk walk;
    walk.answerUpTo("safety.walk.done");
    const std::int64_t before = walk.run->events().back().stamp().utcMs - walk.begun();
    SECTION("longer than its wait")
    {
        walk.later(100'000);
        walk.must(Answer{{"safety.walk.done"}, "yes", {}});
        const Course course = courseOf(*walk.run);
        CHECK(stage(course, "safety").watchedMs == 30'000);
        CHECK(stage(course, "safety").workedMs == before + 70'000);
    }
    SECTION("shorter")
    {
        walk.later(10'000);
        walk.must(Answer{{"safety.walk.done"}, "yes", {}});
        const Course course = courseOf(*walk.run);
        CHECK(stage(course, "safety").watchedMs == 10'000);
        CHECK(stage(course, "safety").workedMs == before);
        CHECK(stage(course, "safety").externalMs == 0);
    }
    SECTION("elsewhere")
    {
        walk.answerUpTo("set.lift.seen");
        walk.later(500'000);
        walk.must(Answer{{"set.lift.seen"}, "good", {}});
        walk.answerAll();
        const Course course = courseOf(*walk.run);
        CHECK(stage(course, "set").externalMs == 500'000);
        CHECK(stage(course, "set").workedMs > 500'000);
        CHECK(sum(course) == walk.whole());
    }
}

TEST_CASE("how a reading first came out is told, and everything that was not right at once")
{
    Walk walk;
    walk.answerUpTo(kUnwind);
    walk.must(Answer{{kUnwind}, "5.9 bar", {}});
    walk.must(AcceptDeviation{{kUnwind}, "gauge is being calibrated", walk.accepts});
    walk.must(Correct{{kUnwind}, "1.40 bar", "read the wrong gauge"});
    walk.answerAll();
    walk.must(Interrupt{"left_alone"});
    walk.must(Resume{{std::begin(kMakeSafe), std::end(kMakeSafe)}, false});
    walk.answerAll();
    walk.must(RepeatStage{"set", "web_break"});
    walk.answerAll();
    walk.must(HandOver{walk.matteo});
    walk.answerAll(walk.matteo);
    const Course course = courseOf(*walk.run);
    CHECK(course.outside == 1);
    CHECK(course.answers.at(kUnwind).first == "outside");
    CHECK(course.answers.at(kPressure).first == "recorded");
    CHECK(course.answers.at("set.lift.seen").first == "recorded");
    const std::string unwind = kUnwind;
    CHECK(told(course) ==
          std::vector<std::string>{"outside " + unwind + ": ", "deviated " + unwind + ": gauge is being calibrated",
                                   "corrected " + unwind + ": read the wrong gauge", "interrupted : left_alone",
                                   "repeated set: web_break", "handed_over : "});
    CHECK(course.incidents[0].target == "tension.unwind.setting");
    CHECK(course.incidents[0].n < course.incidents[1].n);
    CHECK(course.incidents[0].atMs ==
          walk.run->events()[static_cast<std::size_t>(course.incidents[0].n) - 1].stamp().utcMs);
}

TEST_CASE("a reading is held against what its target aimed at when it was answered, roll for roll")
{
    Walk walk;
    const double unwind = walk.target("tension.unwind.setting"), pressure = walk.target("lift.pressure");
    walk.answerAll();
    const Course first = courseOf(*walk.run);
    CHECK(first.answers.at(kUnwind).aimed == Approx(unwind));
    CHECK(first.answers.at(kPressure).aimed == Approx(pressure));
    CHECK_FALSE(first.answers.at("set.lift.seen").aimed);
    walk.must(ChangeRoll{mini::otherRoll("R0999", "420 mm"), Length::si(0.41)});
    const double lighter = walk.target("lift.pressure");
    REQUIRE(lighter != Approx(pressure));
    // Not answered again yet: what stands was read for the roll before.
    CHECK(courseOf(*walk.run).answers.at(kPressure).aimed == Approx(pressure));
    walk.answerAll();
    walk.must(SignOff{""});
    CHECK(courseOf(*walk.run).answers.at(kPressure).aimed == Approx(lighter));
    CHECK(courseOf(*walk.run).answers.at(kUnwind).aimed == Approx(walk.target("tension.unwind.setting")));
}

TEST_CASE("a document that names its words by hash tells the same course, and one without them what is left")
{
    Walk walk;
    walk.answerAll();
    walk.must(ChangeRoll{mini::otherRoll("R0999", "420 mm"), Length::si(0.41)});
    walk.answerAll();
    walk.must(SignOff{""});
    const Course whole = courseOf(*walk.run);
    const seal::Parted parted = seal::partWords(seal::documentOf(*walk.run));
    REQUIRE(parted.words.size() == 2);
    int asked = 0;
    seal::CourseReader reader([&](std::string_view, const std::string& sha256) {
        ++asked;
        for (const auto& words : parted.words)
            if (words.source.sha256 == sha256) return words.source.text;
        return std::string();
    });
    // The second time the words are known.
    for (int i = 0; i < 2; ++i) {
        const Course course = reader.of(parted.document.body);
        CHECK(asked == 2);
        REQUIRE(course.stages.size() == whole.stages.size());
        for (std::size_t s = 0; s < whole.stages.size(); ++s) {
            CHECK(course.stages[s].workedMs == whole.stages[s].workedMs);
            CHECK(course.stages[s].watchedMs == whole.stages[s].watchedMs);
            CHECK(course.stages[s].externalMs == whole.stages[s].externalMs);
        }
        REQUIRE(course.answers.size() == whole.answers.size());
        for (const auto& [step, answer] : whole.answers) {
            INFO(step);
            CHECK(course.answers.at(step).aimed == answer.aimed);
            CHECK(course.answers.at(step).first == answer.first);
        }
    }
    const Course without = seal::CourseReader({}).of(parted.document.body);
    CHECK(sum(without) == walk.whole());
    CHECK_FALSE(without.answers.at(kPressure).aimed);
}

TEST_CASE("the time in which the clock was set counts nowhere, and no gap counts less than nothing")
{
    const auto body = Json::parse(R"({"format":1,"kind":"run","events":[
        {"n":1,"at":"2026-11-27T03:00:00.000Z","what":"began"},
        {"n":2,"at":"2026-11-27T03:00:10.000Z","what":"answered","step":"safety.walk.clear","verdict":"recorded"},
        {"n":3,"at":"2026-11-27T05:00:10.000Z","what":"clock_jumped","by_ms":7200000},
        {"n":4,"at":"2026-11-27T05:00:15.000Z","what":"answered","step":"safety.walk.done","verdict":"recorded"},
        {"n":5,"at":"2026-11-27T05:00:05.000Z","what":"helped","step":"set.lift.pressure","remedy":2,"words":"bleed it"},
        {"n":6,"at":"2026-11-27T05:00:25.000Z","what":"not_applicable","step":"set.lift.pressure","reason":"no lift"},
        {"n":7,"at":"2026-11-27T05:00:26.000Z","what":"withdrawn","reason":"a guard is cracked"},
        {"n":8,"at":"2026-11-27T06:00:26.000Z","what":"abandoned","reason":"withdrawn"}]})");
    REQUIRE(body);
    const Course course = seal::CourseReader({}).of(*body);
    REQUIRE(course.stages.size() == 2);
    CHECK(stage(course, "safety").workedMs == 15'000);
    CHECK(stage(course, "set").workedMs == 21'000);
    CHECK(stage(course, "set").awayMs == 3'600'000);
    CHECK(told(course) == std::vector<std::string>{"helped set.lift.pressure: 2 bleed it",
                                                   "not_applicable set.lift.pressure: no lift"});
}
