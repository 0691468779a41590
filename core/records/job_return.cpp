// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/job_return.h"

#include <algorithm>
#include <map>

#include "core/records/texts.h"
#include "core/report/parts.h"
#include "core/run/answer.h"
#include "core/run/remedy.h"
#include "core/seal/document.h"
#include "core/targets/aim.h"

namespace taut::records {

namespace {

constexpr std::size_t kRunsOfPage = 50, kPages = 4;
constexpr int kRunsBefore = 8;  // next rolls of one set-up, at most

/// A void record is the record of nothing, and of one that was sent back nobody knows yet what of it is so.
bool counts(std::string_view present)
{
    const auto state = seal::presentFrom(present);
    return state && *state != seal::Present::Void && *state != seal::Present::SentBack;
}

/// What was measured of a roll that is gone.
bool isOfTheRoll(const targets::TargetId& id) { return id.starts_with("roll.") || id.starts_with("strip."); }

/// What somebody turns or places, before what merely was read.
bool isSet(const SetThen& set) { return set.target.ends_with(".setting") || set.target.ends_with("_sensor"); }

/// What the last correction of a reading says that it should be; nullptr where nobody corrected it.
const seal::CorrectedStep* corrected(std::span<const seal::Sealing> sealings, const std::string& step)
{
    const seal::CorrectedStep* last = nullptr;
    for (const seal::Sealing& sealing : sealings) {
        const auto* correction = sealing.sequel ? std::get_if<seal::Correction>(&*sealing.sequel) : nullptr;
        if (correction == nullptr) continue;
        for (const seal::CorrectedStep& one : correction->steps)
            if (one.step == step) last = &one;
    }
    return last;
}

bool isOfKind(const targets::Window& window, Kind kind)
{
    return (!window.low || window.low->kind() == kind) && (!window.high || window.high->kind() == kind);
}

/// Beside the target as it is now; nothing can be told where it is of another kind by now.
void compare(SetThen& set, const targets::Target* today, UnitSystem units)
{
    const targets::Ready* ready = today == nullptr ? nullptr : today->ready();
    const targets::TargetValue aim = ready == nullptr ? targets::TargetValue(false) : targets::aimOf(*ready, units);
    const auto* now = std::get_if<Quantity>(&aim);
    if (now == nullptr || now->kind() != set.then.kind()) return;
    set.then = Quantity(set.then.si(), set.then.kind(), now->unit(), set.then.entered());
    set.now = *now;
    set.more = Quantity(now->si() - set.then.si(), now->kind(), now->unit());
    if (isOfKind(ready->window, set.then.kind()))
        set.today = verdict::judge(set.then, verdict::uncertaintyOf(set.then, ready->instrument), ready->window);
}

/// The value of a reading as it stands in the record now.
std::optional<Quantity> valueOf(const run::StepStanding& standing, const seal::CorrectedStep* correction)
{
    std::optional<Quantity> value = standing.answer ? standing.answer->value : std::nullopt;
    if (standing.deviation) value = standing.deviation->value;
    if (correction == nullptr || !correction->value || !value) return value;
    return Quantity(*correction->value, value->kind(), value->unit(), correction->shouldBe);
}

struct Told {
    run::Run run;
    std::vector<seal::Sealing> sealings;
};

Result<Told> toldOf(const Reader& reader, std::string_view runId)
{
    const auto seal = reader.sealOfRun(runId);
    if (!seal) return seal.error();
    const auto document = seal::read(seal->document);
    if (!document) return document.error();
    const auto events = seal::eventsOf(*document, textsOf(reader));
    if (!events) return events.error();
    auto sealings = reader.sealsAbout(runId);
    if (!sealings) return sealings.error();
    return Told{run::Run::fold(*events), *std::move(sealings)};
}

/// The values of one run, those alone that a later one did not ask.
void addSettings(const Told& told, const targets::Targets& now, UnitSystem units, std::vector<SetThen>& settings)
{
    std::vector<SetThen> found;
    std::map<targets::TargetId, std::uint64_t> newest;
    for (const procedure::Step& step : told.run.plan().steps) {
        if (step.kind != procedure::StepKind::Reading || step.target.empty() || isOfTheRoll(step.target)) continue;
        const bool isKnown = std::any_of(settings.begin(), settings.end(),
                                         [&](const SetThen& one) { return one.target == step.target; });
        if (isKnown) continue;
        const run::StepStanding standing = told.run.standing(step.id);
        const seal::CorrectedStep* correction = corrected(told.sealings, step.id.value);
        const auto value = valueOf(standing, correction);
        if (!value) continue;
        // Of a target that is read more than once the last reading is what was left.
        if (std::uint64_t& last = newest[step.target]; standing.n < last)
            continue;
        else
            last = standing.n;
        std::erase_if(found, [&](const SetThen& one) { return one.target == step.target; });
        const targets::Target* then = run::judgedBy(told.run, step);
        SetThen set{step.target, then == nullptr ? Text(step.say) : then->name, *value, {}, {}, {}, {}, {}, {}};
        set.accepted = standing.deviation.has_value() && correction == nullptr;
        set.byName = standing.byName;
        set.atMs = standing.at;
        compare(set, now.find(step.target), units);
        found.push_back(std::move(set));
    }
    settings.insert(settings.end(), std::make_move_iterator(found.begin()), std::make_move_iterator(found.end()));
}

/// What the step says that something was written beside; nothing of what belongs to the whole run.
Text aboutStep(const run::Run& run, const procedure::StepId& id)
{
    const procedure::Step* step = run.plan().find(id);
    return step == nullptr ? Text() : step->say;
}

void addSaid(const run::Run& run, std::vector<SaidThen>& said)
{
    const run::Stamp& last = run.events().back().stamp();
    if (const auto* completed = std::get_if<run::Completed>(&run.events().back().happening());
        completed != nullptr && !completed->remarks.empty())
        said.push_back({{}, report::data(completed->remarks), false, last.byName, last.utcMs});
    for (const run::Event& event : run.events()) {
        const auto add = [&](const procedure::StepId& step, Text words, bool helped) {
            said.push_back({aboutStep(run, step), std::move(words), helped, event.stamp().byName, event.stamp().utcMs});
        };
        if (const auto* noted = std::get_if<run::Noted>(&event.happening()))
            add(noted->step, report::data(noted->text), false);
        if (const auto* helped = std::get_if<run::Helped>(&event.happening()))
            add(helped->step, run::remedySaid(run, *helped), true);
    }
}

}  // namespace

Result<std::optional<RunRow>> lastRunLike(const Reader& reader, std::string_view press, std::string_view job,
                                          std::string_view substrate)
{
    if (press.empty() || job.empty()) return std::optional<RunRow>();
    // Asked by the job alone, and the press told apart here: a press has a hundred times the runs that a job has, and
    // the store would choose between the two ways by itself.
    RunQuery query;
    query.job = std::string(job);
    query.state = "completed";
    query.limit = kRunsOfPage;
    std::string after;
    for (std::size_t page = 0; page < kPages; ++page) {
        const auto runs = reader.runs(query, after);
        if (!runs) return runs.error();
        for (const RunRow& row : runs->rows)
            if (row.seq > 0 && row.press == press && row.substrate == substrate && counts(row.present))
                return std::optional<RunRow>(row);
        after = runs->next;
        if (after.empty()) break;
    }
    return std::optional<RunRow>();
}

Result<JobReturn> whatWasSet(const Reader& reader, std::string_view runId, const targets::Targets& now,
                             UnitSystem units)
{
    JobReturn all;
    std::string next(runId);
    for (int before = 0; !next.empty() && before <= kRunsBefore; ++before) {
        const auto told = toldOf(reader, next);
        if (!told && before > 0) break;  // what the run itself says is enough
        if (!told) return told.error();
        if (before > 0 && seal::stateOf(told->sealings).present == seal::Present::Void) break;
        addSettings(*told, now, units, all.settings);
        addSaid(told->run, all.said);
        next = told->run.began().kind == "full" ? std::string() : told->run.began().parent;
    }
    std::stable_partition(all.settings.begin(), all.settings.end(), isSet);
    return all;
}

}  // namespace taut::records
