// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/procedure/procedure.h"

namespace taut::procedure {

/// What a translation is of.
struct TranslationHead {
    std::string procedure, language;
    int edition = 0;  ///< of the procedure
};
/// nullopt: the file is no translation of a procedure.
[[nodiscard]] std::optional<TranslationHead> translationHead(std::string_view toml);

/// The procedure with its words as the translation says them, by the ids of its stages, places and steps; its language
/// is then the translation's, and everything else (kinds, needs, targets, order, the words that are stored) as it was.
/// The error is a file that is no translation, or one of another procedure (translation.other_procedure).
/// Where its [translation] says `of`, each of its tables does: twelve hex digits of the SHA-256 of the words that it
/// was made of, each with a line feed (a step's say, why, see, done, caution, tries, and of each choice word, say,
/// remedy). What was made of other words than now stand there is not laid (translation.stale warns): those are read in
/// the procedure's own. Without stamps it must be of the procedure's edition. What is wrong with the words stands in
/// `lint`: translation.missing, .unknown_id, .placeholder stop; .too_long, .same, .ending and .spacing warn. With a
/// Stop among it nothing is to be laid over a run.
[[nodiscard]] Result<Procedure> translated(const Procedure& procedure, std::string_view toml, std::string_view file,
                                           Findings& lint);

/// The longest that a translation of so many characters may be: a card has been laid out for the English.
[[nodiscard]] constexpr std::size_t longestTranslation(std::size_t english) noexcept { return english * 8 / 5 + 12; }

}  // namespace taut::procedure
