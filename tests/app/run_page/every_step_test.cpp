// SPDX-License-Identifier: GPL-3.0-or-later
// Every step of both presses on the smallest and the largest screen that we promise.
#include <catch2/catch.hpp>

#include <set>
#include <tuple>
#include <vector>

#include <QAbstractButton>
#include <QAccessible>
#include <QApplication>
#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QTest>

#include "app/pages/run/run_view.h"
#include "app/text/pseudo.h"
#include "app/widgets/step_card.h"
#include "app/widgets/theme.h"
#include "tests/app/run_page/walk_support.h"

using namespace taut;
using namespace taut::app;
using walk::crew;
using walk::nothingIsCut;
using walk::Walk;
using walk::whatIsAskedIsSeen;

namespace {

/// Walks a run of each press on a page of this size and looks at every step once it stands there.
template <class Look>
void everyStep(const QSize& size, const Look& look)
{
    for (const auto& [press, job, roll] :
         {std::tuple("north", "quince-jelly", "R0041"), {"south", "cold-brew", "R0048"}}) {
        Walk w = Walk::begin(press, job, roll);
        RunView view;
        view.setPeople(crew());
        view.setActor(crew().front());
        view.resize(size);
        view.show(w.run);
        static_cast<QWidget&>(view).show();
        int steps = 0;
        while (const procedure::Step* step = w.next()) {
            ++steps;
            view.show(w.run);
            CAPTURE(press, step->id.value);
            REQUIRE(view.shownStep() == step->id);
            look(view, steps);
            w.answerWell(*step);
        }
        CHECK(steps > 50);
    }
}

void settle()
{
    QApplication::processEvents();
    QApplication::processEvents();
}

}  // namespace

TEST_CASE("what a step asks is read without scrolling at 1366 x 768, up to twice the size of type")
{
    const auto scale = GENERATE(1.0, 1.25, 1.5, 2.0);
    applyTheme({false, scale, 1.0});
    everyStep({1342, 660}, [&](RunView& view, int) {
        CAPTURE(scale);
        settle();
        CHECK(view.minimumSizeHint().width() <= 1342);
        whatIsAskedIsSeen(view);
    });
    applyTheme({});
}

TEST_CASE("no step of either press is cut at 1366 x 768 or at 1920 x 1080, and nothing is filled in")
{
    applyTheme({});
    everyStep({1366, 690}, [](RunView& view, int steps) {
        view.resize(steps % 2 == 0 ? QSize(1366, 690) : QSize(1920, 1000));
        settle();
        CHECK(view.minimumSizeHint().width() <= 1366);
        CHECK(view.minimumSizeHint().height() <= 690);
        nothingIsCut(view);
        for (const auto* box : view.findChildren<QCheckBox*>()) CHECK_FALSE(box->isChecked());
        for (const auto* field : view.findChildren<QLineEdit*>())
            if (field->isVisible()) CHECK(field->text().isEmpty());
    });
}

TEST_CASE("every control of the page has a name, and no word went past the rooms of words")
{
    applyTheme({});
    setPseudo(true);
    Walk w = Walk::begin("north", "quince-jelly", "R0041");
    std::set<procedure::StepKind> seen;
    while (const procedure::Step* step = w.next()) {
        if (seen.insert(step->kind).second) {
            RunView view;
            view.setPeople(crew());
            view.setActor(crew().front());
            view.resize(1366, 690);
            view.show(w.run);
            static_cast<QWidget&>(view).show();
            CAPTURE(step->id.value);
            for (QWidget* child : view.findChildren<QWidget*>()) {
                if (!child->isVisible() || child->objectName().startsWith(QLatin1String("qt_"))) continue;
                CAPTURE(child->metaObject()->className(), child->objectName().toStdString());
                if (child->focusPolicy() != Qt::NoFocus) {
                    QAccessibleInterface* access = QAccessible::queryAccessibleInterface(child);
                    REQUIRE(access);
                    CHECK_FALSE(access->text(QAccessible::Name).isEmpty());
                    CHECK_FALSE(access->text(QAccessible::Name).contains(QLatin1Char('&')));
                }
                if (const auto* label = qobject_cast<QLabel*>(child)) CHECK(outsideBrackets(label->text()).isEmpty());
                if (const auto* b = qobject_cast<QAbstractButton*>(child))
                    if (!b->property("types").isValid()) CHECK(outsideBrackets(b->text()).isEmpty());
            }
        }
        w.answerWell(*step);
    }
    setPseudo(false);
    CHECK(seen.size() == 7);
}
