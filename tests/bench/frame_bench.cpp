// SPDX-License-Identifier: GPL-3.0-or-later
// How long the window stands still at most while somebody goes through every door and page of it and sets a press up
// from the first step to the seal. Usage: frame_bench STORE; STORE is a made store with full runs, it is copied.
// Without a display. Exit 1 when a limit is not kept.
#include <cstdio>
#include <cstdlib>
#include <filesystem>

#include <QAbstractButton>
#include <QComboBox>
#include <QLineEdit>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include "app/pages/run/run_view.h"
#include "app/pages/setup/definition_editor.h"
#include "app/seams/demo_shop.h"
#include "app/seams/resources.h"
#include "app/sessions/asker.h"
#include "app/shell/main_window.h"
#include "app/widgets/row_list.h"
#include "app/widgets/theme.h"
#include "core/units/plain.h"
#include "tests/bench/at_press.h"
#include "tests/bench/told.h"
#include "tests/bench/window_timed.h"

using namespace taut;
using namespace taut::app;

namespace {

namespace fs = std::filesystem;

constexpr double kMostMs = 50;
constexpr int kPatience = 60'000;

[[noreturn]] void end(const std::string& why)
{
    std::fprintf(stderr, "%s\n", why.c_str());
    std::exit(4);
}

/// Somebody at the window of a logbook.
class Visit {
public:
    Visit(bench::LongestEvents& longest, MainWindow& window) : m_longest(longest), m_window(window) {}

    void everywhere()
    {
        locked();
        signIn("p-2");
        startPage();
        setUp();
        signIn("p-1");
        history();
        shop();
        key("the practice door", Qt::Key_4, Qt::AltModifier);
        help();
    }

private:
    [[nodiscard]] Session& session() { return *m_window.session(); }

    void settle()
    {
        const auto askers = m_window.findChildren<Asker*>();
        const auto still = [&] {
            return !session().busy() &&
                   std::none_of(askers.begin(), askers.end(), [](const Asker* one) { return one->busy(); });
        };
        QTest::qWait(15);
        if (!QTest::qWaitFor(still, kPatience)) end("the window does not come to rest");
        QTest::qWait(15);
    }
    /// Done inside an event, as a touch would.
    void act(const std::string& name, const std::function<void()>& work)
    {
        m_longest.measure(name, [&] {
            QTimer::singleShot(0, &m_window, work);
            settle();
        });
    }
    void key(const std::string& name, Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier)
    {
        m_longest.measure(name, [&] {
            QTest::keyClick(m_window.windowHandle(), key, with);
            settle();
        });
    }
    void click(const std::string& name, QAbstractButton* button)
    {
        if (button == nullptr) end("there is no button for: " + name);
        act(name, [button] { button->click(); });
    }
    template <class W>
    [[nodiscard]] W* visible(const QWidget& in, const char* name = nullptr) const
    {
        for (W* one : name == nullptr ? in.findChildren<W*>() : in.findChildren<W*>(QLatin1String(name)))
            if (one->isVisible()) return one;
        return nullptr;
    }
    void named(const std::string& name, const char* button) { click(name, visible<QAbstractButton>(m_window, button)); }
    void worded(const std::string& name, const char* words)
    {
        QAbstractButton* found = nullptr;
        for (auto* one : m_window.findChildren<QAbstractButton*>())
            if (found == nullptr && one->isVisible() && one->isEnabled() && one->text() == QLatin1String(words))
                found = one;
        click(name, found);
    }
    void signIn(const std::string& id)
    {
        const auto people = demoPeople(session().options().resources);
        for (const DemoPerson& one : *people)
            if (one.id.value == id)
                act("signed in",
                    [&] { session().signIn(QString::fromStdString(id), QString::fromStdString(one.chosen.pin)); });
        if (!session().actor() || session().actor()->id().value != id) end("nobody signed in");
    }

    void locked()
    {
        key("history, locked", Qt::Key_2, Qt::AltModifier);
        key("shop, locked", Qt::Key_3, Qt::AltModifier);
        key("start, locked", Qt::Key_1, Qt::AltModifier);
    }
    void startPage()
    {
        worded("other values", "Try other values");
        worded("back to the real roll", "Back to the real roll");
        named("another roll", "otherRoll");
        named("another roll, no", "cancel");
        named("the job returns", "earlier");
        named("leaves that", "leaveReturn");
    }

    [[nodiscard]] run::Source newest(const char* what, const std::string& id)
    {
        for (const logbook::Definition& one : session().definitions(what))
            if (one.source.id == id) return one.source;
        end("the logbook lacks " + id);
    }
    /// A cold start, from its beginning to its seal.
    void setUp()
    {
        logbook::OpenRun::Beginning beginning;
        beginning.sources = {newest("press", "north"),
                             newest("job", "J-2101"),
                             newest("substrate", "paper-label-80"),
                             {},
                             newest("procedure", "cold_start"),
                             {}};
        for (const InputFile& roll : shopFiles(session().options().resources, "roll"))
            if (roll.id == "R0041") beginning.sources.roll = run::sourceOf(roll.id, 0, roll.text);
        act("a run begins", [&] { session().begin(beginning); });
        if (session().run() == nullptr) end("no run began");
        auto& view = *m_window.findChild<RunView*>();
        const std::pair<const char*, RunAct> acts[] = {{"run: a note", RunAct::Note},
                                                       {"run: a file", RunAct::Attach},
                                                       {"run: another roll", RunAct::ChangeRoll},
                                                       {"run: a stage again", RunAct::Repeat},
                                                       {"run: a stop held", RunAct::HoldStop},
                                                       {"run: looked through", RunAct::Review}};
        for (const auto& [name, one] : acts) {
            act(name, [&view, what = one] { view.begin(what); });
            m_longest.measure(std::string(name) + ", left", [&] {
                QTest::keyClick(&view, Qt::Key_Escape);
                settle();
            });
        }
        Chance chance(1);
        while (session().run()->next()) {
            const run::Command deed = bench::nextDeed(*session().run(), chance);
            const std::size_t before = session().run()->events().size();
            act("run: an answer, and the next step", [&] { session().perform(deed); });
            if (session().run()->events().size() == before) end("an answer was refused");
        }
        act("run: signed and sealed",
            [&] { session().finish(run::SignOff{}, QStringLiteral("copper kettle by the window")); });
        if (session().run() != nullptr) end("the run was not sealed");
    }

    void history()
    {
        key("history", Qt::Key_2, Qt::AltModifier);
        named("history, the best to compare with", "best");
        named("history, to narrow", "narrow");
        named("history, narrowed", "narrow");
        for (const char* desk : {"deskWaiting", "deskDrift", "deskTime", "deskWeek", "deskRuns"})
            named(std::string("history, ") + desk, desk);
    }
    void shop()
    {
        key("shop", Qt::Key_3, Qt::AltModifier);
        worded("shop, to enrol", "Enrol somebody");
        named("shop, nobody after all", "cancel");
        worded("shop, this PC", "This PC");
        named("shop again", "pcDone");
        worded("definitions", "Presses, jobs, substrates, procedures");
        worded("a press", "Open");
        auto* editor = visible<DefinitionEditor>(m_window);
        auto* tables = editor == nullptr ? nullptr : visible<RowList>(*editor);
        if (tables == nullptr) end("no press was opened");
        for (int i = 0; i < tables->count(); ++i) act("a press, each of its tables", [=] { tables->setCurrentRow(i); });
        worded("a press, which targets change", "Which tar&gets change");
        worded("a press, as text", "As te&xt");
        worded("back to the list", "&Back to the list");
        auto* list = visible<RowList>(m_window);
        act("a procedure is chosen", [=] { list->setCurrentRow(list->count() - 1); });
        worded("a procedure", "Open");
        worded("back to the list", "&Back to the list");
    }
    void help()
    {
        key("help", Qt::Key_F1);
        named("the look round", "tour");
        while (auto* on = visible<QAbstractButton>(m_window, "tourOn")) click("the look round, on", on);
    }

    bench::LongestEvents& m_longest;
    MainWindow& m_window;
};

void visited(bench::LongestEvents& longest, const fs::path& store, const std::string& resources)
{
    const QTemporaryDir folder;
    Session::Options options;
    options.logbook = fs::path(folder.path().toStdString()) / "shop.logbook";
    options.resources = resources;
    fs::copy_file(store, options.logbook);
    MainWindow window(options);
    window.setWindowState(Qt::WindowNoState);
    window.resize(1366, 740);
    longest.measure("the window opens", [&] {
        window.show();
        window.activateWindow();
        if (!QTest::qWaitFor([&] { return window.session()->isOpen() && !window.session()->busy(); }, kPatience))
            end("the logbook does not open");
        QTest::qWait(200);
    });
    Visit(longest, window).everywhere();
}

}  // namespace

int main(int argc, char** argv)
{
    if (argc < 2) {
        std::fprintf(stderr, "frame_bench STORE\n");
        return 2;
    }
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QTemporaryDir folder;
    qputenv("XDG_CONFIG_HOME", folder.path().toUtf8());  // nobody's settings are read or written
    bench::TimedApplication app(argc, argv);
    applyTheme({});
    const auto resources = resourcesFolder();
    if (!resources) end(sentence(resources.error()));
    bench::LongestEvents longest(app);
    constexpr int kRounds = 3;
    for (int round = 0; round < kRounds; ++round) visited(longest, argv[1], *resources);
    longest.print(kMostMs);
    const bench::LongestEvents::Step most = longest.longest();
    return bench::tell({"longest frame through all pages: " + most.name, most.most, 0, kMostMs, bench::Held::AtMost})
               ? 0
               : 1;
}
