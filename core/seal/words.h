// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <set>
#include <utility>

#include "core/seal/document.h"
#include "core/seal/seal.h"

namespace taut::seal {

// What many runs say alike is sealed once, as definitions, and named by hash: the words of a target set
// ("target_words", under the press's id) and those of a plan ("plan_words", under the procedure's). Words are the JSON
// of a whole set or plan in which everything that is of one run alone (a figure, the name of its roll, job or
// substrate) is null or an empty list, so that a set or plan is told as the difference to its words
// (seal/difference.h): "since": {"what", "sha256"}.

inline constexpr std::string_view kTargetWords = "target_words";
inline constexpr std::string_view kPlanWords = "plan_words";

/// Words that stand in the logbook already and may serve again: of this kind and id, newest first.
using KnownWords = std::function<std::vector<std::string>(std::string_view what, const std::string& id)>;
/// A run's document as it is sealed, and the definitions that have to stand in the chain before it.
struct Parted {
    struct Words {
        std::string what;
        run::Source source;  ///< edition 0: a logbook counts them
    };
    Document document;
    std::vector<Words> words;
};
/// Sentences go by figures too (whether one roll is enough), so words that are not quite a run's own serve as well
/// while that makes its document at most kWorth longer; else it gets its own.
inline constexpr std::size_t kWorth = 5'000;
/// Parts the first target set and the first plan of a run's document from their words, own ones or known ones.
[[nodiscard]] Parted partWords(Document run, const KnownWords& known = {});
/// The target sets or plans of a document with those whole that are told since words. Code document.words: the words
/// are not to be had, or are not of their hash; document.broken.
[[nodiscard]] Result<Json::Array> withWords(const Json::Array& list, const TextBySha& texts);

/// Follows a chain and says where a run names words that no definition before it has. Code document.words, subject
/// "seal 17".
class WordsCheck {
public:
    /// The next seal of the chain; nullopt: it names no words, or such as stand before it.
    [[nodiscard]] std::optional<Finding> next(const Seal& seal, const Document& document);

private:
    std::set<std::pair<std::string, std::string>> m_known;  ///< what, and hash of the text that stands there
};

}  // namespace taut::seal
