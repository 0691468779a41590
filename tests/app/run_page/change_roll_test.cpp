// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <QAbstractItemModel>
#include <QComboBox>
#include <QLabel>

#include "app/pages/run/run_page.h"
#include "app/pages/run/run_view.h"
#include "app/widgets/theme.h"
#include "tests/app/run_page/walk_support.h"
#include "tests/app/shop.h"

using namespace taut;
using namespace taut::app;
using walk::Walk;

namespace {

QComboBox* rollsOffered(const QWidget& page) { return shop::visible<QComboBox>(page, "atHand"); }

int rowOf(const QComboBox& rolls, const char* begins)
{
    for (int i = 0; i < rolls.count(); ++i)
        if (rolls.itemText(i).startsWith(QLatin1String(begins))) return i;
    FAIL("no row begins with " << begins);
    return -1;
}

QString effect(const QWidget& page)
{
    const auto* label = shop::visible<QLabel>(page, "effect");
    return label ? label->text().replace(QChar::Nbsp, QLatin1Char(' ')) : QString();
}

}  // namespace

TEST_CASE("rolls of the run's own material stand first, and the others under a heading that nobody can choose")
{
    applyTheme({});
    QTemporaryDir folder;
    Session session(shop::optionsIn(folder));
    shop::open(session);
    shop::signIn(session, "p-2");
    shop::begin(session);
    RunPage page(&session);
    page.resize(1342, 628);
    page.show();
    page.view()->begin(RunAct::ChangeRoll);
    QComboBox* rolls = rollsOffered(page);
    REQUIRE(rolls);
    const int heading = rowOf(*rolls, "Of another material");
    CHECK_FALSE(rolls->model()->flags(rolls->model()->index(heading, 0)).testFlag(Qt::ItemIsEnabled));
    CHECK(heading > 2);
    CHECK(rolls->count() > heading + 2);
    for (int i = 1; i < rolls->count(); ++i) {
        if (i == heading) continue;
        CAPTURE(rolls->itemText(i).toStdString());
        CHECK(rolls->itemText(i).contains(QStringLiteral("paper-label-80")) == (i < heading));
    }
    // Before anybody confirms it the page says why it would be refused.
    rolls->setCurrentIndex(rowOf(*rolls, "R0042"));
    CHECK(effect(page).contains(QStringLiteral("Do not lift this one here")));
    rolls->setCurrentIndex(rowOf(*rolls, "R0043"));
    CAPTURE(effect(page).toStdString());
    CHECK(effect(page).contains(QStringLiteral("the job is for paper-label-80")));
    rolls->setCurrentIndex(rowOf(*rolls, "R0047"));
    CHECK(effect(page).startsWith(QStringLiteral("No answer given so far is asked again.")));
}

TEST_CASE("before a roll is changed the page says how many answers that undoes, and it undoes those")
{
    applyTheme({});
    Walk w = Walk::begin("north", "quince-jelly", "R0041");
    const std::string other = Walk::begin("north", "quince-jelly", "R0047").run.sources().roll.text;
    REQUIRE(w.untilStep([](const procedure::Step& s) { return s.id.value.rfind("splice.", 0) == 0; }));
    RunView view;
    view.resize(1342, 628);
    view.setActor({QStringLiteral("p-1"), QStringLiteral("Ines Falk"), people::Role::Operator});
    view.setRollsAtHand({{QStringLiteral("R0047"), other}});
    view.show(w.run);
    static_cast<QWidget&>(view).show();
    view.begin(RunAct::ChangeRoll);
    QComboBox* rolls = rollsOffered(view);
    REQUIRE(rolls);
    CHECK(effect(view).isEmpty());
    rolls->setCurrentIndex(rowOf(*rolls, "R0047"));
    const QString said = effect(view);
    CAPTURE(said.toStdString());
    w.perform(run::ChangeRoll{other, std::nullopt});
    const auto& changed = std::get<run::InputsChanged>(w.run.events().back().happening());
    REQUIRE(changed.stale.size() > 1);
    CHECK(said.startsWith(QStringLiteral("%1 answers given so far are asked again").arg(changed.stale.size())));
    rolls->setCurrentIndex(0);
    CHECK(effect(view).isEmpty());
}

TEST_CASE("a roll named with Enter, as a scanner ends, is used only by what comes after its effect was shown")
{
    applyTheme({});
    Walk w = Walk::begin("north", "quince-jelly", "R0041");
    const std::string other = Walk::begin("north", "quince-jelly", "R0046").run.sources().roll.text;
    RunView view;
    view.resize(1342, 628);
    view.setActor({QStringLiteral("p-1"), QStringLiteral("Ines Falk"), people::Role::Operator});
    view.setRollsAtHand({{QStringLiteral("R0046"), other}});
    view.show(w.run);
    static_cast<QWidget&>(view).show();
    view.begin(RunAct::ChangeRoll);
    QComboBox* rolls = rollsOffered(view);
    REQUIRE(rolls);
    rolls->setFocus();
    QSignalSpy commands(&view, &RunView::command);
    QTest::keyClicks(rolls, QStringLiteral("R0046"));
    QTest::keyClick(rolls, Qt::Key_Return);
    CHECK(commands.isEmpty());
    // What the new roll brings that the old one did not.
    CHECK(effect(view).contains(QStringLiteral("The job needs 1147 m; of this roll 489 m can be run")));
    QWidget* accept = view.focusWidget();
    REQUIRE(accept);
    CHECK(accept->objectName() == QStringLiteral("accept"));
    QTest::keyClick(accept, Qt::Key_Return);
    CHECK(commands.size() == 1);
}
