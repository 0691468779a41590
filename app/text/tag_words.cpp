// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/text/tag_words.h"

#include <algorithm>

#include <QCoreApplication>
#include <QDate>
#include <QStringList>

#include "app/text/words.h"
#include "core/inputs/tag_scan.h"
#include "core/units/format.h"
#include "core/units/unit.h"

namespace taut::app {

namespace {

QString onTag(const char* english) { return QCoreApplication::translate("TagTable", english); }

QString dayText(const inputs::TagDate& day)
{
    const QDate date(day.year, day.month, day.day);
    if (!day.monthOnly) return date.toString(Qt::ISODate);
    return onTag(QT_TRANSLATE_NOOP("TagTable", "%1, the day is not said"))
        .arg(date.toString(QStringLiteral("yyyy-MM")));
}

/// Four figures stay in one glance.
QString grouped(const std::string& text)
{
    constexpr std::size_t kLong = 8, kGroup = 4;
    const bool figures = std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
    if (!figures || text.size() < kLong) return dataText(text);
    QString out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (i > 0 && i % kGroup == 0) out += QChar::Nbsp;
        out += QLatin1Char(text[i]);
    }
    return out;
}

/// As the label says it, every figure of it; behind it in the units of whoever reads it, where those are others.
QString measureText(const Quantity& said, bool width, UnitSystem system)
{
    if (said.kind() == Kind::Count) return quantityText(said, system);
    // A width is spoken of in millimetres.
    const Quantity value = width && said.unit() == "m" ? said.in("mm") : said;
    const Unit* unit = findUnit(value.kind(), value.unit());
    if (unit == nullptr) return quantityText(value, system);
    const QString own = numberText(value.si() / unit->toSi) + QChar::Nbsp + unitText(unit->symbol);
    return shownUnit(value, system).symbol == unit->symbol
               ? own
               : QStringLiteral("%1 (%2)").arg(own, quantityText(value, system));
}

QString useText(const inputs::TagRow& row)
{
    switch (row.use) {
    case inputs::TagUse::Fills:
        return onTag(QT_TRANSLATE_NOOP("TagTable", "Will be entered: %1.")).arg(words(row.entry, UnitSystem::Metric));
    case inputs::TagUse::Agrees: return onTag(QT_TRANSLATE_NOOP("TagTable", "The same is entered."));
    case inputs::TagUse::Differs: return onTag(QT_TRANSLATE_NOOP("TagTable", "Something else is entered, and stays."));
    case inputs::TagUse::Shown: break;
    }
    return {};
}

}  // namespace

QString tagIdentifierText(const inputs::TagField& field)
{
    const QString id = dataText(field.id);
    return field.system == inputs::TagSystem::Application ? QStringLiteral("(%1)").arg(id) : id;
}

QString tagValueText(const inputs::TagField& field, UnitSystem system)
{
    if (const auto* day = std::get_if<inputs::TagDate>(&field.value)) return dayText(*day);
    if (const auto* word = std::get_if<Text>(&field.value)) return words(*word, system);
    if (const auto* value = std::get_if<Quantity>(&field.value))
        return measureText(*value, field.gives == inputs::TagGives::Width, system);
    return grouped(field.text);
}

QString tagUseText(const inputs::TagRow& row, UnitSystem system)
{
    QStringList parts;
    if (const QString use = useText(row); !use.isEmpty()) parts << use;
    QStringList against;
    for (const Text& one : row.against) against << words(one, system);
    if (!against.isEmpty())
        parts << onTag(QT_TRANSLATE_NOOP("TagTable", "Width, core, winding and length have to fit %1."))
                     .arg(against.join(QStringLiteral("; ")));
    return parts.join(QLatin1Char(' '));
}

QString tagToText(const QString& tag)
{
    QString text = tag;
    for (QChar& sign : text)
        if (sign.unicode() < 0x20) sign = QChar(0x2400 + sign.unicode());
    return text;
}

std::string tagFromText(const QString& text) { return inputs::withSeparators(text.trimmed().toStdString()); }

}  // namespace taut::app
