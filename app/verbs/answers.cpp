// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/verbs/answers.h"

#include <algorithm>
#include <array>

#include "app/verbs/options.h"
#include "core/base/toml.h"
#include "core/units/parse.h"

namespace taut::app::verbs {

namespace {

/// What each act must say, so that a forgotten key is found before anything is played.
struct Act {
    std::string_view name;
    std::vector<std::string_view> must;
};
const std::vector<Act>& acts()
{
    static const std::vector<Act> kActs{{"answer", {"step", "entered"}},
                                        {"skip", {"step", "reason"}},
                                        {"correct", {"step", "entered", "reason"}},
                                        {"deviation", {"step", "reason", "supervisor"}},
                                        {"note", {"step", "text"}},
                                        {"attach", {"step", "file"}},
                                        {"helped", {"step"}},
                                        {"hold_stop", {"holder", "where"}},
                                        {"give_up_stop", {"holder"}},
                                        {"change_roll", {"roll", "at"}},
                                        {"diameter", {"diameter"}},
                                        {"repeat_stage", {"stage", "cause", "at"}},
                                        {"interrupt", {"reason", "at"}},
                                        {"resume", {"stated"}},
                                        {"kill", {}},
                                        {"hand_over", {"to", "at"}}};
    return kActs;
}

/// Reads the keys of one table and remembers what it does not know.
class TableReader {
public:
    TableReader(const Toml& table, std::string_view file, Findings& notes)
        : m_table(table),
          m_file(file),
          m_notes(notes)
    {}
    void text(std::string_view key, std::string& out)
    {
        if (const Toml* value = take(key)) {
            if (value->text() != nullptr)
                out = *value->text();
            else
                wrong(*value, key, "a text");
        }
    }
    void flag(std::string_view key, bool& out)
    {
        if (const Toml* value = take(key)) {
            if (const bool* said = std::get_if<bool>(&value->value))
                out = *said;
            else
                wrong(*value, key, "true or false");
        }
    }
    void texts(std::string_view key, std::vector<std::string>& out)
    {
        const Toml* value = take(key);
        if (value == nullptr) return;
        if (value->array() == nullptr) return wrong(*value, key, "a list of texts");
        for (const Toml& one : *value->array())
            if (one.text() != nullptr)
                out.push_back(*one.text());
            else
                wrong(one, key, "a text");
    }
    void seconds(std::string_view key, int& out)
    {
        std::string said;
        text(key, said);
        if (said.empty()) return;
        const auto time = parseQuantity(said, Kind::Time);
        if (time && time->si() >= 0 && time->si() < 36000)
            out = static_cast<int>(time->si());
        else
            wrong(*m_table.find(key), key, "a time below ten hours");
    }
    const Toml* take(std::string_view key)
    {
        m_taken.push_back(key);
        return m_table.find(key);
    }
    void refuseTheRest()
    {
        for (const auto& [key, value] : *m_table.table()) {
            if (std::find(m_taken.begin(), m_taken.end(), key) != m_taken.end()) continue;
            std::vector<std::string> known(m_taken.begin(), m_taken.end());
            const std::string near = nearest(key, known);
            m_notes.push_back(refuse("answers.unknown_key", subject(value, key), "No such key belongs here.",
                                     near.empty() ? Text("Take it out.") : Text("Did you mean %1?", {near})));
        }
    }
    void wrong(const Toml& value, std::string_view key, const char* expected)
    {
        m_notes.push_back(refuse("answers.wrong_type", subject(value, key),
                                 {"Found %1; expected %2.", {std::string(value.typeName()), std::string(expected)}},
                                 "Correct the value."));
    }
    [[nodiscard]] std::string subject(const Toml& value, std::string_view key) const
    {
        return std::string(m_file) + ':' + std::to_string(value.line) + ':' + std::to_string(value.column) + ' ' +
               std::string(key);
    }

private:
    const Toml& m_table;
    std::string_view m_file;
    Findings& m_notes;
    std::vector<std::string_view> m_taken;
};

bool says(const AnswerEntry& entry, std::string_view key)
{
    const std::array<std::pair<std::string_view, const std::string*>, 15> texts{{{"step", &entry.step},
                                                                                 {"entered", &entry.entered},
                                                                                 {"reason", &entry.reason},
                                                                                 {"supervisor", &entry.supervisor},
                                                                                 {"text", &entry.text},
                                                                                 {"holder", &entry.holder},
                                                                                 {"where", &entry.where},
                                                                                 {"roll", &entry.roll},
                                                                                 {"at", &entry.at},
                                                                                 {"diameter", &entry.diameter},
                                                                                 {"stage", &entry.stage},
                                                                                 {"cause", &entry.cause},
                                                                                 {"to", &entry.to},
                                                                                 {"by", &entry.by},
                                                                                 {"file", &entry.file}}};
    for (const auto& [name, value] : texts)
        if (name == key) return !value->empty();
    return key != "stated" || !entry.stated.empty();
}

/// then = "kill" or then = { change_roll = "R0047" }: one more entry after this one.
void readThen(TableReader& reader, const AnswerEntry& entry, std::vector<AnswerEntry>& out)
{
    const Toml* then = reader.take("then");
    if (then == nullptr) return;
    AnswerEntry next;
    next.line = then->line;
    next.by = entry.by;
    if (then->text() != nullptr && *then->text() == "kill") {
        next.act = "kill";
    } else if (const Toml* roll = then->find("change_roll"); roll != nullptr && roll->text() != nullptr) {
        next.act = "change_roll";
        next.roll = *roll->text();
    } else {
        reader.wrong(*then, "then", "\"kill\" or { change_roll = \"R...\" }");
        return;
    }
    out.push_back(std::move(next));
}

void readEntry(const Toml& table, std::string_view file, Findings& notes, std::vector<AnswerEntry>& out)
{
    TableReader reader(table, file, notes);
    AnswerEntry entry;
    entry.line = table.line;
    std::string notApplicable;
    reader.text("act", entry.act);
    for (const auto& [key, member] :
         std::array<std::pair<std::string_view, std::string*>, 17>{{{"step", &entry.step},
                                                                    {"entered", &entry.entered},
                                                                    {"by", &entry.by},
                                                                    {"reason", &entry.reason},
                                                                    {"supervisor", &entry.supervisor},
                                                                    {"roll", &entry.roll},
                                                                    {"at", &entry.at},
                                                                    {"diameter", &entry.diameter},
                                                                    {"stage", &entry.stage},
                                                                    {"cause", &entry.cause},
                                                                    {"to", &entry.to},
                                                                    {"holder", &entry.holder},
                                                                    {"where", &entry.where},
                                                                    {"text", &entry.text},
                                                                    {"file", &entry.file},
                                                                    {"remedy", &entry.remedy},
                                                                    {"not_applicable", &notApplicable}}})
        reader.text(key, *member);
    reader.texts("stated", entry.stated);
    reader.flag("again", entry.again);
    reader.seconds("took", entry.seconds);
    if (!notApplicable.empty()) {
        entry.act = "skip";
        entry.reason = notApplicable;
    }
    std::vector<AnswerEntry> after;
    readThen(reader, entry, after);
    reader.refuseTheRest();
    const auto act = std::find_if(acts().begin(), acts().end(), [&](const Act& one) { return one.name == entry.act; });
    if (act == acts().end()) {
        std::vector<std::string> known;
        for (const Act& one : acts()) known.emplace_back(one.name);
        const std::string near = nearest(entry.act, known);
        notes.push_back(refuse("answers.unknown_act", reader.subject(table, "act"),
                               {"There is nothing to do that is called %1.", {entry.act}},
                               near.empty() ? Text("See the answers files of the demo for what there is.")
                                            : Text("Did you mean %1?", {near})));
        return;
    }
    for (const std::string_view key : act->must)
        if (!says(entry, key))
            notes.push_back(refuse("answers.missing_key", reader.subject(table, entry.act),
                                   {"The key %1 is missing.", {std::string(key)}}, "Add it, or take the entry out."));
    out.push_back(std::move(entry));
    for (AnswerEntry& one : after) out.push_back(std::move(one));
}

}  // namespace

Result<Answers> readAnswers(std::string_view toml, std::string_view file, Findings& notes)
{
    const auto root = readToml(toml, file);
    if (!root) return root.error();
    const Toml* head = root->find("run");
    const Toml* list = root->find("answer");
    if (head == nullptr || head->table() == nullptr)
        return refuse("answers.no_run", std::string(file), "There is no [run] in this file.",
                      "Say in [run] which press, job and roll these answers are for.");
    Answers answers;
    answers.file = file;
    TableReader reader(*head, file, notes);
    for (const auto& [key, member] :
         std::array<std::pair<std::string_view, std::string*>, 13>{{{"title", &answers.title},
                                                                    {"press", &answers.press},
                                                                    {"job", &answers.job},
                                                                    {"substrate", &answers.substrate},
                                                                    {"roll", &answers.roll},
                                                                    {"procedure", &answers.procedure},
                                                                    {"kind", &answers.kind},
                                                                    {"by", &answers.by},
                                                                    {"diameter", &answers.diameter},
                                                                    {"after", &answers.after},
                                                                    {"ends", &answers.ends},
                                                                    {"reason", &answers.reason},
                                                                    {"remarks", &answers.remarks}}})
        reader.text(key, *member);
    reader.flag("web_in_press", answers.webInPress);
    reader.refuseTheRest();
    for (const auto& [key, value] : {std::pair{"press", &answers.press}, std::pair{"job", &answers.job},
                                     std::pair{"roll", &answers.roll}, std::pair{"by", &answers.by}})
        if (value->empty())
            notes.push_back(refuse("answers.missing_key", reader.subject(*head, "run"),
                                   {"The key %1 is missing.", {std::string(key)}}, "Add it to [run]."));
    if (answers.ends != "signed" && answers.ends != "abandoned")
        notes.push_back(refuse("answers.wrong_type", reader.subject(*head, "ends"),
                               {"A run ends signed or abandoned, not %1.", {answers.ends}}, "Correct the value."));
    if (list != nullptr && list->array() != nullptr)
        for (const Toml& one : *list->array())
            if (one.table() != nullptr) readEntry(one, file, notes, answers.entries);
    return answers;
}

}  // namespace taut::app::verbs
