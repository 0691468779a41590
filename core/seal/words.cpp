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

/// Whether the arguments of a text have a quantity among them: they are then of one run.
bool hasFigures(const Json& args)
{
    const auto& items = args.items();
    return args.has("si") || (args.has("args") && hasFigures(args["args"])) ||
           std::any_of(items.begin(), items.end(), hasFigures);
}

/// Whether the member "advice" is what "advice_say" says with figures in it.
bool isFilled(const Json& object, const std::string& key) { return hasFigures(object[key + "_say"]["args"]); }

/// The same without what is of one run. What stays is words, and which of them there are.
Json wordsIn(const Json& value)
{
    if (value.isArray()) {
        Json list = Json::array();
        for (const Json& item : value.items()) list.add(wordsIn(item));
        return list;
    }
    if (!value.isObject()) return value;
    Json words = Json::object();
    for (const auto& [key, member] : value.members()) {
        if (among(kOwn, key) || isFilled(value, key) || (key == "args" && hasFigures(member)))
            words.set(key, nullptr);
        else if (among(kOwnLists, key))
            words.set(key, Json::array());
        else
            words.set(key, wordsIn(member));
    }
    return words;
}

/// A set or plan told since words; nothing where that would not give it again.
std::optional<Json> toldSince(const Json& words, std::string_view what, const std::string& sha256, const Json& value)
{
    const auto difference = differenceOf(words, value);
    if (!difference || withDifference(words, *difference) != value) return std::nullopt;
    Json told = Json::object();
    told.set("since", Json::object().set("what", what).set("sha256", sha256));
    for (const Json::Member& member : difference->members()) told.set(member.first, member.second);
    return told;
}

/// Tells the first of a list by words: its own, or known ones that serve nearly as well.
void partFirst(Json& body, const char* list, std::string_view what, const std::string& id, const KnownWords& known,
               Parted& parted)
{
    Json::Array values = body[list].items();
    if (values.empty() || values.front().has("since")) return;
    Json words = wordsIn(values.front());
    if (words.has("from")) words.set("from", nullptr);
    run::Source source = run::sourceOf(id, 0, words.dump());
    auto told = toldSince(words, what, source.sha256, values.front());
    if (!told) return;
    std::size_t best = told->dump().size() + kWorth;
    for (std::string& text : known ? known(what, id) : std::vector<std::string>()) {
        const auto before = Json::parse(text);
        auto other = before ? toldSince(*before, what, hex(sha256(text)), values.front()) : std::nullopt;
        const std::size_t size = other ? other->dump().size() : best;
        if (size >= best) continue;
        best = size;
        told = std::move(other);
        source = run::sourceOf(id, 0, std::move(text));
    }
    values.front() = *std::move(told);
    body.set(list, Json(std::move(values)));
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
