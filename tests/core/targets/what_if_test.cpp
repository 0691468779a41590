// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

#include "core/targets/what_if.h"
#include "tests/core/targets/demo_inputs.h"
#include "tests/core/targets/stated.h"

using namespace taut;
using namespace demo::stated;
using targets::Targets;
using targets::WhatIf;

namespace {

Entry<Kind::Length> mm(double value) { return Entry<Kind::Length>(Length::si(value / 1000), "mm"); }

}  // namespace

TEST_CASE("with nothing tried the targets are those of the real inputs")
{
    for (const demo::Case& c : demo::cases()) {
        const auto real = demo::inputs(c.press, c.job, c.roll);
        CHECK(targets::tryOut({real, {}}, {}).targets() == targets::computeTargets(real));
        const Length present = Length::si(0.3);
        CHECK(targets::tryOut({real, present}, {}).targets() == targets::computeTargets(real, present));
    }
}

TEST_CASE("a tried diameter moves what hangs on it, by the same formulas as another roll would")
{
    const auto real = demo::inputs("north", "quince-jelly", "R0041");
    const Targets t = targets::tryOut({real, {}}, {mm(400), {}, {}, {}}).targets();
    // B5: p = p0 + T D / (2 k), 0.15 bar + 59.4 N 0.4 m / (2 12 N m/bar)
    CHECK(si(t, "tension.unwind.setting") == Approx(0.15e5 + 59.4 * 0.4 / 24 * 1e5));
    CHECK(si(t, "roll.length") == Approx(3.14159265358979 * (0.4 * 0.4 - 0.1022 * 0.1022) / (4 * 140e-6)));
    CHECK(si(t, "tension.unwind.total") == Approx(59.4));
}

TEST_CASE("a tried diameter takes the place of a measured one")
{
    const auto real = demo::inputs("north", "quince-jelly", "R0041");
    const Length measured = Length::si(0.3);
    const Targets t = targets::tryOut({real, measured}, {mm(400), {}, {}, {}}).targets();
    CHECK(si(t, "tension.unwind.setting") == Approx(0.15e5 + 59.4 * 0.4 / 24 * 1e5));
    // Tried speed alone leaves the measured diameter where it is.
    WhatIf speed;
    speed.speed = Entry<Kind::Speed>(Speed::si(0.5), "m/min");
    CHECK(si(targets::tryOut({real, measured}, speed).targets(), "tension.unwind.setting") ==
          Approx(0.15e5 + 59.4 * 0.3 / 24 * 1e5));
}

TEST_CASE("a tried width is the roll's and the job's, so that only what cannot work is named")
{
    const auto real = demo::inputs("north", "quince-jelly", "R0041");
    const Targets t = targets::tryOut({real, {}}, {{}, mm(250), {}, {}}).targets();
    CHECK(si(t, "tension.unwind.total") == Approx(0.18e3 * 0.25));
    for (const Finding& f : t.findings) {
        INFO(f.code);
        CHECK(f.severity != Severity::Stop);
    }
    const Targets wide = targets::tryOut({real, {}}, {{}, mm(600), {}, {}}).targets();
    CHECK(std::any_of(wide.findings.begin(), wide.findings.end(),
                      [](const Finding& f) { return f.code == "input.roll_wider_than_press"; }));
}

TEST_CASE("a tried speed moves the heat in the brake and the time the roll lasts, and nothing of the roll")
{
    const auto real = demo::inputs("north", "quince-jelly", "R0041");
    WhatIf slow;
    slow.speed = Entry<Kind::Speed>(Speed::si(real.job->speed->si() / 2), "m/min");
    const Targets before = targets::computeTargets(real), after = targets::tryOut({real, {}}, slow).targets();
    CHECK(si(after, "tension.unwind.slip_power") == Approx(si(before, "tension.unwind.slip_power") / 2));
    CHECK(si(after, "roll.run_time") == Approx(si(before, "roll.run_time") * 2));
    CHECK(si(after, "roll.length") == si(before, "roll.length"));
}

TEST_CASE("a tried substrate counts as the roll's and the job's own")
{
    const auto real = demo::inputs("south", "cold-brew", "R0048");
    WhatIf film;
    film.substrate = demo::substrate("pet-36");
    const targets::Tried tried = targets::tryOut({real, {}}, film);
    CHECK(tried.inputs.substrate->id == "pet-36");
    const Targets t = tried.targets();
    CHECK(si(t, "tension.unwind.total") != si(targets::computeTargets(real), "tension.unwind.total"));
    CHECK(std::none_of(t.findings.begin(), t.findings.end(),
                       [](const Finding& f) { return f.code == "input.roll_of_other_substrate"; }));
}

TEST_CASE("what is tried leaves the real inputs as they are")
{
    const auto real = demo::inputs("north", "quince-jelly", "R0041");
    const inputs::Roll roll = *real.roll;
    const double width = real.job->webWidth->si();
    const Targets before = targets::computeTargets(real);
    const targets::Tried tried = targets::tryOut({real, {}}, {mm(300), mm(200), {}, {}});
    CHECK(tried.inputs.roll->outerDiameter->si() == Approx(0.3));
    CHECK(*real.roll == roll);
    CHECK(real.job->webWidth->si() == width);
    CHECK(targets::computeTargets(real) == before);
}

TEST_CASE("what label, scale and tag say of the real roll is not said of a tried one")
{
    const auto real = demo::inputs("north", "quince-jelly", "R0041");
    REQUIRE(real.roll->length);
    const targets::Tried tried = targets::tryOut({real, {}}, {mm(300), {}, {}, {}});
    CHECK_FALSE(tried.inputs.roll->length);
    CHECK_FALSE(tried.inputs.roll->mass);
    CHECK(tried.inputs.roll->tag.empty());
    WhatIf speed;
    speed.speed = Entry<Kind::Speed>(Speed::si(0.5), "m/min");
    CHECK(targets::tryOut({real, {}}, speed).inputs.roll->length);
}

TEST_CASE("what cannot be read or believed is refused with a sentence")
{
    struct Row {
        const char* text;
        const char* code;
    };
    for (const Row& row :
         {Row{"", "quantity.empty"}, Row{"400", "quantity.no_unit"}, Row{"four", "quantity.not_a_number"},
          Row{"20 psi", "quantity.wrong_kind"}, Row{"400 m", "whatif.absurd"}, Row{"-4 mm", "whatif.absurd"},
          Row{"0 mm", "whatif.absurd"}}) {
        const auto read = targets::readTriedDiameter(row.text);
        INFO(row.text);
        REQUIRE_FALSE(read);
        CHECK(read.error().code == row.code);
        CHECK_FALSE(read.error().text.empty());
        CHECK_FALSE(read.error().remedy.empty());
    }
    CHECK(targets::readTriedDiameter("15 3/4 in")->si() == Approx(0.40005));
    CHECK(targets::readTriedWidth("250 mm")->si() == Approx(0.25));
    CHECK(targets::readTriedSpeed("200 ft/min")->si() == Approx(1.016));
    CHECK_FALSE(targets::readTriedSpeed("0 m/min"));
}

TEST_CASE("whatever is tried inside what can be believed, every value stays finite")
{
    for (const demo::Case& c : demo::cases()) {
        const auto real = demo::inputs(c.press, c.job, c.roll);
        for (const double diameter : {10.0, 60.0, 103.0, 350.0, 1200.0, 3000.0})
            for (const double width : {5.0, 90.0, 330.0, 5000.0}) {
                WhatIf w{mm(diameter), mm(width), Entry<Kind::Speed>(Speed::si(33), "m/min"), {}};
                const Targets t = targets::tryOut({real, {}}, w).targets();
                for (const targets::Target& target : t.all)
                    if (const Quantity* q = target.quantity()) {
                        INFO(c.press << " " << diameter << " " << width << " " << target.id);
                        CHECK(std::isfinite(q->si()));
                    }
                for (const auto& s : t.schedules)
                    for (const auto& row : s.rows)
                        for (const Quantity& q : row) CHECK(std::isfinite(q.si()));
            }
    }
}
