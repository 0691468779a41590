// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/parse.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "core/base/json.h"
#include "core/units/plain.h"
#include "core/units/unit.h"

using namespace taut;

namespace {

struct Good {
    const char* text;
    Kind kind;
    double si;
    const char* unit;
};

// Exact SI values from the definitions of NIST SP 811 (2008) appendix B and Handbook 44 appendix C (from memory): inch
// 0.0254 m, pound 0.45359237 kg, standard gravity 9.80665 m/s2; the conversions themselves are proven against GNU units
// in tests/published.
const std::vector<Good> kGood{
    // one quantity in every way of writing
    {"13.25 in", Kind::Length, 0.33655, "in"},
    {"13,25 in", Kind::Length, 0.33655, "in"},
    {"13.25in", Kind::Length, 0.33655, "in"},
    {"13 1/4 in", Kind::Length, 0.33655, "in"},
    {"13-1/4 in", Kind::Length, 0.33655, "in"},
    {"13 1/4in", Kind::Length, 0.33655, "in"},
    {"13 1/4\"", Kind::Length, 0.33655, "in"},
    {"13¼ in", Kind::Length, 0.33655, "in"},
    {"13 ¼ in", Kind::Length, 0.33655, "in"},
    {"13 1⁄4 in", Kind::Length, 0.33655, "in"},
    {"53/4 in", Kind::Length, 0.33655, "in"},
    {"+13.25 in", Kind::Length, 0.33655, "in"},
    {"  13.25   in  ", Kind::Length, 0.33655, "in"},
    {"13.25\tin", Kind::Length, 0.33655, "in"},
    {"13.25\u00A0in", Kind::Length, 0.33655, "in"},
    {"13.25\u202Fin", Kind::Length, 0.33655, "in"},
    {"13.25\u2009in", Kind::Length, 0.33655, "in"},
    {"1.325e1 in", Kind::Length, 0.33655, "in"},
    {"1,325E+1 in", Kind::Length, 0.33655, "in"},
    {"1325e-2in", Kind::Length, 0.33655, "in"},
    {"336.55 mm", Kind::Length, 0.33655, "mm"},
    {"33,6550 cm", Kind::Length, 0.33655, "cm"},
    // fractions and signs
    {"1/2 in", Kind::Length, 0.0127, "in"},
    {"½ in", Kind::Length, 0.0127, "in"},
    {"-1/4 in", Kind::Length, -0.00635, "in"},
    {"-13 1/4 in", Kind::Length, -0.33655, "in"},
    {"− 1/4 in", Kind::Length, -0.00635, "in"},
    {"−0.5 %", Kind::Share, -0.005, "%"},
    {"–0.5 %", Kind::Share, -0.005, "%"},
    {"- 5 mm", Kind::Length, -0.005, "mm"},
    {"8 125/1000 in", Kind::Length, 0.206375, "in"},
    {"8 7/8 in", Kind::Length, 0.225425, "in"},
    {"8⅞ in", Kind::Length, 0.225425, "in"},
    {"0/4 in", Kind::Length, 0, "in"},
    {"10/3 m", Kind::Length, 10.0 / 3.0, "m"},
    {".5 in", Kind::Length, 0.0127, "in"},
    {",5 in", Kind::Length, 0.0127, "in"},
    {"5. mm", Kind::Length, 0.005, "mm"},
    {"0,125 in", Kind::Length, 0.003175, "in"},
    {"007 mm", Kind::Length, 0.007, "mm"},
    {"-0 mm", Kind::Length, 0, "mm"},
    // three digits behind a single mark are decimals
    {"1.234 mm", Kind::Length, 0.001234, "mm"},
    {"1,2340 mm", Kind::Length, 0.001234, "mm"},
    {"12.345 m", Kind::Length, 12.345, "m"},
    // feet and inches
    {"5 ft 3 in", Kind::Length, 1.6002, "ft"},
    {"5ft3in", Kind::Length, 1.6002, "ft"},
    {"5' 3\"", Kind::Length, 1.6002, "ft"},
    {"5'3\"", Kind::Length, 1.6002, "ft"},
    {"5′ 3″", Kind::Length, 1.6002, "ft"},
    {"5’ 3”", Kind::Length, 1.6002, "ft"},
    {"5 ft 3 1/4 in", Kind::Length, 1.60655, "ft"},
    {"5' 3 1/4\"", Kind::Length, 1.60655, "ft"},
    {"5 ft 0,5 in", Kind::Length, 1.5367, "ft"},
    {"-5 ft 3 in", Kind::Length, -1.6002, "ft"},
    {"-0 ft 3 in", Kind::Length, -0.0762, "ft"},
    {"5'", Kind::Length, 1.524, "ft"},
    {"3\"", Kind::Length, 0.0762, "in"},
    // every other length
    {"1e-3 m", Kind::Length, 0.001, "m"},
    {"140 um", Kind::Length, 0.00014, "um"},
    {"140 µm", Kind::Length, 0.00014, "um"},
    {"140 μm", Kind::Length, 0.00014, "um"},
    {"2.6 mil", Kind::Length, 6.604e-5, "mil"},
    {"100 gauge", Kind::Length, 2.54e-5, "gauge"},
    {"8200 ft", Kind::Length, 2499.36, "ft"},
    {"2 yd", Kind::Length, 1.8288, "yd"},
    // masses, grammages, basis weights
    {"350 kg", Kind::Mass, 350, "kg"},
    {"9 lb", Kind::Mass, 4.08233133, "lb"},
    {"16 oz", Kind::Mass, 0.45359237, "oz"},
    {"900 g", Kind::Mass, 0.9, "g"},
    {"155 g/m2", Kind::Grammage, 0.155, "g/m2"},
    {"155 g/m²", Kind::Grammage, 0.155, "g/m2"},
    {"155 g / m2", Kind::Grammage, 0.155, "g/m2"},
    {"1 lb/3000ft2", Kind::Grammage, 0.45359237 / (3000 * 0.3048 * 0.3048), "lb/3000ft2"},
    {"1 lb/1000ft2", Kind::Grammage, 0.45359237 / (1000 * 0.3048 * 0.3048), "lb/1000ft2"},
    {"60 lb 25x38 in", Kind::Grammage, 60 * 453.59237e-3 / (500 * 950 * 0.0254 * 0.0254), ""},
    {"60 lb 25 x 38 in", Kind::Grammage, 60 * 453.59237e-3 / (500 * 950 * 0.0254 * 0.0254), ""},
    {"60lb 25,5x30,5 in", Kind::Grammage, 60 * 453.59237e-3 / (500 * 777.75 * 0.0254 * 0.0254), ""},
    {"0.906 g/cm3", Kind::Density, 906, "g/cm3"},
    {"906 kg/m3", Kind::Density, 906, "kg/m3"},
    {"43.5 m2/kg", Kind::AreaPerMass, 43.5, "m2/kg"},
    // forces, tensions, pressures
    {"59.4 N", Kind::Force, 59.4, "N"},
    {"2 kN", Kind::Force, 2000, "kN"},
    {"5 lbf", Kind::Force, 22.2411080763025, "lbf"},
    {"1 kgf", Kind::Force, 9.80665, "kgf"},
    {"0.14 N/mm", Kind::ForcePerWidth, 140, "N/mm"},
    {"1.4 N/cm", Kind::ForcePerWidth, 140, "N/cm"},
    {"1.5 lbf/in", Kind::ForcePerWidth, 262.6902528697146, "lbf/in"},
    {"1,4 bar", Kind::Pressure, 140000, "bar"},
    {"1.1bar", Kind::Pressure, 110000, "bar"},
    {"60 psi", Kind::Pressure, 413685.4375901016, "psi"},
    {"550 kpsi", Kind::Pressure, 3792116511.2425985, "kpsi"},
    {"3.8 GPa", Kind::Pressure, 3.8e9, "GPa"},
    {"250 mbar", Kind::Pressure, 25000, "mbar"},
    {"1.2e5 Pa", Kind::Pressure, 120000, "Pa"},
    // torques and their settings
    {"14.5 N m", Kind::Torque, 14.5, "N m"},
    {"14.5 Nm", Kind::Torque, 14.5, "N m"},
    {"14.5 N·m", Kind::Torque, 14.5, "N m"},
    {"14.5 N⋅m", Kind::Torque, 14.5, "N m"},
    {"600 lbf in", Kind::Torque, 600 * 4.4482216152605 * 0.0254, "lbf in"},
    {"15 lbf ft", Kind::Torque, 15 * 4.4482216152605 * 0.3048, "lbf ft"},
    {"12 N m/bar", Kind::TorquePerPressure, 0.00012, "N m/bar"},
    {"12 Nm/bar", Kind::TorquePerPressure, 0.00012, "N m/bar"},
    {"12 N m / bar", Kind::TorquePerPressure, 0.00012, "N m/bar"},
    {"12 N·m/bar", Kind::TorquePerPressure, 0.00012, "N m/bar"},
    {"0.55 N m/%", Kind::TorquePerShare, 55, "N m/%"},
    {"55 N m/1", Kind::TorquePerShare, 55, "N m/1"},
    {"3 N m/A", Kind::TorquePerCurrent, 3, "N m/A"},
    {"0.827 N m/psi", Kind::TorquePerPressure, 0.827 / 6894.757293168361, "N m/psi"},
    // the rest
    {"150 m/min", Kind::Speed, 2.5, "m/min"},
    {"500 ft/min", Kind::Speed, 2.54, "ft/min"},
    {"24 mm/s", Kind::Speed, 0.024, "mm/s"},
    {"1.5 in/s", Kind::Speed, 0.0381, "in/s"},
    {"1 m/s²", Kind::Acceleration, 1, "m/s2"},
    {"3 s", Kind::Time, 3, "s"},
    {"22.4 min", Kind::Time, 1344, "min"},
    {"1 1/2 h", Kind::Time, 5400, "h"},
    {"40 ms", Kind::Time, 0.04, "ms"},
    {"300 rpm", Kind::Frequency, 5, "rpm"},
    {"5 1/s", Kind::Frequency, 5, "1/s"},
    {"180 deg", Kind::Angle, 3.14159265358979323846, "deg"},
    {"180°", Kind::Angle, 3.14159265358979323846, "deg"},
    {"5 mrad", Kind::Angle, 0.005, "mrad"},
    {"20 %", Kind::Share, 0.2, "%"},
    {"20%", Kind::Share, 0.2, "%"},
    {"0.2 1", Kind::Share, 0.2, "1"},
    {"2 1", Kind::Count, 2, "1"},
    {"10 1/in", Kind::CountPerLength, 393.7007874015748, "1/in"},
    {"10 1/2 1/in", Kind::CountPerLength, 413.3858267716535, "1/in"},
    {"140 lines/cm", Kind::CountPerLength, 14000, "lines/cm"},
    {"400 lines/in", Kind::CountPerLength, 15748.031496062993, "lines/in"},
    {"3.6 BCM", Kind::VolumePerArea, 5.58001116002232e-6, "BCM"},
    {"4.7 cm³/m²", Kind::VolumePerArea, 4.7e-6, "cm3/m2"},
    {"0.004 kg m2", Kind::Inertia, 0.004, "kg m2"},
    {"1000 lb ft2", Kind::Inertia, 42.1401100938048, "lb ft2"},
    {"20 in2", Kind::Area, 0.0129032, "in2"},
    {"0.5 m²", Kind::Area, 0.5, "m2"},
    {"600 W", Kind::Power, 600, "W"},
    {"0.25 A", Kind::Current, 0.25, "A"},
    {"1.81e-5 Pa s", Kind::Viscosity, 1.81e-5, "Pa s"},
};

struct Bad {
    const char* text;
    Kind kind;
    const char* code;
    const char* says;  ///< stands in the sentence
};

const std::vector<Bad> kBad{
    {"", Kind::Length, "quantity.empty", "Nothing was entered"},
    {"   ", Kind::Length, "quantity.empty", "Nothing was entered"},
    {"\u00A0\t ", Kind::Length, "quantity.empty", "Nothing was entered"},
    {"in", Kind::Length, "quantity.not_a_number", "\"in\""},
    {"mm 20", Kind::Length, "quantity.not_a_number", "13 1/4"},
    {"about 5 mm", Kind::Length, "quantity.not_a_number", "about"},
    {"-", Kind::Length, "quantity.not_a_number", "\"-\""},
    {"- mm", Kind::Length, "quantity.not_a_number", ""},
    {"--5 mm", Kind::Length, "quantity.not_a_number", ""},
    {"+-5 mm", Kind::Length, "quantity.not_a_number", ""},
    {". mm", Kind::Length, "quantity.not_a_number", ""},
    {"1..2 mm", Kind::Length, "quantity.not_a_number", ""},
    {"1.2. mm", Kind::Length, "quantity.not_a_number", ""},
    {",1,2 mm", Kind::Length, "quantity.not_a_number", ""},
    {"nan mm", Kind::Length, "quantity.not_a_number", ""},
    {"inf mm", Kind::Length, "quantity.not_a_number", ""},
    {"1/0 in", Kind::Length, "quantity.not_a_number", ""},
    {"13 5/4 in", Kind::Length, "quantity.not_a_number", ""},
    {"13 1/4/2 in", Kind::Length, "quantity.not_a_number", ""},
    {"1/4.5 in", Kind::Length, "quantity.not_a_number", ""},
    {"13 1/1234567890 in", Kind::Length, "quantity.not_a_number", ""},
    {"5 ft 13 in", Kind::Length, "quantity.not_a_number", "fewer than 12"},
    {"5 ft 3", Kind::Length, "quantity.not_a_number", "5 ft 3 1/4 in"},
    {"5 ft 3 mm", Kind::Length, "quantity.not_a_number", "feet and inches"},
    {"5.5 ft 3 in", Kind::Length, "quantity.not_a_number", "whole feet"},
    {"0 lb 0x38 in", Kind::Grammage, "quantity.not_a_number", "sheet"},
    {"\xFF\xFE mm", Kind::Length, "quantity.not_a_number", "\xEF\xBF\xBD"},
    // groups of thousands: both readings are shown
    {"1,234.5 mm", Kind::Length, "quantity.group_separator", "1234.5 mm or as 1.2345 mm"},
    {"1.234,5 mm", Kind::Length, "quantity.group_separator", "1234.5 mm or as 1.2345 mm"},
    {"1 234,5 mm", Kind::Length, "quantity.group_separator", "1234.5 mm or as 1.2345 mm"},
    {"1 234.5 mm", Kind::Length, "quantity.group_separator", "1234.5 mm or as 1.2345 mm"},
    {"1\u202F234,5 mm", Kind::Length, "quantity.group_separator", "1234.5 mm or as 1.2345 mm"},
    {"1'234 mm", Kind::Length, "quantity.group_separator", "1234 mm or as 1.234 mm"},
    {"1’234.5 mm", Kind::Length, "quantity.group_separator", "1234.5 mm or as 1.2345 mm"},
    {"1 234 mm", Kind::Length, "quantity.group_separator", "1234 mm or as 1.234 mm"},
    {"1,234,567 mm", Kind::Length, "quantity.group_separator", "1234567 mm or as 1.234567 mm"},
    {"1.234.567 mm", Kind::Length, "quantity.group_separator", "1234567 mm or as 1.234567 mm"},
    {"12,34.5 mm", Kind::Length, "quantity.group_separator", "1234.5 mm or as 12.345 mm"},
    {"-1,234.5 mm", Kind::Length, "quantity.group_separator", "-1234.5 mm or as -1.2345 mm"},
    {"12,500 m", Kind::Length, "quantity.group_separator", "12500 m or as 12.500 m"},
    {"1,250 in", Kind::Length, "quantity.group_separator", "1250 in or as 1.250 in"},
    {"-999,999 mm", Kind::Length, "quantity.group_separator", "-999999 mm or as -999.999 mm"},
    {"12 500 ft", Kind::Length, "quantity.group_separator", "12500 ft"},
    // no unit
    {"20", Kind::Length, "quantity.no_unit", "m, mm, cm, um, in, ft, yd, mil, gauge"},
    {"20", Kind::Pressure, "quantity.no_unit", "bar"},
    {"13 1/4", Kind::Length, "quantity.no_unit", "a length is wanted"},
    {"480", Kind::Count, "quantity.no_unit", "a count"},
    {"0.2", Kind::Share, "quantity.no_unit", "1, %"},
    // unknown units and what was meant
    {"20 PSI", Kind::Pressure, "quantity.unknown_unit", "Write psi."},
    {"20 Psi", Kind::Pressure, "quantity.unknown_unit", "Write psi."},
    {"2 Bar", Kind::Pressure, "quantity.unknown_unit", "Write bar."},
    {"2 bars", Kind::Pressure, "quantity.unknown_unit", "If bar is meant, write bar."},
    {"2 bra", Kind::Pressure, "quantity.unknown_unit", "If bar is meant, write bar."},
    {"2 kp/cm2", Kind::Pressure, "quantity.unknown_unit", "1 kp/cm2 = 0.980665 bar"},
    {"2 kg/cm²", Kind::Pressure, "quantity.unknown_unit", "0.980665 bar"},
    {"2 atm", Kind::Pressure, "quantity.unknown_unit", "1.01325 bar"},
    {"2 hPa", Kind::Pressure, "quantity.unknown_unit", "1 hPa = 1 mbar"},
    {"2 N/mm2", Kind::Pressure, "quantity.unknown_unit", "Write MPa"},
    {"30 ksi", Kind::Pressure, "quantity.unknown_unit", "Write kpsi"},
    {"2 furlongs", Kind::Pressure, "quantity.unknown_unit", "Pa, kPa, MPa, GPa, bar, mbar, psi, kpsi"},
    {"5 daN", Kind::Force, "quantity.unknown_unit", "1 daN = 10 N"},
    {"5 lbs", Kind::Force, "quantity.unknown_unit", "Write lbf."},
    {"5 kp", Kind::Force, "quantity.unknown_unit", "Write kgf"},
    {"1.5 PLI", Kind::ForcePerWidth, "quantity.unknown_unit", "Write lbf/in"},
    {"1.5 lb/in", Kind::ForcePerWidth, "quantity.unknown_unit", "Write lbf/in"},
    {"12 in-lb", Kind::Torque, "quantity.unknown_unit", "Write lbf in"},
    {"12 ft lb", Kind::Torque, "quantity.unknown_unit", "Write lbf ft"},
    {"500 fpm", Kind::Speed, "quantity.unknown_unit", "Write ft/min"},
    {"20 MM", Kind::Length, "quantity.unknown_unit", "Write mm."},
    {"20 inches", Kind::Length, "quantity.unknown_unit", "Write in."},
    {"20 in.", Kind::Length, "quantity.unknown_unit", "Write in."},
    {"8 pt", Kind::Length, "quantity.unknown_unit", "1 pt = 1 mil"},
    {"50 microns", Kind::Length, "quantity.unknown_unit", "Write um."},
    {"50 µ", Kind::Length, "quantity.unknown_unit", "Write um."},
    {"155 gsm", Kind::Grammage, "quantity.unknown_unit", "1 gsm = 1 g/m2"},
    {"60 #", Kind::Grammage, "quantity.unknown_unit", "60 lb 25x38 in"},
    {"400 lpi", Kind::CountPerLength, "quantity.unknown_unit", "Write lines/in"},
    {"3.6 bcm", Kind::VolumePerArea, "quantity.unknown_unit", "Write BCM."},
    {"3 sec", Kind::Time, "quantity.unknown_unit", "Write s."},
    {"20 percent", Kind::Share, "quantity.unknown_unit", "Write %."},
    {"250 mA", Kind::Current, "quantity.unknown_unit", "1000 mA = 1 A"},
    {"10-12 mm", Kind::Length, "quantity.unknown_unit", "\"-12 mm\""},
    {"10 mm wide", Kind::Length, "quantity.unknown_unit", "\"mm wide\""},
    {"0x10 m", Kind::Length, "quantity.unknown_unit", "x10 m"},
    {"5 in 2", Kind::Area, "quantity.unknown_unit", "in2"},
    {"1/in", Kind::CountPerLength, "quantity.unknown_unit", "1/in"},
    {"5 × 3 mm", Kind::Length, "quantity.unknown_unit", ""},
    // the wrong kind: what it is, what is wanted
    {"20 mm", Kind::Pressure, "quantity.wrong_kind",
     "\"20 mm\" is a length; a pressure is wanted: Pa, kPa, MPa, GPa, bar, mbar, psi, kpsi."},
    {"20 psi", Kind::Length, "quantity.wrong_kind", "is a pressure; a length is wanted"},
    {"5 lb", Kind::Force, "quantity.wrong_kind", "Write lbf."},
    {"5 kg", Kind::Force, "quantity.wrong_kind", "Write kgf."},
    {"60 lb", Kind::Grammage, "quantity.wrong_kind", "60 lb 25x38 in"},
    {"5 lbf", Kind::ForcePerWidth, "quantity.wrong_kind", "lbf/in"},
    {"155 g/m2", Kind::Mass, "quantity.wrong_kind", "is a mass per area; a mass is wanted"},
    {"400 lines/in", Kind::VolumePerArea, "quantity.wrong_kind", "BCM"},
    {"5 ft 3 in", Kind::Pressure, "quantity.wrong_kind", "is a length"},
    {"60 lb 25x38 in", Kind::Mass, "quantity.wrong_kind", "is a mass per area"},
    {"20 %", Kind::Length, "quantity.wrong_kind", "is a share"},
    {"20 deg", Kind::Share, "quantity.wrong_kind", "is an angle"},
    {"12 N m", Kind::TorquePerPressure, "quantity.wrong_kind", "N m/bar"},
    {"3 1", Kind::Length, "quantity.wrong_kind", "is a count"},
    // not finite
    {"1e999 m", Kind::Length, "quantity.not_finite", "1e999"},
    {"1e-999 m", Kind::Length, "quantity.not_finite", "too small"},
    {"1e308 GPa", Kind::Pressure, "quantity.not_finite", "1e308 GPa"},
    {"1e400", Kind::Count, "quantity.not_finite", ""},
};

}  // namespace

TEST_CASE("what a press crew writes is read as the quantity it is")
{
    for (const Good& row : kGood) {
        INFO(row.text);
        const auto q = parseQuantity(row.text, row.kind);
        if (!q) FAIL_CHECK(sentence(q.error()));
        if (!q) continue;
        CHECK(q->si() == Approx(row.si).epsilon(1e-12).margin(0));
        CHECK(q->kind() == row.kind);
        CHECK(q->unit() == row.unit);
        CHECK((q->unit().empty() || findUnit(row.kind, q->unit()) != nullptr));
    }
}

TEST_CASE("what cannot be read is refused with its code and what to do")
{
    for (const Bad& row : kBad) {
        INFO(row.text);
        const auto q = parseQuantity(row.text, row.kind);
        if (q) FAIL_CHECK("was read as " << q->si());
        if (q) continue;
        CHECK(q.error().code == row.code);
        CHECK(q.error().severity == Severity::Stop);
        CHECK(q.error().subject.empty());
        CHECK_FALSE(q.error().remedy.empty());
        CHECK_THAT(sentence(q.error()), Catch::Contains(row.says));
    }
}

TEST_CASE("the text as typed stays with the quantity")
{
    CHECK(parseQuantity("  13 1/4 in ", Kind::Length)->entered() == "13 1/4 in");
    CHECK(parseQuantity("13,25µm", Kind::Length)->entered() == "13,25µm");
    CHECK(parseQuantity("5' 3\"", Kind::Length)->entered() == "5' 3\"");
}

TEST_CASE("decimal texts of metric units give the double nearest to their SI value")
{
    CHECK(parseQuantity("140 um", Kind::Length)->si() == 0.00014);
    CHECK(parseQuantity("102.2 mm", Kind::Length)->si() == 0.1022);
    CHECK(parseQuantity("0.3 mm", Kind::Length)->si() == 0.0003);
    CHECK(parseQuantity("12 N m/bar", Kind::TorquePerPressure)->si() == 0.00012);
    CHECK(parseQuantity("155 g/m2", Kind::Grammage)->si() == 0.155);
    CHECK(parseQuantity("0.7 %", Kind::Share)->si() == 0.007);
    CHECK(parseQuantity("1.1 bar", Kind::Pressure)->si() == 110000.0);
    CHECK(parseQuantity("13 1/4 in", Kind::Length)->si() == 0.33655);
    CHECK(parseQuantity("5 ft 3 in", Kind::Length)->si() == 1.6002);
    // Decimals of up to nine digits, moved by as many places as the unit says: now and then one last bit is off, for a
    // long double has only eleven bits more.
    std::mt19937_64 random(12);
    int off = 0;
    const int kTries = 20'000;
    for (int i = 0; i < kTries; ++i) {
        const auto digits = std::to_string(1 + random() % 1'000'000'000);
        const int places = static_cast<int>(random() % 6);
        const std::string number = digits + "e-" + std::to_string(places);
        const auto compare = [&](const char* unit, Kind kind, int shift) {
            const double exact = std::strtod((digits + "e" + std::to_string(shift - places)).c_str(), nullptr);
            const double read = parseQuantity(number + ' ' + unit, kind)->si();
            INFO(number << ' ' << unit);
            REQUIRE((read == exact || read == std::nextafter(exact, 0) || read == std::nextafter(exact, 1e300)));
            if (read != exact) ++off;
        };
        compare("mm", Kind::Length, -3);
        compare("%", Kind::Share, -2);
        compare("bar", Kind::Pressure, 5);
        compare("N m/bar", Kind::TorquePerPressure, -5);
    }
    CHECK(off < kTries / 1000);
}

TEST_CASE("a bare number stands for a count or a share where the key says so, and for nothing else")
{
    CHECK(parseQuantity("3", Kind::Count, Bare::Accept)->si() == 3);
    CHECK(parseQuantity("0,35", Kind::Share, Bare::Accept)->si() == 0.35);
    CHECK(parseQuantity("0,35", Kind::Share, Bare::Accept)->unit() == "1");
    CHECK(parseQuantity("35 %", Kind::Share, Bare::Accept)->si() == 0.35);
    CHECK(parseQuantity("1/2", Kind::Share, Bare::Accept)->si() == 0.5);
    CHECK(parseQuantity("20", Kind::Length, Bare::Accept).error().code == "quantity.no_unit");
    CHECK(parseQuantity("1,000.5", Kind::Count, Bare::Accept).error().code == "quantity.group_separator");
    CHECK(parseQuantity("3 mm", Kind::Count, Bare::Accept).error().code == "quantity.wrong_kind");
}

TEST_CASE("a plain number is read in either style and nothing may follow it")
{
    CHECK(*parseNumber("13.25") == 13.25);
    CHECK(*parseNumber(" 13,25 ") == 13.25);
    CHECK(*parseNumber("-1e-3") == -0.001);
    CHECK(*parseNumber("13 1/4") == 13.25);
    CHECK(parseNumber("").error().code == "quantity.empty");
    CHECK(plain(parseQuantity("", Kind::Time).error().remedy, UnitSystem::Us) ==
          "Write a number and its unit, like 12 s.");
    CHECK(plain(parseQuantity("", Kind::Length).error().remedy, UnitSystem::Us) ==
          "Write a number and its unit, like 12 mm or 12 in.");
    CHECK(parseNumber("x").error().code == "quantity.not_a_number");
    CHECK(parseNumber("13 mm").error().code == "quantity.not_a_number");
    CHECK(parseNumber("1,234.5").error().code == "quantity.group_separator");
    CHECK(parseNumber("1e999").error().code == "quantity.not_finite");
}

TEST_CASE("a text longer than any value is refused and quoted only in part")
{
    const auto q = parseQuantity(std::string(5000, '9') + " mm", Kind::Length);
    REQUIRE_FALSE(q);
    CHECK(q.error().code == "quantity.not_a_number");
    CHECK(sentence(q.error()).size() < 200);
    const auto unknown = parseQuantity("1 " + std::string(150, 'z'), Kind::Length);
    REQUIRE_FALSE(unknown);
    CHECK(sentence(unknown.error()).size() < 300);
}

TEST_CASE("the shortest text of any value with any unit is read back as that value")
{
    std::mt19937_64 random(41);
    std::uniform_real_distribution<double> exponent(-5, 7);
    for (const Unit& unit : allUnits()) {
        for (int i = 0; i < 400; ++i) {
            const double value = (i % 5 == 0 ? -1 : 1) * std::pow(10.0, exponent(random));
            std::string text = shortest(value);
            if (i % 3 == 1) std::replace(text.begin(), text.end(), '.', ',');
            if (i % 2 == 0 || unit.symbol.front() == '1') text += ' ';
            text += unit.symbol;
            INFO(text);
            const auto q = parseQuantity(text, unit.kind);
            REQUIRE(q);
            REQUIRE(q->unit() == unit.symbol);
            REQUIRE(q->si() == Approx(value * unit.toSi).epsilon(1e-12).margin(0));
            REQUIRE(fromSi(q->si(), unit) == Approx(value).epsilon(1e-12).margin(0));
        }
    }
}

TEST_CASE("no text that a slip of the hand makes is read by accident or crashes")
{
    std::mt19937 random(8);
    const std::string letters = "0123456789.,/ '\"-+eExinftmlbrpsNPa%\u00B5\u00A0";
    for (int i = 0; i < 50'000; ++i) {
        std::string text;
        for (auto n = random() % 14; n > 0; --n) text += letters[random() % letters.size()];
        const Unit& unit = allUnits()[random() % allUnits().size()];
        const auto q = parseQuantity(text, unit.kind, Bare::Accept);
        INFO('"' << text << '"');
        if (q) {
            REQUIRE(std::isfinite(q->si()));
            REQUIRE(q->kind() == unit.kind);
        } else {
            REQUIRE(q.error().code.rfind("quantity.", 0) == 0);
            REQUIRE_FALSE(sentence(q.error()).empty());
        }
    }
}
