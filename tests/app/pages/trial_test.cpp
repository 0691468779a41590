// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <algorithm>
#include <tuple>

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QScrollBar>

#include "app/drawing/chart_picture.h"
#include "app/pages/start/start_page.h"
#include "app/widgets/drawn.h"
#include "app/widgets/row_list.h"
#include "tests/app/shop.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

namespace {

/// The start page of the demo shop, signed in and ready to begin, with the trial opened.
struct Trial {
    QTemporaryDir folder;
    Session session;
    StartPage page;

    explicit Trial(double scale = 1.0, QSize size = {1342, 640}) : session(themed(folder, scale)), page(&session)
    {
        open(session);
        page.resize(size);
        page.show();
        signIn(session, "p-2");
        settled(page);
        say("A web is in the press");
        REQUIRE(page.whyNot().isEmpty());
        say("Try other values");
        REQUIRE(page.onTrial());
    }
    static Session::Options themed(const QTemporaryDir& folder, double scale)
    {
        applyTheme({false, scale, 1.0});
        return optionsIn(folder);
    }
    void say(const char* button)
    {
        auto* b = called<QAbstractButton>(page, button);
        INFO(button);
        REQUIRE(b);
        REQUIRE(b->isEnabled());
        QTest::mouseClick(b, Qt::LeftButton);
        settled(page);
    }
    [[nodiscard]] QLineEdit* field(const char* name) const
    {
        auto* f = called<QLineEdit>(page, name);
        INFO(name);
        REQUIRE(f);
        return f;
    }
    [[nodiscard]] TrialPanel* panel() const { return visible<TrialPanel>(page); }
    [[nodiscard]] double target(const char* id) const
    {
        const targets::Target* t = panel()->targets().find(id);
        REQUIRE(t);
        REQUIRE(t->quantity());
        return t->quantity()->si();
    }
    /// The row of the list that begins so.
    [[nodiscard]] QString row(const char* words) const
    {
        const auto* list = visible<RowList>(page);
        for (int i = 0; i < list->count(); ++i)
            if (list->item(i)->text().startsWith(QString::fromLatin1(words))) return list->item(i)->text();
        return {};
    }
    /// What the page says that is wrong with a field.
    [[nodiscard]] QStringList shownWords() const
    {
        QStringList all;
        for (const auto* label : page.findChildren<QLabel*>())
            if (label->isVisible()) all << label->text();
        return all;
    }
};

constexpr const char* kDiameter = "Diameter of the roll to try";
constexpr double kSetting = 138750, kAt400 = 0.15e5 + 59.4 * 0.4 / 24 * 1e5;  // Pa, by B5 on the north press

}  // namespace

TEST_CASE("typing another diameter moves the targets at once and says what the real roll has")
{
    Trial t;
    CHECK(t.field(kDiameter)->text() == QStringLiteral("500 mm"));
    CHECK(t.target("tension.unwind.setting") == Approx(kSetting));
    t.field(kDiameter)->setText(QStringLiteral("400 mm"));
    // No event was handled in between: nothing lags behind the hand.
    CHECK(t.target("tension.unwind.setting") == Approx(kAt400));
    const QString row = t.row("Unwind: set BRAKE to");
    CHECK(row.contains(QStringLiteral("1.14")));
    CHECK(row.contains(QStringLiteral("real roll: 1.39")));
    const auto* chart = visible<ChartWidget>(t.page);
    REQUIRE(chart);
    CHECK(chart->chart().lines.front().points.front().second.si() == Approx(kAt400));
}

TEST_CASE("width, speed and substrate can be tried as well, and each moves what hangs on it")
{
    Trial t;
    const double tension = t.target("tension.unwind.total"), time = t.target("roll.run_time");
    t.field("Width of the web to try")->setText(QStringLiteral("165 mm"));
    CHECK(t.target("tension.unwind.total") == Approx(tension / 2));
    t.say("Real values again");
    t.field("Speed of the job to try")->setText(QStringLiteral("45 m/min"));
    CHECK(t.target("roll.run_time") == Approx(time * 2));
    CHECK(t.target("tension.unwind.total") == Approx(tension));
    t.say("Real values again");
    auto* material = called<QComboBox>(t.page, "Substrate to try");
    REQUIRE(material);
    REQUIRE(material->findData(QStringLiteral("pet-36")) >= 0);
    material->setCurrentIndex(material->findData(QStringLiteral("pet-36")));
    CHECK(t.target("roll.length") > 2000);
}

TEST_CASE("the real values come back with one action, in every field")
{
    Trial t;
    t.field(kDiameter)->setText(QStringLiteral("400 mm"));
    t.field("Width of the web to try")->setText(QStringLiteral("two hands"));
    t.say("Real values again");
    CHECK(t.field(kDiameter)->text() == QStringLiteral("500 mm"));
    CHECK(t.field("Width of the web to try")->text() == QStringLiteral("330 mm"));
    CHECK(t.target("tension.unwind.setting") == Approx(kSetting));
    CHECK_FALSE(called<QAbstractButton>(t.page, "Real values again")->isEnabled());
    CHECK(t.row("Unwind: set BRAKE to").contains(QStringLiteral("as on the real roll")));
}

TEST_CASE("on trial nothing begins, and the page says all the time that it is a trial")
{
    Trial t;
    CHECK(called<QAbstractButton>(t.page, "Begin the run") == nullptr);
    CHECK(t.page.whyNot().contains(QStringLiteral("trial")));
    auto* mark = called<QLabel>(t.page, "What is shown is a trial");
    REQUIRE(mark);
    CHECK(mark->text() == QStringLiteral("TRIAL: not the real roll"));
    // Not even when the hidden button is pressed all the same.
    for (auto* button : t.page.findChildren<QAbstractButton*>())
        if (button->accessibleName() == QLatin1String("Begin the run")) button->click();
    settled(t.page);
    CHECK(t.session.run() == nullptr);
    t.field(kDiameter)->setText(QStringLiteral("400 mm"));
    CHECK(mark->isVisible());
}

TEST_CASE("what was tried leaves the real inputs as they were, and the run begins from those")
{
    Trial t;
    t.field(kDiameter)->setText(QStringLiteral("400 mm"));
    t.field("Width of the web to try")->setText(QStringLiteral("200 mm"));
    t.say("Back to the real roll");
    CHECK_FALSE(t.page.onTrial());
    CHECK(called<QLabel>(t.page, "What is shown is a trial") == nullptr);
    CHECK(t.field("Its diameter, if measured")->text().isEmpty());
    CHECK(t.page.whyNot().isEmpty());
    t.say("Begin the run");
    until([&] { return t.session.run() != nullptr; }, "the run has begun");
    CHECK(t.session.run()->targets().find("tension.unwind.setting")->quantity()->si() == Approx(kSetting));
    CHECK_FALSE(t.session.run()->began().presentDiameter);
}

TEST_CASE("a trial begins at the diameter that was measured, not at the one in the roll's file")
{
    Trial t;
    t.say("Back to the real roll");
    t.field("Its diameter, if measured")->setText(QStringLiteral("450 mm"));
    settled(t.page);
    t.say("Try other values");
    CHECK(t.field(kDiameter)->text() == QStringLiteral("450 mm"));
    CHECK(t.target("tension.unwind.setting") == Approx(0.15e5 + 59.4 * 0.45 / 24 * 1e5));
}

TEST_CASE("what cannot be read stays in its field with a sentence, and the real value is shown until then")
{
    Trial t;
    for (const char* wrong : {"20 psi", "twelve", "480", "4 km", "-300 mm", "1.234,5 mm"}) {
        t.field(kDiameter)->setText(QString::fromLatin1(wrong));
        const QStringList words = t.shownWords();
        CAPTURE(wrong, words.join(QLatin1Char('|')).toStdString());
        CHECK(t.field(kDiameter)->text() == QString::fromLatin1(wrong));
        CHECK(std::any_of(words.begin(), words.end(), [](const QString& said) {
            return said.contains(QStringLiteral("Until then the real value is shown."));
        }));
        CHECK(t.target("tension.unwind.setting") == Approx(kSetting));
    }
    t.field(kDiameter)->setText(QStringLiteral("400 mm"));
    CHECK_FALSE(t.shownWords().join(QLatin1Char('|')).contains(QStringLiteral("Until then")));
    t.field(kDiameter)->clear();
    CHECK(t.target("tension.unwind.setting") == Approx(kSetting));
}

TEST_CASE("a roll that would not go on this press is named in the trial too")
{
    Trial t;
    t.field(kDiameter)->setText(QStringLiteral("1200 mm"));
    CHECK(t.row("The roll is 1200").contains(QStringLiteral("Take a smaller roll")));
}

TEST_CASE("the charts are written as a picture that says it is a trial")
{
    Trial t;
    t.field(kDiameter)->setText(QStringLiteral("400 mm"));
    const QString file = t.folder.filePath(QStringLiteral("charts"));
    t.panel()->writePicture(file);
    QImage image(file + QStringLiteral(".png"));
    REQUIRE_FALSE(image.isNull());
    ChartPicture same;
    same.mark = QStringLiteral("x");
    same.charts.resize(4);
    CHECK(image.size() == pictureSize(same));
    int dark = 0;
    for (int x = 0; x < image.width(); ++x) dark += qGray(image.pixel(x, 90)) < 60;
    CHECK(dark > image.width() / 2);  // the black bar of the mark
    QSignalSpy spy(t.panel(), &TrialPanel::troubled);
    t.panel()->writePicture(t.folder.filePath(QStringLiteral("no such folder/charts.png")));
    CHECK(spy.count() == 1);
}

TEST_CASE("a trial is made and left with the keyboard alone")
{
    Trial t;
    t.say("Back to the real roll");
    auto* start = called<QAbstractButton>(t.page, "Try other values");
    start->setFocus();
    QTest::keyClick(start, Qt::Key_Space);
    settled(t.page);
    REQUIRE(t.page.onTrial());
    // The cursor stands in the first field, its value chosen: typing replaces it.
    QLineEdit* diameter = t.field(kDiameter);
    CHECK(diameter->selectedText() == QStringLiteral("500 mm"));
    QTest::keyClicks(diameter, QStringLiteral("400 mm"));
    CHECK(t.target("tension.unwind.setting") == Approx(kAt400));
    QStringList reached;
    QWidget* at = diameter;
    for (int i = 0; i < 12; ++i) {
        reached << at->accessibleName();
        do at = at->nextInFocusChain();
        while (!at->isVisibleTo(&t.page) || !(at->focusPolicy() & Qt::TabFocus) || !at->isEnabled());
    }
    for (const char* name : {"Width of the web to try", "Speed of the job to try", "Substrate to try",
                             "What would follow from the values tried", "Back to the real roll", "Real values again",
                             "Charts as a picture"}) {
        INFO(name << " in " << reached.join(QLatin1Char('|')).toStdString());
        CHECK(reached.contains(QString::fromLatin1(name)));
    }
    QTest::keyClick(diameter, Qt::Key_Escape);
    settled(t.page);
    CHECK_FALSE(t.page.onTrial());
}

TEST_CASE("a trial fits the promised screens at every size of type, with its mark and its fields in sight")
{
    for (const auto& [scale, size] : {std::tuple(1.0, QSize(1342, 640)),
                                      {1.0, QSize(1896, 950)},
                                      {2.0, QSize(1342, 600)},
                                      {2.0, QSize(1896, 900)}}) {
        Trial t(scale, size);
        CAPTURE(scale, size.width());
        CHECK(t.page.minimumSizeHint().width() <= size.width());
        CHECK(t.page.minimumSizeHint().height() <= size.height());
        for (const QScrollBar* bar : t.page.findChildren<QScrollBar*>())
            if (bar->isVisible()) CHECK(bar->orientation() == Qt::Vertical);
        const auto* mark = called<QLabel>(t.page, "What is shown is a trial");
        CHECK(mark->height() >= mark->heightForWidth(mark->width()));
        CHECK(mark->visibleRegion().boundingRect().height() >= mark->fontMetrics().height());
        CHECK(t.field(kDiameter)->visibleRegion().boundingRect().height() >= 44);
        for (const auto* chart : t.page.findChildren<ChartWidget*>()) {
            CHECK(chart->width() >= chart->minimumSizeHint().width());
            CHECK_FALSE(chart->accessibleName().isEmpty());
            CHECK_FALSE(chart->accessibleDescription().isEmpty());
        }
    }
    applyTheme({});
}

TEST_CASE("what is tried is threaded as it was said: an empty press draws the web all the way")
{
    Trial t;
    const double withWeb = t.target("thread.pull");
    t.say("Back to the real roll");
    t.say("The press is empty");
    t.say("Try other values");
    CHECK(t.target("thread.pull") > withWeb);
}
