// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/formula.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <map>
#include <random>
#include <set>

#include "tests/core/physics/samples.h"

using namespace taut;
using namespace taut::physics;

namespace {

/// The stable ids and their arguments: anything that was ever printed or stored names them.
const std::map<std::string, std::string> kStable{
    {"R1", "D d t"},
    {"R1.caliper", "D d L"},
    {"R2", "D d t"},
    {"R3", "D d t"},
    {"R4", "m w g"},
    {"R5", "D d t w g"},
    {"R6", "d t L"},
    {"R7.length", "D t N"},
    {"R7.diameter", "D t N"},
    {"R8", "L Lr v"},
    {"W1", "W A"},
    {"W3", "rho t"},
    {"W4", "w L"},
    {"T1", "Tw w"},
    {"T2", "s t"},
    {"T4", "c S"},
    {"B1", "T D"},
    {"B2", "v D"},
    {"B3", "T v"},
    {"B3.clutch", "M ni no"},
    {"B4", "D d"},
    {"B5", "T D k p0"},
    {"B5.diameter", "T k p0 p"},
    {"B5.tension", "D k p0 p"},
    {"B5.torque", "n mu A r p"},
    {"B6.hyperbolic", "T0 tau D d0"},
    {"B6.linear", "T0 tau D d0 Dm"},
    {"B7", "n p A a b theta"},
    {"B7.setting", "T n A a b theta"},
    {"B7.weight", "T a b theta"},
    {"B8", "T beta"},
    {"B8.setting", "T range"},
    {"D1", "T E w t"},
    {"D1.repeat", "R e"},
    {"D2", "e1 v1 v2"},
    {"D2.first_order", "K v1 v2 T1"},
    {"D2.draw", "e1 e2"},
    {"D3", "E t v dv"},
    {"D5", "L v"},
    {"D6", "K L v1 v2 T1 T0 t"},
    {"D7", "n v L t"},
    {"C1", "mu beta"},
    {"C1.air", "mu beta h s"},
    {"C2", "mu n"},
    {"C4", "R eta U Tw"},
    {"C5", "mu h s"},
    {"P1", "S Tw"},
    {"P5.normal", "s alpha"},
    {"P5.shear", "s alpha"},
    {"G2", "t L v"},
    {"G3", "T E w t L theta"},
    {"G4", "KL L v t"},
    {"G5", "theta w L"},
    {"G5.limit", "e w L"},
    {"G7", "L alpha"},
    {"G8", "alpha w L"},
    {"G8.limit", "e w L"},
    {"G10", "V V0 V1 W"},
    {"G10.edge", "c w side"},
    {"G11", "y s"},
    {"G12", "m mu a c"},
    {"N1", "p D eta"},
    {"N2", "m n D eta i"},
    {"F1.circular", "Z p"},
    {"F1.diametral", "Z P"},
    {"F1.module", "Z m"},
    {"F2", "R p"},
    {"F2.diametral", "R P"},
    {"F2.module", "R m"},
    {"F3", "R tp tb"},
    {"F4", "R s"},
    {"F5", "Q across around R waste"},
    {"F5.total", "Lj Lm n Ls Lp"},
    {"F7", "V c"},
    {"F8", "A c V k rho"},
    {"V1.distance", "v tr a"},
    {"V1.time", "v tr a"},
    {"V2.inches", "s i"},
    {"V2.crawl", "s v"},
    {"V3.same", "R r C"},
    {"V3.crossed", "R r C"},
    {"V3.open_belt", "D d C"},
    {"V3.crossed_belt", "D d C"},
    {"V4", "m R r"},
    {"V4.roll", "m R r mc b"},
    {"V5", "J a R"},
    {"V6", "M J a R"},
    {"V6.hold", "T J a R"},
    {"V7", "T0 J a R"},
};

std::vector<Named> named(const Formula& f, const std::vector<double>& si, std::size_t alternative = 0)
{
    std::vector<Named> all;
    for (std::size_t i = 0; i < f.arguments.size(); ++i) {
        const Argument& a = f.arguments[i];
        all.push_back({std::string(a.symbol), Quantity(si[i], a.kinds[a.kinds.size() == 1 ? 0 : alternative])});
    }
    return all;
}
std::size_t alternatives(const Formula& f)
{
    std::size_t most = 1;
    for (const Argument& a : f.arguments) most = std::max(most, a.kinds.size());
    return most;
}
const Formula& formula(std::string_view id)
{
    const Formula* f = findFormula(id);
    REQUIRE(f != nullptr);
    return *f;
}
/// A count that must be whole moves by one, anything else by five percent.
double grown(const Argument& a, double value)
{
    const bool wholeCount = a.kinds[0] == Kind::Count && value == std::floor(value) && a.symbol != "mu";
    return wholeCount ? value + 1 : value * 1.05;
}

}  // namespace

TEST_CASE("the catalogue holds every stable id with its arguments, sorted")
{
    std::map<std::string, std::string> found;
    std::string previous;
    for (const Formula& f : formulas()) {
        CHECK(previous < f.id);
        previous = f.id;
        std::string symbols;
        for (const Argument& a : f.arguments) symbols += (symbols.empty() ? "" : " ") + std::string(a.symbol);
        found.emplace(f.id, symbols);
    }
    CHECK(found == kStable);
}

TEST_CASE("every formula says what it is, where it holds and where it comes from")
{
    for (const Formula& f : formulas()) {
        CAPTURE(f.id);
        CHECK_FALSE(f.symbols.empty());
        CHECK_FALSE(f.valid.empty());
        CHECK_FALSE(f.source.empty());
        std::set<std::string_view> symbols;
        for (const Argument& a : f.arguments) {
            CHECK_FALSE(a.name.empty());
            CHECK(symbols.insert(a.symbol).second);
            CHECK((a.kinds.size() == 1 || a.kinds.size() == alternatives(f)));
        }
        CHECK((f.results.size() == 1 || f.results.size() == alternatives(f)));
    }
    CHECK(findFormula("R1.nothing") == nullptr);
    // A cut that leans is spared nothing: no formula may credit it with more than P1 does (S60, equilibrium).
    CHECK(findFormula("P5.margin") == nullptr);
    CHECK(findFormula("") == nullptr);
}

TEST_CASE("a formula is found by its id")
{
    for (const Formula& f : formulas()) CHECK(findFormula(f.id) == &f);
}

TEST_CASE("every formula answers ordinary press values, and its result moves the way physics says")
{
    REQUIRE(samples().size() == formulas().size());
    for (const Sample& s : samples()) {
        CAPTURE(s.id);
        const Formula& f = formula(s.id);
        REQUIRE(s.values.size() == f.arguments.size());
        REQUIRE(s.slopes.size() == f.arguments.size());
        const double value = f.value(s.values);
        REQUIRE(std::isfinite(value));
        for (std::size_t i = 0; i < s.values.size(); ++i) {
            if (s.slopes[i] == 0) continue;
            CAPTURE(f.arguments[i].symbol);
            std::vector<double> more = s.values;
            more[i] = grown(f.arguments[i], more[i]);
            CHECK((f.value(more) - value) * s.slopes[i] > 0);
        }
    }
}

TEST_CASE("every formula stays finite in the neighbourhood of ordinary values")
{
    std::mt19937 random(20261125);
    std::uniform_real_distribution<double> factor(0.92, 1.08);
    for (const Sample& s : samples()) {
        CAPTURE(s.id);
        const Formula& f = formula(s.id);
        for (int n = 0; n < 200; ++n) {
            std::vector<double> values = s.values;
            for (std::size_t i = 0; i < values.size(); ++i)
                if (f.arguments[i].kinds[0] != Kind::Count) values[i] *= factor(random);
            REQUIRE(std::isfinite(f.value(values)));
        }
    }
}

TEST_CASE("not a number and infinity in any argument are outside every domain")
{
    for (const Sample& s : samples()) {
        const Formula& f = formula(s.id);
        for (std::size_t i = 0; i < s.values.size(); ++i)
            for (double bad : {std::nan(""), HUGE_VAL, -HUGE_VAL}) {
                CAPTURE(s.id, f.arguments[i].symbol, bad);
                std::vector<double> values = s.values;
                values[i] = bad;
                CHECK(std::isnan(f.value(values)));
                const auto result = evaluate(f, named(f, values));
                REQUIRE_FALSE(result);
                CHECK(result.error().code == "formula.outside_domain");
            }
    }
}

TEST_CASE("scaling the base units scales the result as its kind says")
{
    // Where standard gravity stands in the formula, lengths and times may only be scaled together.
    const std::set<std::string_view> withGravity{"B7.weight", "G12", "N2"};
    const double length = 1.7;
    const double mass = 0.6;
    const double current = 2.1;
    for (const Sample& s : samples()) {
        const Formula& f = formula(s.id);
        const double time = withGravity.count(s.id) != 0 ? std::sqrt(length) : 1.3;
        const auto scale = [=](Kind kind) {
            const Dimension d = dimensionOf(kind);
            return std::pow(length, d.length) * std::pow(mass, d.mass) * std::pow(time, d.time) *
                   std::pow(current, d.current);
        };
        for (std::size_t kind = 0; kind < alternatives(f); ++kind) {
            CAPTURE(s.id, kind);
            auto given = named(f, s.values, kind);
            const auto plain = evaluate(f, given);
            REQUIRE(plain);
            for (Named& n : given) n.value = Quantity(n.value.si() * scale(n.value.kind()), n.value.kind());
            const auto scaled = evaluate(f, given);
            REQUIRE(scaled);
            CHECK(scaled->kind() == plain->kind());
            CHECK(scaled->si() == Approx(plain->si() * scale(plain->kind())).epsilon(1e-11));
        }
    }
}

TEST_CASE("arguments are found by symbol in any order")
{
    const Formula& f = formula("R1");
    const std::vector<Named> given{{"t", Quantity(1.4e-4, Kind::Length)},
                                   {"D", Quantity(0.5, Kind::Length)},
                                   {"d", Quantity(0.1022, Kind::Length)}};
    const auto result = evaluate(f, given);
    REQUIRE(result);
    CHECK(result->kind() == Kind::Length);
    CHECK(result->si() == Approx(1343.9013049741563).epsilon(1e-12));
}

TEST_CASE("a wrong call of a formula is refused by code and says what is wrong")
{
    const Formula& f = formula("R1");
    auto given = named(f, {0.5, 0.1022, 1.4e-4});
    SECTION("an argument is missing")
    {
        given.pop_back();
        const auto result = evaluate(f, given);
        REQUIRE_FALSE(result);
        CHECK(result.error().code == "formula.missing_argument");
        CHECK(result.error().subject == "R1");
        CHECK(result.error().text.args[1] == TextArg(std::string("t")));
        CHECK_FALSE(result.error().remedy.empty());
    }
    SECTION("an argument is not of this formula, and capitals count")
    {
        given[0].symbol = "O";
        const auto result = evaluate(f, given);
        REQUIRE_FALSE(result);
        CHECK(result.error().code == "formula.unknown_argument");
        CHECK(result.error().remedy.args[0] == TextArg(std::string("D, d, t")));
    }
    SECTION("an argument is given twice")
    {
        given.push_back(given[0]);
        const auto result = evaluate(f, given);
        REQUIRE_FALSE(result);
        CHECK(result.error().code == "formula.repeated_argument");
    }
    SECTION("an argument is of another kind")
    {
        given[2].value = Quantity(0.155, Kind::Grammage);
        const auto result = evaluate(f, given);
        REQUIRE_FALSE(result);
        CHECK(result.error().code == "formula.wrong_kind");
        CHECK(result.error().remedy.args[1] == TextArg(std::string("m")));
    }
    SECTION("the values lie outside the domain: the rule is in the text")
    {
        given[1].value = Quantity(0.6, Kind::Length);
        const auto result = evaluate(f, given);
        REQUIRE_FALSE(result);
        CHECK(result.error().code == "formula.outside_domain");
        CHECK(result.error().text.args[1] == TextArg(std::string("D > d > 0, 0 < t << d")));
    }
}

TEST_CASE("the setting of a brake is of the kind that its torque is per")
{
    const Formula& f = formula("B5");
    const struct {
        Kind per, setting;
        double k, zero, expected;
    } rows[] = {
        {Kind::TorquePerPressure, Kind::Pressure, 1.2e-4, 15000, 15000 + 14.85 / 1.2e-4},
        {Kind::TorquePerCurrent, Kind::Current, 30, 0.02, 0.02 + 14.85 / 30},
        {Kind::TorquePerShare, Kind::Share, 55, 0.02, 0.02 + 14.85 / 55},
    };
    for (const auto& row : rows) {
        std::vector<Named> given{{"T", Quantity(59.4, Kind::Force)},
                                 {"D", Quantity(0.5, Kind::Length)},
                                 {"k", Quantity(row.k, row.per)},
                                 {"p0", Quantity(row.zero, row.setting)}};
        CHECK(resultKind(f, given) == row.setting);
        const auto result = evaluate(f, given);
        REQUIRE(result);
        CHECK(result->kind() == row.setting);
        CHECK(result->si() == Approx(row.expected).epsilon(1e-14));
        for (const auto& other : rows) {
            if (other.setting == row.setting) continue;
            given[3].value = Quantity(row.zero, other.setting);
            const auto mixed = evaluate(f, given);
            REQUIRE_FALSE(mixed);
            CHECK(mixed.error().code == "formula.wrong_kind");
        }
    }
    CHECK(resultKind(formula("B5.diameter"), {}) == Kind::Length);
    CHECK(resultKind(f, {}) == Kind::Pressure);
}

TEST_CASE("a plain number and a share stand for each other, an angle does not")
{
    const Formula& f = formula("N1");
    auto given = named(f, {6e5, 0.05, 0.85});
    given[2].value = Quantity(0.85, Kind::Count);
    CHECK(evaluate(f, given));
    given[2].value = Quantity(0.85, Kind::Angle);
    const auto angle = evaluate(f, given);
    REQUIRE_FALSE(angle);
    CHECK(angle.error().code == "formula.wrong_kind");
    CHECK(angle.error().remedy.source == "Give %1 as a plain number.");
}
