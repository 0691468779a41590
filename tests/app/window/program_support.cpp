// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/window/program_support.h"

#include <catch2/catch.hpp>

#include <QElapsedTimer>
#include <QJsonArray>
#include <QJsonDocument>
#include <QProcessEnvironment>

#include "app/seams/demo_shop.h"
#include "app/seams/resources.h"
#include "core/base/clock.h"
#include "core/base/id_source.h"
#include "core/logbook/open_run.h"
#include "tests/app/run_page/walk_support.h"

namespace taut::app::hands {

namespace {

constexpr int kPatience = 30000;

std::vector<DemoPerson> people()
{
    const auto resources = resourcesFolder();
    REQUIRE(resources);
    const auto all = demoPeople(*resources);
    REQUIRE(all);
    return *all;
}

const QJsonObject* find(const QJsonArray& buttons, const QString& nameOrWords, QJsonObject& into)
{
    for (const auto& one : buttons) {
        into = one.toObject();
        if (into[QStringLiteral("name")] == nameOrWords || into[QStringLiteral("words")] == nameOrWords) return &into;
    }
    return nullptr;
}

}  // namespace

bool Sight::has(const QString& nameOrWords) const
{
    QJsonObject one;
    return find(buttons, nameOrWords, one) != nullptr;
}

bool Sight::ready(const QString& nameOrWords) const
{
    QJsonObject one;
    return find(buttons, nameOrWords, one) != nullptr && one[QStringLiteral("enabled")].toBool();
}

Program::Program()
{
    // The shop is there already: a sync that takes its time would make the first start a long one.
    const SystemClock clock;
    RandomIds ids;
    const auto resources = resourcesFolder();
    REQUIRE(resources);
    auto writer = logbook::Writer::open(logbook(), clock, ids, {false, "test", 0});
    REQUIRE(writer);
    REQUIRE(fillWithDemoShop(**writer, *resources));
}

void Program::bringTo(const std::string& step)
{
    const SystemClock clock;
    RandomIds ids;
    auto writer = logbook::Writer::open(logbook(), clock, ids, {false, "test", 0});
    REQUIRE(writer);
    const auto actor = (*writer)->signIn("p-2", pin("p-2").toStdString());
    REQUIRE(actor);
    logbook::OpenRun::Beginning beginning;
    beginning.sources = walk::Walk::begin("north", "quince-jelly", "R0041").run.sources();
    for (const auto& [what, source] : {std::pair("press", &beginning.sources.press),
                                       {"job", &beginning.sources.job},
                                       {"substrate", &beginning.sources.substrate},
                                       {"procedure", &beginning.sources.procedure}}) {
        const auto kept = (*writer)->definitions(what);
        REQUIRE(kept);
        for (const logbook::Definition& one : *kept)
            if (one.source.id == source->id) *source = one.source;
    }
    auto open = logbook::OpenRun::begin(**writer, beginning, *actor);
    REQUIRE(open);
    while (open->run().next() && open->run().next()->value != step) {
        const procedure::Step next = *open->run().plan().find(*open->run().next());
        const auto closed = run::closedBecause(open->run(), next.id);
        if (closed && closed->code == "gate.stop_held")
            while (!open->run().heldStops().empty())
                REQUIRE(open->perform(run::GiveUpStop{open->run().heldStops().front().holder}, *actor));
        run::Answer answer = walk::rightAnswer(open->run(), next);
        if (next.kind == procedure::StepKind::Hold) answer.entered = actor->name();
        REQUIRE(open->perform(answer, *actor));
    }
    REQUIRE(open->run().next());
}

Program::~Program()
{
    if (runs()) kill();
}

std::string Program::logbook() const { return m_folder.filePath(QStringLiteral("shop.logbook")).toStdString(); }

void Program::start(int syncDelayMs)
{
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("offscreen"));
    environment.insert(QStringLiteral("QT_PLUGIN_PATH"), QStringLiteral(TAUTWEB_HAND_DIR));
    environment.insert(QStringLiteral("QT_QPA_GENERIC_PLUGINS"), QStringLiteral("hand"));
    environment.insert(QStringLiteral("XDG_CONFIG_HOME"), m_folder.path());
    m_process.setProcessEnvironment(environment);
    m_process.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    m_process.start(QStringLiteral(TAUTWEB_BINARY_DIR "/tautweb"),
                    {QStringLiteral("--demo"), QStringLiteral("--logbook"), QString::fromStdString(logbook()),
                     QStringLiteral("--sync-delay"), QString::number(syncDelayMs)});
    REQUIRE(m_process.waitForStarted(kPatience));
    while (!ask(QStringLiteral("size 1366 768")).contains(QStringLiteral("did"))) {
    }
    seeUntil(
        [](const Sight& s) { return s.ready(QStringLiteral("Sign in")) && s.reads(QStringLiteral("Sign in first")); });
}

void Program::kill()
{
    m_process.kill();
    REQUIRE(m_process.waitForFinished(kPatience));
    CHECK(m_process.exitStatus() == QProcess::CrashExit);
}

QJsonObject Program::ask(const QString& order)
{
    m_process.write(order.toUtf8() + '\n');
    while (!m_process.canReadLine())
        if (!m_process.waitForReadyRead(kPatience)) FAIL("the program does not answer: " << order.toStdString());
    return QJsonDocument::fromJson(m_process.readLine()).object();
}

Sight Program::see()
{
    const QJsonObject seen = ask(QStringLiteral("see"));
    Sight sight;
    sight.say = seen[QStringLiteral("say")].toString();
    sight.buttons = seen[QStringLiteral("buttons")].toArray();
    for (const auto& line : seen[QStringLiteral("words")].toArray()) sight.words += line.toString() + QLatin1Char('\n');
    return sight;
}

Sight Program::seeUntil(const std::function<bool(const Sight&)>& wanted)
{
    QElapsedTimer clock;
    clock.start();
    while (true) {
        const Sight sight = see();
        if (wanted(sight)) return sight;
        if (clock.elapsed() > kPatience) {
            FAIL("this is not what was waited for:\n"
                 << sight.words.toStdString() << "\n"
                 << QJsonDocument(sight.buttons).toJson().toStdString());
        }
    }
}

void Program::order(const QString& what)
{
    if (!ask(what)[QStringLiteral("did")].toBool()) FAIL("cannot be done now: " << what.toStdString());
}

QString Program::pin(const char* personId) const
{
    for (const DemoPerson& one : people())
        if (one.id.value == personId) return QString::fromStdString(one.chosen.pin);
    FAIL("nobody is " << personId);
    return {};
}

void Program::signIn(const char* personId)
{
    QString name;
    for (const DemoPerson& one : people())
        if (one.id.value == personId) name = QString::fromStdString(one.name);
    QString underscored = name;
    underscored.replace(QLatin1Char(' '), QLatin1Char('_'));
    order(QStringLiteral("choose Who_are_you? ") + underscored);
    order(QStringLiteral("click Your_PIN"));
    order(QStringLiteral("type ") + pin(personId));
    order(QStringLiteral("key %1").arg(static_cast<int>(Qt::Key_Return)));
    seeUntil([&](const Sight& s) { return s.reads(name + QLatin1Char(',')); });
}

std::vector<std::string> Program::events() const
{
    QProcess sqlite;
    sqlite.start(QStringLiteral("sqlite3"), {QStringLiteral("-readonly"), QStringLiteral("-cmd"),
                                             QStringLiteral(".timeout 5000"), QString::fromStdString(logbook()),
                                             QStringLiteral("select event from open_events order by run_id, n")});
    REQUIRE(sqlite.waitForFinished(kPatience));
    REQUIRE(sqlite.exitCode() == 0);
    std::vector<std::string> lines;
    for (const QByteArray& line : sqlite.readAllStandardOutput().split('\n'))
        if (!line.isEmpty()) lines.push_back(line.toStdString());
    return lines;
}

}  // namespace taut::app::hands
