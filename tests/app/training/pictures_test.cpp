// SPDX-License-Identifier: GPL-3.0-or-later
// The training record and who may work alone, to be looked at: TAUTWEB_PICTURES names a folder.
#include <catch2/catch.hpp>

#include "app/pages/setup/setup_page.h"
#include "app/text/language.h"
#include "app/widgets/controls.h"
#include "app/widgets/row_list.h"
#include "tests/app/painted.h"
#include "tests/app/practice/practice_support.h"
#include "tests/app/training/attempts_made.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

namespace {

bool isShortened(const QWidget& w)
{
    return qobject_cast<const OneLine*>(&w) != nullptr || qobject_cast<const PickList*>(&w) != nullptr;
}

/// Looks at page after page; returns what is cut.
QStringList walk(const QSize& size, double text)
{
    PracticeWindow w({size.width(), size.height() - 28});
    applyTheme({false, text, 1.0});
    const practice::Who inka{"p-2", "Inka Thorsby"};
    keepAttempts(usualPracticeLogbook(),
                 {walkRound(inka, false, 1'760'000'000'000), walkRound(inka, true, 1'760'100'000'000)});
    QStringList all;
    const QString pictures = qEnvironmentVariable("TAUTWEB_PICTURES");
    const auto look = [&](const char* page) {
        QTest::qWait(400);
        if (!pictures.isEmpty())
            w.window.grab().save(QStringLiteral("%1/training_%2_%3x%4_%5_%6.png")
                                     .arg(pictures, language())
                                     .arg(size.width())
                                     .arg(size.height())
                                     .arg(text)
                                     .arg(QString::fromLatin1(page)));
        for (const QString& one : test::cutOn(w.window, isShortened))
            all << QStringLiteral("%1: %2").arg(QString::fromLatin1(page), one);
    };
    w.session().signOut();
    until([&] { return !w.session().actor() && !w.session().busy(); }, "locked");
    signIn(w.session(), "p-1");
    w.door(Qt::Key_4);
    look("1_choose");
    w.click("toTraining");
    auto* attempts = w.window.findChild<RowList*>(QStringLiteral("attempts"));
    REQUIRE(attempts);
    until([&] { return attempts->count() == 2; }, "the record is there");
    look("2_record");
    w.click("observe");
    look("3_observe");
    w.click("cancel");
    w.door(Qt::Key_3);
    auto* shop = w.window.findChild<SetupPage*>();
    REQUIRE(shop->isVisible());
    REQUIRE(shop->findChild<RowList*>(QStringLiteral("people"))->choose(QStringLiteral("p-2")));
    look("4_person");
    w.click("toAlone");
    look("5_alone");
    return all;
}

}  // namespace

TEST_CASE("no text about training and competence is cut or shortened on small and large screens, in every language")
{
    struct Back {
        ~Back() { setLanguage(QStringLiteral("en")); }
    } back;
    for (const char* tongue : {"en", "es", "de"})
        for (const QSize& size : {QSize(1366, 768), QSize(1920, 1080)})
            for (const double text : {1.0, 2.0}) {
                DYNAMIC_SECTION(tongue << ", " << size.width() << " x " << size.height() << ", text " << text)
                {
                    setLanguage(QString::fromLatin1(tongue));
                    for (const QString& cut : walk(size, text)) FAIL_CHECK(cut.toStdString());
                }
            }
}
