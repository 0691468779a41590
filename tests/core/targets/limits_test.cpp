// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/limits.h"

#include <catch2/catch.hpp>
#include <map>
#include <set>

#include "core/targets/aim.h"
#include "core/targets/known_ids.h"
#include "core/units/format.h"
#include "core/units/unit.h"
#include "tests/core/targets/demo_inputs.h"
#include "tests/core/targets/stated.h"

// A shop's own windows: they narrow what protects people and web, and never widen it.
using namespace taut;
using namespace demo::stated;
using targets::Targets;

namespace {

Quantity bar(double value) { return {value * 1e5, Kind::Pressure, "bar"}; }
Quantity count(double value) { return {value, Kind::Count}; }

/// The north press with these limits of its own in place of what it has for them.
Targets limited(const std::string& id, Range range)
{
    return withPress("north", "quince-jelly", "R0041", [&](inputs::Press& p) {
        std::erase_if(p.limits, [&](const auto& one) { return one.first == id; });
        p.limits.emplace_back(id, std::move(range));
    });
}

/// The north press with this line of limits in place of its own, as its file would have it.
inputs::Press withLimits(const std::string& line, Findings& notes)
{
    std::string toml = demo::text("presses/north.toml");
    const std::size_t from = toml.find("[limits]"), to = toml.find("[labels]");
    REQUIRE(from < to);
    toml.replace(from, to - from, "[limits]\n" + line + "\n\n");
    auto press = inputs::readPress(toml, "north.toml", notes);
    REQUIRE(press);
    return *std::move(press);
}

/// The ids of all that demo presses, jobs and rolls give, and of what a press gives whose profile tells more.
std::map<std::string, Quantity> everyTarget()
{
    std::vector<Targets> all;
    for (const demo::Case& c : demo::cases())
        all.push_back(targets::computeTargets(demo::inputs(c.press, c.job, c.roll)));
    inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
    inputs::Press press = *in.press;
    const Entry<Kind::Inertia> shaft(Quantity(0.2, Kind::Inertia, "kg m2"));
    press.unwind->shaftInertia = press.rewinds.front().shaftInertia = shaft;
    press.rampUp.value = Quantity(15, Kind::Time, "s");
    press.stations.front().undercut = Entry<Kind::Length>(Quantity(0.00208, Kind::Length, "mm"));
    inputs::Job job = *in.job;
    job.repeatWanted = Entry<Kind::Length>(Quantity(0.3048, Kind::Length, "mm"));
    in.press = std::make_shared<const inputs::Press>(std::move(press));
    in.job = std::make_shared<const inputs::Job>(std::move(job));
    all.push_back(targets::computeTargets(in));
    std::map<std::string, Quantity> every;
    for (const Targets& t : all)
        for (const targets::Target& target : t.all)
            if (const Quantity* q = target.quantity(); q != nullptr || every.count(target.id) == 0)
                every.insert_or_assign(target.id, q != nullptr ? *q : Quantity());
    return every;
}

}  // namespace

TEST_CASE("a shop's limits narrow the window of a splice, a stop or a clutch, and never widen it")
{
    for (const auto& [id, wide, narrow] :
         {std::tuple{"splice.margin", Range{count(1), count(100)}, Range{count(6), {}}},
          {"splice.transient_margin", Range{count(1), count(100)}, Range{count(3), {}}},
          {"tension.rewind.slip_power", Range{Quantity(0, Kind::Power), Quantity(5000, Kind::Power)},
           Range{{}, Quantity(100, Kind::Power)}},
          {"tension.unwind.strain", Range{{}, Quantity(0.05, Kind::Share)},
           Range{{}, Quantity(0.0005, Kind::Share)}}}) {
        INFO(id);
        const targets::Window usual =
            ready(targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041")), id).window;
        REQUIRE((usual.low || usual.high));
        const Targets t = limited(id, wide);
        const targets::Window& held = ready(t, id).window;
        if (usual.low) CHECK(held.low->si() == usual.low->si());
        if (usual.high) CHECK(held.high->si() == usual.high->si());
        CHECK(finding(t, "limits.only_narrower").severity == Severity::Warn);
        const targets::Window tight = ready(limited(id, narrow), id).window;
        if (narrow.low) CHECK(tight.low->si() == narrow.low->si());
        if (narrow.high) CHECK(tight.high->si() == narrow.high->si());
        CHECK_FALSE(noted(limited(id, narrow), "limits.only_narrower"));
    }
    CHECK(targets::onlyNarrows("stop.diameter"));
    CHECK_FALSE(targets::onlyNarrows("air.supply"));
}

TEST_CASE("one narrower end of a window that has two leaves the other, and is not told as wider")
{
    const targets::Window usual =
        ready(targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041")), "mandrel.air").window;
    REQUIRE((usual.low && usual.high));
    for (const Range& one : {Range{bar(6.5), {}}, Range{{}, bar(6.5)}}) {
        const Targets t = limited("mandrel.air", one);
        const targets::Window& held = ready(t, "mandrel.air").window;
        CHECK(held.low->si() == (one.low ? one.low : usual.low)->si());
        CHECK(held.high->si() == (one.high ? one.high : usual.high)->si());
        CHECK_FALSE(noted(t, "limits.only_narrower"));
    }
    // Wider at one end and narrower at the other: the sentence tells what stood before, the window keeps the narrower.
    const Targets both = limited("mandrel.air", Range{bar(5), bar(6.5)});
    CHECK(std::get<std::vector<Text>>(finding(both, "limits.only_narrower").text.args.at(1)).front() == usual.source);
    CHECK(ready(both, "mandrel.air").window.low->si() == usual.low->si());
    CHECK(ready(both, "mandrel.air").window.high->si() == 6.5e5);
    const Targets apart = limited("mandrel.air", Range{bar(7.5), {}});
    CHECK(noted(apart, "limits.nothing_left"));
    CHECK_FALSE(noted(apart, "limits.only_narrower"));
    CHECK(ready(apart, "mandrel.air").window == usual);
}

TEST_CASE("limits that cannot hold are named: a slip, what is never judged, what comes from elsewhere")
{
    for (const auto& [id, code] : {std::pair{"air.suply", "limits.unknown_id"},
                                   {"foo.bar", "limits.unknown_id"},
                                   {"tension.unwnd.swing", "limits.unknown_id"},
                                   {"lift.pressure", "limits.not_judged"},
                                   {"tension.unwind.setting", "limits.by_tension"},
                                   {"tension.unwind.per_width", "limits.by_tension"}}) {
        INFO(id);
        const Targets t = limited(id, Range{bar(1), bar(2)});
        CHECK(finding(t, code).subject == std::string("press.limits.") + id);
        CHECK_FALSE(finding(t, code).remedy.empty());
        const targets::Target* target = t.find(id);
        if (target != nullptr && target->ready() != nullptr && target->ready()->window.low)
            CHECK(target->ready()->window.low->si() != 1e5);
    }
    CHECK(std::get<std::string>(
              finding(limited("air.suply", Range{bar(1), bar(2)}), "limits.unknown_id").remedy.args.at(0)) ==
          "air.supply");
    CHECK(noted(limited("air.supply", Range{count(5), count(6)}), "limits.other_kind"));
    CHECK(noted(limited("air.supply", Range{{}, Quantity(3, Kind::Length)}), "limits.other_kind"));
    // The demo shop's own all hold.
    for (const char* press : {"north", "south"}) CHECK(targets::checkLimits(*demo::press(press)).empty());
}

TEST_CASE("a limit that is so many times something is a number, or a share of one")
{
    struct Written {
        const char* limits;
        double low, high;
    };
    for (const Written& one : {Written{"{ low = 5, high = 25 }", 5, 25},
                               {"{ low = \"500 %\", high = \"2500 %\" }", 5, 25},
                               {"{ low = 5, high = \"2500 %\" }", 5, 25},
                               {"{ low = \"5\", high = \"25\" }", 5, 25},
                               {"{ low = \"4,5\", high = 25.5 }", 4.5, 25.5}}) {
        INFO(one.limits);
        Findings notes;
        const auto press = withLimits(std::string("\"splice.margin\" = ") + one.limits, notes);
        CHECK(notes.empty());
        const Range& range = press.limits.back().second;
        REQUIRE(range.low);
        REQUIRE(range.high);
        for (const Quantity* end : {&*range.low, &*range.high}) CHECK(end->kind() == Kind::Count);
        CHECK(range.low->si() == Approx(one.low));
        CHECK(range.high->si() == Approx(one.high));
        inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
        in.press = std::make_shared<const inputs::Press>(press);
        const Targets t = targets::computeTargets(in);
        CHECK_FALSE(noted(t, "limits.other_kind"));
        CHECK(ready(t, "splice.margin").window.low->si() == Approx(one.low));
    }
    for (const char* wrong : {"{ low = \"3 mm\" }", "{ low = true }", "{ low = \"often\" }"}) {
        INFO(wrong);
        Findings notes;
        (void)withLimits(std::string("\"splice.margin\" = ") + wrong, notes);
        REQUIRE(notes.size() == 1);
        CHECK(notes[0].severity == Severity::Stop);
        CHECK_FALSE(notes[0].remedy.empty());
    }
}

TEST_CASE("limits of every target can be written in the unit in which it is shown")
{
    std::size_t tried = 0;
    for (const auto& [id, q] : everyTarget()) {
        if (q == Quantity()) continue;  // a word, or yes or no
        const Unit& unit = shownUnit(q, UnitSystem::Metric);
        const std::string plain = q.kind() == Kind::Count ? "3" : "\"3 " + std::string(unit.symbol) + "\"";
        const std::string line = "\"" + id + "\" = { high = " + plain + " }";
        INFO(line);
        Findings notes;
        const auto press = withLimits(line, notes);
        CHECK(notes.empty());
        REQUIRE(press.limits.size() == 1);
        CHECK(press.limits.front().second.high->kind() == q.kind());
        CHECK(press.limits.front().second.high->si() == Approx(3 * unit.toSi));
        ++tried;
    }
    CHECK(tried > 150);
}

TEST_CASE("what limits may do is said of each id that there is, and of whatever a demo press bears under it")
{
    const auto every = everyTarget();
    std::set<std::string_view> patterns;
    for (const targets::KnownId& one : targets::knownIds()) {
        INFO(one.pattern);
        CHECK(patterns.insert(one.pattern).second);
        CHECK(targets::isKnownTarget(one.pattern));
        CHECK(targets::ownLimitsOf(one.pattern) == one.limits);
        std::size_t borne = 0;
        for (const auto& [id, value] : every)
            if (targets::fitsPattern(one.pattern, id)) {
                INFO(id);
                ++borne;
                CHECK(targets::ownLimitsOf(id) >= one.limits);
            }
        CHECK(borne > 0);
    }
}

TEST_CASE("where no formula gives a value, it is aimed at inside the shop's own window")
{
    const Targets low = limited("air.supply", Range{bar(4.5), bar(5.5)});
    CHECK(si(low, "air.supply") == Approx(5.0e5));
    CHECK(ready(low, "air.supply").because.given.front().from == "press.limits.air.supply");
    // What is best not there at all is aimed at nothing.
    CHECK(si(limited("air.drop", Range{bar(0), bar(0.1)}), "air.drop") == 0);
    CHECK(si(limited("air.supply", Range{bar(6.4), {}}), "air.supply") == Approx(6.4e5));
    // One that lies inside stays where it is.
    CHECK(si(limited("air.supply", Range{bar(5.8), bar(7)}), "air.supply") == Approx(6.25e5));
}

TEST_CASE("what somebody sets is aimed at inside the shop's narrower window, whatever it came from")
{
    const Quantity low(0.152, Kind::Length, "mm"), high(0.155, Kind::Length, "mm");
    struct Narrowed {
        const char* id;
        Range limits;
        double aim;
    };
    for (const Narrowed& one : {Narrowed{"mandrel.air", {bar(6.5), bar(6.8)}, 6.65e5},
                                {"mandrel.air", {bar(6.5), {}}, 6.7e5},  // the plate ends at 6.9
                                {"mandrel.rewind.air", {{}, bar(5.7)}, 5.6e5},
                                {"stop.diameter", {low, high}, 0.1535},
                                {"thread.rewind.wraps", {count(5), {}}, 5}}) {
        INFO(one.id);
        const Targets t = limited(one.id, one.limits);
        CHECK(si(t, one.id) == Approx(one.aim));
        const targets::Ready& r = ready(t, one.id);
        CHECK(r.because.formula == "stated");
        CHECK(r.because.given.front().from == std::string("press.limits.") + one.id);
        for (const UnitSystem system : {UnitSystem::Metric, UnitSystem::Us})
            CHECK(Range{r.window.low, r.window.high}.contains(std::get<Quantity>(targets::aimOf(r, system)).si()));
        CHECK_FALSE(noted(t, "limits.broken"));
    }
}

TEST_CASE("what a policy row states alone is somebody's aim")
{
    std::size_t aims = 0;
    for (const demo::Case& c : demo::cases())
        for (const targets::Target& target : targets::computeTargets(demo::inputs(c.press, c.job, c.roll)).all) {
            const targets::Ready* r = target.ready();
            if (r == nullptr || target.quantity() == nullptr) continue;
            INFO(target.id);
            if (r->because.formula != "stated" || r->because.given.size() != 1 ||
                r->because.given.front().from.find("policy") == std::string::npos)
                continue;
            CHECK(targets::isAim(target.id));
            ++aims;
        }
    CHECK(aims > 100);
}

TEST_CASE("a figure that breaks the shop's own narrower limit is told, and stays what it is")
{
    const Targets usual = targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041"));
    const auto seconds = [](double s) { return Quantity(s, Kind::Time, "s"); };
    for (const auto& [id, limits] : {std::pair{"splice.margin", Range{count(25), {}}},
                                     {"stop.emergency_time_at_speed", Range{{}, seconds(2)}},
                                     {"roll.diameter", Range{{}, Quantity(0.3, Kind::Length, "mm")}},
                                     {"roll.mass", Range{Quantity(90, Kind::Mass, "kg"), {}}},
                                     {"tension.rewind.strain", Range{{}, Quantity(0.0001, Kind::Share, "%")}}}) {
        INFO(id);
        const Quantity figure = std::get<Quantity>(ready(usual, id).value);
        const Targets t = limited(id, limits);
        CHECK(ready(t, id).value == ready(usual, id).value);
        CHECK_FALSE(noted(t, "limits.nothing_left"));
        const Finding& f = finding(t, "limits.broken");
        CHECK(f.severity == Severity::Warn);
        CHECK(std::get<Magnitude>(f.text.args.at(1)) == figure.magnitude());
        CHECK(std::get<Magnitude>(f.text.args.at(2)) == (limits.low ? limits.low : limits.high)->magnitude());
        CHECK_FALSE(f.remedy.empty());
    }
    CHECK_FALSE(noted(limited("splice.margin", Range{count(6), {}}), "limits.broken"));
}

TEST_CASE("a load over the shop's own limit stops, and no pressure is given to lift it with")
{
    // 69.6 kg of web, 0.9 kg of core, and 25 kg of carriage on the lift.
    for (const auto& [id, most] : {std::pair{"lift.load", 90.0}, {"roll.mass", 60.0}}) {
        INFO(id);
        const Quantity limit(most, Kind::Mass, "kg");
        const Targets t = limited(id, Range{{}, limit});
        const Finding& f = finding(t, "limits.broken");
        CHECK(f.severity == Severity::Stop);
        CHECK(std::get<Magnitude>(f.text.args.at(2)) == limit.magnitude());
        for (const char* lifts : {"lift.load", "lift.pressure"}) CHECK(cannot(t, lifts).why == f);
        CHECK(t.find("roll.mass")->ready() != nullptr);
    }
    for (const auto& [id, most] : {std::pair{"lift.load", 96.0}, {"roll.mass", 71.0}}) {
        INFO(id);
        const Targets t = limited(id, Range{{}, Quantity(most, Kind::Mass, "kg")});
        CHECK_FALSE(noted(t, "limits.broken"));
        CHECK(t.find("lift.pressure")->ready() != nullptr);
    }
}

TEST_CASE("what follows from an aim follows from it as the shop's own limits leave it")
{
    const Targets usual = targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041"));
    const auto mm = [](double v) { return Quantity(v / 1000, Kind::Length, "mm"); };
    const auto speed = [](double v) { return Quantity(v / 60, Kind::Speed, "m/min"); };
    const double centre = si(usual, "align.centre");
    const Quantity low = mm(centre * 1000 + 2), high = mm(centre * 1000 + 4);
    std::size_t followed = 0;
    for (const auto& [id, limits] :
         {std::pair{"align.centre", Range{low, high}}, {"stop.trial_speed", Range{{}, speed(30)}}}) {
        const Targets t = limited(id, limits);
        for (const targets::Target& target : t.all)
            if (const targets::Ready* r = target.ready())
                for (const targets::Given& g : r->because.given)
                    if (g.from.starts_with("target:") && targets::isAim(g.from.view().substr(7))) {
                        INFO(target.id);
                        CHECK(std::get<Quantity>(g.value).si() == si(t, g.from.str().substr(7)));
                        ++followed;
                    }
    }
    CHECK(followed >= 4);
    // The edges go with the centre, and lie as near.
    const Targets moved = limited("align.centre", Range{low, high});
    CHECK(si(moved, "align.centre") == Approx(centre + 0.003));
    for (const char* edge : {"align.operator_edge", "align.drive_edge"}) {
        INFO(edge);
        CHECK(si(moved, edge) == Approx(si(usual, edge) + 0.003));
        const targets::Window& w = ready(moved, edge).window;
        CHECK(w.low->si() == Approx(si(moved, edge) - 0.001));
        CHECK(w.high->si() == Approx(si(moved, edge) + 0.001));
        CHECK(w.rule == targets::Rule::Press);
    }
    // From 30 m/min the deceleration of 60 m/min in 3 s takes 1.5 s (V1), and a fifth more.
    const Targets slow = limited("stop.trial_speed", Range{{}, speed(30)});
    CHECK(si(slow, "stop.trial_speed") == Approx(0.5));
    CHECK(si(slow, "stop.trial_time") == Approx(1.5));
    CHECK(ready(slow, "stop.trial_time").window.high->si() == Approx(1.8));
    CHECK_FALSE(noted(slow, "limits.broken"));
    CHECK(si(limited("stop.trial_speed", Range{speed(50), speed(60)}), "stop.trial_speed") == Approx(55.0 / 60));
    // No trial goes faster than the job does: that these limits want it is told.
    const Targets fast = limited("stop.trial_speed", Range{speed(120), {}});
    CHECK(si(fast, "stop.trial_speed") == Approx(0.75));
    CHECK(noted(fast, "limits.broken"));
    CHECK(si(limited("thread.proving_time", Range{{}, Quantity(180, Kind::Time, "min")}), "thread.proving_time") ==
          180);
    CHECK(si(limited("thread.proving_time", Range{Quantity(600, Kind::Time, "min"), {}}), "thread.proving_time") ==
          600);
}

TEST_CASE("a figure that lies outside limits that take its window's place is told too")
{
    const Quantity half(0.495, Kind::Length, "mm");
    for (const auto& [id, limits] : {std::pair{"strip.diameter", Range{{}, half}},
                                     {"stop.trial_time", Range{{}, Quantity(2, Kind::Time, "s")}},
                                     {"roll.width", Range{Quantity(0.34, Kind::Length, "mm"), {}}},
                                     {"job.length", Range{{}, Quantity(100, Kind::Length, "m")}}}) {
        INFO(id);
        const Targets usual = targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041"));
        const Targets t = limited(id, limits);
        CHECK(si(t, id) == si(usual, id));
        if (ready(t, id).window.rule == targets::Rule::Press) CHECK(noted(t, "limits.broken"));
    }
    CHECK(noted(limited("job.length", Range{{}, Quantity(100, Kind::Length, "m")}), "limits.broken"));
}

TEST_CASE("limits of a splice's faults and of falling air only narrow, and the end that is not said stays")
{
    const Targets usual = targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041"));
    const auto mm = [](double v) { return Quantity(v / 1000, Kind::Length, "mm"); };
    for (const char* id : {"splice.gap", "splice.step", "splice.square", "splice.overhang", "air.drop"}) {
        INFO(id);
        const bool air = std::string(id) == "air.drop";
        const targets::Window& own = ready(usual, id).window;
        const Targets wide = limited(id, Range{{}, air ? bar(3) : mm(50)});
        CHECK(ready(wide, id).window == own);
        CHECK(noted(wide, "limits.only_narrower"));
    }
    const Targets oneEnd = limited("splice.gap", Range{mm(0.2), {}});
    CHECK(ready(oneEnd, "splice.gap").window.low->si() == Approx(0.0002));
    CHECK(ready(oneEnd, "splice.gap").window.high->si() == ready(usual, "splice.gap").window.high->si());
    CHECK(si(oneEnd, "splice.gap") == Approx(0.00035));
    const Targets tight = limited("splice.step", Range{{}, mm(0.3)});
    CHECK_FALSE(ready(tight, "splice.step").window.low);
    CHECK(ready(tight, "splice.step").window.high->si() == Approx(0.0003));
    CHECK(si(tight, "splice.step") == 0);
}

TEST_CASE("limits are refused with the kind that the target has, and a plain number is a share where a share is wanted")
{
    for (const char* share : {"0.0005", "\"0.0005\"", "\"0.05 %\""}) {
        INFO(share);
        Findings notes;
        const auto press = withLimits(std::string("\"tension.print.strain\" = { high = ") + share + " }", notes);
        CHECK(notes.empty());
        REQUIRE(press.limits.size() == 1);
        CHECK(press.limits.front().second.high->kind() == Kind::Share);
        CHECK(press.limits.front().second.high->si() == Approx(0.0005));
    }
    for (const auto& [line, wanted] : {std::pair{"\"stop.trial_time\" = { high = \"110 %\" }", Kind::Time},
                                       {"\"guide.web.rest\" = { high = \"10 %\" }", Kind::Length},
                                       {"\"tension.unwind.swing\" = { high = \"3 mm\" }", Kind::Share},
                                       {"\"splice.gap\" = { high = 0.3 }", Kind::Length},
                                       {"\"air.supply\" = { low = 5 }", Kind::Pressure}}) {
        INFO(line);
        Findings notes;
        CHECK(withLimits(line, notes).limits.empty());
        REQUIRE(notes.size() == 1);
        CHECK(notes[0].severity == Severity::Stop);
        bool named = false;
        for (const TextArg& arg : notes[0].text.args)
            if (const auto* text = std::get_if<std::vector<Text>>(&arg))
                named = named || text->front() == kindName(wanted);
        CHECK(named);
    }
    // Where no target tells, no kind is guessed.
    Findings notes;
    (void)withLimits("\"air.suply\" = { low = 5 }", notes);
    REQUIRE(notes.size() == 1);
    CHECK(notes[0].text.source.find("wanted") == std::string::npos);
}

TEST_CASE("limits that the material comes before are told with what comes before and what to do")
{
    const Targets t = limited("roll.lengths_apart", Range{{}, Quantity(0.03, Kind::Share, "%")});
    const Finding& f = finding(t, "limits.job_comes_first");
    CHECK(std::get<std::vector<Text>>(f.text.args.at(1)).front() == ready(t, "roll.lengths_apart").window.source);
    CHECK_FALSE(contains(f.remedy, "Nothing to do"));
}
