// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <vector>

#include <QString>

namespace taut::app {

/// One page of the help: a short text of ours.
struct HelpText {
    QString id;        ///< its file without the ending; what links between pages name
    QString title;     ///< its first headline
    QString markdown;  ///< pictures are "picture:NAME" (drawing/help_pictures.h), links "ID.md"
};
/// Every page, in the order in which one reads them: resources/help/LANGUAGE, and in English what is not there in that
/// language.
[[nodiscard]] std::vector<HelpText> helpTexts(const std::filesystem::path& resources, const QString& language);

/// A page in which something was found, and the line that has it ("" where the title alone has).
struct HelpHit {
    QString id, line;
};
/// The pages that have every one of these words or beginnings of words, in capitals or not; those that have them in
/// their title first. No word finds every page.
[[nodiscard]] std::vector<HelpHit> findInHelp(const std::vector<HelpText>& pages, const QString& words);

}  // namespace taut::app
