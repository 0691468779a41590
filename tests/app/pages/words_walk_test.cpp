// SPDX-License-Identifier: GPL-3.0-or-later
// The pseudo language walks every page: a word that a person sees outside the brackets went past the rooms of words.
#include <catch2/catch.hpp>

#include <string>
#include <vector>

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QPointer>
#include <QPushButton>
#include <QRegularExpression>
#include <QTableWidget>
#include <QTimer>

#include "app/pages/history/history_page.h"
#include "app/pages/run/run_page.h"
#include "app/pages/run/run_view.h"
#include "app/pages/setup/setup_page.h"
#include "app/pages/start/start_page.h"
#include "app/shell/main_window.h"
#include "app/text/pseudo.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/drawn.h"
#include "tests/app/pages/signed_run.h"
#include "tests/app/shop.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

namespace {

struct Pseudo {
    Pseudo() { setPseudo(true); }
    ~Pseudo() { setPseudo(false); }
};

/// Everything that a widget shows or says of itself.
QStringList saidBy(const QWidget& w)
{
    QStringList said{w.accessibleName(), w.accessibleDescription(), w.toolTip()};
    if (const auto* label = qobject_cast<const QLabel*>(&w)) said << label->text();
    if (const auto* button = qobject_cast<const QAbstractButton*>(&w))
        if (!w.property("types").isValid()) said << button->text();  // a key of the number pad is what it types
    if (const auto* line = qobject_cast<const QLineEdit*>(&w)) said << line->placeholderText();
    if (const auto* box = qobject_cast<const QComboBox*>(&w)) {
        said << box->placeholderText();
        for (int i = 0; i < box->count(); ++i) said << box->itemText(i);
    }
    if (const auto* list = qobject_cast<const QListWidget*>(&w))
        for (int i = 0; i < list->count(); ++i) said << list->item(i)->text();
    if (const auto* table = qobject_cast<const QTableWidget*>(&w)) {
        for (int c = 0; c < table->columnCount(); ++c) said << table->horizontalHeaderItem(c)->text();
        for (int r = 0; r < table->rowCount(); ++r)
            for (int c = 0; c < table->columnCount(); ++c) said << table->item(r, c)->text();
    }
    if (const auto* line = qobject_cast<const TautLineWidget*>(&w))
        for (const TautSpan& span : line->spans()) said << span.name << span.stateWord;
    if (const auto* menu = qobject_cast<const QMenu*>(&w))
        for (const QAction* action : menu->actions()) said << action->text();
    return said;
}

/// Checks the whole window as it is now; returns how many texts were looked at.
int nothingOutside(const QWidget& window, const char* page)
{
    int looked = 0;
    for (const QWidget* w : window.findChildren<QWidget*>()) {
        // A menu is looked at though nobody opened it; Qt's own parts of a widget have no words.
        const bool shown = w->isVisible() || qobject_cast<const QMenu*>(w);
        if (!shown || w->objectName().startsWith(QLatin1String("qt_"))) continue;
        for (const QString& text : saidBy(*w)) {
            if (text.isEmpty()) continue;
            ++looked;
            CAPTURE(page, w->metaObject()->className(), w->objectName().toStdString(), text.toStdString());
            CHECK(outsideBrackets(text).isEmpty());
        }
    }
    return looked;
}

}  // namespace

TEST_CASE("in the pseudo language no page of the window shows a word outside the brackets")
{
    QTemporaryDir folder;
    const Session::Options options = signedRun(folder);
    const Pseudo pseudo;
    MainWindow window(options);
    window.setWindowState(Qt::WindowNoState);
    window.resize(1366, 740);
    window.show();
    Session& session = *window.session();
    until([&] { return session.isOpen() && !session.busy(); }, "the logbook is open");
    const auto look = [&](const char* page) {
        for (const auto* one : {static_cast<const QWidget*>(visible<StartPage>(window)),
                                static_cast<const QWidget*>(visible<HistoryPage>(window))})
            if (one) settled(*one);
        QTest::qWait(60);
        CHECK(nothingOutside(window, page) > 15);
    };
    CHECK(outsideBrackets(window.windowTitle()).isEmpty());
    look("start, nobody signed in");

    session.signIn(QStringLiteral("p-2"), QStringLiteral("0000"));
    until([&] { return !session.busy(); }, "refused");
    look("start, a wrong PIN");
    signIn(session, "p-2");
    look("start, signed in");

    // Every choice of every list, so that each "this cannot work" is said once.
    for (QComboBox* box : window.findChildren<QComboBox*>()) {
        if (!box->isVisible()) continue;
        const int before = box->currentIndex();
        for (int i = 0; i < box->count(); ++i) {
            box->setCurrentIndex(i);
            look("start, another choice");
        }
        box->setCurrentIndex(before);
    }
    for (QLineEdit* line : window.findChildren<QLineEdit*>())
        if (line->isVisible() && line->accessibleName().contains(QStringLiteral("diameter"))) {
            line->setText(QStringLiteral("20 psi"));
            look("start, a wrong unit");
            line->clear();
        }

    for (auto* button : window.findChildren<QAbstractButton*>())
        if (button->isVisible() && button->text().contains(QStringLiteral("Try other values"))) button->click();
    auto* trial = visible<TrialPanel>(window);
    REQUIRE(trial);
    look("start, a trial of the real values");
    for (const char* typed : {"320 mm", "20 psi", "9 m", "1200 mm", "4 m/min"})
        for (QLineEdit* line : trial->findChildren<QLineEdit*>())
            if (line->isVisible()) {
                line->setText(QString::fromLatin1(typed));
                look("start, a trial");
            }
    trial->reset();
    emit trial->left();

    QTest::keyClick(&window, Qt::Key_2, Qt::AltModifier);
    look("history, a signed run");
    for (QLineEdit* line : window.findChildren<QLineEdit*>())
        if (line->isVisible()) {
            line->setText(QStringLiteral("R9999"));
            look("history, nothing found");
            line->clear();
        }

    begin(session);
    look("history, an open run");
    QTest::keyClick(&window, Qt::Key_1, Qt::AltModifier);
    auto* page = visible<RunPage>(window);
    REQUIRE(page);
    for (int stage = 0; stage < static_cast<int>(session.run()->plan().stages.size()); ++stage) {
        page->view()->showStage(stage);
        look("run, a stage that is not open yet");
    }
    for (int act = 0; act <= static_cast<int>(RunAct::Leave); ++act) {
        if (static_cast<RunAct>(act) == RunAct::Leave) continue;
        page->view()->begin(static_cast<RunAct>(act));
        look("run, an act");
        for (const auto* box : page->findChildren<QComboBox*>(QStringLiteral("atHand")))
            if (box->isVisible()) {
                const_cast<QComboBox*>(box)->setCurrentIndex(0);
                look("run, a roll that is typed");
            }
        QTest::keyClick(page->view(), Qt::Key_Escape);
    }
    session.perform(run::Interrupt{"power"});
    until([&] { return !session.busy(); }, "interrupted");
    look("run, to be made safe");
    session.perform(run::Resume{{}, false});
    until([&] { return !session.busy(); }, "refused");
    look("run, a refusal that lists");
    session.withdraw(QStringLiteral("north"), QStringLiteral("the brake grabs"));
    until([&] { return !session.busy(); }, "withdrawn");
    look("run, withdrawn");
    session.leaveRun();
    until([&] { return !session.busy() && session.run() == nullptr; }, "left");
    look("start, a press out of use and an open run");
    signIn(session, "p-1");
    look("start, a supervisor who may give it back");
}

TEST_CASE("what a refusal lists is said in the reader's language, not put in as data")
{
    const Pseudo pseudo;
    const Text inner("Nobody is in the press"), other("The lamps are parked");
    const QString said = words(Text("Not yet said: %1.", {std::vector<Text>{inner, other}}), UnitSystem::Metric);
    CHECK(said == QStringLiteral(u"\u27E6Not yet said: \u27E6Nobody is in the press\u27E7, "
                                 u"\u27E6The lamps are parked\u27E7.\u27E7"));
}

TEST_CASE("in the pseudo language the shop, the logbook's card and every question about a run stay inside the brackets")
{
    QTemporaryDir folder;
    const Session::Options options = signedRun(folder);
    const Pseudo pseudo;
    MainWindow window(options);
    window.setWindowState(Qt::WindowNoState);
    window.resize(1366, 740);
    window.show();
    Session& session = *window.session();
    until([&] { return session.isOpen() && !session.busy(); }, "the logbook is open");
    const auto look = [&](const char* page) {
        QTest::qWait(60);
        CHECK(nothingOutside(window, page) > 15);
    };
    const auto everyQuestion = [&](const QWidget& page) {
        // What opens a window of its own is left out.
        static const QRegularExpression opens(QStringLiteral("\u2026|PDF|Print"));
        std::vector<QPointer<QAbstractButton>> buttons;
        for (auto* button : page.findChildren<QPushButton*>())
            if (button->isVisible() && button->isEnabled() && !button->text().contains(opens))
                buttons.emplace_back(button);
        for (const auto& button : buttons) {
            if (!button || !button->isVisible()) continue;
            const std::string asked = button->text().toStdString();
            button->click();
            look(asked.c_str());
            if (auto* accept = visible<QAbstractButton>(page, "accept")) {
                accept->click();  // what is still empty is said too
                look("a question that is not answered");
            }
            if (auto* back = visible<QAbstractButton>(page, "cancel")) back->click();
        }
    };
    for (const char* who : {"", "p-2", "p-1"}) {
        if (*who != '\0') signIn(session, who);
        for (const auto key : {Qt::Key_2, Qt::Key_3}) {
            QTest::keyClick(&window, key, Qt::AltModifier);
            look(who);
            if (auto* history = visible<HistoryPage>(window)) everyQuestion(*history);
            if (auto* shop = visible<SetupPage>(window)) everyQuestion(*shop);
        }
    }
    session.copyTo(folder.path());
    until([&] { return !session.busy(); }, "copied");
    look("a copy was made");
    session.keepMirror(folder.path() + QStringLiteral("/nowhere"));
    until([&] { return visible<QWidget>(window, "keeping") != nullptr; }, "the mirror fails");
    look("a mirror fails");
}
