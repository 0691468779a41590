// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/start/target_list.h"

#include <map>

#include <QCoreApplication>
#include <QHeaderView>
#include <QSplitter>
#include <QVBoxLayout>

#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
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
    {"air.", QT_TRANSLATE_NOOP("families", "Stops")},
    {"register.", QT_TRANSLATE_NOOP("families", "Hand-over to inking")},
    {"ink.", QT_TRANSLATE_NOOP("families", "Hand-over to inking")},
};

QString familyOf(const std::string& id)
{
    for (const Family& f : kFamilies)
        if (id.rfind(f.prefix, 0) == 0) return QCoreApplication::translate("families", f.name);
    return QCoreApplication::translate("families", "Other");
}

}  // namespace

TargetList::TargetList(QWidget* parent) : QWidget(parent)
{
    m_troubles = wrapped(QString(), "strong", this);
    m_troubles->setTextFormat(Qt::PlainText);
    m_troubles->setAccessibleName(tr("What does not fit"));
    m_list = new QTreeWidget(this);
    m_list->setColumnCount(3);
    m_list->setHeaderLabels({tr("What follows from this"), tr("Value"), tr("Limits")});
    m_list->setRootIsDecorated(true);
    m_list->setUniformRowHeights(true);
    m_list->setAlternatingRowColors(false);
    m_list->setAccessibleName(tr("Targets"));
    m_list->header()->setSectionResizeMode(0, QHeaderView::Stretch);
    m_list->header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
    m_list->header()->setSectionResizeMode(2, QHeaderView::ResizeToContents);
    m_list->header()->setStretchLastSection(false);
    m_why = new WhyPanel(this);
    auto* split = new QSplitter(Qt::Vertical, this);
    split->addWidget(m_list);
    split->addWidget(m_why);
    split->setStretchFactor(0, 3);
    split->setStretchFactor(1, 2);
    split->setChildrenCollapsible(false);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_troubles);
    column->addWidget(split, 1);
    connect(m_list, &QTreeWidget::currentItemChanged, this, [this] { explain(); });
}

void TargetList::show(const targets::Targets& targets, UnitSystem system)
{
    const QString before = m_list->currentItem() ? m_list->currentItem()->data(0, Qt::UserRole).toString() : QString();
    m_targets = targets;
    m_system = system;

    QStringList troubles;
    for (const Finding& f : targets.findings)
        if (f.severity != Severity::Note) troubles << words(f, system);
    for (const targets::Target& t : targets.all)
        if (const auto* no = std::get_if<targets::Cannot>(&t.state))
            if (const QString sentence = words(no->why, system); !troubles.contains(sentence)) troubles << sentence;
    m_troubles->setText(troubles.join(QStringLiteral("\n")));
    m_troubles->setVisible(!troubles.isEmpty());

    m_list->clear();
    std::map<QString, QTreeWidgetItem*> families;
    for (const Family& f : kFamilies) {
        const QString name = QCoreApplication::translate("families", f.name);
        if (families.count(name) != 0) continue;
        auto* item = new QTreeWidgetItem(m_list, {name});
        item->setFirstColumnSpanned(true);
        item->setExpanded(true);
        families[name] = item;
    }
    QTreeWidgetItem* chosen = nullptr;
    for (const targets::Target& t : targets.all) {
        const QString family = familyOf(t.id);
        if (families.count(family) == 0) continue;
        auto* item = new QTreeWidgetItem(families[family],
                                         {words(t.name, system), targetValue(t, system), targetWindow(t, system)});
        item->setData(0, Qt::UserRole, QString::fromStdString(t.id));
        item->setTextAlignment(1, Qt::AlignRight | Qt::AlignVCenter);
        item->setToolTip(0, item->text(0));
        if (QString::fromStdString(t.id) == before) chosen = item;
    }
    for (const auto& [name, item] : families) item->setHidden(item->childCount() == 0);
    if (chosen != nullptr) m_list->setCurrentItem(chosen);
    explain();
}

void TargetList::showNothing(const QString& why)
{
    m_targets = {};
    m_list->clear();
    m_troubles->setText(why);
    m_troubles->setVisible(true);
    explain();
}

void TargetList::explain()
{
    const QTreeWidgetItem* item = m_list->currentItem();
    const std::string id = item ? item->data(0, Qt::UserRole).toString().toStdString() : std::string();
    if (const targets::Target* t = m_targets.find(id))
        m_why->show(*t, m_system);
    else
        m_why->say(tr("Choose a line to see why it is what it is."));
}

}  // namespace taut::app
