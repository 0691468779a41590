// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <QAbstractButton>
#include <QComboBox>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>

#include "app/pages/run/phase_cards.h"
#include "app/pages/run/run_view.h"
#include "app/widgets/controls.h"
#include "app/widgets/prose_field.h"
#include "app/widgets/step_card.h"
#include "app/widgets/theme.h"
#include "tests/app/run_page/walk_support.h"
#include "tests/app/said.h"

using namespace taut;
using namespace taut::app;
using walk::north;
using walk::Walk;

namespace {

const PersonChoice kIna{QStringLiteral("p-1"), QStringLiteral("Ines Falk"), people::Role::Operator};
const PersonChoice kTom{QStringLiteral("p-2"), QStringLiteral("Tom Ried"), people::Role::Supervisor};
const PersonChoice kPip{QStringLiteral("p-9"), QStringLiteral("Pip Arkell"), people::Role::Trainee};

struct Screen {
    RunView view;
    QSignalSpy commands{&view, &RunView::command}, takeOver{&view, &RunView::takeOver};
    explicit Screen(const Walk& w, const PersonChoice& who)
    {
        applyTheme({false, 1.0, 1.0});
        view.setPeople({kIna, kTom, kPip});
        view.setActor(who);
        view.resize(1366, 690);
        view.show(w.run);
        static_cast<QWidget&>(view).show();
    }
    template <class W>
    W* visible(const char* name = nullptr)
    {
        for (W* w : name ? view.findChildren<W*>(QString::fromLatin1(name)) : view.findChildren<W*>())
            if (w->isVisible()) return w;
        return nullptr;
    }
    [[nodiscard]] QString said() const { return app::test::said(view); }
};

}  // namespace

TEST_CASE("whoever signs in beside an open run sees whose it is, and takes it over knowingly or leaves it")
{
    const Walk w = north();
    Screen screen(w, kIna);
    REQUIRE(screen.visible<StepCard>());
    screen.view.setActor(kTom);
    CHECK_FALSE(screen.visible<StepCard>());
    REQUIRE(screen.visible<OtherHandsCard>());
    CHECK(screen.said().contains(QStringLiteral("in the hands of Ines Falk")));
    auto* take = screen.visible<QAbstractButton>("answer");
    REQUIRE(take);
    QTest::keyClick(take, Qt::Key_Return);  // it has the focus
    CHECK(screen.takeOver.size() == 1);
    CHECK(screen.commands.isEmpty());

    // Who may not answer steps is told who may.
    screen.view.setActor(kPip);
    REQUIRE(screen.visible<OtherHandsCard>());
    CHECK_FALSE(screen.visible<QAbstractButton>("answer"));
    CHECK(screen.said().contains(QStringLiteral("Ines Falk signs in here")));

    screen.view.setActor(kIna);
    CHECK(screen.visible<StepCard>());
}

TEST_CASE("going on with somebody else's interrupted run says that it is taken over")
{
    Walk w = north();
    w.perform(run::Interrupt{"break"});
    Screen screen(w, kIna);
    REQUIRE(screen.visible<MakeSafeCard>());
    CHECK_FALSE(screen.said().contains(QStringLiteral("in the hands of")));
    for (auto* box : screen.view.findChildren<StatementBox*>()) box->setChecked(true);

    // What the one before ticked is not said by the next.
    screen.view.setActor(kTom);
    CHECK(screen.said().contains(QStringLiteral("in the hands of Ines Falk")));
    auto* go = screen.visible<QAbstractButton>("answer");
    REQUIRE(go);
    CHECK_FALSE(go->isEnabled());
    for (auto* box : screen.view.findChildren<StatementBox*>())
        if (box->isVisible()) box->setChecked(true);
    CHECK(go->text().remove(QLatin1Char('&')).contains(QStringLiteral("Take over")));
    QTest::mouseClick(go, Qt::LeftButton);
    REQUIRE(screen.commands.size() == 1);
    const auto command = screen.commands.at(0).at(0).value<run::Command>();
    REQUIRE(std::holds_alternative<run::Resume>(command));
    CHECK(std::get<run::Resume>(command).takesOver);
    w.perform(command, walk::supervisor());
    CHECK(w.run.operatorId() == "p-2");
}

TEST_CASE("locking the screen keeps what was typed to a supervisor, and forgets the PIN")
{
    Walk w = north();
    const procedure::StepId id{"tension.settings.setting/unwind"};
    w.untilStep([&](const procedure::Step& s) { return s.id == id; });
    w.perform(run::Answer{id, "2.5 bar", {}});
    REQUIRE(w.run.stateOf(id) == run::StepState::Outside);
    Screen screen(w, kIna);
    auto* ask = screen.visible<QAbstractButton>("askSupervisor");
    REQUIRE(ask);
    QTest::mouseClick(ask, Qt::LeftButton);
    auto* reason = screen.visible<ProseField>("value0");
    auto* pin = screen.visible<QLineEdit>("passphrase");
    REQUIRE(reason);
    REQUIRE(pin);
    reason->setText(QStringLiteral("the gauge was checked"));
    screen.visible<QComboBox>("person")->setCurrentIndex(0);
    // A wrong one is said there, and the next is typed there, hidden.
    screen.view.refuse(
        taut::refuse("sign_in.refused", {}, "This passphrase does not open this person's key.", "Again."));
    CHECK(screen.view.focusWidget() == pin);
    CHECK(screen.said().contains(QStringLiteral("does not open")));
    pin->setText(QStringLiteral("4417"));
    screen.view.setActor({});
    screen.view.setPeople({kIna, kTom, kPip});
    screen.view.setActor(kIna);
    reason = screen.visible<ProseField>("value0");
    REQUIRE(reason);
    CHECK(reason->text() == QStringLiteral("the gauge was checked"));
    pin = screen.visible<QLineEdit>("passphrase");
    REQUIRE(pin);
    CHECK(pin->text().isEmpty());
}
