// SPDX-License-Identifier: GPL-3.0-or-later
// The practice press as somebody meets it: by its door, its rows and its keys.
#include <catch2/catch.hpp>

#include <cstdio>

#include <QProcess>

#include "app/pages/practice/press_picture.h"
#include "app/pages/practice/strip_charts.h"
#include "app/pages/run/run_view.h"
#include "app/print/print.h"
#include "app/shell/practice_frame.h"
#include "app/shell/tongue.h"
#include "app/text/language.h"
#include "app/widgets/row_list.h"
#include "core/base/file.h"
#include "core/logbook/logbook.h"
#include "core/records/sheet.h"
#include "tests/app/practice/practice_support.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

namespace {

std::filesystem::path practiceFile(const PracticeWindow& w)
{
    return std::filesystem::path(w.folder.path().toStdString()) / "tautweb" / "practice.logbook";
}

/// For so long what happened takes no key and no click.
constexpr int kReadMs = 1100;

/// What was done, as a file of actions.
std::string asToml(const std::vector<practice::Action>& actions)
{
    std::string text = "format = 1\naction = [\n";
    for (const practice::Action& one : actions) {
        const auto* done = one.act ? std::get_if<practice::Deed>(&*one.act) : nullptr;
        const practice::Deed deed = done != nullptr ? *done : practice::Deed{"wait"};
        char after[32];
        std::snprintf(after, sizeof after, "%.2f s", one.after.si());
        text += "  { after = \"" + std::string(after) + "\", do = \"" + deed.what + "\"";
        if (!deed.item.empty()) text += ", item = \"" + deed.item + "\"";
        if (deed.to) {
            const std::string unit(siUnit(deed.to->kind()).symbol);
            char value[48];
            std::snprintf(value, sizeof value, "%.17g %s", deed.to->si(), unit.c_str());
            text += ", to = \"" + std::string(value) + "\"";
        }
        if (done != nullptr) text += std::string(", on = ") + (deed.on ? "true" : "false");
        text += " },\n";
    }
    return text + "]\n";
}

}  // namespace

TEST_CASE("the door to the practice press stays closed while a run is open at this PC, and says what to do")
{
    PracticeWindow w;
    begin(w.session());
    w.door(Qt::Key_4);
    auto* why = visible<QLabel>(w.window, "whyClosed");
    REQUIRE(why);
    CHECK(why->text().contains(QString::fromStdString(w.session().run()->id())));
    CHECK(why->text().contains(QStringLiteral("abandon")));
    CHECK(visible<ChooseLesson>(w.window) == nullptr);
    CHECK_FALSE(w.window.findChild<PracticeFrame*>()->isHatched());
    // Left open is open as well.
    w.session().leaveRun();
    until([&] { return w.session().run() == nullptr && !w.session().busy(); }, "left");
    w.door(Qt::Key_4);
    CHECK(visible<QLabel>(w.window, "whyClosed"));
    w.click("toOpenRun");
    CHECK(visible<QLabel>(w.window, "whyClosed") == nullptr);
    CHECK_FALSE(std::filesystem::exists(practiceFile(w)));
    // Ended, it opens, and warns where the scenario is about the press at which this PC stands.
    w.session().resume(QString::fromStdString(w.session().openRuns().front()));
    until([&] { return w.session().run() != nullptr && !w.session().busy(); }, "taken up again");
    w.session().finish(run::Abandon{"only tried"}, passphraseOf(w.session(), "p-2"));
    until([&] { return w.session().run() == nullptr && !w.session().busy(); }, "abandoned");
    w.door(Qt::Key_4);
    CHECK(visible<ChooseLesson>(w.window));
    CHECK(visible<QLabel>(w.window, "pressHere"));
}

TEST_CASE("a lesson belongs to whoever is signed in, and names no fault of its scenario")
{
    PracticeWindow w;
    w.door(Qt::Key_4);
    CHECK(w.window.findChild<PracticeFrame*>()->isHatched());
    auto* chooser = visible<ChooseLesson>(w.window);
    REQUIRE(chooser);
    chooser->open(w.session().options().resources / "demo/scenarios/knocked_roll.toml");
    CHECK(w.said().contains(QStringLiteral("PRACTICE")));
    for (const std::string& fault : practice::faultNames())
        CHECK_FALSE(w.said().contains(QString::fromStdString(fault)));
    w.session().signOut();
    until([&] { return !w.session().actor() && !w.session().busy(); }, "locked");
    CHECK_FALSE(visible<QAbstractButton>(w.window, "beginLesson")->isEnabled());
    CHECK(w.said().contains(QStringLiteral("Sign in first")));
}

TEST_CASE("done by the book on the page the web runs, and the same deeds at the same times are the same to the command")
{
    PracticeWindow w;
    w.begin();
    byTheBook(w);
    w.wait(10);
    CHECK(w.practice().happened() == nullptr);
    CHECK(w.world().consequences().empty());
    CHECK(w.world().speed().si() == Approx(10.0 / 60));  // the profile's idle, 10 m/min
    const std::vector<practice::Action> actions = w.practice().actions();
    CHECK(actions.size() > 35);

    // The command plays them from the beginning: the last line of its trace is where the page is.
    std::vector<practice::Action> all = actions;
    double done = 0;
    for (const practice::Action& one : actions) done += one.after.si();
    const double now = std::round((w.world().time() - done) / 0.01) * 0.01;
    all.push_back({Time::si(now), std::nullopt});
    const std::filesystem::path folder(w.folder.path().toStdString());
    REQUIRE(writeFile(folder / "actions.toml", asToml(all)));
    QProcess command;
    command.start(
        QStringLiteral(TAUTWEB_BINARY_DIR "/tautweb"),
        {QStringLiteral("practice"), QStringLiteral("--scenario"),
         QString::fromStdString((w.session().options().resources / "demo/scenarios/quiet_morning.toml").string()),
         QStringLiteral("--actions"), QString::fromStdString((folder / "actions.toml").string()),
         QStringLiteral("--trace"), QString::fromStdString((folder / "trace.csv").string()), QStringLiteral("--json")});
    REQUIRE(command.waitForFinished(kPatience));
    INFO(command.readAllStandardError().toStdString());
    CHECK(command.exitCode() == 0);
    const auto trace = readFile(folder / "trace.csv");
    REQUIRE(trace);
    const QStringList lines = QString::fromStdString(*trace).split(QStringLiteral("\r\n"), Qt::SkipEmptyParts);
    // A line is a tenth of a second; the page's samples are taken at the same ticks, and are kept for a minute.
    const auto figure = [](double value) { return QString::asprintf("%.7g", value); };
    const std::size_t spans = w.world().line().web.spans.size();
    int compared = 0;
    for (const StripSample& sample : w.practice().samples())
        for (const QString& line : lines) {
            const QStringList cells = line.split(QLatin1Char(','));
            if (cells.front() != figure(sample.at)) continue;
            ++compared;
            for (std::size_t i = 0; i < w.world().line().places.size(); ++i)
                CHECK(cells[static_cast<int>(4 + spans + i)] == figure(sample.places[i]));
            // A zone's tension is the largest of its spans, which the trace has each.
            for (std::size_t z = 0; z < sample.tensions.size(); ++z) {
                const practice::LineZone& zone = w.world().line().zones[z];
                QStringList of =
                    cells.mid(static_cast<int>(4 + zone.first), static_cast<int>(zone.last - zone.first + 1));
                CHECK(of.contains(figure(sample.tensions[z])));
            }
        }
    CHECK(compared > 300);
}

TEST_CASE("what the press refuses is said beside the control that was used")
{
    PracticeWindow w;
    w.begin();
    HandleRow& run = w.row("run");
    auto* button = run.findChild<QAbstractButton*>(QStringLiteral("do"));
    const QString first = button->text();
    button->click();
    CHECK(button->text() != first);
    CHECK(w.practice().actions().empty());  // a movement takes two touches
    CHECK(run.refusal().isEmpty());
    button->click();
    REQUIRE(w.practice().actions().size() == 1);
    CHECK(run.refusal().contains(QStringLiteral("no power")));
    CHECK(w.row("stop").refusal().isEmpty());
    // A value that is none never comes to the press.
    w.touch("unwind_setting", {}, "seven");
    CHECK(w.practice().actions().size() == 1);
    CHECK_FALSE(w.row("unwind_setting").refusal().isEmpty());
}

TEST_CASE("time stops with what happened, which names the step that guards against it and leads to it")
{
    PracticeWindow w;
    w.begin();
    w.touch("air_supply");
    w.touch("roll_to_lift");
    w.touch("lift_pressure", {}, "0.5 bar");
    w.touch("lift_up");
    w.practice().setPace(Pace::FourTimes);
    until([&] { return w.practice().happened() != nullptr; }, "something happened");
    CHECK(w.practice().happened()->code == "lift.stays");
    CHECK(w.practice().pace() == Pace::Stopped);
    CHECK(w.said().contains(QStringLiteral("What happened")));
    CHECK(w.said().contains(QStringLiteral("does not raise the roll")));
    const double stood = w.world().time();
    w.click("pace2");
    QTest::qWait(120);
    CHECK(w.world().time() == stood);  // until it was looked at
    auto* step = visible<QAbstractButton>(w.window, "guardedBy");
    REQUIRE(step);
    const std::string id = step->property("step").toString().toStdString();
    const procedure::Step* found = w.practice().runs()->run()->plan().find(procedure::StepId{id});
    REQUIRE(found);
    CHECK(found->target == "lift.pressure");
    step->click();
    auto* page = visible<RunView>(w.window);
    REQUIRE(page);
    CHECK(page->shownStep().value == id);
    QTest::qWait(kReadMs);
    w.click("goOn");
    CHECK(w.practice().happened() == nullptr);
    CHECK(w.practice().pace() == Pace::FourTimes);
    // Begun again it is as it was: the same number, the same chances.
    w.practice().setPace(Pace::Stopped);
    const std::uint64_t seed = w.practice().lesson()->scenario.seed;
    w.touch("lift_down");
    w.touch("lift_up");
    w.practice().goOn();
    w.click("endLesson");
    CHECK(w.practice().lesson() == nullptr);
    w.click("toScenarios");
    CHECK(visible<ChooseLesson>(w.window));
    w.click("beginLesson");
    REQUIRE(w.practice().lesson());
    CHECK(w.practice().lesson()->scenario.seed == seed);
    CHECK(w.practice().actions().empty());
}

TEST_CASE("time goes on as it was told, and says so when the PC does not keep up")
{
    PracticeWindow w;
    w.begin();
    const auto goes = [&](Pace pace) {
        const double before = w.world().time();
        QElapsedTimer clock;
        clock.start();
        w.practice().setPace(pace);
        QTest::qWait(1000);
        w.practice().setPace(Pace::Stopped);
        const double passed = static_cast<double>(clock.nsecsElapsed()) / 1e9;
        return (w.world().time() - before) / passed;
    };
    CHECK(goes(Pace::Stopped) == 0);
    // Never faster than was asked; how much slower is the machine's affair, which is busy with other tests.
    const double quarter = goes(Pace::Quarter), real = goes(Pace::Real), four = goes(Pace::FourTimes);
    CHECK(quarter > 0);
    CHECK(quarter < 0.27);
    CHECK(real > 0);
    CHECK(real < 1.05);
    CHECK(four > 0);
    CHECK(four < 4.2);
    CHECK(goes(Pace::Fastest) > 0);
    // The window's page stands still when nobody looks at it.
    w.practice().setPace(Pace::Real);
    w.door(Qt::Key_2);
    CHECK(w.practice().pace() == Pace::Stopped);
}

TEST_CASE("nothing of a lesson reaches the shop's logbook, and its own file is of another kind")
{
    PracticeWindow w;
    const auto before = w.session().reader()->anchor();
    REQUIRE(before);
    w.begin();
    PracticeSession& practice = w.practice();
    const run::Run* run = practice.runs()->run();
    CHECK(run->began().practice);
    const procedure::StepId first = *run->next();
    practice.setPace(Pace::Fastest);
    until([&] { return practice.world()->time() > 1; }, "time went on");
    practice.setPace(Pace::Stopped);
    practice.runs()->perform(run::Answer{first, "yes", {}});
    until([&] { return !practice.runs()->busy(); }, "answered");
    if (practice.answeredAt().empty()) {
        practice.runs()->perform(run::Answer{first, "done", {}});
        until([&] { return !practice.runs()->busy(); }, "answered");
    }
    REQUIRE(practice.answeredAt().size() == 1);
    CHECK(practice.answeredAt().front().step == first);
    CHECK(practice.answeredAt().front().at == practice.world()->time());

    const auto after = w.session().reader()->anchor();
    REQUIRE(after);
    CHECK(after->count == before->count);
    CHECK(after->link == before->link);
    CHECK(w.session().openRuns().empty());
    const auto asShop = logbook::openReader(practiceFile(w));
    REQUIRE_FALSE(asShop);
    CHECK(asShop.error().code == "logbook.practice");
    CHECK(logbook::openReader(practiceFile(w), true));
    // Nor does the session of the shop begin a lesson.
    w.session().beginLesson("Somebody", practice.lesson()->sources);
    QSignalSpy refused(&w.session(), &Session::refused);
    until([&] { return !w.session().busy(); }, "refused");
    CHECK(refused.count() == 1);
    CHECK(w.session().run() == nullptr);

    // The next lesson ends what this one left open, and the file stays in order.
    w.click("endLesson");
    w.click("toScenarios");
    w.click("beginLesson");
    until(
        [&] {
            return practice.runs()->run() != nullptr && practice.runs()->openRuns().size() == 1 &&
                   !practice.runs()->busy() && practice.runs()->run()->events().size() == 1;
        },
        "the next has begun");
    const auto verified = logbook::verify(practiceFile(w), {}, logbook::Depth::Deep);
    REQUIRE(verified);
    CHECK(verified->findings.empty());
}

TEST_CASE("the word PRACTICE stands on every page of a practice sheet, and on no other")
{
    PracticeWindow w;
    w.begin();
    const std::string id = w.practice().runs()->run()->id();
    const auto report = records::sheetOf(*w.practice().runs()->reader(), id);
    REQUIRE(report);
    const std::filesystem::path file = std::filesystem::path(w.folder.path().toStdString()) / "sheet.pdf";
    const auto printed = print::writePdf(*report, file, print::Paper::A4);
    REQUIRE(printed);
    CHECK(printed->overflow.empty());
    QProcess read;
    read.start(QStringLiteral("pdftotext"), {QString::fromStdString(file.string()), QStringLiteral("-")});
    REQUIRE(read.waitForFinished(kPatience));
    const QString text = QString::fromUtf8(read.readAllStandardOutput());
    CHECK(text.count(QStringLiteral("PRACTICE: ")) == printed->pages);
    // By the page: the sheet of the run comes up, with the word over it.
    visible<RunView>(w.window)->begin(RunAct::Sheet);
    CHECK(visible<QAbstractButton>(w.window, "leaveSheet"));
    CHECK(visible<QLabel>(w.window, "practiceWord"));
    w.click("leaveSheet");
    CHECK(visible<HandleRow>(w.window));
    w.click("endLesson");
    w.door(Qt::Key_1);
    CHECK(visible<QLabel>(w.window, "practiceWord") == nullptr);
    begin(w.session());
    const auto real = records::sheetOf(*w.session().reader(), w.session().run()->id());
    REQUIRE(real);
    CHECK(real->practice.empty());
}

TEST_CASE("a practice run that is given up is signed with the secrets that stand there, and the press goes on")
{
    PracticeWindow w;
    w.begin();
    CHECK(w.said().contains(QStringLiteral("practice press only")));
    Session& runs = *w.practice().runs();
    runs.finish(run::Abandon{"enough for today"}, QStringLiteral("something else entirely"));
    until([&] { return !runs.busy(); }, "refused");
    CHECK(runs.run());
    QSignalSpy sealed(&runs, &Session::sealed);
    runs.finish(run::Abandon{"enough for today"}, QStringLiteral("practice press only"));
    until([&] { return !runs.busy(); }, "sealed");
    CHECK(sealed.count() == 1);
    CHECK(w.practice().isRunOver());
    CHECK(visible<QLabel>(w.window, "runOver"));
    CHECK(visible<RunView>(w.window) == nullptr);
    w.touch("main_disconnect");
    CHECK(w.world().press().mains);
    // The window stays behind this door: what is sealed in practice belongs to no history of the shop.
    CHECK(visible<QLabel>(w.window, "practiceWord"));
}

TEST_CASE("somebody who mistyped the passphrase of practice too often begins the next lesson all the same")
{
    PracticeWindow w;
    w.begin();
    Session& runs = *w.practice().runs();
    QSignalSpy refused(&runs, &Session::refused);
    const auto tries = [&](const char* passphrase) {
        runs.finish(run::Abandon{"enough"}, QString::fromLatin1(passphrase));
        until([&] { return !runs.busy(); }, "refused or sealed");
    };
    for (int i = 0; i < people::kTriesBeforeWait; ++i) tries("not the passphrase");
    tries("practice press only");
    REQUIRE(refused.count() == people::kTriesBeforeWait + 1);
    CHECK(refused.last().front().value<Finding>().code == "sign_in.wait");
    w.click("endLesson");
    w.click("beginLesson");
    until([&] { return runs.run() != nullptr && !runs.busy() && runs.run()->events().size() == 1; }, "begun again");
    CHECK(refused.count() == people::kTriesBeforeWait + 1);
    tries("practice press only");
    CHECK(w.practice().isRunOver());
}

TEST_CASE("another language in the middle of a lesson changes its words and nothing of its world")
{
    struct Back {
        ~Back() { setLanguage(QStringLiteral("en")); }
    } back;
    PracticeWindow w;
    w.begin();
    w.touch("main_disconnect");
    w.wait(1);
    const double stood = w.world().time();
    w.window.findChild<Tongue*>()->choose({QStringLiteral("de"), {}, false});
    until([&] { return w.said().contains(QStringLiteral("\u00DCBUNG")); }, "it speaks German");
    CHECK(w.world().time() == stood);
    CHECK(w.world().press().mains);
    CHECK(w.practice().actions().size() == 1);
    CHECK(visible<RunView>(w.window));
    w.touch("air_supply");
    CHECK(w.world().press().air);
    // What somebody chose is kept for them, and the next test's window would speak so as well.
    w.window.findChild<Tongue*>()->choose({QStringLiteral("en"), {}, false});
    until([&] { return w.said().contains(QStringLiteral("PRACTICE")); }, "it speaks English");
}

TEST_CASE("the strip charts tell the last minute zone by zone, with the window of the job")
{
    PracticeWindow w;
    w.begin();
    w.wait(3);
    const auto charts = stripChartsOf(w.practice());
    REQUIRE(charts.size() == w.world().line().zones.size() + 1);
    for (std::size_t i = 0; i + 1 < charts.size(); ++i) {
        CHECK(charts[i].lines.size() == 1);
        CHECK(charts[i].band);
        CHECK(charts[i].lines.front().points.front().first.si() == Approx(-60));
        CHECK(charts[i].lines.front().points.back().first.si() == Approx(0).margin(1e-9));
    }
    CHECK(charts.back().lines.size() >= 3);  // the guide and two stations
}

TEST_CASE("where nothing is to move by itself the press is told by words and figures alone")
{
    PracticeWindow w;
    w.begin();
    byTheBook(w);
    w.wait(2);
    const auto marks = [&] {
        w.wait(0.1);
        auto* picture = visible<PressPicture>(w.window);
        REQUIRE(picture);
        std::size_t all = 0;
        for (const LivePress::Span& span : picture->press().spans) all += span.marks.size();
        return all;
    };
    CHECK(marks() > 0);
    CAPTURE(visible<QLabel>(w.window, "lamps")->accessibleName().toStdString(), w.world().speed().si(),
            w.world().time());
    CHECK(visible<QLabel>(w.window, "lamps")->accessibleName().contains(QStringLiteral("Moves")));
    ThemeChoice still;
    still.still = true;
    applyTheme(still);
    CHECK(marks() == 0);
    applyTheme({});
}

TEST_CASE("web hangs where nothing pulls it, has its ends where it is parted, and is straight where it is taut")
{
    using State = LivePress::Span::State;
    PracticeWindow w;
    w.begin();
    const inputs::Press& press = *w.practice().lesson()->inputs.press;
    const auto now = [&] { return livePressOf(w.world(), press, {}); };
    LivePress live = now();
    const std::size_t table = *live.table;
    CHECK_FALSE(live.hung);
    CHECK(live.spans[0].state == State::None);
    CHECK(live.spans[table].state == State::Broken);
    CHECK(live.spans.back().state == State::Broken);
    CHECK(live.spans[table + 1].state == State::Slack);
    CHECK(live.spans[table + 1].hangs > 0);
    for (const LivePress::Guard& guard : live.guards) CHECK(guard.open);
    byTheBook(w);
    w.wait(8);
    live = now();
    CHECK(live.hung);
    CHECK(live.joint);
    for (const LivePress::Span& span : live.spans) {
        CHECK(span.state == State::Taut);
        for (const double mark : span.marks) CHECK((mark >= 0 && mark <= 1));
    }
    for (const LivePress::Guard& guard : live.guards) CHECK_FALSE(guard.open);
    for (const auto& [roller, closed] : live.nips) CHECK(closed);
    // Marks go with the web: a little later each is a little further on.
    const auto at = [&] {
        const auto marks = now().spans[1].marks;
        REQUIRE_FALSE(marks.empty());
        return marks;
    };
    const double length = w.world().line().web.spans[1].si(), first = at().front(), then = w.world().time();
    w.wait(0.05);
    // Speed is steady by now; one mark is as good as another, and they stand 0.4 m of web apart.
    const double went = w.world().speed().si() * (w.world().time() - then) / length;
    double nearest = 1;
    for (const double mark : at())
        for (const int others : {-2, -1, 0, 1, 2})
            nearest = std::min(nearest, std::abs(mark - first - went + others * 0.4 / length));
    CHECK(nearest < 0.02);
    // The longer the step from one picture to the next, the fewer marks: they never seem to run backwards.
    std::size_t few = 0, many = 0;
    for (const LivePress::Span& span : livePressOf(w.world(), press, Length::si(1)).spans) few += span.marks.size();
    for (const LivePress::Span& span : now().spans) many += span.marks.size();
    CHECK(few < many);
}

TEST_CASE("a lesson stands still behind a locked screen, and another person begins their own")
{
    PracticeWindow w;
    w.begin();
    w.practice().setPace(Pace::Real);
    w.session().signOut();
    until([&] { return !w.session().actor() && !w.session().busy(); }, "locked");
    CHECK(w.practice().pace() == Pace::Stopped);
    CHECK(w.practice().lesson());
    signIn(w.session(), "p-2");
    CHECK(w.practice().lesson());
    w.session().signOut();
    until([&] { return !w.session().actor() && !w.session().busy(); }, "locked");
    signIn(w.session(), "p-1");
    CHECK(w.practice().lesson() == nullptr);
}

TEST_CASE("a scenario of one's own about a press of inches, dancers and load cells opens as well")
{
    PracticeWindow w;
    const std::filesystem::path file = std::filesystem::path(w.folder.path().toStdString()) / "south.toml";
    REQUIRE(writeFile(file,
                      "format = 1\n[scenario]\nid = \"south_own\"\ntitle = \"The south press\"\npress = \"south\"\n"
                      "job = \"J-2103\"\nroll = \"R0048\"\nseed = 5\n"));
    w.door(Qt::Key_4);
    visible<ChooseLesson>(w.window)->open(file);
    CHECK(visible<RowList>(w.window)->currentItem()->text().contains(QStringLiteral("The south press")));
    w.click("beginLesson");
    until([&] { return w.practice().lesson() == nullptr || w.practice().runs()->run() != nullptr; },
          "begun or refused");
    REQUIRE(w.practice().lesson());
    w.practice().setPace(Pace::Stopped);
    w.touch("main_disconnect");
    w.touch("run", {}, "50 ft/min");
    CHECK(std::get<practice::Deed>(*w.practice().actions().back().act).to->si() == Approx(50 * 0.3048 / 60));
    // One that names what nobody knows is told so.
    REQUIRE(writeFile(file,
                      "format = 1\n[scenario]\nid = \"x\"\npress = \"nowhere\"\njob = \"J-2103\"\nroll = \"R0048\"\n"));
    w.click("endLesson");
    w.click("toScenarios");
    visible<ChooseLesson>(w.window)->open(file);
    w.click("beginLesson");
    CHECK(w.said().contains(QStringLiteral("nowhere")));
    CHECK(w.practice().lesson() == nullptr);
}

TEST_CASE("what happened is not gone on from, nor the lesson begun anew, by keys and clicks meant for what stood there")
{
    PracticeWindow w;
    w.begin();
    w.touch("air_supply");
    w.touch("roll_to_lift");
    w.touch("lift_pressure", {}, "0.5 bar");
    w.touch("lift_up");
    w.wait(1);
    REQUIRE(w.practice().happened());
    const std::size_t done = w.practice().actions().size();
    QWidget* focus = w.window.focusWidget();
    REQUIRE(focus);
    CHECK(focus->objectName() == QStringLiteral("goOn"));
    for (const Qt::Key key : {Qt::Key_Space, Qt::Key_Return}) QTest::keyClick(focus, key);
    for (const char* button : {"goOn", "again", "againOther"}) w.click(button);
    CHECK(w.practice().happened() != nullptr);
    REQUIRE(w.practice().lesson());
    CHECK(w.practice().actions().size() == done);
    QTest::qWait(kReadMs);
    QTest::keyClick(focus, Qt::Key_Space);
    CHECK(w.practice().happened() == nullptr);
}

TEST_CASE("what happens while a step is answered leaves the keys where they are")
{
    PracticeWindow w;
    w.begin();
    w.touch("air_supply");
    w.touch("roll_to_lift");
    w.touch("lift_pressure", {}, "0.5 bar");
    w.touch("lift_up");
    auto* answer = visible<QAbstractButton>(w.window, "answer");
    REQUIRE(answer);
    answer->setFocus();
    w.wait(1);
    REQUIRE(w.practice().happened());
    CHECK(w.window.focusWidget() == answer);
}
