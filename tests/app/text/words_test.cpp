// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <QCoreApplication>
#include <QLocale>

#include "app/text/names.h"
#include "app/text/pseudo.h"
#include "app/text/words.h"
#include "core/run/command.h"
#include "core/run/words.h"

using namespace taut;
using namespace taut::app;

namespace {

QString plainSpaces(QString text) { return text.replace(QChar::Nbsp, QLatin1Char(' ')); }

struct German {
    QLocale before;
    German() { QLocale::setDefault(QLocale(QLocale::German)); }
    ~German() { QLocale::setDefault(before); }
};
struct Pseudo {
    Pseudo() { setPseudo(true); }
    ~Pseudo() { setPseudo(false); }
};

}  // namespace

TEST_CASE("a text's arguments are put where the sentence wants them, once")
{
    const Text text("%2 before %1, %3 of %9",
                    {std::string("a %2"), std::int64_t{7}, Magnitude{139000, Kind::Pressure, "bar"}});
    CHECK(plainSpaces(words(text, UnitSystem::Metric)) == QStringLiteral("7 before a %2, 1.39 bar of %9"));
    CHECK(words(Text("100 %"), UnitSystem::Metric) == QStringLiteral("100 %"));
    CHECK(words(Text(), UnitSystem::Metric).isEmpty());
}

TEST_CASE("numbers follow the person's decimal sign and never carry a group separator")
{
    const Quantity length(1343.9, Kind::Length, "m");
    CHECK(plainSpaces(quantityText(Quantity(139000, Kind::Pressure, "bar"), UnitSystem::Metric)) ==
          QStringLiteral("1.39 bar"));
    const German german;
    CHECK(plainSpaces(quantityText(Quantity(139000, Kind::Pressure, "bar"), UnitSystem::Metric)) ==
          QStringLiteral("1,39 bar"));
    CHECK_FALSE(quantityText(length, UnitSystem::Metric).contains(QLatin1Char('.')));
    CHECK(quantityText(length, UnitSystem::Metric).contains(QStringLiteral("1344")));
}

TEST_CASE("limits are rounded inward and open ends are said in words")
{
    const Quantity low(111250, Kind::Pressure, "bar"), high(166250, Kind::Pressure, "bar");
    CHECK(plainSpaces(rangeText(low, high, UnitSystem::Metric)) == QStringLiteral("1.12 bar to 1.66 bar"));
    CHECK(plainSpaces(rangeText(low, {}, UnitSystem::Metric)) == QStringLiteral("at least 1.12 bar"));
    CHECK(plainSpaces(rangeText({}, high, UnitSystem::Metric)) == QStringLiteral("at most 1.66 bar"));
    CHECK(rangeText({}, {}, UnitSystem::Metric).isEmpty());
}

TEST_CASE("unit symbols are set in type as they are printed in books")
{
    const std::pair<const char*, QString> rows[] = {
        {"um", QStringLiteral("µm")},           {"m2", QStringLiteral("m²")},
        {"cm3/m2", QStringLiteral("cm³/m²")},   {"kg m2", QStringLiteral("kg m²")},
        {"N m/bar", QStringLiteral("N m/bar")}, {"%", QStringLiteral("%")}};
    for (const auto& [symbol, set] : rows) CHECK(unitText(symbol) == set);
}

TEST_CASE("moments are shown in the time of the place where they happened")
{
    // 2026-11-25 05:41:03 UTC, at +01:00.
    CHECK(momentText(1795585263000, 60) == QStringLiteral("2026-11-25 06:41"));
    CHECK(clockText(1795585263000, -300) == QStringLiteral("00:41"));
}

TEST_CASE("the pseudo language brackets everything a person reads")
{
    const Pseudo pseudo;
    const Finding finding = refuse("gate.x", "step", "The unit \"%1\" is not known.", "Type bar or psi.");
    CHECK(words(finding.text, UnitSystem::Metric).startsWith(QChar(0x27E6)));
    for (const QString& shown :
         {words(finding, UnitSystem::Metric), quantityText(Quantity(139000, Kind::Pressure, "bar"), UnitSystem::Metric),
          rangeText(Quantity(1, Kind::Length), {}, UnitSystem::Metric), dataText(std::string_view("North press")),
          stageStateText(run::StageState::InWork), roleText(people::Role::Supervisor), whereText("lift", false),
          whereText("table entry", true), verdictText({verdict::Verdict::Near, false}), ruleText(targets::Rule::Policy),
          runKindText("full"), causeText("web_break"), momentText(1795585263000, 60)}) {
        CAPTURE(shown.toStdString());
        CHECK(outsideBrackets(shown).isEmpty());
        CHECK(shown.contains(QChar(0x27E6)));
    }
}

TEST_CASE("a string that went past the rooms of words is found")
{
    const Pseudo pseudo;
    CHECK(outsideBrackets(QCoreApplication::translate("any", "Ready") + QStringLiteral(" now")) ==
          QStringLiteral("now"));
    CHECK(outsideBrackets(QStringLiteral("Hard coded")) == QStringLiteral("Hardcoded"));
    CHECK(outsideBrackets(QStringLiteral("12:30 – 4")).isEmpty());
}

TEST_CASE("without the pseudo language nothing is bracketed")
{
    CHECK(dataText(std::string_view("North press")) == QStringLiteral("North press"));
    CHECK_FALSE(isPseudo());
}

TEST_CASE("every condition and every make-safe statement has a sentence")
{
    for (const std::string& condition : procedure::allConditions()) {
        CAPTURE(condition);
        CHECK(statementText(condition, UnitSystem::Metric) != QString::fromStdString(condition));
        CHECK_FALSE(statementText(condition, UnitSystem::Metric).isEmpty());
    }
    for (const char* word : run::kMakeSafe) CHECK(makeSafeText(word, UnitSystem::Metric) != QString::fromLatin1(word));
}
