// SPDX-License-Identifier: GPL-3.0-or-later
// Units against the outside: the GNU `units` command (Debian package units), NIST SP 811 and a printed table.
#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <string>
#include <utility>
#include <vector>

#include "core/base/crypto.h"
#include "core/units/parse.h"
#include "core/units/unit.h"
#include "tests/published/evidence.h"

using namespace taut;
using namespace evidence;
namespace fs = std::filesystem;

namespace {

/// Units that GNU units does not know, or knows under another name, as expressions that it can compute. Everything
/// else is given to it as our own table writes it.
const std::map<std::pair<Kind, std::string>, std::string> kOtherwise{
    {{Kind::Length, "gauge"}, "0.01 mil"},                      // film trade, 100 gauge = 1 mil; unknown there
    {{Kind::VolumePerArea, "BCM"}, "1e9 micrometer^3/inch^2"},  // anilox trade, billion cubic microns; unknown there
    {{Kind::CountPerLength, "lines/cm"}, "1/cm"},               // there a line is a twelfth of an inch
    {{Kind::CountPerLength, "lines/in"}, "1/in"},               // the same
    {{Kind::Frequency, "rpm"}, "1/min"},                        // there an angle per time
    {{Kind::Angle, "rad"}, "radian"},                           // there a dose of radiation
    {{Kind::Angle, "mrad"}, "milliradian"},                     // the same
    {{Kind::Time, "h"}, "hour"},                                // there Planck's constant
};

std::string gnu(const Unit& unit)
{
    const auto it = kOtherwise.find({unit.kind, std::string(unit.symbol)});
    return it != kOtherwise.end() ? it->second : std::string(unit.symbol);
}

struct Question {
    std::string have;
    std::string want;
};

/// All answers from one run of the command; fails the test with a sentence when there is no such command.
std::vector<double> askGnuUnits(const std::vector<Question>& questions)
{
    if (std::system("command -v units >/dev/null 2>&1") != 0)
        FAIL("The command `units` is missing: install the Debian package units and run the tests again.");
    const fs::path file = fs::temp_directory_path() / ("taut-units-" + hex(randomBytes(8)));
    {
        std::ofstream out(file);
        for (const Question& q : questions) out << q.have << '\n' << q.want << '\n';
    }
    const std::string command = "LC_ALL=C.UTF-8 units --terse -o '%.17g' < '" + file.string() + "' 2>&1";
    std::string said;
    FILE* pipe = ::popen(command.c_str(), "r");
    REQUIRE(pipe != nullptr);
    std::array<char, 4096> buffer{};
    for (std::size_t n = 0; (n = std::fread(buffer.data(), 1, buffer.size(), pipe)) > 0;) said.append(buffer.data(), n);
    const int status = ::pclose(pipe);
    fs::remove(file);
    INFO("units said:\n" << said);
    REQUIRE(status == 0);

    std::vector<double> answers;
    for (std::size_t at = 0; at < said.size();) {
        const std::size_t end = said.find('\n', at);
        const std::string line = said.substr(at, end - at);
        char* rest = nullptr;
        answers.push_back(std::strtod(line.c_str(), &rest));
        INFO("line: " << line);
        REQUIRE((rest != line.c_str() && *rest == '\0'));
        at = end == std::string::npos ? said.size() : end + 1;
    }
    REQUIRE(answers.size() == questions.size());
    return answers;
}

}  // namespace

TEST_CASE("every unit that is read has the size that GNU units gives it")
{
    const std::vector<std::string> numbers{"1", "13.25", "-0.4711"};
    std::vector<Question> questions;
    for (const Unit& unit : allUnits())
        for (const std::string& number : numbers)
            questions.push_back({number + " (" + gnu(unit) + ")", gnu(siUnit(unit.kind))});
    const std::vector<double> answers = askGnuUnits(questions);

    std::size_t at = 0;
    Tally read;
    Tally written;
    for (const Unit& unit : allUnits()) {
        for (const std::string& number : numbers) {
            const auto q = parseQuantity(number + ' ' + std::string(unit.symbol), unit.kind);
            INFO(questions[at].have << " in " << questions[at].want);
            REQUIRE(q);
            CHECK(q->si() == Approx(answers[at]).epsilon(1e-9).margin(0));
            CHECK(fromSi(answers[at], unit) == Approx(std::stod(number)).epsilon(1e-9).margin(0));
            read.note(share(1e-9).holds(q->si(), answers[at]));
            written.note(share(1e-9).holds(fromSi(answers[at], unit), std::stod(number)));
            ++at;
        }
    }
    const Page page = referee("units", "units", "every unit of ours, three numbers each");
    read.check(page, "–", "read, to 1e-9");
    written.check(page, "–", "written, to 1e-9");
}

TEST_CASE("the SI unit of every kind has the dimension that we say")
{
    std::vector<Question> questions;
    for (std::size_t i = 0; i < kKindCount; ++i) {
        const auto kind = static_cast<Kind>(i);
        const Dimension d = dimensionOf(kind);
        const auto power = [](const char* base, int n) { return std::string(base) + '^' + std::to_string(n) + ' '; };
        questions.push_back({"1 (" + gnu(siUnit(kind)) + ")",
                             power("m", d.length) + power("kg", d.mass) + power("s", d.time) + power("A", d.current)});
    }
    const std::vector<double> answers = askGnuUnits(questions);
    Tally kinds;
    for (std::size_t i = 0; i < answers.size(); ++i) {
        INFO(questions[i].have << " in " << questions[i].want);
        CHECK(answers[i] == 1.0);
        kinds.note(answers[i] == 1.0);
    }
    kinds.check(referee("units", "units", "SI unit of every kind"), "–", "dimension of each kind");
}

TEST_CASE("each unit that is given to GNU units in other words is in our table")
{
    for (const auto& [unit, expression] : kOtherwise) {
        INFO(unit.second << " as " << expression);
        CHECK(findUnit(unit.first, unit.second) != nullptr);
    }
}

TEST_CASE("compound texts have the size that GNU units gives them")
{
    struct Row {
        const char* text;
        Kind kind;
        const char* have;
        const char* want;
    };
    // A ream is 500 sheets (TAPPI T 410; physics W1).
    const std::vector<Row> rows{
        {"60 lb 25x38 in", Kind::Grammage, "60 lb/(500 25 in 38 in)", "kg/m^2"},
        {"20 lb 17x22 in", Kind::Grammage, "20 lb/(500 17 in 22 in)", "kg/m^2"},
        {"110 lb 25.5x30.5 in", Kind::Grammage, "110 lb/(500 25.5 in 30.5 in)", "kg/m^2"},
        {"80 lb 24x36 in", Kind::Grammage, "80 lb/(3000 ft^2)", "kg/m^2"},
        {"5 ft 3 1/4 in", Kind::Length, "5 ft + 3|4 in + 2.5 in", "m"},
        {"13 1/4 in", Kind::Length, "13 in + 1|4 in", "m"},
        {"-1/8 in", Kind::Length, "-1|8 in", "m"},
        {"5' 3\"", Kind::Length, "63 in", "m"},
    };
    std::vector<Question> questions;
    for (const Row& row : rows) questions.push_back({row.have, row.want});
    const std::vector<double> answers = askGnuUnits(questions);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        INFO(rows[i].text);
        const auto q = parseQuantity(rows[i].text, rows[i].kind);
        REQUIRE(q);
        referee("units", "units", "compound texts")
            .check("–", rows[i].text, q->si(), answers[i], std::string(siUnit(rows[i].kind).symbol), share(1e-9));
    }
}

// NIST Special Publication 811 (2008), appendix B.8 "Factors for units listed alphabetically", from memory: seven
// figures each, so half a unit of the last one is allowed.
TEST_CASE("factors agree with NIST SP 811 to the figures printed there")
{
    struct Row {
        const char* text;
        Kind kind;
        double factor;
    };
    for (const Row& row : {
             Row{"1 lbf/in", Kind::ForcePerWidth, 1.751268e+02},
             Row{"1 psi", Kind::Pressure, 6.894757e+03},
             Row{"1 kpsi", Kind::Pressure, 6.894757e+06},
             Row{"1 lbf", Kind::Force, 4.448222},
             Row{"1 kgf", Kind::Force, 9.80665},
             Row{"1 lbf in", Kind::Torque, 1.129848e-01},
             Row{"1 lbf ft", Kind::Torque, 1.355818},
             Row{"1 lb ft2", Kind::Inertia, 4.214011e-02},
             Row{"1 lb", Kind::Mass, 4.535924e-01},
             Row{"1 oz", Kind::Mass, 2.834952e-02},
             Row{"1 in", Kind::Length, 2.54e-02},
             Row{"1 ft", Kind::Length, 3.048e-01},
             Row{"1 yd", Kind::Length, 9.144e-01},
             Row{"1 mil", Kind::Length, 2.54e-05},
             Row{"1 in2", Kind::Area, 6.4516e-04},
             Row{"1 ft/min", Kind::Speed, 5.08e-03},
             Row{"1 in/s", Kind::Speed, 2.54e-02},
             Row{"1 deg", Kind::Angle, 1.745329e-02},
             Row{"1 bar", Kind::Pressure, 1e+05},
         }) {
        fromMemory("units", "SP 811", "appendix B.8")
            .check("–", row.text, parseQuantity(row.text, row.kind)->si(), row.factor,
                   std::string(siUnit(row.kind).symbol), share(5e-7));
    }
}

// "Grammage", printwiki.org (S10): grams per square metre for one pound a ream, printed to four figures. Its 4.831 for
// 1000 ft2 contradicts its own inverse of 0.205 and is not used.
TEST_CASE("pounds a ream are the grammage of the printed table")
{
    struct Row {
        const char* text;
        double grams;
    };
    const Page page = printed("units", "S10", "table of basic sizes");
    const auto grams = [](const char* text) { return parseQuantity(text, Kind::Grammage)->si() * 1000; };
    for (const Row& row : {Row{"1 lb 17x22 in", 3.760}, Row{"1 lb 20x26 in", 2.704}, Row{"1 lb 24x36 in", 1.627},
                           Row{"1 lb 25x38 in", 1.480}, Row{"1 lb/3000ft2", 1.627}})
        page.check("–", row.text, grams(row.text), row.grams, "g/m2", share(0.0005));
    page.check("–", "20 lb 17x22 in", grams("20 lb 17x22 in"), 75.2, "g/m2", within(0.05));
    page.check("–", "1 lb/1000ft2, by its inverse 0.205", grams("1 lb/1000ft2"), 1 / 0.205, "g/m2", share(0.0025));
}

// Computed from the definitions of inch, pound and standard gravity; GNU units prints the same digits.
TEST_CASE("the figures that press crews convert by are right")
{
    CHECK(parseQuantity("1 lbf/in", Kind::ForcePerWidth)->si() == Approx(175.12684).epsilon(1e-7));
    CHECK(parseQuantity("1 BCM", Kind::VolumePerArea)->si() == Approx(1.5500031e-6).epsilon(1e-7));
    CHECK(parseQuantity("1 mil", Kind::Length)->si() == parseQuantity("100 gauge", Kind::Length)->si());
    CHECK(parseQuantity("60 psi", Kind::Pressure)->si() == Approx(413685.4375901016).epsilon(1e-12));
    CHECK(parseQuantity("8200 ft", Kind::Length)->si() == Approx(2499.36).epsilon(1e-14));
}
