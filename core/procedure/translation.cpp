// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/procedure/translation.h"

#include <algorithm>
#include <map>

#include "core/base/crypto.h"
#include "core/base/utf8.h"
#include "core/procedure/keys.h"
#include "core/procedure/placeholders.h"

namespace taut::procedure {
namespace {

constexpr std::int64_t kFormat = 1;

std::vector<std::string> placeholdersIn(std::string_view text)
{
    std::vector<std::string> all;
    for (Piece& piece : piecesOf(text))
        if (piece.placeholder) all.push_back(std::move(piece.text));
    std::sort(all.begin(), all.end());
    return all;
}

/// A "%1" of its own would be taken for a place where something is put in.
bool namesAnArgument(std::string_view text)
{
    for (std::size_t i = 0; i + 1 < text.size(); ++i)
        if (text[i] == '%' && text[i + 1] >= '0' && text[i + 1] <= '9') return true;
    return false;
}

/// The stop at the end of a sentence, 0 when it has none.
char endOf(std::string_view text)
{
    const char last = text.empty() ? '\0' : text.back();
    return last == '.' || last == '?' || last == '!' || last == ':' ? last : '\0';
}

/// Enough of the hash to tell one text from another.
constexpr std::size_t kStamp = 12;

/// Which words a translation was made of.
std::string stampOfWords(const std::vector<std::string_view>& words)
{
    std::string all;
    for (const std::string_view word : words) {
        all += word;
        all += '\n';
    }
    return hex(sha256(all)).substr(0, kStamp);
}

std::string stampOf(const StepSpec& step)
{
    std::vector<std::string_view> words{step.say, step.why, step.see, step.done};
    if (step.caution) words.emplace_back(step.caution->text);
    words.insert(words.end(), step.tries.begin(), step.tries.end());
    for (const Choice& choice : step.choices)
        for (const std::string* word : {&choice.word, &choice.say, &choice.remedy}) words.emplace_back(*word);
    return stampOfWords(words);
}

/// Lays the words of a translation's tables over a procedure's, and says what is wrong with them.
class Layer {
public:
    /// stamped: each table says which words it was made of, so that it fits other editions where these still stand.
    Layer(const Toml& root, std::string_view file, bool stamped, Findings& lint)
        : m_root(root),
          m_file(file),
          m_stamped(stamped),
          m_lint(lint)
    {}

    void over(Procedure& procedure)
    {
        Keys head(*m_root.find("translation"), m_file, "translation", false, m_lint);
        for (const char* key : {"procedure", "language"}) (void)head.text(key);
        (void)head.whole("edition");
        if (isOf(head, stampOfWords({procedure.title, procedure.purpose}))) {
            words(head, "title", procedure.title);
            words(head, "purpose", procedure.purpose);
            head.finish();
        }
        Keys root(m_root, m_file, "translation", false, m_lint);
        (void)root.whole("format");
        (void)root.table("translation");
        Tables stages = byId(root, "stage"), places = byId(root, "place"), steps = byId(root, "step");
        for (StageSpec& stage : procedure.stages) {
            if (auto keys = take(stages, "stage", stage.id, stampOfWords({stage.title}))) {
                words(*keys, "title", stage.title);
                keys->finish();
            }
            for (PlaceSpec& place : stage.places) {
                const std::string at = stage.id + '.' + place.id;
                if (auto keys = take(places, "place", at, stampOfWords({place.title}))) {
                    words(*keys, "title", place.title);
                    keys->finish();
                }
                for (StepSpec& step : place.steps)
                    if (auto keys = take(steps, "step", at + '.' + step.id, stampOf(step))) lay(*keys, step);
            }
        }
        for (const Tables* left : {&stages, &places, &steps}) unknown(*left);
        root.finish();
    }

private:
    using Tables = std::map<std::string, const Toml*>;

    Tables byId(Keys& root, const char* what)
    {
        Tables all;
        for (const Toml* table : root.tables(what)) {
            Keys keys(*table, m_file, what, false, m_lint);
            const std::string id = keys.text("id", true);
            if (!all.emplace(id, table).second)
                keys.wrong("lint.duplicate_id", {"There are two things called %1 here.", {id}}, "Keep one of the two.");
        }
        return all;
    }

    /// False: these words were made of others than now stand in the procedure, whose own are then read. Where somebody
    /// acts by them, old words are worse than foreign ones.
    bool isOf(Keys& keys, const std::string& stamp)
    {
        if (!m_stamped) return true;
        const std::string of = keys.text("of", true);
        if (of == stamp || of.empty()) return of == stamp;
        m_lint.push_back({"translation.stale",
                          Severity::Warn,
                          keys.subject(),
                          "The procedure says something else by now: it is read in its own words here.",
                          {"Translate it anew, then write of = \"%1\".", {stamp}}});
        return false;
    }

    /// The translation's table of this id; nothing where it has none, or one that was made of other words.
    std::optional<Keys> take(Tables& tables, const std::string& what, const std::string& id, const std::string& stamp)
    {
        const auto found = tables.find(id);
        if (found == tables.end()) {
            Finding missing =
                refuse("translation.missing", m_file + ' ' + what + ' ' + id, "The translation has no words for it.",
                       {"Write a table with this id, its words, and of = \"%1\".", {stamp}});
            if (m_stamped) missing.severity = Severity::Warn;
            m_lint.push_back(std::move(missing));
            return std::nullopt;
        }
        Keys keys(*found->second, m_file, what + ' ' + id, false, m_lint);
        (void)keys.text("id");
        tables.erase(found);
        if (!isOf(keys, stamp)) return std::nullopt;
        return keys;
    }

    void unknown(const Tables& left)
    {
        for (const auto& [id, table] : left) {
            Finding unknown = refuse("translation.unknown_id", m_file + ':' + std::to_string(table->line) + ' ' + id,
                                     "The procedure has nothing of this id.",
                                     "Take it out, or look up what it is called in the procedure.");
            if (m_stamped) unknown.severity = Severity::Warn;
            m_lint.push_back(std::move(unknown));
        }
    }

    void lay(Keys& keys, StepSpec& step)
    {
        words(keys, "say", step.say);
        words(keys, "why", step.why);
        words(keys, "see", step.see);
        words(keys, "done", step.done);
        if (step.caution) words(keys, "caution", step.caution->text);
        if (!step.tries.empty()) {
            const std::vector<std::string> tries = keys.words("tries");
            if (tries.size() != step.tries.size())
                keys.wrong("translation.missing",
                           {"The procedure has %1 remedies here, the translation %2.",
                            {static_cast<std::int64_t>(step.tries.size()), static_cast<std::int64_t>(tries.size())}},
                           "Write as many, in the same order.");
            else
                for (std::size_t i = 0; i < tries.size(); ++i) put(keys, "tries", tries[i], step.tries[i]);
        }
        if (!step.choices.empty()) layChoices(keys, step);
        keys.finish();
    }

    void layChoices(Keys& ofStep, StepSpec& step)
    {
        Tables said;
        for (const Toml* table : ofStep.tables("choices")) {
            const Toml* word = table->find("word");
            if (word != nullptr && word->text() != nullptr) said.emplace(*word->text(), table);
        }
        for (Choice& choice : step.choices) {
            const auto found = said.find(choice.word);
            if (found == said.end()) {
                ofStep.wrong("translation.missing", {"The choice %1 has no words.", {choice.word}},
                             "Write { word = \"...\", say = \"...\" } for each choice of the step.");
                continue;
            }
            Keys keys(*found->second, m_file, step.id + " choice " + choice.word, false, m_lint);
            (void)keys.text("word");
            words(keys, "say", choice.say);
            words(keys, "remedy", choice.remedy);
            keys.finish();
            said.erase(found);
        }
        unknown(said);
    }

    /// Where the procedure says nothing the translation says nothing either: its key is then one that nobody knows.
    void words(Keys& keys, const char* key, std::string& english)
    {
        if (english.empty()) return;
        if (const std::string translation = keys.text(key, true); !translation.empty())
            put(keys, key, translation, english);
    }

    void put(Keys& keys, const char* key, const std::string& translation, std::string& english)
    {
        const auto warn = [&](const char* code, Text text, Text remedy) {
            m_lint.push_back({code, Severity::Warn, keys.subject(), std::move(text), std::move(remedy)});
        };
        const std::string name(key);
        if (placeholdersIn(translation) != placeholdersIn(english) || namesAnArgument(translation))
            keys.wrong("translation.placeholder",
                       {"The text of %1 has not the same words in braces as the procedure's.", {name}},
                       "Write each of them once for each time that the procedure has it, letter for letter.");
        const std::size_t length = charactersIn(translation), most = longestTranslation(charactersIn(english));
        if (length > most)
            warn("translation.too_long",
                 {"The text of %1 has %2 characters; %3 fit on a card.",
                  {name, static_cast<std::int64_t>(length), static_cast<std::int64_t>(most)}},
                 "Say it in fewer words.");
        if (translation == english)
            warn("translation.same", {"The text of %1 is the procedure's own.", {name}}, "Translate it.");
        if (endOf(translation) != endOf(english))
            warn("translation.ending", {"The text of %1 ends otherwise than the procedure's.", {name}},
                 "End it with the same full stop, question mark or colon, or with none.");
        if (translation.find("  ") != std::string::npos || translation.front() == ' ' || translation.back() == ' ')
            warn("translation.spacing", {"The text of %1 has a space too many.", {name}}, "Take it out.");
        english = translation;
    }

    const Toml& m_root;
    std::string m_file;
    bool m_stamped;
    Findings& m_lint;
};

const Toml* headOf(const Toml& root)
{
    const Toml* head = root.find("translation");
    return head != nullptr && head->table() != nullptr ? head : nullptr;
}

TranslationHead headFrom(const Toml& table)
{
    const auto text = [&](const char* key) {
        const Toml* value = table.find(key);
        return value != nullptr && value->text() != nullptr ? *value->text() : std::string();
    };
    const Toml* edition = table.find("edition");
    const auto* number = edition == nullptr ? nullptr : std::get_if<std::int64_t>(&edition->value);
    const bool sane = number != nullptr && *number > 0 && *number <= 1'000'000;
    return {text("procedure"), text("language"), sane ? static_cast<int>(*number) : 0};
}

}  // namespace

std::optional<TranslationHead> translationHead(std::string_view toml)
{
    const Result<Toml> root = readToml(toml, "translation");
    const Toml* head = root ? headOf(*root) : nullptr;
    if (head == nullptr) return std::nullopt;
    return headFrom(*head);
}

Result<Procedure> translated(const Procedure& procedure, std::string_view toml, std::string_view file, Findings& lint)
{
    const Result<Toml> root = readToml(toml, file);
    if (!root) return root.error();
    const std::string name(file);
    const Toml* head = headOf(*root);
    const Toml* format = root->find("format");
    const auto* number = format == nullptr ? nullptr : std::get_if<std::int64_t>(&format->value);
    if (head == nullptr || number == nullptr || *number != kFormat)
        return refuse("translation.not_a_translation", name,
                      "This file is no translation of a procedure that this program can read.",
                      "Choose a file that begins with format = 1 and [translation].");
    const TranslationHead of = headFrom(*head);
    const bool stamped = head->find("of") != nullptr;
    if (of.procedure != procedure.id || of.language.empty() || (!stamped && of.edition != procedure.edition))
        return refuse("translation.other_procedure", name,
                      {"This is a translation of %1, edition %2; the procedure is %3, edition %4.",
                       {of.procedure, std::int64_t{of.edition}, procedure.id, std::int64_t{procedure.edition}}},
                      "Take the translation of this edition.");
    Procedure said = procedure;
    Layer(*root, file, stamped, lint).over(said);
    said.language = of.language;
    return said;
}

}  // namespace taut::procedure
