// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/words.h"

#include <algorithm>
#include <array>

#include "core/base/crypto.h"
#include "core/seal/difference.h"

namespace taut::seal {

namespace {

/// Members that are a run's own, wherever they stand in a target, its window or a term.
constexpr std::array<std::string_view, 6> kOwn{"value", "uncertainty", "text", "most", "low", "high"};
/// Lists of a run's own.
constexpr std::array<std::string_view, 2> kOwnLists{"rows", "findings"};

template <std::size_t N>
bool among(const std::array<std::string_view, N>& names, std::string_view name)
{
    return std::find(names.begin(), names.end(), name) != names.end();
}

/// The names of what a run was made with and another was not: they stand in sentences and arguments.
using OwnNames = std::vector<std::string>;

void addNames(const Json& inputs, OwnNames& names)
{
    for (const char* input : {"job", "substrate", "roll"})
        if (std::string id = inputs[input]["id"].text(); !id.empty()) names.push_back(std::move(id));
}

/// Of a run whose roll was changed, those of each: its first targets speak of the first one.
OwnNames ownNames(const Json& body)
{
    OwnNames names;
    addNames(body["inputs"], names);
    for (const Json& event : body["events"].items()) addNames(event["inputs"], names);
    return names;
}

bool isLetterOrDigit(char c)
{
    return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') ||
           static_cast<unsigned char>(c) >= 0x80;
}

/// Whether one of the names stands in a text, as a word of its own.
bool names(std::string_view text, const OwnNames& own)
{
    return std::any_of(own.begin(), own.end(), [text](const std::string& name) {
        for (std::size_t at = text.find(name); at != std::string_view::npos; at = text.find(name, at + 1)) {
            const std::size_t end = at + name.size();
            if ((at == 0 || !isLetterOrDigit(text[at - 1])) && (end == text.size() || !isLetterOrDigit(text[end])))
                return true;
        }
        return false;
    });
}

/// Whether the arguments of a text have a quantity or an own name among them: they are then of one run.
bool isOfOneRun(const Json& args, const OwnNames& own)
{
    const auto& items = args.items();
    return args.has("si") || (args.isString() && names(args.text(), own)) ||
           (args.has("args") && isOfOneRun(args["args"], own)) ||
           std::any_of(items.begin(), items.end(), [&](const Json& item) { return isOfOneRun(item, own); });
}

/// The same without what is of one run. What stays is words, and which of them there are.
Json wordsIn(const Json& value, const OwnNames& own)
{
    if (value.isArray()) {
        Json::Array list;
        for (const Json& item : value.items()) list.push_back(wordsIn(item, own));
        return list;
    }
    if (!value.isObject()) return value;
    Json::Object words;
    for (const auto& [key, member] : value.members()) {
        // The member "advice" is what "advice_say" says with its arguments in it.
        const bool filled = isOfOneRun(value[key + "_say"]["args"], own);
        // By its id a target is found again in the difference.
        const bool named = key != "id" && member.isString() && names(member.text(), own);
        if (among(kOwn, key) || filled || named || (key == "args" && isOfOneRun(member, own)))
            words.emplace_back(key, nullptr);
        else if (among(kOwnLists, key))
            words.emplace_back(key, Json::array());
        else
            words.emplace_back(key, wordsIn(member, own));
    }
    return words;
}

/// A set or plan told since words; nothing where that would not give it again.
std::optional<Json> toldSince(const Json& words, std::string_view what, const std::string& sha256, const Json& value)
{
    auto difference = differenceOf(words, value);
    if (!difference || withDifference(words, *difference) != value) return std::nullopt;
    Json::Object told{{"since", Json::object().set("what", what).set("sha256", sha256)}};
    for (const Json::Member& member : difference->members()) told.push_back(member);
    return Json(std::move(told));
}

/// Known words that tell a value in about as much as its own do; the newest that do is good enough.
std::optional<std::pair<std::string, Json>> knownFor(std::vector<std::string> texts, const run::Source& own,
                                                     std::string_view what, std::size_t size, const Json& value)
{
    // Its own often stand there already; none serves it better.
    if (std::find(texts.begin(), texts.end(), own.text) != texts.end()) return std::nullopt;
    std::optional<std::pair<std::string, Json>> best;
    std::size_t most = size + kWorth;
    for (std::string& text : texts) {
        const auto words = Json::parse(text);
        auto told = words ? toldSince(*words, what, own.sha256, value) : std::nullopt;
        const std::size_t its = told ? told->dump().size() : most;
        if (its >= most) continue;
        most = its;
        best.emplace(std::move(text), *std::move(told));
        if (its <= size + kWorth / 10) break;
    }
    return best;
}

/// Tells the first of a list by words: its own, or known ones that serve nearly as well.
void partFirst(Json& body, const char* list, std::string_view what, const std::string& id, const KnownWords& known,
               Parted& parted)
{
    const Json::Array& values = body[list].items();
    if (values.empty() || values.front().has("since")) return;
    Json words = wordsIn(values.front(), ownNames(body));
    if (words.has("from")) words.set("from", nullptr);
    run::Source source = run::sourceOf(id, 0, words.dump());
    auto told = toldSince(words, what, source.sha256, values.front());
    if (!told) return;
    if (known)
        if (auto other = knownFor(known(what, id), source, what, told->dump().size(), values.front())) {
            source = run::sourceOf(id, 0, std::move(other->first));
            told = std::move(other->second);
            told->set("since", Json::object().set("what", what).set("sha256", source.sha256));
        }
    Json::Array all{*std::move(told)};
    all.insert(all.end(), values.begin() + 1, values.end());
    body.set(list, Json(std::move(all)));
    parted.words.push_back({std::string(what), std::move(source)});
}

std::string textOf(const TextBySha& texts, const Json& named)
{
    std::string text = texts ? texts(named["what"].text(), named["sha256"].text()) : std::string();
    return hex(sha256(text)) == named["sha256"].text() ? text : std::string();
}

}  // namespace

Parted partWords(Document run, const KnownWords& known)
{
    Parted parted{std::move(run), {}};
    Json& body = parted.document.body;
    partFirst(body, "target_sets", kTargetWords, body["inputs"]["press"]["id"].text(), known, parted);
    partFirst(body, "plans", kPlanWords, body["procedure"]["id"].text(), known, parted);
    return parted;
}

Result<Json::Array> withWords(const Json::Array& list, const TextBySha& texts)
{
    Json::Array whole;
    for (const Json& told : list) {
        if (!told["since"].isObject()) {
            whole.push_back(told);
            continue;
        }
        const std::string text = textOf(texts, told["since"]);
        if (text.empty())
            return refuse("document.words", told["since"]["what"].text(),
                          {"The document names words by the hash %1, and they are not to be had here.",
                           {told["since"]["sha256"].text()}},
                          "Look for them in the logbook where the run was sealed, or restore that from a backup.");
        const auto words = Json::parse(text);
        if (!words) return words.error();
        Json difference = Json::object();
        for (const Json::Member& member : told.members())
            if (member.first != "since") difference.set(member.first, member.second);
        auto value = withDifference(*words, difference);
        if (!value)
            return refuse("document.broken", "document", "A target set or a plan does not follow from its words.",
                          "Restore the logbook from a backup; a run's document is never written like this.");
        whole.push_back(*std::move(value));
    }
    return whole;
}

std::optional<Finding> WordsCheck::next(const Seal& seal, const Document& document)
{
    const Json& body = document.body;
    if (document.kind == Kind::Definition) m_known.emplace(body["what"].text(), hex(sha256(body["text"].text())));
    if (document.kind != Kind::Run) return std::nullopt;
    for (const char* list : {"target_sets", "plans"})
        for (const Json& told : body[list].items()) {
            const Json& since = told["since"];
            if (!since.isObject() || m_known.contains({since["what"].text(), since["sha256"].text()})) continue;
            return refuse("document.words", "seal " + std::to_string(seal.seq),
                          {"Seal %1 names words by the hash %2 that no definition before it has, so what was shown "
                           "cannot be read again.",
                           {static_cast<std::int64_t>(seal.seq), since["sha256"].text()}},
                          "Do not trust this record. Restore the logbook from a backup, or export the run once more.");
        }
    return std::nullopt;
}

}  // namespace taut::seal
