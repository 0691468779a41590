// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/json_quick.h"
#include "core/report/report.h"
#include "core/run/decide.h"
#include "core/run/event_maker.h"
#include "core/seal/after.h"
#include "core/seal/words.h"
#include "core/targets/target_json.h"
#include "tests/fuzz/property.h"

// JSON from a store or an import: any value, an event of a run, a sealed document with its events.

using namespace taut;
using namespace taut::fuzz;

namespace {

void checkEvent(std::string_view text)
{
    const auto event = run::eventFrom(text);
    if (!event) return checkFinding(event.error());
    require(event->body() == *Json::parse(text), "a stored event keeps all that stood there", text);
    const auto* began = std::get_if<run::Began>(&event->happening());
    const UnitSystem units = began != nullptr ? began->units : UnitSystem::Metric;
    const std::string written = run::eventJson(event->stamp(), event->happening(), units).dump();
    const auto again = run::eventFrom(written);
    require(static_cast<bool>(again), "an event written anew reads back", written);
    require(run::eventJson(again->stamp(), again->happening(), units).dump() == written,
            "an event read back is written the same", written);
}

/// Everything that screens and sheets ask of a run, of one that was read from outside.
void checkRun(const run::Run& run)
{
    const std::size_t inWork = run.stageInWork();
    require(run.plan().stages.empty() || inWork < run.plan().stages.size(), "the stage in work is one of the plan's");
    for (std::size_t i = 0; i < run.plan().stages.size(); ++i) (void)run.stageState(i);
    for (const procedure::Step& step : run.plan().steps)
        require(isUtf8(plain(step.say) + plain(step.why) + plain(step.caution)), "a step can be said", step.id.value);
    for (const run::StepId& id : run.openSteps()) {
        require(run.plan().find(id) != nullptr, "an open step is one of the plan's", id.value);
        if (const auto closed = run::closedBecause(run, id)) {
            require(!closed->code.empty() && !closed->text.empty(), "a closed gate says why", id.value);
        }
    }
    if (const auto next = run.next()) require(run.plan().find(*next) != nullptr, "what comes next is a step");
    (void)run.deviations();
}

void checkDocument(std::string_view text)
{
    const auto document = seal::read(text);
    const auto gist = seal::gistOf(text, seal::Kind::Run);
    require(static_cast<bool>(gist) == static_cast<bool>(document), "a document has a gist and nothing else has", text);
    if (!document) return checkFinding(document.error());
    require(gist->kind == document->kind && seal::headOf(*gist) == seal::headOf(*document),
            "the gist of a document has its head", text);
    (void)seal::headOf(*document);
    const std::string written = seal::write(*document);
    const auto again = seal::read(written);
    require(again && again->kind == document->kind && seal::write(*again) == written,
            "a document written anew reads back the same", written);
    if (const auto sequel = seal::sequelIn(*document)) {
        require(seal::kindOf(*sequel) == document->kind, "what follows a run is of its document's kind", written);
        const auto anew = seal::sequelIn(seal::sequelOf(*sequel, {}, {}, {}));
        require(anew && anew->index() == sequel->index(), "what follows a run can be written anew", written);
    } else {
        checkFinding(sequel.error());
    }
    const auto events = seal::eventsOf(*document);
    if (!events) return checkFinding(events.error());
    const run::Run run = run::Run::fold(*events);
    checkRun(run);
    const auto refolded = seal::eventsOf(seal::documentOf(run));
    require(refolded && refolded->size() == events->size(), "a document of that run has its events");
    for (std::size_t i = 0; i < events->size(); ++i)
        require((*refolded)[i].json() == (*events)[i].json(), "an event stands in its document as it was",
                (*events)[i].json());
    const seal::Parted parted = seal::partWords(seal::documentOf(run));
    const auto texts = [&parted](std::string_view what, const std::string& sha256) {
        for (const auto& [kind, source] : parted.words)
            if (kind == what && source.sha256 == sha256) return source.text;
        return std::string();
    };
    const auto rejoined = seal::eventsOf(parted.document, texts);
    require(rejoined && rejoined->size() == events->size(), "a document without its words has its events with them");
    for (std::size_t i = 0; i < events->size(); ++i)
        require((*rejoined)[i].json() == (*events)[i].json(), "an event is told since words as it was",
                (*events)[i].json());
    const auto report = report::reportOf(*document, std::nullopt, {});
    if (!report) checkFinding(report.error());
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view text = textOf(data, size);
    const auto json = Json::parse(text);
    const auto judged = judgedJson(text);
    require(json ? judged && *judged == *json : !judged && judged.error() == json.error(),
            "a text is read, or refused, as the parser that judges does", text);
    if (!json) {
        checkFinding(json.error());
    } else {
        const std::string written = json->dump();
        require(isUtf8(written), "written JSON is UTF-8", written);
        const auto again = Json::parse(written);
        require(again && again->dump() == written, "written JSON reads back the same", written);
        // Readers of parts take whatever value stands there.
        const Text said = textFrom(*json);
        require(textFrom(textJson(said)) == said, "a text read from outside is stored the same", written);
        require(isUtf8(plain(said)) && isUtf8(plain(said, UnitSystem::Us)), "a text read from outside can be said",
                written);
        const Finding finding = findingFrom(*json);
        require(findingFrom(findingJson(finding)) == finding, "a finding read from outside is stored the same",
                written);
        if (const auto targets = targets::targetsFrom(*json)) {
            const auto stored = targets::targetsFrom(targets::targetsJson(*targets, UnitSystem::Metric));
            require(stored && *stored == *targets, "targets read from outside are stored the same", written);
        }
        if (const auto plan = procedure::planFrom(*json)) {
            const auto stored = procedure::planFrom(procedure::planJson(*plan));
            require(stored && *stored == *plan, "a plan read from outside is stored the same", written);
        }
    }
    checkEvent(text);
    checkDocument(text);
    return 0;
}
