// SPDX-License-Identifier: GPL-3.0-or-later
// The lists of texts and the translations of the procedure: nothing is missing, too long, or the English over again.
#include <catch2/catch.hpp>

#include <algorithm>

#include <QRegularExpression>
#include <QStringList>

#include "app/seams/resources.h"
#include "app/seams/translations.h"
#include "app/text/language.h"
#include "core/base/file.h"
#include "core/procedure/translation.h"
#include "core/units/plain.h"
#include "tests/app/language/lists_support.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::lists;

namespace {

QStringList placeholdersIn(const QString& text)
{
    static const QRegularExpression placeholder(QStringLiteral("%\\d+"));
    QStringList all;
    for (auto found = placeholder.globalMatch(text); found.hasNext();) all << found.next().captured();
    all.sort();
    return all;
}

/// Letters behind which a key is meant: "&Note", not "Q&&A" and not "this & that".
qsizetype keysIn(const QString& text)
{
    static const QRegularExpression key(QStringLiteral("&\\w"));
    return QString(text).remove(QStringLiteral("&&")).count(key);
}

QChar endOf(const QString& text)
{
    static const QString kEnds = QStringLiteral(".?!:\u2026");
    const QChar last = text.isEmpty() ? QChar() : text.back();
    return kEnds.contains(last) ? last : QChar();
}

/// "%1: %2" is the same everywhere.
bool hasWords(QString text)
{
    static const QRegularExpression placeholder(QStringLiteral("%\\d+"));
    text.remove(placeholder);
    return std::any_of(text.begin(), text.end(), [](QChar c) { return c.isLetter(); });
}

bool hasSpaceTooMany(const QString& text) { return text != text.simplified(); }

QStringList otherLanguages()
{
    QStringList all;
    for (const Language& one : languages())
        if (QLatin1String(one.id) != QLatin1String("en")) all << QString::fromLatin1(one.id);
    return all;
}

}  // namespace

TEST_CASE("every text is there in every language that the program offers, and reads as a text of it should")
{
    for (const QString& language : otherLanguages()) {
        const List list = listOf(language);
        CHECK(list.size() > 2500);
        const std::set<QString> same = sameIn(language);
        CHECK(same.size() < list.size() / 20);
        for (const auto& [key, said] : list) {
            const auto& [context, english] = key;
            CAPTURE(language.toStdString(), context.toStdString(), english.toStdString(),
                    said.translation.toStdString());
            CHECK((said.done && !said.translation.isEmpty()));
            if (said.translation.isEmpty()) continue;
            CHECK((said.translation != english || !hasWords(english) || same.count(english) == 1));
            CHECK(said.translation.size() <= english.size() * 9 / 5 + 12);
            CHECK(placeholdersIn(said.translation) == placeholdersIn(english));
            CHECK(keysIn(said.translation) == keysIn(english));
            CHECK(endOf(said.translation) == endOf(english));
            CHECK((hasSpaceTooMany(english) || !hasSpaceTooMany(said.translation)));
        }
    }
}

TEST_CASE("what may stay English is on the list only while it is a text of the program")
{
    for (const QString& language : otherLanguages()) {
        const List list = listOf(language);
        for (const QString& english : sameIn(language)) {
            CAPTURE(language.toStdString(), english.toStdString());
            CHECK(std::any_of(list.begin(), list.end(), [&](const auto& one) {
                return one.first.second == english && one.second.translation == english;
            }));
        }
    }
}

TEST_CASE("the procedure is there in every language that the program offers, and nothing is found wrong with it")
{
    const std::filesystem::path resources = std::filesystem::path(TAUTWEB_SOURCE_DIR) / "resources";
    for (const InputFile& file : shopFiles(resources, "procedure")) {
        Findings notes;
        const auto english = procedure::readProcedure(file.text, file.file, notes);
        REQUIRE(english);
        const run::Source source = run::sourceOf(file.id, english->edition, file.text);
        CHECK(translationFor(resources, source, "en").id.empty());
        CHECK(translationFor(resources, source, "xx").id.empty());
        for (const QString& language : otherLanguages()) {
            CAPTURE(file.id, language.toStdString());
            const run::Source words = translationFor(resources, source, language.toStdString());
            REQUIRE(words.id == language.toStdString());
            Findings lint;
            REQUIRE(procedure::translated(*english, words.text, words.id, lint));
            for (const Finding& finding : lint) FAIL_CHECK(sentence(finding));
        }
    }
}
