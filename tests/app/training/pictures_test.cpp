// SPDX-License-Identifier: GPL-3.0-or-later
// The training record and who may work alone, to be looked at: TAUTWEB_PICTURES names a folder.
#include <catch2/catch.hpp>

#include "app/pages/setup/setup_page.h"
#include "app/widgets/row_list.h"
#include "tests/app/practice/looked_at.h"
#include "tests/app/training/attempts_made.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

namespace {

/// What a supervisor sees of two attempts, and where they say who may work alone.
void walk(LookedAt& pages)
{
    PracticeWindow& w = pages.w;
    const practice::Who inka{"p-2", "Inka Thorsby"};
    keepAttempts(usualPracticeLogbook(),
                 {walkRound(inka, false, 1'760'000'000'000), walkRound(inka, true, 1'760'100'000'000)});
    w.session().signOut();
    until([&] { return !w.session().actor() && !w.session().busy(); }, "locked");
    signIn(w.session(), "p-1");
    w.door(Qt::Key_4);
    pages.look("choose");
    w.click("toTraining");
    auto* attempts = w.window.findChild<RowList*>(QStringLiteral("attempts"));
    REQUIRE(attempts);
    until([&] { return attempts->count() == 2; }, "the record is there");
    pages.look("record");
    w.click("observe");
    pages.look("observe");
    w.click("cancel");
    w.door(Qt::Key_3);
    auto* shop = w.window.findChild<SetupPage*>();
    REQUIRE(shop->isVisible());
    REQUIRE(shop->findChild<RowList*>(QStringLiteral("people"))->choose(QStringLiteral("p-2")));
    pages.look("person");
    w.click("toAlone");
    pages.look("alone");
}

}  // namespace

TEST_CASE("no text about training and competence is cut or shortened on small and large screens, in every language")
{
    nothingIsCut("training", walk);
}
