// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/window/crew_support.h"

#include <catch2/catch.hpp>

#include <QAbstractButton>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QSignalSpy>
#include <QWindow>

#include "app/seams/demo_shop.h"
#include "app/seams/resources.h"
#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/hold_button.h"
#include "app/widgets/step_card.h"
#include "app/widgets/theme.h"
#include "tests/app/run_page/walk_support.h"

namespace taut::app::hands {

namespace {

constexpr QSize kSmallScreen(1366, 768);

/// For whoever wants to look at every card of a walk: TAUTWEB_PICTURES names a folder, TAUTWEB_TEXT a size of type in
/// per cent.
void keepPicture(QWidget* window, const std::string& step)
{
    static int number = 0;
    const QString folder = qEnvironmentVariable("TAUTWEB_PICTURES");
    if (folder.isEmpty()) return;
    pass(30);  // the page is laid out when events have come in
    const QString name = QString::fromStdString(step).replace(QLatin1Char('/'), QLatin1Char('_'));
    const QString file = QStringLiteral("%1/%2-%3.png").arg(folder).arg(++number, 3, 10, QLatin1Char('0')).arg(name);
    if (!window->grab().save(file)) FAIL("no picture can be kept in " << folder.toStdString());
}

ThemeChoice wantedTheme()
{
    ThemeChoice theme;
    if (const int percent = qEnvironmentVariableIntValue("TAUTWEB_TEXT"); percent > 0)
        theme.textScale = percent / 100.0;
    return theme;
}

std::filesystem::path resources()
{
    const auto folder = resourcesFolder();
    REQUIRE(folder);
    return *folder;
}

const std::vector<DemoPerson>& people()
{
    static const auto all = demoPeople(resources());
    REQUIRE(all);
    return *all;
}

const DemoPerson& person(const char* id)
{
    for (const DemoPerson& one : people())
        if (one.id.value == id) return one;
    FAIL("nobody is " << id);
    return people().front();
}

/// A press of the tests, kept in the logbook as a supervisor would keep it.
void keepPress(const std::filesystem::path& logbook, const std::string& text)
{
    const SystemClock clock;
    RandomIds ids;
    auto writer = logbook::Writer::open(logbook, clock, ids, {false, "test", 0});
    REQUIRE(writer);
    REQUIRE(fillWithDemoShop(**writer, resources()));
    const auto supervisor = (*writer)->signIn("p-1", person("p-1").chosen.pin);
    REQUIRE(supervisor);
    Findings notes;
    const auto press = inputs::readPress(text, "press", notes);
    REQUIRE(press);
    REQUIRE((*writer)->keepDefinition("press", press->id, text, *supervisor));
}

std::unique_ptr<MainWindow> openWindow(const QTemporaryDir& folder, const std::string& pressText)
{
    // The window remembers its place; these windows have one of their own.
    qputenv("XDG_CONFIG_HOME", folder.path().toUtf8());
    applyTheme(wantedTheme());
    Session::Options options;
    options.logbook = std::filesystem::path(folder.path().toStdString()) / "shop.logbook";
    options.resources = resources();
    options.loadDemo = true;
    if (!pressText.empty()) keepPress(options.logbook, pressText);
    auto window = std::make_unique<MainWindow>(options);
    window->setWindowState(Qt::WindowNoState);
    window->resize(kSmallScreen);
    window->show();
    window->activateWindow();
    REQUIRE(until([&] { return window->session()->isOpen() && !window->session()->busy(); }, 120000));
    return window;
}

QString listEntry(const QComboBox* list, const std::string& id)
{
    const int index = list->findData(QString::fromStdString(id));
    INFO(id);
    REQUIRE(index >= 0);
    return list->itemText(index);
}

QComboBox* listNamed(const QWidget* window, const char* name)
{
    for (QComboBox* one : window->findChildren<QComboBox*>())
        if (one->isVisible() && one->accessibleName() == QLatin1String(name)) return one;
    FAIL("no list is called " << name);
    return nullptr;
}

}  // namespace

std::string rightAnswer(const run::Run& run, const procedure::Step& step, const std::string& who)
{
    if (step.kind == procedure::StepKind::Hold) return who;
    if (step.kind == procedure::StepKind::Scan) return run.sources().roll.id;
    return walk::rightAnswer(run, step).entered;
}

Crew::Crew(Way way, const std::string& pressText) : hand(nullptr, way), m_window(openWindow(m_folder, pressText))
{
    hand = Hand(m_window.get(), way);
}

Crew::~Crew() = default;

QString Crew::pin(const char* id) const { return QString::fromStdString(person(id).chosen.pin); }
QString Crew::passphrase(const char* id) const { return QString::fromStdString(person(id).chosen.passphrase); }
QString Crew::name(const char* id) const { return QString::fromStdString(person(id).name); }
std::filesystem::path Crew::file() const { return m_window->session()->options().logbook; }

const run::Run& Crew::run()
{
    REQUIRE(session().run());
    return *session().run();
}

void Crew::settle()
{
    pass(1);
    REQUIRE(until([&] { return !session().busy(); }));
    pass(1);
}

void Crew::signIn(const char* id)
{
    if (session().actor()) {
        if (hand.way() == Way::Keys)
            hand.key(Qt::Key_L, Qt::ControlModifier);
        else
            hand.press(hand.mustWorded(QStringLiteral("Lock")));
        REQUIRE(until([&] { return !session().actor() && !session().busy(); }));
        auto* focus = qobject_cast<QLineEdit*>(hand.window()->focusWidget());
        REQUIRE(focus);
        CHECK(focus->accessibleName() == QStringLiteral("Your PIN"));
    }
    hand.choose(listNamed(hand.window(), "Who are you?"), name(id));
    QLineEdit* field = nullptr;
    for (QLineEdit* one : hand.window()->findChildren<QLineEdit*>())
        if (one->isVisible() && one->accessibleName() == QLatin1String("Your PIN")) field = one;
    hand.type(field, pin(id));
    if (hand.way() == Way::Keys)
        hand.key(Qt::Key_Return);
    else
        hand.press(hand.mustWorded(QStringLiteral("Sign in")));
    settle();
    REQUIRE(session().actor());
    CHECK(session().actor()->id().value == id);
}

void Crew::begin(const Choice& choice)
{
    const QWidget* window = hand.window();
    const auto pick = [&](const char* list, const std::string& id) {
        QComboBox* box = listNamed(window, list);
        if (box->currentData().toString().toStdString() != id) hand.choose(box, listEntry(box, id));
    };
    pick("Press", choice.press);
    pick("Job", choice.job);
    if (!choice.substrate.empty()) pick("Substrate", choice.substrate);
    pick("Roll", choice.roll);
    pick("Kind of run", choice.kind);
    hand.press(hand.mustWorded(choice.webInPress ? QStringLiteral("A web is in the press")
                                                 : QStringLiteral("The press is empty")));
    QAbstractButton* begin = hand.mustWorded(QStringLiteral("Begin the run"));
    const bool may = until([&] { return begin->isEnabled(); });
    INFO(hand.read().toStdString());
    REQUIRE(may);
    hand.press(begin);
    settle();
    REQUIRE(session().run());
    CHECK(page().isVisible());
}

const procedure::Step& Crew::next()
{
    const auto id = run().next();
    REQUIRE(id);
    const procedure::Step* step = run().plan().find(*id);
    REQUIRE(step);
    CHECK(page().shownStep() == *id);
    return *step;
}

void Crew::answer(const std::string& entered)
{
    const procedure::Step step = next();
    keepPicture(hand.window(), step.id.value);
    INFO(step.id.value << " = " << entered);
    if (const auto closed = run::closedBecause(run(), step.id); closed && closed->code == "gate.stop_held")
        while (!run().heldStops().empty()) {
            hand.hold(hand.must<QAbstractButton>("giveUp"));
            settle();
        }
    const std::size_t events = run().events().size();
    const QString text = QString::fromStdString(entered);
    switch (step.kind) {
    case procedure::StepKind::Confirm:
    case procedure::StepKind::Call: {
        auto* button = hand.must<QAbstractButton>("answer");
        if (qobject_cast<HoldButton*>(button))
            hand.hold(button);
        else
            hand.press(button);
        break;
    }
    case procedure::StepKind::Choice:
        for (const procedure::Choice& c : step.choices) {
            if (c.word != entered) continue;
            auto* button = hand.mustWorded(words(Text(c.say.empty() ? c.word : c.say), run().began().units));
            if (qobject_cast<HoldButton*>(button))
                hand.hold(button);
            else
                hand.press(button);
        }
        break;
    case procedure::StepKind::Reading: {
        if (hand.way() == Way::Mouse) {
            const qsizetype space = text.lastIndexOf(QLatin1Char(' '));
            const QString number = space < 0 ? text : text.left(space),
                          unit = space < 0 ? QString() : text.mid(space + 1);
            QAbstractButton* offered = unit.isEmpty() ? nullptr : hand.worded(unitText(unit.toStdString()));
            if (auto* pad = hand.seen<QAbstractButton>("padToggle"); pad && !pad->isChecked()) hand.press(pad);
            // What answers moves into the scrolled part when it leaves no room for what is asked.
            until([&] { return hand.seen<QLineEdit>("field"); }, 1000);
            if (offered && !offered->isChecked()) hand.press(offered);
            hand.type(hand.must<QLineEdit>("field"), offered ? number : text);
            hand.press(hand.must<QAbstractButton>("answer"));
        } else {
            hand.type(hand.must<QLineEdit>("field"), text);
            hand.key(Qt::Key_Return);
        }
        break;
    }
    case procedure::StepKind::Scan:
    case procedure::StepKind::Hold: {
        auto* field = hand.must<QLineEdit>("field");
        QAbstractButton* named = hand.way() == Way::Mouse ? hand.worded(text) : nullptr;
        if (named)
            hand.press(named);
        else
            hand.type(field, text);
        if (hand.way() == Way::Mouse)
            hand.press(hand.must<QAbstractButton>("answer"));
        else
            hand.key(Qt::Key_Return);
        break;
    }
    case procedure::StepKind::Motion: {
        for (QCheckBox* box : hand.window()->findChildren<QCheckBox*>(QStringLiteral("statement")))
            if (box->isVisible()) hand.press(box);
        hand.press(hand.must<QAbstractButton>("clear"));
        auto* done = hand.must<QAbstractButton>("done");
        REQUIRE(until([&] { return done->isEnabled(); }));
        hand.press(done);
        break;
    }
    }
    settle();
    INFO(hand.read().toStdString());
    REQUIRE(run().events().size() > events);
}

void Crew::answerWell()
{
    const procedure::Step& step = next();
    answer(rightAnswer(run(), step, run().operatorName()));
}

void Crew::walkTo(const std::string& wanted)
{
    for (int guard = 0; guard < 300; ++guard) {
        const auto id = run().next();
        if (!id || id->value == wanted) return;
        answerWell();
    }
    FAIL("never came to " << wanted);
}

void Crew::perform(const run::Command& command)
{
    QSignalSpy refused(&session(), &Session::refused);
    const std::size_t events = run().events().size();
    session().perform(command);
    settle();
    if (!refused.isEmpty()) FAIL(words(refused.at(0).at(0).value<Finding>(), UnitSystem::Metric).toStdString());
    REQUIRE(run().events().size() > events);
}

void Crew::skipTo(const std::function<bool(const procedure::Step&)>& wanted)
{
    for (int guard = 0; guard < 300; ++guard) {
        const auto id = run().next();
        if (!id) return;
        const procedure::Step step = *run().plan().find(*id);
        if (wanted(step)) return;
        if (const auto closed = run::closedBecause(run(), step.id); closed && closed->code == "gate.stop_held")
            while (!run().heldStops().empty()) perform(run::GiveUpStop{run().heldStops().front().holder});
        run::Answer answer = walk::rightAnswer(run(), step);
        answer.entered = rightAnswer(run(), step, run().operatorName());
        perform(answer);
    }
    FAIL("never came to the step that was wanted");
}

void Crew::skipTo(const std::string& step)
{
    skipTo([&](const procedure::Step& one) { return one.id.value == step; });
    if (!step.empty()) {
        REQUIRE(run().next());
        REQUIRE(run().next()->value == step);
    }
}

void Crew::act(RunAct act)
{
    const QString name = actName(act).remove(QLatin1Char('&'));
    if (QAbstractButton* button = hand.worded(name))
        hand.press(button);
    else
        hand.take(hand.must<QAbstractButton>("more"), name);
    settle();
}

void Crew::sign(const QString& remarks)
{
    QSignalSpy sealed(&session(), &Session::sealed);
    keepPicture(hand.window(), "sign");
    hand.type(hand.must<QLineEdit>("remarks"), remarks);
    hand.type(hand.must<QLineEdit>("passphrase"), passphrase(run().operatorId().c_str()));
    if (hand.way() == Way::Keys)
        hand.key(Qt::Key_Return);
    else
        hand.press(hand.must<QAbstractButton>("answer"));
    INFO(hand.read().toStdString());
    REQUIRE((!sealed.isEmpty() || sealed.wait(30000)));
    settle();
}

std::vector<std::string> Crew::sealedRuns() const
{
    const auto reader = logbook::openReader(file());
    REQUIRE(reader);
    records::RunQuery query;
    const auto page = (*reader)->runs(query, "");
    REQUIRE(page);
    std::vector<std::string> documents;
    for (const records::RunRow& row : page->rows) {
        if (row.seq == 0) continue;
        const auto seal = (*reader)->seal(row.seq);
        REQUIRE(seal);
        documents.insert(documents.begin(), seal->document);
    }
    return documents;
}

}  // namespace taut::app::hands
