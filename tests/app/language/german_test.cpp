// SPDX-License-Identifier: GPL-3.0-or-later
// The run page in German, the longest of the languages, and from right to left: all of it is said and none of it cut.
#include <catch2/catch.hpp>

#include <set>

#include <QApplication>
#include <QLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QTranslator>

#include "app/pages/start/start_page.h"
#include "app/shell/main_window.h"
#include "app/text/language.h"
#include "app/text/words.h"
#include "app/widgets/theme.h"
#include "core/base/json.h"
#include "core/units/parse.h"
#include "tests/app/language/lists_support.h"
#include "tests/app/pages/shop_window.h"
#include "tests/app/run_page/walk_support.h"

using namespace taut;
using namespace taut::app;
using walk::Walk;

namespace {

struct German {
    German() { setLanguage(QStringLiteral("de")); }
    ~German() { setLanguage(QStringLiteral("en")); }
};

/// Sees every text that is looked up, and keeps those that no list has. What a run has of its own (the words of its
/// procedure, names of its press) is no text of the program.
class Watch final : public QTranslator {
public:
    explicit Watch(const lists::List& list) : m_list(list) { QCoreApplication::installTranslator(this); }
    ~Watch() override { QCoreApplication::removeTranslator(this); }
    [[nodiscard]] QString translate(const char* context, const char* source, const char*, int) const override
    {
        const QString where = QString::fromUtf8(context), what = QString::fromUtf8(source);
        // A formula, a key of a file and a source by its number are the same in every language.
        static const QRegularExpression sign(QStringLiteral("[=<>]|[a-z]\\.[a-z]|^[A-Z]\\d+\\b"));
        const bool words =
            std::any_of(what.begin(), what.end(), [](QChar c) { return c.isLetter(); }) && !what.contains(sign);
        const bool ours = where == QLatin1String("core") || !where.startsWith(QLatin1Char('Q'));
        if (words && ours && m_list.count({where, what}) == 0) m_missing.insert(where + QStringLiteral(": ") + what);
        return {};
    }
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] const std::set<QString>& missing() const { return m_missing; }

private:
    const lists::List& m_list;
    mutable std::set<QString> m_missing;
};

void ownWords(const Text& text, std::set<QString>& own)
{
    own.insert(QStringLiteral("core: ") + QString::fromUtf8(text.source.c_str()));
}

/// What a run says in words of its own.
std::set<QString> ownWords(const run::Run& run)
{
    std::set<QString> own;
    for (const auto& stage : run.plan().stages) ownWords(stage.title, own);
    for (const auto& place : run.plan().places) {
        ownWords(place.title, own);
        for (const TextArg& arg : place.title.args)
            if (const auto* texts = std::get_if<std::vector<Text>>(&arg))
                for (const Text& one : *texts) ownWords(one, own);
    }
    for (const procedure::Step& step : run.plan().steps) {
        for (const Text* text : {&step.say, &step.why, &step.caution, &step.see, &step.done}) ownWords(*text, own);
        for (const Text& text : step.tries) ownWords(text, own);
        for (const procedure::Choice& choice : step.choices)
            for (const std::string& word : {choice.say, choice.remedy}) ownWords(Text(word), own);
    }
    return own;
}

/// Widgets of one layout never lie over each other, and none reaches out of what it stands in.
void nothingOverlaps(const QWidget& page)
{
    for (const QWidget* box : page.findChildren<QWidget*>()) {
        if (!box->isVisible() || box->layout() == nullptr) continue;
        std::vector<const QWidget*> inside;
        for (const QObject* child : box->children()) {
            const auto* widget = qobject_cast<const QWidget*>(child);
            if (widget && widget->isVisible() && !widget->isWindow() &&
                box->layout()->indexOf(const_cast<QWidget*>(widget)) >= 0)
                inside.push_back(widget);
        }
        for (std::size_t i = 0; i < inside.size(); ++i) {
            CAPTURE(box->metaObject()->className(), inside[i]->metaObject()->className(),
                    inside[i]->objectName().toStdString());
            CHECK(box->rect().adjusted(-1, -1, 1, 1).contains(inside[i]->geometry()));
            for (std::size_t j = 0; j < i; ++j) CHECK_FALSE(inside[i]->geometry().intersects(inside[j]->geometry()));
        }
    }
}

template <class Look>
void everyStep(const char* press, const char* job, const char* roll, const Look& look)
{
    Walk w = Walk::begin(press, job, roll, true, "de");
    RunView view;
    view.setPeople(walk::crew());
    view.setActor(walk::crew().front());
    view.resize(1342, 660);
    view.show(w.run);
    static_cast<QWidget&>(view).show();
    int steps = 0;
    while (const procedure::Step* step = w.next()) {
        view.show(w.run);
        CAPTURE(press, step->id.value);
        QApplication::processEvents();
        QApplication::processEvents();
        look(view, w, ++steps);
        w.answerWell(*step);
    }
    CHECK(steps > 50);
}

}  // namespace

TEST_CASE("in German no step is cut, none is left in English, and every word is on the list")
{
    applyTheme({});
    const German german;
    const lists::List list = lists::listOf(QStringLiteral("de"));
    for (const auto& [press, job, roll] :
         {std::tuple("north", "quince-jelly", "R0041"), {"south", "cold-brew", "R0048"}}) {
        const Watch watch(list);
        std::set<QString> own;
        everyStep(press, job, roll, [&](RunView& view, const Walk& w, int steps) {
            if (steps == 1) own = ownWords(w.run);
            view.resize(steps % 2 == 0 ? QSize(1366, 690) : QSize(1920, 1000));
            QApplication::processEvents();
            CHECK(view.minimumSizeHint().width() <= 1366);
            CHECK(view.minimumSizeHint().height() <= 690);
            walk::nothingIsCut(view);
        });
        for (const QString& missing : watch.missing()) {
            if (own.count(missing) != 0) continue;
            CAPTURE(missing.toStdString());
            CHECK(missing.isEmpty());
        }
    }
}

TEST_CASE("in German what a step asks is read without scrolling at 1366 x 768")
{
    applyTheme({});
    const German german;
    for (const auto& [press, job, roll] :
         {std::tuple("north", "quince-jelly", "R0041"), {"south", "cold-brew", "R0048"}})
        everyStep(press, job, roll, [](RunView& view, const Walk&, int) { walk::whatIsAskedIsSeen(view); });
}

TEST_CASE("the start page in German is read whole at 1366 x 768")
{
    const German german;
    shop::Window w(true);
    shop::signIn(w.session(), "p-2");
    auto* page = shop::visible<StartPage>(w.window);
    REQUIRE(page);
    shop::settled(*page);
    REQUIRE(language() == QStringLiteral("de"));
    walk::nothingIsCut(w.window);
    CHECK(w.window.minimumSizeHint().width() <= 1366);
}

TEST_CASE("from right to left the window stays whole: nothing overlaps, nothing is cut")
{
    applyTheme({});
    QApplication::setLayoutDirection(Qt::RightToLeft);
    everyStep("south", "cold-brew", "R0048", [](RunView& view, const Walk&, int steps) {
        if (steps % 5 != 1) return;
        walk::nothingIsCut(view);
        walk::whatIsAskedIsSeen(view);
        nothingOverlaps(view);
    });
    {
        shop::Window w(true);
        shop::signIn(w.session(), "p-2");
        shop::settled(*shop::visible<StartPage>(w.window));
        // A busy machine lays out later than it is asked to.
        for (int i = 0; i < 10; ++i) QTest::qWait(30);
        walk::nothingIsCut(w.window);
        nothingOverlaps(w.window);
    }
    QApplication::setLayoutDirection(Qt::LeftToRight);
}

TEST_CASE("a German screen shows 1,39 bar and takes it, and the record holds what was typed and the value behind it")
{
    applyTheme({});
    const German german;
    Walk w = Walk::begin("north", "quince-jelly", "R0041", true, "de");
    const procedure::Step* step = w.untilStep([&](const procedure::Step& one) {
        const targets::Target* target = w.run.targets().find(one.target);
        return one.kind == procedure::StepKind::Reading && target && target->quantity() &&
               target->quantity()->kind() == Kind::Pressure;
    });
    REQUIRE(step);
    CHECK(quantityText(Quantity(139000, Kind::Pressure, "bar"), UnitSystem::Metric) == QStringLiteral("1,39\u00A0bar"));
    const std::string right = walk::rightAnswer(w.run, *step).entered;
    const QString typed = QString::fromStdString(right).replace(QLatin1Char('.'), QLatin1Char(','));
    REQUIRE(typed.contains(QLatin1Char(',')));

    walk::Page page(w);
    std::optional<run::Command> given;
    QObject::connect(&page.view, &RunView::command, [&](const run::Command& command) { given = command; });
    QLineEdit* field = nullptr;
    for (auto* line : page.view.findChildren<QLineEdit*>())
        if (line->isVisible()) field = line;
    REQUIRE(field);
    QTest::keyClicks(field, typed);
    QTest::keyClick(field, Qt::Key_Return);
    REQUIRE(given);
    w.perform(*given);
    const auto event = Json::parse(w.run.events().back().json());
    REQUIRE(event);
    CHECK((*event)["entered"].text() == typed.toStdString());
    const auto meant = parseQuantity(right, Kind::Pressure);
    REQUIRE(meant);
    CHECK((*event)["value"].number() == Approx(meant->si()));
    CHECK((*event)["unit"].text() == "Pa");
}
