// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/start/target_list.h"

#include <QCoreApplication>
#include <QSplitter>
#include <QVBoxLayout>

#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/row_list.h"
#include "app/widgets/theme.h"
#include "app/widgets/why_panel.h"

namespace taut::app {

namespace {

/// Families in the order in which an operator meets them.
struct Family {
    const char* prefix;
    const char* name;
};
constexpr Family kFamilies[] = {
    {"roll.", QT_TRANSLATE_NOOP("families", "Roll")},
    {"job.", QT_TRANSLATE_NOOP("families", "Job")},
    {"core.", QT_TRANSLATE_NOOP("families", "Core and lift")},
    {"lift.", QT_TRANSLATE_NOOP("families", "Core and lift")},
    {"mandrel.", QT_TRANSLATE_NOOP("families", "Core and lift")},
    {"align.", QT_TRANSLATE_NOOP("families", "Alignment")},
    {"strip.", QT_TRANSLATE_NOOP("families", "Alignment")},
    {"thread.", QT_TRANSLATE_NOOP("families", "Threading")},
    {"motion.", QT_TRANSLATE_NOOP("families", "Threading")},
    {"splice.", QT_TRANSLATE_NOOP("families", "Splice")},
    {"tension.", QT_TRANSLATE_NOOP("families", "Tension")},
    {"traction.", QT_TRANSLATE_NOOP("families", "Tension")},
    {"guide.", QT_TRANSLATE_NOOP("families", "Web guide")},
    {"stop.", QT_TRANSLATE_NOOP("families", "Stops")},
    {"start.", QT_TRANSLATE_NOOP("families", "Stops")},
    {"air.", QT_TRANSLATE_NOOP("families", "Stops")},
    {"register.", QT_TRANSLATE_NOOP("families", "Hand-over to inking")},
    {"ink.", QT_TRANSLATE_NOOP("families", "Hand-over to inking")},
};

/// What somebody turns, sets or places for this roll, in the order in which they come to it: its id begins and ends so.
struct Setting {
    std::string_view begins, ends;
};
constexpr Setting kSettings[] = {
    {"roll.feed", ""},     {"core.adapter", ""},           {"lift.pressure", ""},
    {"align.centre", ""},  {"tension.unwind", ".setting"}, {"tension.", ".setting"},
    {"guide.", "_sensor"}, {"stop.diameter", ""},
};

bool isSetting(const std::string& id, const Setting& setting)
{
    return id.starts_with(setting.begins) && id.ends_with(setting.ends);
}

/// Why it cannot work on this press; nothing where it merely never comes to it.
const targets::Cannot* cannotWork(const targets::Target& target)
{
    const auto* no = std::get_if<targets::Cannot>(&target.state);
    return no == nullptr || no->never() ? nullptr : no;
}

/// All that does not fit, each said once: what keeps the job off this press, then what wants a thought.
QStringList troublesOf(const targets::Targets& targets, UnitSystem system)
{
    QStringList troubles;
    const auto add = [&](const Finding& f) {
        if (const QString sentence = words(f, system); !troubles.contains(sentence)) troubles << sentence;
    };
    for (const Severity severity : {Severity::Stop, Severity::Warn}) {
        for (const Finding& f : targets.findings)
            if (f.severity == severity) add(f);
        for (const targets::Target& t : targets.all)
            if (const targets::Cannot* no = cannotWork(t); no != nullptr && no->why.severity == severity) add(no->why);
    }
    return troubles;
}

QString familyName(const Family& family) { return QCoreApplication::translate("families", family.name); }

QString familyOf(const std::string& id)
{
    for (const Family& f : kFamilies)
        if (id.rfind(f.prefix, 0) == 0) return familyName(f);
    return QCoreApplication::translate("families", "Other");
}

}  // namespace

TargetList::TargetList(QWidget* parent) : QWidget(parent)
{
    m_troubles = wrapped(QString(), "strong", this);
    m_troubles->setTextFormat(Qt::PlainText);
    m_troubles->setAccessibleName(tr("What does not fit"));
    m_list = new RowList(this);
    m_list->setAccessibleName(tr("What follows from this"));
    m_list->setMinimumHeight(4 * sizes().row);
    m_why = new WhyPanel(this);
    m_split = new QSplitter(Qt::Vertical, this);
    m_split->setHandleWidth(sizes().gap);
    m_split->addWidget(m_list);
    m_split->addWidget(m_why);
    m_split->setStretchFactor(0, 3);
    m_split->setStretchFactor(1, 2);
    m_split->setChildrenCollapsible(false);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_troubles);
    column->addWidget(m_split, 1);
    connect(m_list, &QListWidget::currentItemChanged, this, [this] { explain(); });
}

void TargetList::show(const targets::Targets& targets, UnitSystem system)
{
    const QString before = m_list->chosen();
    m_targets = targets;
    m_system = system;

    const QStringList troubles = troublesOf(targets, system);
    m_troubles->setText(troubles.join(QStringLiteral("\n")));
    m_troubles->setVisible(!troubles.isEmpty());

    const QSignalBlocker quiet(m_list);
    m_list->clear();
    m_added.clear();
    m_head.clear();
    // What cannot work, then what is set by hand; what merely follows comes after.
    addRows(tr("What cannot work"), [](const targets::Target& t) { return cannotWork(t) != nullptr; });
    const QString set = tr("To be set on the press");
    for (const Setting& setting : kSettings)
        addRows(set, [&](const targets::Target& t) { return isSetting(t.id, setting); });
    QStringList shown;
    for (const Family& f : kFamilies) {
        if (shown.contains(familyName(f))) continue;
        shown << familyName(f);
        addFamily(familyName(f));
    }
    addFamily(QCoreApplication::translate("families", "Other"));
    if (!m_list->choose(before)) m_list->choose(m_list->first());
    explain();
}

void TargetList::addFamily(const QString& family)
{
    addRows(family, [&](const targets::Target& t) { return familyOf(t.id) == family; });
}

/// Those that belong there and are not in the list yet, under a headline said once.
void TargetList::addRows(const QString& head, const std::function<bool(const targets::Target&)>& belongs)
{
    for (const targets::Target& t : m_targets.all) {
        if (m_added.contains(t.id) || !belongs(t)) continue;
        if (m_head != head) m_list->add({{}, head, {}, {}, MarkShape::None});
        m_head = head;
        m_added.insert(t.id);
        QString more = targetWindow(t, m_system);
        if (!t.ready()) more = targetValue(t, m_system);
        m_list->add({QString::fromStdString(t.id), words(t.name, m_system),
                     t.ready() ? targetValue(t, m_system) : QStringLiteral("\u2013"), more, MarkShape::None});
    }
}

void TargetList::showNothing(const QString& why)
{
    m_targets = {};
    m_list->clear();
    m_troubles->setText(why);
    m_troubles->setVisible(true);
    explain();
}

/// Beside each other where there is room for both, else one below the other.
void TargetList::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    constexpr int kLetters = 110;
    const bool wide = width() > kLetters * fontMetrics().averageCharWidth();
    const Qt::Orientation now = wide ? Qt::Horizontal : Qt::Vertical;
    if (m_split->orientation() == now && m_placed) return;
    m_placed = true;
    m_split->setOrientation(now);
    const int room = wide ? width() : height();
    m_split->setSizes({room * 3 / 5, room * 2 / 5});
}

void TargetList::explain()
{
    const std::string id = m_list->chosen().toStdString();
    if (const targets::Target* t = m_targets.find(id))
        m_why->show(*t, m_targets, m_system);
    else
        m_why->say(tr("Choose a line to see why it is what it is."));
}

}  // namespace taut::app
