// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/base/clock.h"
#include "core/procedure/keys.h"
#include "core/procedure/lint.h"

namespace taut::procedure {
namespace {

constexpr std::int64_t kFormat = 1;

const std::vector<std::string> kStepKindWords{"confirm", "reading", "choice", "scan", "hold", "motion", "call"};
const std::vector<std::string> kValidForWords{"run", "roll", "shift", "power"};
const std::vector<std::string> kSignalWords{"notice", "caution", "warning", "danger"};

/// Ids become parts of "stage.place.step/item".
bool isGoodId(std::string_view id)
{
    return !id.empty() && std::all_of(id.begin(), id.end(), [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_';
    });
}

class Reader {
public:
    Reader(std::string_view file, bool newer, const Known& known, Findings& lint)
        : m_file(file),
          m_newer(newer),
          m_known(known),
          m_lint(lint)
    {}

    void head(const Toml& table, Procedure& procedure)
    {
        Keys keys(table, m_file, "procedure", m_newer, m_lint);
        procedure.id = id(keys, "procedure");
        procedure.title = keys.text("title", true);
        constexpr std::int64_t kMostEditions = 1'000'000;
        const auto edition = keys.whole("edition", true);
        if (edition && (*edition < 1 || *edition > kMostEditions))
            keys.wrong("lint.bad_edition", {"The edition is %1; editions are counted from 1.", {*edition}},
                       "Give it the number after that of the last edition.");
        procedure.edition = edition && *edition <= kMostEditions ? static_cast<int>(*edition) : 0;
        procedure.revised = keys.text("revised", true);
        if (!procedure.revised.empty() && !readUtc(procedure.revised + "T00:00:00.000Z"))
            keys.wrong("lint.bad_date", {"\"%1\" is no day of the calendar.", {procedure.revised}},
                       "Write the day of the last change as year, month and day: 2026-11-25.");
        procedure.language = keys.text("language", true);
        procedure.purpose = keys.text("purpose", true);
        keys.finish();
    }

    StageSpec stage(const Toml& table)
    {
        Keys keys(table, m_file, "stage", m_newer, m_lint);
        StageSpec stage;
        stage.id = id(keys, "stage");
        stage.title = keys.text("title", true);
        for (const Toml* p : keys.tables("place")) stage.places.push_back(place(*p, stage.id));
        keys.finish();
        return stage;
    }

private:
    std::string id(Keys& keys, const std::string& what, const std::string& prefix = {})
    {
        std::string id = keys.text("id", true);
        keys.rename(prefix.empty() ? what + ' ' + id : prefix + '.' + id);
        if (!id.empty() && !isGoodId(id))
            keys.wrong("lint.bad_id", {"The id \"%1\" cannot be used.", {id}},
                       "Use small letters, digits and the underscore only: answers and records name steps by it.");
        return id;
    }

    PlaceSpec place(const Toml& table, const std::string& stage)
    {
        Keys keys(table, m_file, "place", m_newer, m_lint);
        PlaceSpec place;
        place.id = id(keys, "place", stage);
        place.title = keys.text("title", true);
        place.at = keys.text("at", true);
        place.doConfirm = keys.oneOf("style", {"read_do", "do_confirm"}, "read_do", true) == "do_confirm";
        for (const Toml* s : keys.tables("step")) place.steps.push_back(step(*s, stage + '.' + place.id));
        keys.finish();
        return place;
    }

    StepSpec step(const Toml& table, const std::string& place)
    {
        Keys keys(table, m_file, "step", m_newer, m_lint);
        StepSpec step;
        step.line = keys.line();
        step.id = id(keys, "step", place);
        step.forEach = keys.oneOf("for_each", m_known.repetitions, {});
        (void)stepKindFrom(keys.oneOf("kind", kStepKindWords, "confirm", true), step.kind);
        step.vital = keys.flag("vital", false);
        step.hands = keys.flag("hands", false);
        step.waivable = keys.flag("waivable", true);
        const std::string setUp = keys.oneOf("set_up", {"internal", "external"}, {});
        step.external = keys.flag("external", setUp == "external");
        if (!setUp.empty() && step.external != (setUp == "external"))
            keys.wrong("lint.contradiction", "external and set_up say two different things.",
                       "Keep one of them: external = true means that it may be done while the press still runs.");
        step.late = keys.text("late");
        step.target = keys.text("target");
        step.control = keys.text("control");
        step.at = keys.text("at");
        step.when = keys.words("when");
        step.unless = keys.words("unless");
        step.needs = keys.words("needs");
        step.gives = keys.words("gives");
        step.ends = keys.words("ends");
        step.uses = keys.words("uses");
        step.fills = keys.words("fills");
        step.kinds = keys.words("in");
        if (step.kinds.empty() && table.find("in") == nullptr) step.kinds = {"full"};
        (void)validForFrom(keys.oneOf("valid_for", kValidForWords, "run"), step.validFor);
        for (const Toml* c : keys.tables("choices")) step.choices.push_back(choice(*c, keys.subject()));
        if (const Toml* c = keys.table("caution"); c != nullptr) step.caution = caution(*c, keys);
        step.tries = keys.words("tries");
        step.say = keys.text("say", true);
        step.why = keys.text("why");
        step.see = keys.text("see");
        step.wait = keys.text("wait");
        step.done = keys.text("done");
        keys.finish();
        return step;
    }

    Choice choice(const Toml& table, const std::string& ofStep)
    {
        Keys keys(table, m_file, ofStep.substr(ofStep.find(' ') + 1) + " choices", m_newer, m_lint);
        Choice choice;
        choice.word = keys.text("word", true);
        choice.say = keys.text("say", true);
        choice.stops = keys.flag("stops", false);
        choice.remedy = keys.text("remedy", choice.stops);
        keys.finish();
        return choice;
    }

    Caution caution(const Toml& table, const Keys& ofStep)
    {
        const std::string subject = ofStep.subject();
        Keys keys(table, m_file, subject.substr(subject.find(' ') + 1) + " caution", m_newer, m_lint);
        Caution caution;
        (void)signalWordFrom(keys.oneOf("word", kSignalWords, "none", true), caution.word);
        caution.text = keys.text("text", true);
        keys.finish();
        return caution;
    }

    std::string m_file;
    bool m_newer;
    const Known& m_known;
    Findings& m_lint;
};

}  // namespace

Result<Procedure> readProcedure(std::string_view toml, std::string_view file, const Known& known, Findings& lint)
{
    Result<Toml> root = readToml(toml, file);
    if (!root) return root.error();
    const std::string name(file);
    const Toml* head = root->find("procedure");
    if (head == nullptr || head->table() == nullptr)
        return refuse("procedure.not_a_procedure", name, "This file has no table [procedure].",
                      "Choose a file that begins with format = 1 and [procedure].");
    Findings found;
    Keys keys(*root, file, "procedure", false, found);
    const std::optional<std::int64_t> format = keys.whole("format");
    if (!format || *format < kFormat)
        return refuse("procedure.no_format", name, "This file does not say which format it is written in.",
                      "Write format = 1 as its first line.");
    const bool newer = *format > kFormat;

    Procedure procedure;
    procedure.text = std::string(toml);
    Reader reader(file, newer, known, found);
    (void)keys.table("procedure");
    reader.head(*head, procedure);
    for (const Toml* s : keys.tables("stage")) procedure.stages.push_back(reader.stage(*s));
    if (newer)
        found.push_back({"procedure.newer_format",
                         Severity::Note,
                         name,
                         {"This file is written in format %1; this program knows format %2.", {*format, kFormat}},
                         "Keys that are not known here are ignored."});
    else
        keys.finish();
    if (procedure.stages.empty())
        found.push_back(refuse("lint.no_stage", name, "This procedure has no stage: there is nothing to do in it.",
                               "Write at least one [[stage]] with a place and its steps."));
    lintSteps(procedure, file, known, found);
    lintOrder(procedure, file, found);
    lint.insert(lint.end(), std::make_move_iterator(found.begin()), std::make_move_iterator(found.end()));
    return procedure;
}

}  // namespace taut::procedure
