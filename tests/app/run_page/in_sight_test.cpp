// SPDX-License-Identifier: GPL-3.0-or-later
// On a screen of 1366 x 768 with type of the usual size: what is asked and its caution stay in sight, whatever opens or
// is said beside them.
#include <catch2/catch.hpp>

#include <cmath>

#include <QAbstractButton>
#include <QLineEdit>
#include <QPixmap>
#include <QTest>

#include "app/text/language.h"
#include "app/widgets/finding_strip.h"
#include "app/widgets/number_pad.h"
#include "tests/app/run_page/walk_support.h"

using namespace taut;
using namespace taut::app;
using walk::Page;
using walk::Walk;
using K = procedure::StepKind;

namespace {

struct Tongue {
    explicit Tongue(const std::string& id) { setLanguage(QString::fromStdString(id)); }
    ~Tongue() { setLanguage(QStringLiteral("en")); }
};

Walk north(const std::string& tongue)
{
    return Walk::begin("north", "quince-jelly", "R0041", true, tongue == "en" ? std::string() : tongue);
}

/// All of it lies where it can be seen.
void isSeen(const QWidget& w, const char* what)
{
    INFO(what);
    CHECK(w.isVisible());
    CHECK(w.visibleRegion().boundingRect() == w.rect());
}

void keep(Page& page, const std::string& name)
{
    if (const QString folder = qEnvironmentVariable("TAUTWEB_PICTURES"); !folder.isEmpty())
        page.view.grab().save(QStringLiteral("%1/%2_%3.png").arg(folder, language(), QString::fromStdString(name)));
}

/// What is asked, what it is typed into and with, and what enters it.
void isWhole(Page& page)
{
    Page::settle();
    walk::whatIsAskedIsSeen(page.view);
    walk::nothingIsCut(page.view);
    isSeen(*page.visible<QLineEdit>("field"), "the field");
    isSeen(*page.visible<QAbstractButton>("answer"), "what enters it");
    for (const auto* pad : page.view.findChildren<NumberPad*>())
        if (pad->isVisible()) isSeen(*pad, "the number pad");
    for (const auto* strip : page.view.findChildren<FindingStrip*>())
        if (strip->isVisible()) isSeen(*strip, "the message");
}

/// Well beyond its window, and still a value that can be.
std::optional<run::Answer> outside(const run::Run& run, const procedure::Step& step)
{
    const targets::Target* target = run.targets().find(step.target);
    const targets::Ready* ready = target ? target->ready() : nullptr;
    if (!ready || (!ready->window.high && !ready->window.low)) return {};
    const Quantity& edge = ready->window.high ? *ready->window.high : *ready->window.low;
    const double off = ready->window.high && ready->window.low ? ready->window.high->si() - ready->window.low->si()
                                                               : std::abs(edge.si()) * 0.3;
    const Quantity beyond(edge.si() + (ready->window.high ? off : -off), edge.kind(), edge.unit());
    return run::Answer{step.id, walk::typedAs(beyond, run.began().units), {}};
}

}  // namespace

TEST_CASE("with the number pad open, and with a message, what is asked of a reading and its caution stay in sight")
{
    for (const std::string tongue : {"en", "es", "de"}) {
        const Tongue speaks(tongue);
        Walk w = north(tongue);
        int readings = 0, beyond = 0;
        while (w.until(K::Reading)) {
            const procedure::Step step = *w.next();
            CAPTURE(tongue, step.id.value);
            {
                Page page(w);
                page.visible<QAbstractButton>("padToggle")->click();
                isWhole(page);
                page.visible<QLineEdit>("field")->setText(QStringLiteral("7 xyz"));
                page.visible<QAbstractButton>("answer")->click();
                isWhole(page);
                keep(page, "refused_" + step.id.value);
            }
            ++readings;
            if (const auto answer = outside(w.run, step)) {
                Walk other = w;
                other.perform(*answer);
                if (other.run.stateOf(step.id) == run::StepState::Outside) {
                    ++beyond;
                    Page page(other);
                    page.visible<QAbstractButton>("padToggle")->click();
                    isWhole(page);
                    keep(page, "outside_" + step.id.value);
                }
            }
            w.answerWell(step);
        }
        CHECK(readings > 20);
        CHECK(beyond > 15);
    }
}

TEST_CASE("a message about who holds a stop covers no name")
{
    for (const std::string tongue : {"en", "es", "de"}) {
        const Tongue speaks(tongue);
        Walk w = north(tongue);
        int holds = 0;
        while (w.until(K::Hold)) {
            const procedure::Step step = *w.next();
            CAPTURE(tongue, step.id.value);
            Page page(w);
            page.visible<QLineEdit>("field")->setText(QStringLiteral("R0041"));
            const auto closed =
                run::decide(w.run, run::Answer{step.id, "R0041", {}}, {99, 1, 60, {}, {}, {}}, walk::operatorOne());
            REQUIRE_FALSE(closed);
            page.view.refuse(closed.error());
            isWhole(page);
            keep(page, "hold_" + step.id.value);
            int names = 0;
            for (const auto* button : page.view.findChildren<QAbstractButton*>(QStringLiteral("name"))) {
                isSeen(*button, "a name");
                ++names;
            }
            CHECK(names == 2);
            ++holds;
            w.answerWell(step);
        }
        CHECK(holds > 3);
    }
}
