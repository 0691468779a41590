// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/search.h"

#include <algorithm>
#include <vector>

namespace taut::logbook {

namespace {

constexpr std::size_t kMostWords = 30;

/// Ids one after the other, each once.
void addOnce(std::vector<std::string>& all, const std::string& one)
{
    if (!one.empty() && std::find(all.begin(), all.end(), one) == all.end()) all.push_back(one);
}

std::string lines(const std::vector<std::string>& all)
{
    std::string text;
    for (const std::string& one : all) text += (text.empty() ? "" : "\n") + one;
    return text;
}

/// The rolls and the notes of a run that is still open.
struct Listener {
    std::vector<std::string>&rolls, &notes;
    void operator()(const run::Began& e) const { addOnce(rolls, e.sources.roll.id); }
    void operator()(const run::InputsChanged& e) const { addOnce(rolls, e.sources.roll.id); }
    void operator()(const run::Noted& e) const { notes.push_back(e.text); }
    template <class Other>
    void operator()(const Other&) const
    {}
};

std::optional<Words> wordsAt(Prepared& prepared, std::int64_t row)
{
    const auto query = prepared("SELECT run, job, title, customer, substrate, rolls, operator, remarks FROM word_rows "
                                "WHERE row = ?1");
    query.with(row);
    if (!query->executeStep()) return std::nullopt;
    const auto text = [&](int column) { return query->getColumn(column).getString(); };
    return Words{text(0), text(1), text(2), text(3), text(4), text(5), text(6), text(7)};
}

void withWords(const Prepared::Use& use, std::int64_t row, const Words& words)
{
    use.with(row, words.run, words.job, words.title, words.customer, words.substrate, words.rolls, words.person,
             words.remarks);
    use->exec();
}

/// The search is told what stood there: it keeps no text of its own.
void drop(Prepared& prepared, std::int64_t row, const Words& words)
{
    withWords(prepared("INSERT INTO word_search (word_search, rowid, run, job, title, customer, substrate, rolls, "
                       "operator, remarks) VALUES ('delete', ?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)"),
              row, words);
    const auto gone = prepared("DELETE FROM word_rows WHERE row = ?1");
    gone.with(row);
    gone->exec();
}

bool isOfWord(char c)
{
    return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') ||
           static_cast<unsigned char>(c) >= 0x80;
}

}  // namespace

Words wordsOf(const Json& body, const JobWords& job, const std::string& personName)
{
    const Json& inputs = body["inputs"];
    std::vector<std::string> rolls, remarks;
    for (const Json& event : body["events"].items()) {
        addOnce(rolls, event["inputs"]["roll"]["id"].text());
        if (event["what"].text() == "noted") remarks.push_back(event["text"].text());
    }
    addOnce(rolls, inputs["roll"]["id"].text());
    if (const std::string said = body["remarks"].text(); !said.empty()) remarks.push_back(said);
    return {body["id"].text(),
            inputs["job"]["id"].text(),
            job.title,
            job.customer,
            inputs["substrate"]["id"].text(),
            lines(rolls),
            personName,
            lines(remarks)};
}

Words wordsOf(const run::Run& run, const JobWords& job)
{
    std::vector<std::string> rolls, notes;
    for (const run::Event& event : run.events()) std::visit(Listener{rolls, notes}, event.happening());
    addOnce(rolls, run.sources().roll.id);
    return {run.id(),     run.sources().job.id, job.title,   job.customer, run.sources().substrate.id,
            lines(rolls), run.operatorName(),   lines(notes)};
}

void putWords(Prepared& prepared, std::int64_t row, const Words& words)
{
    if (const auto before = wordsAt(prepared, row)) {
        if (*before == words) return;
        drop(prepared, row, *before);
    }
    putNewWords(prepared, row, words);
    withWords(prepared("INSERT INTO word_search (rowid, run, job, title, customer, substrate, rolls, operator, "
                       "remarks) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)"),
              row, words);
}

void putNewWords(Prepared& prepared, std::int64_t row, const Words& words)
{
    withWords(prepared("INSERT INTO word_rows (row, run, job, title, customer, substrate, rolls, operator, remarks) "
                       "VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)"),
              row, words);
}

void allWordsSearched(SQLite::Database& db)
{
    const auto set = [&db](const char* what, std::int64_t value) {
        SQLite::Statement put(db, "INSERT INTO word_search (word_search, rank) VALUES (?, ?)");
        put.bind(1, what);
        put.bind(2, value);
        put.exec();
    };
    // Few large pieces that are merged once, where small ones were merged again and again; then as the engine has it.
    constexpr std::int64_t kPiece = 256 << 20, kMostPieces = 512;
    constexpr std::int64_t kOwnPiece = 1 << 20, kOwnMerge = 4, kOwnMostPieces = 16;
    set("automerge", 0);
    set("crisismerge", kMostPieces);
    set("hashsize", kPiece);
    db.exec("INSERT INTO word_search (word_search) VALUES ('rebuild')");
    db.exec("INSERT INTO word_search (word_search) VALUES ('optimize')");
    set("automerge", kOwnMerge);
    set("crisismerge", kOwnMostPieces);
    set("hashsize", kOwnPiece);
}

void dropWords(Prepared& prepared, std::int64_t row)
{
    if (const auto before = wordsAt(prepared, row)) drop(prepared, row, *before);
}

std::string matchOf(std::string_view typed)
{
    std::string match;
    std::size_t words = 0;
    for (std::size_t at = 0; at < typed.size() && words < kMostWords;) {
        const auto isGap = [&](std::size_t i) { return static_cast<unsigned char>(typed[i]) <= ' '; };
        if (isGap(at)) {
            ++at;
            continue;
        }
        std::size_t end = at;
        while (end < typed.size() && !isGap(end)) ++end;
        const std::string_view word = typed.substr(at, end - at);
        at = end;
        if (std::none_of(word.begin(), word.end(), isOfWord)) continue;
        ++words;
        match += match.empty() ? "\"" : " \"";
        for (const char c : word) match.append(c == '"' ? 2 : 1, c);
        match += "\" *";
    }
    // Nothing but signs: no run has such a word.
    const bool blank =
        std::all_of(typed.begin(), typed.end(), [](char c) { return static_cast<unsigned char>(c) <= ' '; });
    return match.empty() && !blank ? "\"\"" : match;
}

}  // namespace taut::logbook
