// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/times.h"

#include <algorithm>
#include <numeric>
#include <set>

namespace taut::history {

namespace {

constexpr double kMsOfSecond = 1000.0;
constexpr std::size_t kFewestSlow = 3;

template <class Value>
std::int64_t sumOf(const std::vector<RunTime::Stage>& stages, Value value)
{
    return std::accumulate(stages.begin(), stages.end(), std::int64_t{0},
                           [&](std::int64_t sum, const RunTime::Stage& stage) { return sum + value(stage); });
}

std::string groupOf(const RunTime& run, Group group)
{
    switch (group) {
    case Group::Press: return run.press;
    case Group::Job: return run.job;
    case Group::Substrate: return run.substrate;
    case Group::RunKind: return run.kind;
    case Group::Shift: return shiftWord(run.shift);
    }
    return {};
}

void count(RunIncidents& run, const std::string& what)
{
    if (what == "outside") ++run.outside;
    if (what == "deviated") ++run.deviated;
    if (what == "corrected") ++run.corrected;
    if (what == "not_applicable") ++run.notApplicable;
    if (what == "repeated") ++run.repeated;
    if (what == "interrupted") ++run.interrupted;
}

/// Everything a run can have in common with another: its groups, and what happened in it.
std::vector<std::pair<std::string, InCommon>> traitsOf(const Times& times, const RunTime& run)
{
    std::vector<std::pair<std::string, InCommon>> all;
    for (const Group group : {Group::Press, Group::Job, Group::Substrate, Group::Shift}) {
        InCommon trait;
        trait.group = group;
        trait.value = groupOf(run, group);
        all.emplace_back("g" + std::to_string(static_cast<int>(group)) + trait.value, trait);
    }
    const auto found = times.byRun.find(run.seq);
    if (found == times.byRun.end()) return all;
    const RunIncidents& had = found->second;
    for (const auto& [many, word] :
         {std::pair{had.outside, "outside"}, std::pair{had.deviated, "deviated"}, std::pair{had.corrected, "corrected"},
          std::pair{had.repeated, "repeated"}, std::pair{had.interrupted, "interrupted"}}) {
        if (many == 0) continue;
        InCommon trait;
        trait.value = word;
        trait.incident = true;
        all.emplace_back(std::string("i") + word, trait);
    }
    return all;
}

const char* wordOf(Loss loss)
{
    switch (loss) {
    case Loss::Deviations: return "deviated";
    case Loss::Outside: return "outside";
    case Loss::Corrections: return "corrected";
    case Loss::NotApplicable: return "not_applicable";
    case Loss::Repeated: return "repeated";
    case Loss::Interruptions: return "interrupted";
    case Loss::Remedies: return "helped";
    case Loss::LeftOpen: return kLeftOpen;
    }
    return "";
}

/// Leaves out the run of this seal and older ones: not all that belongs to them was read.
void cutTo(Times& times, std::uint64_t seq)
{
    const auto old = [seq](const auto& row) { return row.seq <= seq; };
    const auto oldKey = [seq](const auto& row) { return row.first <= seq; };
    std::erase_if(times.runs, old);
    std::erase_if(times.incidents, old);
    std::erase_if(times.byRun, oldKey);
    std::erase_if(times.webM, oldKey);
    times.older = true;
}

bool isBySteps(Loss loss) { return loss != Loss::Repeated && loss != Loss::Interruptions && loss != Loss::Remedies; }

/// A remedy is one of its step's: its number alone says nothing.
std::string keyOf(const records::Incident& incident, Loss loss)
{
    if (loss == Loss::Remedies) return incident.step + '\n' + incident.detail;
    return isBySteps(loss) ? incident.step : incident.detail;
}

}  // namespace

Shift shiftOf(int hour) noexcept
{
    constexpr int kEarly = 6, kLate = 14, kNight = 22;
    if (hour >= kEarly && hour < kLate) return Shift::Early;
    return hour >= kLate && hour < kNight ? Shift::Late : Shift::Night;
}

const char* shiftWord(Shift shift) noexcept
{
    switch (shift) {
    case Shift::Early: return "early";
    case Shift::Late: return "late";
    case Shift::Night: return "night";
    }
    return "";
}

std::int64_t RunTime::wholeMs() const
{
    return sumOf(stages, [](const Stage& s) { return s.wholeMs(); });
}
std::int64_t RunTime::awayMs() const
{
    return sumOf(stages, [](const Stage& s) { return s.awayMs; });
}
std::int64_t RunTime::externalMs() const
{
    return sumOf(stages, [](const Stage& s) { return s.externalMs; });
}

Result<Times> timesOf(const records::Reader& reader, const records::CourseQuery& query,
                      const std::function<bool()>& goOn, std::size_t most)
{
    Times times;
    std::string after;
    do {
        const auto page = reader.stageTimes(query, after);
        if (!page) return page.error();
        for (const records::StageTime& row : page->rows) {
            if (times.runs.empty() || times.runs.back().seq != row.seq) {
                if (times.runs.size() == most) {
                    times.older = true;
                    break;
                }
                times.runs.push_back({row.seq,
                                      row.run,
                                      row.press,
                                      row.job,
                                      row.substrate,
                                      row.kind,
                                      row.begunMs,
                                      shiftOf(row.hour),
                                      row.state == "completed",
                                      {}});
            }
            times.runs.back().stages.push_back({row.stage, row.workedMs, row.watchedMs, row.awayMs, row.externalMs});
        }
        after = page->next;
    } while (!after.empty() && !times.older && (!goOn || goOn()));
    // A page may end within a run.
    if (!after.empty() && !times.older) cutTo(times, times.runs.back().seq);
    if (times.runs.empty()) return times;
    std::uint64_t oldest = times.runs.back().seq;
    after.clear();
    bool within = true;
    do {
        const auto page = reader.incidents(query, after);
        if (!page) return page.error();
        for (const records::Incident& incident : page->rows) {
            within = incident.seq >= oldest;
            if (!within) break;
            count(times.byRun[incident.seq], incident.what);
            times.incidents.push_back(incident);
        }
        after = page->next;
    } while (!after.empty() && within && (!goOn || goOn()));
    if (!after.empty() && within) cutTo(times, times.incidents.back().seq);
    if (times.runs.empty()) return times;
    oldest = times.runs.back().seq;
    records::SeriesQuery metres;
    metres.press = query.press;
    metres.target = kWebOfSetUp;
    metres.substrate = query.substrate;
    metres.job = query.job;
    metres.sinceMs = query.sinceMs;
    metres.untilMs = query.untilMs;
    after.clear();
    within = true;
    std::uint64_t last = 0;
    do {
        const auto page = reader.readings(metres, after);
        if (!page) return page.error();
        for (const records::Reading& reading : page->rows) {
            last = reading.seq;
            within = reading.seq >= oldest;
            if (within) times.webM[reading.seq] = reading.value;
        }
        after = page->next;
    } while (!after.empty() && within && (!goOn || goOn()));
    if (!after.empty() && within) cutTo(times, last);
    return times;
}

std::size_t givenUpOf(const Times& times)
{
    return static_cast<std::size_t>(
        std::count_if(times.runs.begin(), times.runs.end(), [](const RunTime& run) { return !run.finished; }));
}

std::vector<WebQuartiles> webBy(const Times& times, Group group)
{
    std::map<std::string, std::vector<double>> metres;
    std::map<std::string, std::size_t> runs;
    for (const RunTime& run : times.runs) {
        if (!run.finished) continue;
        const std::string name = groupOf(run, group);
        ++runs[name];
        if (const auto read = times.webM.find(run.seq); read != times.webM.end()) metres[name].push_back(read->second);
    }
    std::vector<WebQuartiles> all;
    for (auto& [name, read] : metres)
        if (const auto quartiles = stats::quartilesOf(std::move(read))) all.push_back({name, *quartiles, runs[name]});
    return all;
}

std::vector<StageQuartiles> quartilesBy(const Times& times, Group group)
{
    struct Sums {
        std::vector<double> seconds;
        double external = 0, whole = 0, away = 0;
        void add(std::int64_t wholeMs, std::int64_t externalMs, std::int64_t awayMs)
        {
            seconds.push_back(static_cast<double>(wholeMs) / kMsOfSecond);
            whole += static_cast<double>(wholeMs);
            external += static_cast<double>(externalMs);
            away += static_cast<double>(awayMs);
        }
    };
    std::vector<std::string> stages{""};
    std::map<std::string, std::map<std::string, Sums>> sums;
    for (const RunTime& run : times.runs) {
        if (!run.finished) continue;
        auto& of = sums[groupOf(run, group)];
        of[""].add(run.wholeMs(), run.externalMs(), run.awayMs());
        for (const RunTime::Stage& stage : run.stages) {
            if (std::find(stages.begin(), stages.end(), stage.id) == stages.end()) stages.push_back(stage.id);
            of[stage.id].add(stage.wholeMs(), stage.externalMs, stage.awayMs);
        }
    }
    std::vector<StageQuartiles> all;
    for (auto& [name, byStage] : sums)
        for (const std::string& stage : stages) {
            const auto found = byStage.find(stage);
            if (found == byStage.end()) continue;
            const Sums& of = found->second;
            const auto quartiles = stats::quartilesOf(of.seconds);
            if (!quartiles) continue;
            all.push_back({name, stage, *quartiles, of.whole > 0 ? of.external / of.whole : 0,
                           of.away / kMsOfSecond / static_cast<double>(of.seconds.size())});
        }
    return all;
}

std::vector<InCommon> commonToSlowest(const Times& times)
{
    std::map<std::string, std::vector<const RunTime*>> byKind;
    for (const RunTime& run : times.runs)
        if (run.finished) byKind[run.kind].push_back(&run);
    std::set<std::uint64_t> slow;
    std::set<std::string> kinds;  // of few runs none is slow: they are not the others either
    std::size_t compared = 0;
    for (auto& [kind, runs] : byKind) {
        std::stable_sort(runs.begin(), runs.end(),
                         [](const RunTime* a, const RunTime* b) { return a->wholeMs() > b->wholeMs(); });
        constexpr std::size_t kTenth = 10;
        if (runs.size() < kTenth) continue;
        for (std::size_t i = 0; i < runs.size() / kTenth; ++i) slow.insert(runs[i]->seq);
        kinds.insert(kind);
        compared += runs.size();
    }
    if (slow.empty()) return {};
    struct Counted {
        InCommon trait;
        std::size_t slow = 0, others = 0;
    };
    std::map<std::string, Counted> counted;
    for (const RunTime& run : times.runs) {
        if (!run.finished || !kinds.contains(run.kind)) continue;
        for (auto& [key, trait] : traitsOf(times, run)) {
            Counted& one = counted[key];
            one.trait = trait;
            ++(slow.contains(run.seq) ? one.slow : one.others);
        }
    }
    // Of many traits chance always gives the slowest some: each is held to so much more.
    constexpr double kByChance = 0.05;
    const double sure = 1 - kByChance / static_cast<double>(counted.size());
    std::vector<InCommon> all;
    for (auto& [key, one] : counted) {
        if (one.slow < kFewestSlow) continue;
        const auto slowSure = stats::proportionOf(one.slow, slow.size(), sure);
        const auto otherSure = stats::proportionOf(one.others, compared - slow.size(), sure);
        if (!slowSure || !otherSure || slowSure->interval.low <= otherSure->interval.high) continue;
        const auto slowShare = stats::proportionOf(one.slow, slow.size());
        const auto otherShare = stats::proportionOf(one.others, compared - slow.size());
        if (!slowShare || !otherShare) continue;
        one.trait.slow = *slowShare;
        one.trait.others = *otherShare;
        all.push_back(one.trait);
    }
    std::stable_sort(all.begin(), all.end(), [](const InCommon& a, const InCommon& b) {
        return a.slow.share - a.others.share > b.slow.share - b.others.share;
    });
    return all;
}

std::vector<stats::ParetoRow> lossesOf(const Times& times, Loss loss, std::size_t most)
{
    std::map<std::string, double> sums;
    for (const records::Incident& incident : times.incidents)
        if (incident.what == wordOf(loss)) sums[keyOf(incident, loss)] += 1;
    std::vector<stats::Cause> causes;
    for (const auto& [name, amount] : sums) causes.push_back({name, amount, name == "other"});
    auto rows = stats::paretoOf(std::move(causes), most);
    return rows ? *std::move(rows) : std::vector<stats::ParetoRow>();
}

std::optional<stats::Proportion> firstGoRate(const Times& times)
{
    std::size_t hits = 0, of = 0;
    for (const RunTime& run : times.runs) {
        if (!run.finished) continue;
        ++of;
        const auto found = times.byRun.find(run.seq);
        if (found == times.byRun.end() || found->second.firstGo()) ++hits;
    }
    const auto rate = stats::proportionOf(hits, of);
    return rate ? std::optional(*rate) : std::nullopt;
}

}  // namespace taut::history
