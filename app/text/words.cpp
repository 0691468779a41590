// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/text/words.h"

#include <array>
#include <utility>

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

#include "app/text/language.h"
#include "app/text/pseudo.h"
#include "core/units/plain.h"

namespace taut::app {

namespace {

QString fromUtf8(std::string_view text) { return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())); }

/// core writes numbers with a point; people read them with their own decimal sign and no group separators, because a
/// group separator is what the reader of numbers refuses.
QString localNumber(std::string_view number)
{
    QString text = fromUtf8(number);
    text.replace(QLatin1Char('.'), QLocale().decimalPoint());
    return text;
}

QString joined(const QuantityWords& q)
{
    if (q.unit.isEmpty()) return q.number;
    return q.number + QChar::Nbsp + q.unit;
}

QString argument(const TextArg& arg, UnitSystem system)
{
    if (const auto* text = std::get_if<std::string>(&arg)) return fromUtf8(*text);
    if (const auto* whole = std::get_if<std::int64_t>(&arg)) return QString::number(*whole);
    if (const auto* texts = std::get_if<std::vector<Text>>(&arg)) {
        QStringList all;
        for (const Text& text : *texts) all << words(text, system);
        return all.join(QStringLiteral(", "));
    }
    const auto& m = std::get<Magnitude>(arg);
    return joined(quantityWords(Quantity(m.si, m.kind, m.unit), system));
}

/// One pass over the sentence, so that a "%2" inside an argument stays what somebody typed.
QString filled(const QString& sentence, const std::vector<TextArg>& args, UnitSystem system)
{
    QString out;
    for (qsizetype i = 0; i < sentence.size(); ++i) {
        if (sentence[i] != QLatin1Char('%') || i + 1 == sentence.size() || !sentence[i + 1].isDigit()) {
            out += sentence[i];
            continue;
        }
        qsizetype end = i + 1;
        while (end < sentence.size() && end < i + 3 && sentence[end].isDigit()) ++end;
        const auto index = static_cast<std::size_t>(QStringView(sentence).mid(i + 1, end - i - 1).toInt());
        if (index >= 1 && index <= args.size())
            out += argument(args[index - 1], system);
        else
            out += QStringView(sentence).mid(i, end - i);
        i = end - 1;
    }
    return out;
}

/// The day as people of the language write it, with the whole year: of two figures nobody knows which is the month. In
/// English as the standard writes it (ISO 8601), since English alone does not say which comes first.
QString dayPattern()
{
    if (language() == QLatin1String("de")) return QStringLiteral("dd.MM.yyyy");
    if (language() == QLatin1String("es")) return QStringLiteral("dd/MM/yyyy");
    return QStringLiteral("yyyy-MM-dd");
}

QString whole(const QString& text) { return text.isEmpty() ? text : pseudoWrapped(text); }

}  // namespace

QString words(const Text& text, UnitSystem system)
{
    if (text.empty()) return {};
    return filled(QCoreApplication::translate("core", text.source.c_str()), text.args, system);
}

QString words(const Finding& finding, UnitSystem system)
{
    return QString::fromStdString(
        joinedSentences(words(finding.text, system).toStdString(), words(finding.remedy, system).toStdString()));
}

QuantityWords quantityWords(const Quantity& q, UnitSystem system, Rounding rounding)
{
    const Shown shown = show(q, unitsFor(system), rounding);
    return {localNumber(shown.number), unitText(shown.unit)};
}

std::pair<QuantityWords, QuantityWords> rangeWords(const Quantity& low, const Quantity& high, UnitSystem system)
{
    const auto [from, to] = showRange(low, high, unitsFor(system));
    return {{localNumber(from.number), unitText(from.unit)}, {localNumber(to.number), unitText(to.unit)}};
}

std::pair<QString, QString> endTexts(const Quantity& low, const Quantity& high, UnitSystem system)
{
    const auto [from, to] = rangeWords(low, high, system);
    return {whole(joined(from)), whole(joined(to))};
}

QString quantityText(const Quantity& q, UnitSystem system, Rounding rounding)
{
    return whole(joined(quantityWords(q, system, rounding)));
}

QString numberText(double value) { return QLocale().toString(value, 'g', 6).remove(QLocale().groupSeparator()); }

QString rangeText(const std::optional<Quantity>& low, const std::optional<Quantity>& high, UnitSystem system)
{
    const auto end = [system](const Quantity& q, Rounding r) { return joined(quantityWords(q, system, r)); };
    if (low && high) {
        const auto [from, to] = rangeWords(*low, *high, system);
        return QCoreApplication::translate("text", "%1 to %2").arg(joined(from), joined(to));
    }
    if (low) return QCoreApplication::translate("text", "at least %1").arg(end(*low, Rounding::Up));
    if (high) return QCoreApplication::translate("text", "at most %1").arg(end(*high, Rounding::Down));
    return {};
}

QString unitText(std::string_view symbol)
{
    QString text;
    const QString plain = fromUtf8(symbol);
    for (qsizetype i = 0; i < plain.size(); ++i) {
        const QChar c = plain[i];
        const bool afterLetter = i > 0 && plain[i - 1].isLetter();
        if (afterLetter && c == QLatin1Char('2'))
            text += QChar(0x00B2);
        else if (afterLetter && c == QLatin1Char('3'))
            text += QChar(0x00B3);
        else
            text += c;
    }
    // A micrometre is written um on a keyboard and µm in type; words of units begin with u nowhere else.
    if (text == QLatin1String("um")) text[0] = QChar(0x00B5);
    return text;
}

QString dataText(std::string_view utf8) { return dataText(fromUtf8(utf8)); }

QString dataText(const QString& text)
{
    // A scanned tag parts its fields with a sign that no font has.
    QString shown = text;
    for (QChar& c : shown)
        if (c.unicode() < 0x20 && c != QLatin1Char('\n')) c = QLatin1Char(' ');
    return whole(shown);
}

QString momentText(qint64 utcMs, int offsetMinutes)
{
    const QDateTime at = QDateTime::fromMSecsSinceEpoch(utcMs, Qt::OffsetFromUTC, offsetMinutes * 60);
    return whole(at.toString(dayPattern() + QStringLiteral(" HH:mm")));
}

QString momentHereText(qint64 utcMs)
{
    return momentText(utcMs, QDateTime::fromMSecsSinceEpoch(utcMs).offsetFromUtc() / 60);
}

QString clockText(qint64 utcMs, int offsetMinutes)
{
    const QDateTime at = QDateTime::fromMSecsSinceEpoch(utcMs, Qt::OffsetFromUTC, offsetMinutes * 60);
    return whole(at.toString(QStringLiteral("HH:mm")));
}

}  // namespace taut::app
