// SPDX-License-Identifier: GPL-3.0-or-later
// Every page of the practice press, to be looked at: TAUTWEB_PICTURES names a folder.
#include <catch2/catch.hpp>

#include "tests/app/practice/looked_at.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

namespace {

/// Page after page of a lesson, and what it came to.
void walk(LookedAt& pages)
{
    PracticeWindow& w = pages.w;
    w.door(Qt::Key_4);
    pages.look("choose");
    w.begin();
    pages.look("begun");
    for (const practice::At at : practice::kEverywhere) {
        w.click(("place" + std::to_string(static_cast<int>(at))).c_str());
        pages.look(("at_" + std::to_string(static_cast<int>(at))).c_str());
    }
    w.touch("run");
    pages.look("refused");
    byTheBook(w);
    w.wait(8);
    pages.look("running");
    w.click("place100");
    pages.look("charts");
    w.click("place101");
    pages.look("found");
    // Nothing winds up any more: the web hangs, and more comes of it.
    w.touch("rewind_setting", {}, "0 bar");
    w.wait(20);
    REQUIRE(w.practice().happened());
    pages.look("happened");
    if (auto* toRun = visible<QAbstractButton>(w.window, "toRun")) {
        toRun->click();
        pages.look("procedure");
        w.click("toPress");
    }
    w.practice().goOn();
    w.click("endLesson");
    pages.look("after");
    w.click("lookAgain");
    until([&] { return visible<QAbstractButton>(w.window, "replayPlay")->isEnabled(); }, "it was played anew");
    pages.look("replay");
}

}  // namespace

TEST_CASE("no text of the practice press is cut or shortened on small and large screens, in every language")
{
    nothingIsCut("practice", walk);
}
