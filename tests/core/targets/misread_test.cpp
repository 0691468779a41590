// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <algorithm>

#include "core/units/plain.h"
#include "tests/core/targets/stated.h"

// Where what lies across a roll or a web is no longer large but misread, and in what words and order trouble is told.
using namespace taut;
using namespace demo::stated;
using targets::Targets;

namespace {

double mostOf(const Targets& t, const std::string& id)
{
    const targets::Ready& is = ready(t, id);
    INFO(id);
    REQUIRE(is.most);
    return is.most->si();
}

}  // namespace

TEST_CASE("what is measured across a roll or a web ends far beyond the largest that the press takes")
{
    for (const demo::Case& c : demo::cases()) {
        const inputs::Inputs in = demo::inputs(c.press, c.job, c.roll);
        const Targets t = targets::computeTargets(in);
        INFO(c.press << " " << c.roll);
        const double largest = in.press->unwind->largestDiameter->si();
        // A roll that is merely too large for the press is measured and said; a slip of the decimal mark is not.
        for (const char* id : {"roll.diameter", "strip.diameter", "stop.diameter"}) {
            if (t.find(id) == nullptr || t.find(id)->ready() == nullptr) continue;
            INFO(id);
            CHECK(mostOf(t, id) > 1.2 * largest);
            CHECK(mostOf(t, id) < 5 * largest);
            CHECK(mostOf(t, id) > std::get<Quantity>(ready(t, id).value).si());
        }
        CHECK(mostOf(t, "roll.width") > in.press->webMost->si());
        CHECK(mostOf(t, "roll.width") < 5 * in.press->webMost->si());
        if (in.press->betweenFrames) CHECK(mostOf(t, "align.centre") == in.press->betweenFrames->si());
    }
}

TEST_CASE("where the press says no largest roll, what no roll measures is misread")
{
    const Targets t = demo::withPress("north", "quince-jelly", "R0041", [](inputs::Press& p) {
        p.unwind->largestDiameter.reset();
        p.webMost.reset();
    });
    CHECK(mostOf(t, "roll.diameter") > 1.6);  // the largest rolls of any press: common practice, no source
    CHECK(mostOf(t, "roll.diameter") < 9);
    CHECK(mostOf(t, "roll.width") < 10);
}

TEST_CASE("wraps, a stop's time and the edges of the web end where nobody would wind, wait or reach")
{
    const Targets t = targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041"));
    CHECK(mostOf(t, "thread.rewind.wraps") < 1000);
    CHECK(mostOf(t, "guide.web.operator_sensor") == Approx(0.43));  // between_frames of north.toml
    const Targets south = targets::computeTargets(demo::inputs("south", "cold-brew", "R0048"));
    for (const targets::Target& target : south.all)
        if (target.id == "stop.emergency_time") CHECK(mostOf(south, target.id) < 3600);
}

TEST_CASE("what does not fit is told worst first, whichever file it comes from")
{
    // A web that stretches too far is a warning of the tension; a roll that the lift cannot hold keeps it off.
    bool mixed = false;
    for (const demo::Case& c : demo::cases()) {
        const Targets t = demo::withPress(c.press.c_str(), c.job.c_str(), c.roll.c_str(), [](inputs::Press& p) {
            p.largest.value = Quantity(0.5, Kind::Speed, "m/min");  // slower than the job: a warning, found first
            p.guides.front().stroke = Entry<Kind::Length>(Length::si(1e-4), "mm");  // a guide that cannot follow
        });
        INFO(c.press << " " << c.roll);
        CHECK(std::is_sorted(t.findings.begin(), t.findings.end(),
                             [](const Finding& a, const Finding& b) { return a.severity > b.severity; }));
        const auto has = [&](Severity s) {
            return std::any_of(t.findings.begin(), t.findings.end(), [&](const Finding& f) { return f.severity == s; });
        };
        mixed = mixed || (has(Severity::Stop) && has(Severity::Warn));
    }
    CHECK(mixed);
}

TEST_CASE("no sentence about a press calls a rewind or a zone by its id where it has a name")
{
    const auto told = [](const Targets& t) {
        std::string all;
        for (const Finding& f : t.findings) all += plain(f.text) + ' ' + plain(f.remedy) + '\n';
        for (const targets::Target& target : t.all) {
            all += plain(target.name) + '\n';
            if (const targets::Ready* is = target.ready()) all += plain(is->advice) + '\n';
            if (const auto* no = std::get_if<targets::Cannot>(&target.state))
                all += plain(no->why.text) + ' ' + plain(no->why.remedy) + '\n';
        }
        return all;
    };
    for (const char* job : {"cold-brew", "seed-window"}) {
        inputs::Inputs in = demo::inputs("south", job, "R0048");
        inputs::Job wide = *in.job;
        wide.rewindCore = Entry<Kind::Length>(Quantity(0.038, Kind::Length, "mm"));
        wide.rewindDiameter = Entry<Kind::Length>(Quantity(1.2, Kind::Length, "mm"));
        in.job = std::make_shared<const inputs::Job>(std::move(wide));
        const std::string all = told(targets::computeTargets(in));
        CHECK(all.find("rewind_1") == std::string::npos);
        CHECK(all.find("rewind_2") == std::string::npos);
        CHECK(all.find("Rewind 1 holds") != std::string::npos);
        CHECK(all.find("Rewind 2: ") != std::string::npos);
    }
}
