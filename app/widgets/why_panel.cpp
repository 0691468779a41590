// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/why_panel.h"

#include <QGridLayout>
#include <QLabel>
#include <QRegularExpression>
#include <QScrollBar>
#include <QStringList>
#include <QVBoxLayout>

#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/theme.h"
#include "core/targets/aim.h"

namespace taut::app {

namespace {

/// The targets in it by their names: "target:roll.length - target:strip.length". "" where it names none of them.
QString targetsIn(const std::string& from, const targets::Targets& among, UnitSystem system)
{
    static const QRegularExpression id(QStringLiteral("target:([a-z0-9_]+(?:\\.[a-z0-9_]+)+)"));
    QString said = QString::fromStdString(from);
    bool any = false;
    for (QRegularExpressionMatch m = id.match(said); m.hasMatch(); m = id.match(said, m.capturedStart() + 1)) {
        const targets::Target* target = among.find(m.captured(1).toStdString());
        if (target == nullptr) continue;
        const QString name = QStringLiteral("\u201C%1\u201D").arg(words(target->name, system));
        said.replace(m.capturedStart(), m.capturedLength(), name);
        any = true;
    }
    return any ? said : QString();
}

/// A dotted key may be parted behind a dot, so that it never makes the panel wider than it is.
QString parted(QString key)
{
    return key.replace(QLatin1Char('.'), QStringLiteral(".\u200B"))
        .replace(QLatin1Char('_'), QStringLiteral("_\u200B"));
}

/// What core adds in words of its own to where something came from: "half of roll.core".
QString said(const std::string& from, UnitSystem system)
{
    struct Way {
        std::string_view before, behind;
        const char* english;
    };
    static constexpr Way kWays[] = {
        {"half of ", "", "half of %1"},
        {"bore of ", "", "bore of %1"},
        {"middle of ", "", "middle of %1"},
        {"", ", of what was left", "%1, of what was left"},
        {"", ", under the taper", "%1, under the taper"},
        {"", " at the joint and each splice inside", "%1 at the joint and each splice inside"},
        {"", " not given: none", "%1 not given: none"},
        {"", " over the width", "%1 over the width"},
    };
    for (const Way& way : kWays)
        if (from.starts_with(way.before) && from.ends_with(way.behind)) {
            const std::size_t length = from.size() - way.before.size() - way.behind.size();
            return parted(words(Text(way.english, {from.substr(way.before.size(), length)}), system));
        }
    return parted(words(Text(from), system));
}

/// Where an input came from, as people say it: "target:roll.length" is another target, a dotted key stands in a file.
QString fromText(const std::string& from, const targets::Targets& among, UnitSystem system)
{
    if (QString named = targetsIn(from, among, system); !named.isEmpty()) return named;
    const std::size_t colon = from.find(':');
    QString what = QString::fromStdString(colon == std::string::npos ? from : from.substr(colon + 1));
    what = parted(what);
    const std::string_view kind = std::string_view(from).substr(0, colon == std::string::npos ? 0 : colon);
    if (kind == "target") return WhyPanel::tr("the target %1").arg(what);
    if (kind == "path") return WhyPanel::tr("the drawn path, %1").arg(what);
    if (kind == "table") return WhyPanel::tr("the table %1").arg(what);
    if (kind == "policy") return WhyPanel::tr("this shop's policy %1").arg(what);
    if (kind == "measured") return WhyPanel::tr("the reading %1").arg(what);
    return said(from, system);
}

}  // namespace

WhyPanel::WhyPanel(QWidget* parent) : QScrollArea(parent), m_body(new QWidget), m_lines(new QVBoxLayout(m_body))
{
    setObjectName(QStringLiteral("why"));
    setAccessibleName(tr("Why"));
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::StrongFocus);
    setWidget(m_body);
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->setSpacing(4);
}

void WhyPanel::clear()
{
    while (QLayoutItem* item = m_lines->takeAt(0)) {
        if (QWidget* widget = item->widget()) {
            // At once: deleted later it would be seen under the next step's lines.
            widget->hide();
            widget->deleteLater();
        }
        delete item;
    }
}

void WhyPanel::line(const QString& head, const QString& text, const char* role)
{
    if (text.isEmpty()) return;
    if (!head.isEmpty()) m_lines->addWidget(wrapped(head, "small", m_body));
    m_lines->addWidget(wrapped(text, role, m_body));
}

void WhyPanel::show(const procedure::Step& step, const std::optional<targets::Target>& target,
                    const targets::Targets& among, UnitSystem system)
{
    clear();
    line({}, words(step.why, system), "");
    if (target) addTarget(*target, among, system);
    line(tr("See"), step.see.empty() ? QString() : words(step.see, system));
    done();
}

void WhyPanel::show(const targets::Target& target, const targets::Targets& among, UnitSystem system)
{
    clear();
    addTarget(target, among, system);
    done();
}

void WhyPanel::say(const QString& sentence)
{
    clear();
    line({}, sentence, "soft");
    done();
}

void WhyPanel::done()
{
    m_lines->addStretch(1);
    verticalScrollBar()->setValue(0);
}

void WhyPanel::addTarget(const targets::Target& target, const targets::Targets& among, UnitSystem system)
{
    line({}, words(target.name, system), "strong");
    if (const targets::Ready* ready = target.ready()) addReady(*ready, among, system);
    if (const auto* needs = std::get_if<targets::Needs>(&target.state)) {
        QStringList keys;
        for (const std::string& key : needs->keys) keys << dataText(key);
        line(tr("It cannot be computed. Missing from the files:"), keys.join(QLatin1Char('\n')), "strong");
        line(tr("Source"), words(Text(needs->source), system));
        line(tr("Advice"), words(needs->advice, system));
    }
    if (const auto* cannot = std::get_if<targets::Cannot>(&target.state)) {
        // What to do stands in its reason already.
        line(cannot->never() ? tr("Not with this roll:") : tr("This cannot be:"), words(cannot->why, system), "strong");
        line(tr("Source"), words(Text(cannot->source), system));
    }
}

void WhyPanel::addReady(const targets::Ready& ready, const targets::Targets& among, UnitSystem system)
{
    QString value = valueText(targets::aimOf(ready, system), system);
    if (ready.uncertainty) value += QStringLiteral(" \u00B1 ") + quantityText(*ready.uncertainty, system);
    line({}, value, "head");
    const QString range = rangeText(ready.window.low, ready.window.high, system);
    if (!range.isEmpty()) {
        line(ready.window.lowRule ? tr("Window, lowest by %1, highest by %2")
                                        .arg(ruleText(*ready.window.lowRule), ruleText(ready.window.rule))
                                  : tr("Window, by %1").arg(ruleText(ready.window.rule)),
             range);
    }
    line({}, words(ready.window.source, system), "small");
    if (!ready.because.symbols.empty())
        line(tr("How it is computed, formula %1").arg(words(Text(ready.because.formula), system)),
             words(Text(ready.because.symbols), system));
    addGiven(ready, among, system);
    line(tr("Source"), words(Text(ready.because.source), system));
    line(tr("Advice"), words(ready.advice, system));
}

void WhyPanel::addGiven(const targets::Ready& ready, const targets::Targets& among, UnitSystem system)
{
    if (ready.because.given.empty()) return;
    auto* box = new QWidget(m_body);
    auto* grid = new QGridLayout(box);
    grid->setContentsMargins(0, 2, 0, 2);
    grid->setHorizontalSpacing(10);
    grid->setVerticalSpacing(3);
    int row = 0;
    for (const targets::Given& given : ready.because.given) {
        grid->addWidget(wrapped(words(given.name, system), "", box), row, 0, Qt::AlignTop);
        auto* value = wrapped(valueText(given.value, system), "strong", box);
        // Large type has no room beside the name.
        const bool below = themeChoice().textScale > 1.3;
        value->setAlignment(below ? Qt::AlignLeft | Qt::AlignTop : Qt::AlignRight | Qt::AlignTop);
        value->setWordWrap(below);
        grid->addWidget(value, below ? ++row : row, below ? 0 : 1, Qt::AlignTop);
        const QString where = tr("%1, from %2").arg(dataText(given.symbol), fromText(given.from.str(), among, system));
        grid->addWidget(wrapped(where, "small", box), row + 1, 0, 1, 2, Qt::AlignTop);
        row += 2;
    }
    grid->setColumnStretch(0, 1);
    m_lines->addWidget(box);
}

}  // namespace taut::app
