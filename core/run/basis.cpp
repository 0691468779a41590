// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/run/basis.h"

#include <algorithm>

#include "core/base/crypto.h"
#include "core/inputs/fill.h"
#include "core/procedure/translation.h"

namespace taut::run {

namespace {

/// The first Stop among the notes, as the reason why there is no basis; the others will show when it is mended.
std::optional<Finding> firstStop(const Findings& notes)
{
    const auto found =
        std::find_if(notes.begin(), notes.end(), [](const Finding& f) { return f.severity == Severity::Stop; });
    if (found == notes.end()) return std::nullopt;
    return *found;
}

Finding noSubstrate(const Source& source)
{
    return refuse("basis.no_substrate", source.id,
                  Text("No substrate with the id \"%1\" stands in this file.", {source.id}),
                  "Choose a substrate of the file, or write this one into it.");
}

std::vector<targets::TargetId> notAskedAgain(const procedure::Plan& full, const procedure::Plan& plan)
{
    std::vector<targets::TargetId> all;
    for (const procedure::Step& step : full.steps) {
        const bool lasts = step.validFor == procedure::ValidFor::Shift || step.validFor == procedure::ValidFor::Power;
        if (lasts && !step.target.empty() && plan.find(step.id) == nullptr) all.emplace_back(step.target);
    }
    return all;
}

}  // namespace

Source sourceOf(std::string id, int edition, std::string text)
{
    std::string hash = hex(sha256(text));
    return {std::move(id), edition, std::move(hash), std::move(text)};
}

Result<Basis> basisFor(const Sources& sources, const BasisQuestion& question)
{
    const std::vector<std::string>& kinds = procedure::allRunKinds();
    if (std::find(kinds.begin(), kinds.end(), question.kind) == kinds.end())
        return refuse("basis.no_kind", question.kind, Text("\"%1\" is no kind of run.", {question.kind}),
                      "Choose full, next_roll, re_web or restart.");
    Findings notes;
    auto press = inputs::readPress(sources.press.text, sources.press.id, notes);
    if (!press) return press.error();
    auto job = inputs::readJob(sources.job.text, sources.job.id, notes);
    if (!job) return job.error();
    auto substrates = inputs::readSubstrates(sources.substrate.text, sources.substrate.id, notes);
    if (!substrates) return substrates.error();
    auto roll = inputs::readRoll(sources.roll.text, sources.roll.id, notes);
    if (!roll) return roll.error();
    auto procedure = procedure::readProcedure(sources.procedure.text, sources.procedure.id, notes);
    if (!procedure) return procedure.error();
    if (const Source& words = sources.translation; !words.id.empty()) {
        auto said = procedure::translated(*procedure, words.text, words.id, notes);
        if (!said) return said.error();
        procedure = std::move(said);
    }
    if (auto stop = firstStop(notes)) return *stop;
    const auto substrate = std::find_if(substrates->begin(), substrates->end(),
                                        [&](const inputs::Substrate& s) { return s.id == sources.substrate.id; });
    if (substrate == substrates->end()) return noSubstrate(sources.substrate);

    Basis basis;
    basis.sources = sources;
    basis.inputs.press = std::make_shared<const inputs::Press>(*std::move(press));
    basis.inputs.job = std::make_shared<const inputs::Job>(*std::move(job));
    basis.inputs.substrate = std::make_shared<const inputs::Substrate>(*substrate);
    basis.inputs.roll = std::make_shared<const inputs::Roll>(inputs::filledFromTag(*std::move(roll)));
    basis.facts = inputs::factsOf(basis.inputs, question.webInPress);
    basis.targets = targets::computeTargets(basis.inputs, question.presentDiameter, question.webInPress);
    basis.plan = procedure::planFor(*procedure, basis.inputs, basis.targets, basis.facts, question.kind);
    if (question.kind != "full")
        basis.restsOn =
            notAskedAgain(procedure::planFor(*procedure, basis.inputs, basis.targets, basis.facts, "full"), basis.plan);
    return basis;
}

}  // namespace taut::run
