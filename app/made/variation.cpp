// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/made/variation.h"

#include <cmath>

#include "core/run/deviation.h"
#include "core/units/parse.h"

namespace taut::app::made {

namespace {

constexpr std::uint64_t kVaryStream = 3'000'000'000'000;
/// Where `from` stands in a text, `to` is put; as often as it stands there.
std::string replaced(std::string text, const std::string& from, const std::string& to)
{
    for (std::size_t i = text.find(from); i != std::string::npos; i = text.find(from, i + to.size()))
        text.replace(i, from.size(), to);
    return text;
}

}  // namespace

/// What is being told of one run.
struct Pattern::Told {
    struct Figures {
        double value = 0, uncertainty = 0;
        std::string entered, verdict;
    };
    const Tale& tale;
    const Shop& shop;
    Chance chance;
    std::int64_t now = 0;
    const people::Actor &by, &next;
    std::vector<std::string> fills{};
    std::vector<std::int64_t> times{};     ///< of the events
    std::vector<Figures> reads{};          ///< as m_reads
    std::vector<std::int64_t> remedies{};  ///< as m_helped
};

void Pattern::setRead(std::size_t which, Told& told) const
{
    const Read& read = m_reads[which];
    Told::Figures& figures = told.reads[which];
    figures = {read.value, read.uncertainty, read.entered, read.verdict};
    constexpr int kTries = 6;
    for (int i = 0; i < kTries; ++i) {
        const auto taken = read.gauge ? read.gauge->read(told.tale, read.outside, told.chance) : std::nullopt;
        if (!taken) break;
        const auto value = parseQuantity(taken->entered, read.kind);
        if (!value) continue;
        const double doubt = verdict::uncertaintyOf(*value, read.instrument);
        const verdict::Judgement judged = verdict::judge(*value, doubt, read.window);
        if ((judged.verdict == verdict::Verdict::Outside) != read.outside) continue;
        // Whether a reading is doubtful stands beside its verdict, or not at all: that is part of the shape.
        if (judged.doubtful != read.doubtful) continue;
        figures = {value->si(), doubt, taken->entered, verdict::verdictWord(judged.verdict)};
        break;
    }
    told.fills[read.gaps] = inJson(figures.entered);
    told.fills[read.gaps + 1] = shortest(figures.value);
    told.fills[read.gaps + 2] = shortest(figures.uncertainty);
    told.fills[read.gaps + 3] = inJson(figures.verdict);
}

void Pattern::setEvent(std::size_t event, Told& told) const
{
    const Slot& slot = m_slots[event];
    double after = static_cast<double>(slot.afterMs) * std::exp(0.25 * told.chance.normal());
    if (slot.slow) after *= told.tale.slow;
    told.now += static_cast<std::int64_t>(after);
    told.times.push_back(told.now);
    told.fills[kTimes + event] = '"' + utcText(told.now) + '"';
    if (slot.read) setRead(*slot.read, told);
    if (slot.accepted) {
        const Accepted& accepted = m_accepted[*slot.accepted];
        const std::string text = accepted.text.filled(told.fills);
        const Signature signature = told.shop.named(accepted.by)->sign(run::kDeviationPurpose, bytesOf(text));
        told.fills[accepted.gap] = '"' + hex(signature) + '"';
    }
    if (slot.helped) {
        const Helped& helped = m_helped[*slot.helped];
        const double which = told.chance.unit();
        told.remedies[*slot.helped] = static_cast<std::int64_t>(which * which * static_cast<double>(helped.tries)) + 1;
        told.fills[helped.gap] = std::to_string(told.remedies[*slot.helped]);
    }
}

logbook::RunAnswers Pattern::answers(const Told& told) const
{
    const Tale& tale = told.tale;
    const auto whose = [&](Who which) -> const people::Actor& { return which == Who::Next ? told.next : told.by; };
    logbook::RunAnswers all = m_answers;
    all.run = all.words.run = tale.run;
    all.roll = all.words.rolls = tale.roll.id;
    all.person = whose(m_operator).id().value;
    all.personName = all.words.person = whose(m_operator).name();
    all.begunMs = told.times.front();
    all.endedMs = told.times.back();
    all.offsetMinutes = tale.begin.offsetMinutes;
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const Row& row = m_rows[i];
        logbook::ReadingAnswer& reading = all.readings[i];
        reading.atMs = told.times[row.event];
        if (row.by != Who::Other) reading.person = whose(row.by).id().value;
        if (!row.read) continue;
        const Told::Figures& figures = told.reads[*row.read];
        reading.entered = figures.entered;
        reading.verdict = figures.verdict;
        reading.value = figures.value;
        reading.uncertainty = figures.uncertainty;
        reading.first = told.reads[*row.first].verdict;
    }
    all.course.stages = seal::stagesAt(all.course, told.times);
    for (seal::CourseIncident& incident : all.course.incidents) {
        const auto event = static_cast<std::size_t>(incident.n - 1);
        incident.atMs = told.times[event];
        if (incident.what == "interrupted") incident.detail = tale.trouble.interrupted;
        if (const auto& helped = m_slots[event].helped; helped && incident.what == "helped")
            incident.detail = std::to_string(told.remedies[*helped]) + ' ' + m_helped[*helped].words;
    }
    std::string& remarks = all.words.remarks;
    remarks.clear();
    for (std::size_t i = 0; i < m_notes; ++i) remarks += (remarks.empty() ? "" : "\n") + tale.trouble.note;
    if (!m_abandoned && !tale.trouble.remarks.empty()) remarks += (remarks.empty() ? "" : "\n") + tale.trouble.remarks;
    return all;
}

Sealable Pattern::told(const Tale& tale, const Shop& shop) const
{
    Told told{tale,
              shop,
              Chance(shop.seed(), kVaryStream + tale.stream),
              tale.begin.utcMs,
              shop.operatorAt(tale.by).actor(),
              shop.operatorAt(tale.next).actor()};
    const std::string roll = replaced(replaced(m_roll, m_tale.roll.id, tale.roll.id), m_tale.roll.lot, tale.roll.lot);
    std::vector<std::string>& fills = told.fills;
    fills.resize(m_gaps);
    told.reads.resize(m_reads.size());
    told.remedies.resize(m_helped.size());
    fills[kRun] = inJson(tale.run);
    fills[kParentSaid] = inJson(tale.parent);
    fills[kParent] = tale.parent.empty() ? "null" : fills[kParentSaid];
    fills[kRollId] = inJson(tale.roll.id);
    fills[kRollText] = inJson(roll);
    fills[kRollHash] = '"' + hex(sha256(roll)) + '"';
    fills[kBy] = inJson(told.by.id().value);
    fills[kByName] = inJson(told.by.name());
    fills[kNext] = inJson(told.next.id().value);
    fills[kNextName] = inJson(told.next.name());
    fills[kOffset] = inJson(offsetText(tale.begin.offsetMinutes));
    fills[kInterrupted] = inJson(tale.trouble.interrupted);
    fills[kAbandoned] = inJson(tale.trouble.abandoned);
    fills[kNote] = inJson(tale.trouble.note);
    fills[kRemarks] = inJson(tale.trouble.remarks);
    told.times.reserve(m_slots.size());
    for (std::size_t i = 0; i < m_slots.size(); ++i) setEvent(i, told);
    constexpr double kLeast = 15'000, kMost = 90'000;
    const Instant at{told.now + static_cast<std::int64_t>(told.chance.between(kLeast, kMost)),
                     tale.begin.offsetMinutes};
    return {tale.run, logbook::LaidOut{m_document.filled(fills), answers(told)}, m_words, at,
            &shop.operatorAt(m_operator == Who::Next ? tale.next : tale.by)};
}

}  // namespace taut::app::made
