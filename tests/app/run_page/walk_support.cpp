// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/run_page/walk_support.h"

#include <filesystem>

#include <QAbstractButton>
#include <QApplication>
#include <QLabel>
#include <QTest>

#include "app/seams/resources.h"
#include "app/seams/translations.h"
#include "app/widgets/theme.h"
#include "core/base/file.h"
#include "core/units/format.h"
#include "core/units/unit.h"
#include "tests/app/said.h"
#include "tests/core/people/crew.h"

namespace taut::app::walk {

namespace {

constexpr std::int64_t kMorning = 1795585263000;  // 2026-11-25 05:41:03 UTC
constexpr std::int64_t kBetween = 10000;

std::string text(const std::filesystem::path& file)
{
    const auto read = readFile(std::filesystem::path(TAUTWEB_SOURCE_DIR) / "resources" / file);
    INFO(file.string());
    REQUIRE(read);
    return *read;
}

}  // namespace

std::string typedAs(const Quantity& q, UnitSystem system)
{
    const Unit* unit = findUnit(q.kind(), q.unit());
    if (!unit) unit = &usualUnit(q.kind(), system, q.si());
    if (q.kind() == Kind::Count) return roundedDecimal(q.si(), 0, Rounding::Nearest);
    std::string number = roundedDecimal(q.si() / unit->toSi, 5, Rounding::Nearest);
    number.erase(number.find_last_not_of('0') + 1);  // nobody types those
    if (number.back() == '.') number.pop_back();
    return number + " " + std::string(unit->symbol);
}

namespace {

const people::test::Member& operatorMember()
{
    static const people::test::Member one = people::test::member("p-1", "Ines Falk", people::Role::Operator);
    return one;
}

const people::test::Member& supervisorMember()
{
    static const people::test::Member one = people::test::member("p-2", "Tom Ried", people::Role::Supervisor);
    return one;
}

}  // namespace

people::Actor operatorOne() { return operatorMember().actor; }
people::Actor supervisor() { return supervisorMember().actor; }
std::shared_ptr<const people::Signer> signingSupervisor() { return supervisorMember().signer; }

Walk Walk::begin(const std::string& press, const std::string& job, const std::string& roll, bool webInPress,
                 const std::string& language)
{
    Findings notes;
    const std::string jobText = text("demo/jobs/" + job + ".toml");
    const auto read = inputs::readJob(jobText, job, notes);
    REQUIRE(read);
    const std::string substrates = text("substrates.toml");
    run::Sources sources;
    sources.press = run::sourceOf(press, 1, text("presses/" + press + ".toml"));
    sources.job = run::sourceOf(read->id, 1, jobText);
    sources.substrate = run::sourceOf(read->substrate, 1, substrateAlone(substrates, read->substrate));
    sources.roll = run::sourceOf(roll, 0, text("demo/rolls/" + roll + ".toml"));
    sources.procedure = run::sourceOf("cold_start", 1, text("procedures/cold_start.toml"));
    if (!language.empty()) {
        sources.translation =
            translationFor(std::filesystem::path(TAUTWEB_SOURCE_DIR) / "resources", sources.procedure, language);
        REQUIRE(sources.translation.id == language);
    }
    const run::BasisQuestion question{"full", webInPress, {}};
    const auto basis = run::basisFor(sources, question);
    if (!basis) FAIL(basis.error().code << " " << basis.error().subject << " " << basis.error().text.source);
    const auto event = run::begin(*basis, {press + "-2026-11-25-01", "pc", false, question, nullptr},
                                  {1, kMorning, 60, {}, {}, {}}, operatorOne());
    REQUIRE(event);
    return {run::Run::fold(std::vector<run::Event>{*event}), 1};
}

void Walk::perform(const run::Command& command, const people::Actor& by)
{
    ++n;
    const run::Stamp stamp{n, kMorning + static_cast<std::int64_t>(n) * kBetween, 60, {}, {}, {}};
    const auto event = run::decide(run, command, stamp, by);
    if (!event) FAIL(event.error().code << " " << event.error().subject << ": " << event.error().text.source);
    run = run.after(*event);
}

std::vector<PersonChoice> crew()
{
    return {{QStringLiteral("p-1"), QStringLiteral("Ines Falk"), people::Role::Operator},
            {QStringLiteral("p-2"), QStringLiteral("Tom Ried"), people::Role::Supervisor}};
}

void nothingIsCut(QWidget& page)
{
    const auto cut = [&] {
        for (const QLabel* label : page.findChildren<QLabel*>())
            if (label->isVisible() && !label->text().isEmpty() && label->wordWrap() &&
                label->height() < label->heightForWidth(label->width()) - 1)
                return QStringLiteral("%1 (%2 x %3)").arg(label->text()).arg(label->width()).arg(label->height());
        for (const QAbstractButton* b : page.findChildren<QAbstractButton*>())
            if (b->isVisible() && !b->text().isEmpty() &&
                (b->width() < b->minimumSizeHint().width() ||
                 (b->hasHeightForWidth() && b->height() < b->heightForWidth(b->width()) - 1)))
                return QStringLiteral("%1 (%2 x %3)").arg(b->text()).arg(b->width()).arg(b->height());
        return QString();
    };
    // A busy machine lays out later than it is asked to; what is cut stays cut.
    constexpr int kLaidOutMs = 3000;
    const bool whole = QTest::qWaitFor([&] { return cut().isEmpty(); }, kLaidOutMs);
    CAPTURE(cut().toStdString());
    CHECK(whole);
}

void whatIsAskedIsSeen(QWidget& page)
{
    for (const char* name : {"say", "caution"}) {
        const auto* text = page.findChild<QWidget*>(QLatin1String(name));
        REQUIRE(text);
        if (!text->isVisible()) continue;
        CAPTURE(name, text->height(), text->visibleRegion().boundingRect().height());
        CHECK(text->visibleRegion().boundingRect() == text->rect());
    }
}

run::Answer rightAnswer(const run::Run& run, const procedure::Step& step)
{
    const targets::Target* target = step.target.empty() ? nullptr : run.targets().find(step.target);
    const targets::Ready* ready = target ? target->ready() : nullptr;
    switch (step.kind) {
    case procedure::StepKind::Confirm:
    case procedure::StepKind::Call: return {step.id, "yes", {}};
    case procedure::StepKind::Motion: {
        run::Answer answer{step.id, "done", {}};
        for (const std::string& need : step.needs)
            if (procedure::isMachineState(need)) answer.stated.push_back(need);
        return answer;
    }
    case procedure::StepKind::Hold: return {step.id, operatorOne().name(), {}};
    case procedure::StepKind::Scan: {
        Findings notes;
        const auto roll = inputs::readRoll(run.sources().roll.text, run.sources().roll.id, notes);
        return {step.id, roll && !roll->tag.empty() ? roll->tag : run.sources().roll.id, {}};
    }
    case procedure::StepKind::Choice: {
        if (ready)
            if (const auto* word = std::get_if<std::string>(&ready->value)) return {step.id, *word, {}};
        for (const procedure::Choice& c : step.choices)
            if (!c.stops) return {step.id, c.word, {}};
        return {step.id, "", {}};
    }
    case procedure::StepKind::Reading: break;
    }
    const UnitSystem units = run.began().units;
    if (!ready || !target->quantity()) return {step.id, "3 bar", {}};
    Quantity value = *target->quantity();
    // The middle of the window is inside however coarse the target itself is.
    if (ready->window.low && ready->window.high)
        value = Quantity((ready->window.low->si() + ready->window.high->si()) / 2, value.kind(), value.unit());
    return {step.id, typedAs(value, units), {}};
}

void Walk::answerWell(const procedure::Step& step)
{
    const procedure::Step copy = step;
    if (const auto closed = run::closedBecause(run, copy.id); closed && closed->code == "gate.stop_held")
        while (!run.heldStops().empty()) perform(run::GiveUpStop{run.heldStops().front().holder});
    perform(rightAnswer(run, copy));
}

Page::Page(const Walk& w, double scale)
{
    applyTheme({false, scale, 1.0});
    const PersonChoice ines{QStringLiteral("p-1"), QStringLiteral("Ines Falk"), people::Role::Operator};
    view.setPeople(crew());
    view.setActor(ines);
    view.resize(1342, 628);
    view.show(w.run);
    static_cast<QWidget&>(view).show();
    view.activateWindow();
    settle();
}

void Page::settle()
{
    for (int i = 0; i < 6; ++i) QApplication::processEvents();
}

QString Page::card() const { return test::said(*view.findChild<QWidget*>(QStringLiteral("stepCard"))); }

const procedure::Step* Walk::next() const
{
    const auto id = run.next();
    return id ? run.plan().find(*id) : nullptr;
}

const procedure::Step* Walk::untilStep(const std::function<bool(const procedure::Step&)>& wanted)
{
    for (int guard = 0; guard < 400; ++guard) {
        const procedure::Step* step = next();
        if (!step || wanted(*step)) return step;
        answerWell(*step);
    }
    FAIL("the run does not come to an end");
    return nullptr;
}

const procedure::Step* Walk::until(procedure::StepKind kind, const std::string& id)
{
    return untilStep([&](const procedure::Step& s) { return s.kind == kind && (id.empty() || s.id.value == id); });
}

}  // namespace taut::app::walk
