// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/seams/help_texts.h"

#include <algorithm>

#include <QRegularExpression>
#include <QStringList>
#include <QTextDocument>

#include "core/base/file.h"

namespace taut::app {

namespace {

constexpr const char* kPages[] = {"start",       "run",          "history", "desk",  "setup",
                                  "definitions", "find_setting", "this_pc", "signs", "keys",
                                  "first_start", "pc_down",      "practice"};

QString titleOf(const QString& markdown)
{
    const QString first = markdown.section(QLatin1Char('\n'), 0, 0);
    return first.startsWith(QStringLiteral("# ")) ? first.mid(2).trimmed() : QString();
}

bool hasWord(const QString& text, const QString& word)
{
    const QRegularExpression begins(QStringLiteral("(^|[^\\w])") + QRegularExpression::escape(word),
                                    QRegularExpression::CaseInsensitiveOption |
                                        QRegularExpression::UseUnicodePropertiesOption);
    return begins.match(text).hasMatch();
}

bool hasAll(const QString& text, const QStringList& words)
{
    return std::all_of(words.begin(), words.end(), [&](const QString& word) { return hasWord(text, word); });
}

/// The line that has most of the words.
QString bestLine(const QStringList& lines, const QStringList& words)
{
    QString best;
    qsizetype most = 0;
    for (const QString& line : lines) {
        const auto here = std::count_if(words.begin(), words.end(), [&](const QString& w) { return hasWord(line, w); });
        if (here <= most) continue;
        most = here;
        best = line;
    }
    return best.trimmed();
}

}  // namespace

std::vector<HelpText> helpTexts(const std::filesystem::path& resources, const QString& language)
{
    std::vector<HelpText> pages;
    for (const char* id : kPages) {
        for (const QString& tongue : {language, QStringLiteral("en")}) {
            const auto text = readFile(resources / "help" / tongue.toStdString() / (std::string(id) + ".md"));
            if (!text) continue;
            const QString markdown = QString::fromStdString(*text);
            pages.push_back({QString::fromLatin1(id), titleOf(markdown), markdown});
            break;
        }
    }
    return pages;
}

std::vector<HelpHit> findInHelp(const std::vector<HelpText>& pages, const QString& words)
{
    const QStringList wanted = words.simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts);
    std::vector<HelpHit> inTitle, inText;
    for (const HelpText& page : pages) {
        if (hasAll(page.title, wanted)) {
            inTitle.push_back({page.id, {}});
            continue;
        }
        QTextDocument document;
        document.setMarkdown(page.markdown);
        const QString plain = document.toPlainText();
        if (hasAll(plain, wanted)) inText.push_back({page.id, bestLine(plain.split(QLatin1Char('\n')).mid(1), wanted)});
    }
    inTitle.insert(inTitle.end(), inText.begin(), inText.end());
    return inTitle;
}

}  // namespace taut::app
