// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shell/no_logbook_page.h"

#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/seams/resources.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/theme.h"

namespace taut::app {

namespace {

/// A logbook that only cannot be written in here, or not now.
bool mayBeRead(const Finding& why)
{
    for (const char* code : {"logbook.pen_held", "logbook.read_only", "logbook.folder_read_only",
                             "logbook.on_read_only", "logbook.on_network", "logbook.no_locks", "logbook.mirror",
                             "logbook.newer_schema", "logbook.disk_full", "logbook.disk"})
        if (why.code == code) return true;
    return false;
}

}  // namespace

NoLogbookPage::NoLogbookPage(QWidget* parent) : QWidget(parent)
{
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(20, 20, 20, 20);
    layout->setSpacing(sizes().gap);
    m_title = wrapped({}, "longSay", this);
    layout->addWidget(m_title);
    m_file = wrapped({}, "", this);
    m_file->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_why = wrapped({}, "strong", this);
    m_remedy = wrapped({}, "", this);
    for (QLabel* label : {m_file, m_why, m_remedy}) layout->addWidget(label);
    auto* row = new FlowRow;
    const auto add = [&](const QString& name, const char* objectName, auto signal) {
        QPushButton* button = worded(name, "answer", this);
        button->setObjectName(QString::fromLatin1(objectName));
        connect(button, &QPushButton::clicked, this, signal);
        row->addWidget(button);
        return button;
    };
    m_again = add(tr("&Try again"), "again", &NoLogbookPage::again);
    m_look = add(tr("Open to &read only"), "look", &NoLogbookPage::look);
    add(tr("Open &another logbook\u2026"), "another", &NoLogbookPage::another);
    m_begin = add(tr("Begin a &new logbook"), "begin", &NoLogbookPage::begin);
    m_demo = add(tr("Look round in the &demo shop"), "demoFirst", &NoLogbookPage::demo);
    layout->addLayout(row);
    layout->addStretch(1);
}

void NoLogbookPage::show(const QString& file, const Finding& why)
{
    m_missing = why.code == "logbook.missing";
    // Where nobody named a file nothing was misspelt: this PC is new.
    const bool isNew = m_missing && file == QString::fromStdString(usualLogbook().string());
    m_title->setText(isNew       ? tr("Welcome: this PC keeps no logbook yet")
                     : m_missing ? tr("There is no logbook here yet")
                                 : tr("No logbook is open"));
    m_again->setVisible(!isNew);
    m_demo->setVisible(isNew);
    m_look->setVisible(QFileInfo::exists(file) && mayBeRead(why));
    m_begin->setText(m_missing ? tr("Begin a &new logbook here") : tr("Begin a &new logbook\u2026"));
    m_begin->setAccessibleName(m_begin->text().remove(QLatin1Char('&')));
    m_file->setText(file);
    m_file->setVisible(!words(why.text, UnitSystem::Metric).contains(file));
    m_why->setText(isNew
                       ? tr("The logbook holds your presses, your people and every signed run. Begin it here, or open "
                            "the one that you have. Language and size of the text are chosen under \"Screen\" above.")
                       : words(why.text, UnitSystem::Metric));
    m_remedy->setText(words(why.remedy, UnitSystem::Metric));
    m_remedy->setVisible(!isNew);
    (isNew ? m_begin : m_again)->setFocus();
}

}  // namespace taut::app
