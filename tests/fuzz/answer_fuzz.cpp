// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/inputs/roll_tag.h"
#include "core/inputs/tag_scan.h"
#include "core/run/answer.h"
#include "core/run/decide.h"
#include "core/run/event_maker.h"
#include "tests/fuzz/property.h"

// What comes through a step's field: the tag of a roll as a scanner gives it, and every other answer as it is typed.

using namespace taut;
using namespace taut::fuzz;
using procedure::Step;
using procedure::StepKind;

namespace {

constexpr const char* kRoll = R"(format = 1
[roll]
id = "R0041"
tag = "(01)09506000134352(10)L-77(21)R0041"
)";

targets::Target targetOf(const char* id, Quantity low, Quantity high)
{
    targets::Ready ready{low, {}, {}, {}, {}, {}, {}};
    ready.window = {low, high, targets::Rule::Press, "of this press"};
    return {id, targets::Shape::Quantity, id, ready};
}

/// A run of one place with a step of each sort of answer; the roll's file carries a tag, or none.
run::Run runWith(const std::string& roll)
{
    run::Began began;
    began.runId = "run-1";
    began.workplace = "pc-1";
    began.kind = "full";
    began.sources.roll = run::sourceOf("R0041", 0, roll);
    began.targets.all = {
        targetOf("count", Quantity(3, Kind::Count), Quantity(6, Kind::Count)),
        targetOf("length", Quantity(0.3, Kind::Length, "mm"), Quantity(0.4, Kind::Length, "mm")),
        targetOf("pressure", Quantity(1e5, Kind::Pressure, "psi"), Quantity(2e5, Kind::Pressure, "psi"))};
    procedure::Plan& plan = began.plan;
    plan.kind = began.kind;
    const auto add = [&](const char* id, StepKind kind, const char* target) {
        Step step;
        step.id.value = id;
        step.kind = kind;
        step.target = target;
        plan.steps.push_back(step);
    };
    add("s.p.scan", StepKind::Scan, "");
    add("s.p.length", StepKind::Reading, "length");
    add("s.p.pressure", StepKind::Reading, "pressure");
    add("s.p.count", StepKind::Reading, "count");
    add("s.p.any", StepKind::Reading, "");
    add("s.p.choice", StepKind::Choice, "");
    plan.steps.back().choices = {{"good", "Good", false, ""}, {"bad", "Bad", true, "Mend it"}};
    add("s.p.hold", StepKind::Hold, "");
    add("s.p.confirm", StepKind::Confirm, "");
    plan.places.push_back({0, "p", "Place", "press", "", false, 0, plan.steps.size()});
    plan.stages.push_back({"s", "Stage", 0, 1});
    const run::Event event = run::EventMaker::make({1, 0, 0, {"p-1"}, "Ana", "operator"}, began, UnitSystem::Metric);
    return run::Run::fold({&event, 1});
}

void checkTag(std::string_view text)
{
    const auto read = inputs::readRollTag(text, {2025, true});
    if (!read) {
        checkFinding(read.error());
        const auto place = inputs::tagPlace(read.error());
        return require(place && *place >= 1 && *place <= text.size() + 1, "a refusal points into the tag", text);
    }
    const inputs::RollTag& tag = *read;
    const auto isPositive = [](const auto& entry) {
        return !entry || (std::isfinite(entry->si()) && entry->si() >= 0);
    };
    require(isPositive(tag.width) && isPositive(tag.length) && isPositive(tag.core) && isPositive(tag.mass),
            "what a tag measures is a measure", text);
    require(!tag.fields.empty(), "a tag that was read says something", text);
    checkFindings(tag.notes);
    // The same facts, written out anew in another order of fields, read the same.
    std::string written = "]d2", items;
    std::size_t last = 0;
    for (const inputs::TagField& field : tag.fields) {
        require(field.first > last && field.length > 0 && field.first + field.length <= text.size() + 1,
                "a field stands in the tag, behind the one before", text);
        last = field.first;
        checkText(field.name);
        if (field.system != inputs::TagSystem::Application) return;
        require(field.id != "01" || field.text.size() == 14, "an item's number has 14 figures", field.text);
        if (field.id == "10" || field.id == "21") written += field.id + field.text + '\x1d';
        if (field.id == "01") items += field.id + field.text;
    }
    written += items;
    if (written.size() > 3) {
        const auto again = inputs::readRollTag(written);
        require(again && again->item == tag.item && again->lot == tag.lot && again->serial == tag.serial,
                "a tag written anew reads the same", written);
    }
}

/// What is kept of a scan says the same to whoever reads it later; scanned again it is nothing new.
void checkScan(std::string_view text)
{
    const inputs::TagOptions options{2025, true};
    const std::string parted = inputs::withSeparators(text, options);
    const auto scan = inputs::readScanned("", parted, options);
    require(static_cast<bool>(scan) == static_cast<bool>(inputs::readRollTag(parted, options)),
            "the first bar code is read as any tag", text);
    if (!scan) return checkFinding(scan.error());
    const auto kept = inputs::readRollTag(scan->text, {2025, false});
    require(kept && kept->fields.size() == scan->tag.fields.size(), "what is kept reads again", scan->text);
    for (std::size_t i = 0; i < kept->fields.size(); ++i)
        require(kept->fields[i].id == scan->tag.fields[i].id && kept->fields[i].text == scan->tag.fields[i].text,
                "what is kept says the same", scan->text);
    const auto again = inputs::readScanned(scan->text, parted, options);
    require(again && again->second == inputs::SecondTag::Same, "the same bar code is nothing new", scan->text);
}

void checkAnswer(const run::Run& run, const Step& step, std::string_view text)
{
    const auto answer = run::answerTo(run, step, text, {});
    if (!answer) {
        checkFinding(answer.error());
        require(answer.error().subject == step.id.value, "a refused answer names its step", step.id.value);
        return;
    }
    require((step.kind == StepKind::Reading) == answer->value.has_value(), "a reading has a value", text);
    const run::Stamp stamp{2, 1, 60, {"p-1"}, "Ana", "operator"};
    const run::Event event = run::EventMaker::make(stamp, *answer, UnitSystem::Metric);
    require(isUtf8(event.json()), "what is stored is UTF-8", text);
    const auto back = run::eventFrom(event.json());
    require(static_cast<bool>(back), "what was stored reads back", event.json());
    require(run::eventJson(back->stamp(), back->happening(), UnitSystem::Metric) == event.body(),
            "what was read back is stored the same", event.json());
    const run::Run live = run.after(event), again = run.after(*back);
    require(live.stateOf(step.id) == again.stateOf(step.id) && live.conditions() == again.conditions(),
            "a run read back stands where it stood", text);
    const auto saidAgain = run::answerTo(
        run, step, back->happening().index() == 1 ? std::get<run::Answered>(back->happening()).entered : std::string(),
        {});
    require(saidAgain && saidAgain->judgement == answer->judgement && saidAgain->value == answer->value,
            "the same answer is judged the same", text);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    static const run::Run kTagged = runWith(kRoll);
    static const run::Run kUntagged = runWith("format = 1\n[roll]\nid = \"R0041\"\n");
    const std::string_view text = textOf(data, size);
    checkTag(text);
    checkScan(text);
    for (const Step& step : kTagged.plan().steps) checkAnswer(kTagged, step, text);
    checkAnswer(kUntagged, kUntagged.plan().steps.front(), text);
    return 0;
}
