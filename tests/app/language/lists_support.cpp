// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/language/lists_support.h"

#include <catch2/catch.hpp>

#include <QFile>
#include <QXmlStreamReader>

namespace taut::app::lists {

List listOf(const QString& language)
{
    QFile file(QStringLiteral(TAUTWEB_SOURCE_DIR "/resources/translations/tautweb_%1.ts").arg(language));
    REQUIRE(file.open(QIODevice::ReadOnly));
    QXmlStreamReader xml(&file);
    List list;
    QString context, source;
    bool done = false, counted = false;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) continue;
        if (xml.name() == QLatin1String("name")) {
            context = xml.readElementText();
        } else if (xml.name() == QLatin1String("source")) {
            source = xml.readElementText();
        } else if (xml.name() == QLatin1String("message")) {
            counted = xml.attributes().hasAttribute(QLatin1String("numerus"));
        } else if (xml.name() == QLatin1String("translation")) {
            done = !xml.attributes().hasAttribute(QLatin1String("type"));
            if (!counted) list[{context, source}] = {xml.readElementText(), done};
        } else if (xml.name() == QLatin1String("numerusform")) {
            // Of one and of several: both have to be there, the longer one is looked at.
            const QString form = xml.readElementText();
            Said& said = list[{context, source}];
            said = {form.size() > said.translation.size() ? form : said.translation, done && !form.isEmpty()};
        }
    }
    REQUIRE_FALSE(xml.hasError());
    return list;
}

std::set<QString> sameIn(const QString& language)
{
    QFile file(QStringLiteral(TAUTWEB_SOURCE_DIR "/tests/app/language/same_%1.txt").arg(language));
    REQUIRE(file.open(QIODevice::ReadOnly));
    std::set<QString> same;
    for (const QString& line : QString::fromUtf8(file.readAll()).split(QLatin1Char('\n')))
        if (!line.isEmpty()) same.insert(line);
    return same;
}

}  // namespace taut::app::lists
