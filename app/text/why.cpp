// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/text/why.h"

#include <QCoreApplication>
#include <QStringList>

#include "app/text/names.h"
#include "app/text/words.h"

namespace taut::app {

namespace {

QString say(const char* source) { return QCoreApplication::translate("why", source); }
QString line(const QString& text) { return QStringLiteral("<p style='margin:0 0 6px 0'>%1</p>").arg(text); }
QString safe(const QString& text) { return text.toHtmlEscaped(); }

QString keys(const targets::Needs& needs)
{
    QStringList list;
    for (const std::string& key : needs.keys) list << dataText(key);
    return list.join(QStringLiteral(", "));
}

QString inputs(const targets::Because& because, UnitSystem system)
{
    // A path is the sum of many pieces: the first few show the idea, the count says the rest.
    constexpr std::size_t kMost = 8;
    QString rows;
    for (std::size_t i = 0; i < because.given.size() && i < kMost; ++i) {
        const targets::Given& g = because.given[i];
        rows += QStringLiteral("<tr><td style='padding-right:12px'>%1</td><td style='padding-right:12px'>%2</td>"
                               "<td style='padding-right:12px'><b>%3</b></td><td>%4</td></tr>")
                    .arg(safe(dataText(g.symbol)), safe(words(g.name, system)), safe(valueText(g.value, system)),
                         safe(dataText(g.from)));
    }
    QString table = QStringLiteral("<table>%1</table>").arg(rows);
    if (because.given.size() > kMost)
        table += line(say("and %1 more").arg(static_cast<int>(because.given.size() - kMost)));
    return table;
}

}  // namespace

QString targetName(const targets::Target& target, UnitSystem system) { return words(target.name, system); }

QString targetValue(const targets::Target& target, UnitSystem system)
{
    if (const targets::Ready* r = target.ready()) return valueText(r->value, system);
    if (const auto* needs = std::get_if<targets::Needs>(&target.state)) return say("needs %1").arg(keys(*needs));
    return say("cannot");
}

QString targetWindow(const targets::Target& target, UnitSystem system)
{
    const targets::Ready* r = target.ready();
    return r ? rangeText(r->window.low, r->window.high, system) : QString();
}

QString whyHtml(const targets::Target& target, UnitSystem system)
{
    QString html = line(QStringLiteral("<b>%1</b>").arg(safe(targetName(target, system))));
    if (const auto* needs = std::get_if<targets::Needs>(&target.state))
        return html + line(safe(say("This cannot be worked out until these are known: %1.").arg(keys(*needs))));
    if (const auto* no = std::get_if<targets::Cannot>(&target.state)) return html + line(safe(words(no->why, system)));

    const targets::Ready& r = *target.ready();
    html +=
        line(QStringLiteral("<span style='font-size:large'><b>%1</b></span>").arg(safe(valueText(r.value, system))));
    if (!r.advice.empty()) html += line(safe(words(r.advice, system)));
    if (const QString window = targetWindow(target, system); !window.isEmpty())
        html +=
            line(safe(say("Limits: %1 (%2: %3)").arg(window, ruleText(r.window.rule), words(r.window.source, system))));
    else if (!r.window.source.empty())
        html += line(safe(words(r.window.source, system)));
    if (!r.because.symbols.empty())
        html += line(safe(say("Formula %1: %2").arg(dataText(r.because.formula), dataText(r.because.symbols))));
    html += inputs(r.because, system);
    if (r.uncertainty)
        html += line(safe(say("Known to about %1 either way.").arg(quantityText(*r.uncertainty, system))));
    html += line(safe(say("Source: %1").arg(dataText(r.because.source))));
    return html;
}

}  // namespace taut::app
