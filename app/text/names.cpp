// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/text/names.h"

#include <algorithm>
#include <iterator>
#include <utility>

#include <QCoreApplication>
#include <QStringList>

#include "app/text/words.h"
#include "core/run/words.h"
#include "core/targets/aim.h"

namespace taut::app {

namespace {

QString said(const char* english) { return QCoreApplication::translate("names", english); }

struct Saying {
    std::string_view word;
    const char* english;
};

template <std::size_t N>
QString sayingOf(const Saying (&table)[N], std::string_view word)
{
    const auto* found =
        std::find_if(std::begin(table), std::end(table), [&](const Saying& s) { return s.word == word; });
    return found == std::end(table) ? QString() : said(found->english);
}

constexpr Saying kPlaces[] = {
    {"press", QT_TRANSLATE_NOOP("names", "Around the press")},
    {"lift", QT_TRANSLATE_NOOP("names", "At the roll lift")},
    {"splice_table", QT_TRANSLATE_NOOP("names", "At the splice table")},
    {"panel", QT_TRANSLATE_NOOP("names", "At the control panel")},
    {"disconnect", QT_TRANSLATE_NOOP("names", "At the main disconnect")},
    {"unwind", QT_TRANSLATE_NOOP("names", "At the unwind")},
    {"rewind", QT_TRANSLATE_NOOP("names", "At the rewind")},
};
constexpr Saying kKinds[] = {
    {"full", QT_TRANSLATE_NOOP("names", "Full set-up")},
    {"next_roll", QT_TRANSLATE_NOOP("names", "Next roll of the same job")},
    {"re_web", QT_TRANSLATE_NOOP("names", "Re-web after a break")},
    {"restart", QT_TRANSLATE_NOOP("names", "Restart after a stand")},
};
constexpr Saying kCauses[] = {
    {"web_break", QT_TRANSLATE_NOOP("names", "The web broke")},
    {"wrong_roll", QT_TRANSLATE_NOOP("names", "It was the wrong roll")},
    {"other", QT_TRANSLATE_NOOP("names", "Another cause")},
};
constexpr Saying kValues[] = {
    {"over", QT_TRANSLATE_NOOP("names", "over the top")},
    {"under", QT_TRANSLATE_NOOP("names", "from underneath")},
    {"face_out", QT_TRANSLATE_NOOP("names", "face outside")},
    {"face_in", QT_TRANSLATE_NOOP("names", "face inside")},
    {"unknown", QT_TRANSLATE_NOOP("names", "not known")},
    {"none", QT_TRANSLATE_NOOP("names", "none")},
    {"true_inch", QT_TRANSLATE_NOOP("names", "true inch")},
    {"limited_inch", QT_TRANSLATE_NOOP("names", "limited inch")},
    {"slow_crawl", QT_TRANSLATE_NOOP("names", "slow crawl")},
    {"fast_crawl", QT_TRANSLATE_NOOP("names", "fast crawl")},
    {"continuous_crawl", QT_TRANSLATE_NOOP("names", "continuous slow crawl")},
    {"out_of_class", QT_TRANSLATE_NOOP("names", "outside every class")},
};

}  // namespace

QString stageStateText(run::StageState state)
{
    switch (state) {
    case run::StageState::NotBegun: return said(QT_TRANSLATE_NOOP("names", "not begun"));
    case run::StageState::InWork: return said(QT_TRANSLATE_NOOP("names", "in work"));
    case run::StageState::Done: return said(QT_TRANSLATE_NOOP("names", "done"));
    case run::StageState::DoneWithDeviation: return said(QT_TRANSLATE_NOOP("names", "done, deviation"));
    case run::StageState::Blocked: return said(QT_TRANSLATE_NOOP("names", "blocked"));
    }
    return {};
}

QString stepStateText(run::StepState state)
{
    switch (state) {
    case run::StepState::Open: return said(QT_TRANSLATE_NOOP("names", "to do"));
    case run::StepState::Outside: return said(QT_TRANSLATE_NOOP("names", "outside"));
    case run::StepState::Stale: return said(QT_TRANSLATE_NOOP("names", "stale, do again"));
    case run::StepState::Reconfirm: return said(QT_TRANSLATE_NOOP("names", "say again"));
    case run::StepState::Answered: return said(QT_TRANSLATE_NOOP("names", "done"));
    case run::StepState::Deviated: return said(QT_TRANSLATE_NOOP("names", "deviation"));
    case run::StepState::NotApplicable: return said(QT_TRANSLATE_NOOP("names", "N/A"));
    }
    return {};
}

QString standingText(const run::StepStanding& standing)
{
    if (standing.state != run::StepState::Answered || !standing.answer || !standing.answer->value)
        return stepStateText(standing.state);
    return verdictText(standing.answer->judgement);
}

QString verdictText(const verdict::Judgement& judgement)
{
    switch (judgement.verdict) {
    case verdict::Verdict::Inside: return said(QT_TRANSLATE_NOOP("names", "inside"));
    case verdict::Verdict::Near: return said(QT_TRANSLATE_NOOP("names", "near a limit"));
    case verdict::Verdict::Outside:
        return judgement.doubtful ? said(QT_TRANSLATE_NOOP("names", "outside, in doubt"))
                                  : said(QT_TRANSLATE_NOOP("names", "outside"));
    case verdict::Verdict::Missing: return said(QT_TRANSLATE_NOOP("names", "missing"));
    case verdict::Verdict::Recorded: return said(QT_TRANSLATE_NOOP("names", "recorded"));
    }
    return {};
}

QString signalText(procedure::SignalWord word)
{
    switch (word) {
    case procedure::SignalWord::None: return {};
    case procedure::SignalWord::Notice: return said(QT_TRANSLATE_NOOP("names", "NOTICE"));
    case procedure::SignalWord::Caution: return said(QT_TRANSLATE_NOOP("names", "CAUTION"));
    case procedure::SignalWord::Warning: return said(QT_TRANSLATE_NOOP("names", "WARNING"));
    case procedure::SignalWord::Danger: return said(QT_TRANSLATE_NOOP("names", "DANGER"));
    }
    return {};
}

QString roleText(people::Role role)
{
    switch (role) {
    case people::Role::Operator: return said(QT_TRANSLATE_NOOP("names", "operator"));
    case people::Role::Supervisor: return said(QT_TRANSLATE_NOOP("names", "supervisor"));
    case people::Role::Trainer: return said(QT_TRANSLATE_NOOP("names", "trainer"));
    case people::Role::Trainee: return said(QT_TRANSLATE_NOOP("names", "trainee"));
    }
    return {};
}

QString ruleText(targets::Rule rule)
{
    switch (rule) {
    case targets::Rule::Job: return said(QT_TRANSLATE_NOOP("names", "the job"));
    case targets::Rule::Maker: return said(QT_TRANSLATE_NOOP("names", "the maker of the material"));
    case targets::Rule::Press: return said(QT_TRANSLATE_NOOP("names", "this press"));
    case targets::Rule::Table: return said(QT_TRANSLATE_NOOP("names", "a published table"));
    case targets::Rule::Policy: return said(QT_TRANSLATE_NOOP("names", "the policy of this shop"));
    case targets::Rule::None: return said(QT_TRANSLATE_NOOP("names", "no limits"));
    case targets::Rule::Alarm: return said(QT_TRANSLATE_NOOP("names", "an alarm limit: within it nothing is proved"));
    }
    return {};
}

QString runKindText(std::string_view kind)
{
    const QString known = sayingOf(kKinds, kind);
    return known.isEmpty() ? dataText(kind) : known;
}

QString causeText(std::string_view cause)
{
    const QString known = sayingOf(kCauses, cause);
    return known.isEmpty() ? dataText(cause) : known;
}

QString statementText(std::string_view condition, UnitSystem system)
{
    const Text sentence = run::conditionSaid(condition);
    return sentence.empty() ? dataText(condition) : words(sentence, system);
}

QString makeSafeText(std::string_view word, UnitSystem system)
{
    const Text sentence = run::makeSafeSaid(word);
    return sentence.empty() ? dataText(word) : words(sentence, system);
}

QString whereText(std::string_view at, bool ofItem)
{
    const QString known = sayingOf(kPlaces, at);
    if (at.empty() || (known.isEmpty() && !ofItem)) return {};
    return known.isEmpty() ? said(QT_TRANSLATE_NOOP("names", "At %1"))
                                 .arg(QString::fromUtf8(at.data(), static_cast<qsizetype>(at.size())))
                           : known;
}

QString valueText(const targets::TargetValue& value, UnitSystem system)
{
    if (const auto* q = std::get_if<Quantity>(&value)) return quantityText(*q, system);
    if (const auto* yes = std::get_if<bool>(&value))
        return *yes ? said(QT_TRANSLATE_NOOP("names", "yes")) : said(QT_TRANSLATE_NOOP("names", "no"));
    const auto& word = std::get<std::string>(value);
    const QString known = sayingOf(kValues, word);
    return known.isEmpty() ? words(Text(word), system) : known;
}

QString targetValue(const targets::Target& target, UnitSystem system)
{
    if (const targets::Ready* ready = target.ready()) return valueText(targets::aimOf(*ready, system), system);
    if (const auto* no = std::get_if<targets::Cannot>(&target.state))
        return no->never() ? said(QT_TRANSLATE_NOOP("names", "never")) : said(QT_TRANSLATE_NOOP("names", "cannot"));
    QStringList keys;
    for (const std::string& key : std::get<targets::Needs>(target.state).keys) keys << dataText(key);
    return said(QT_TRANSLATE_NOOP("names", "needs %1")).arg(keys.join(QStringLiteral(", ")));
}

QString targetWindow(const targets::Target& target, UnitSystem system)
{
    const targets::Ready* ready = target.ready();
    return ready == nullptr ? QString() : rangeText(ready->window.low, ready->window.high, system);
}

}  // namespace taut::app
