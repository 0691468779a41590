// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/run/end_cards.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QTextBrowser>
#include <QVBoxLayout>

#include "app/pages/run/run_shown.h"
#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/theme.h"
#include "core/run/command.h"

namespace taut::app {

MakeSafeCard::MakeSafeCard(QWidget* parent) : QWidget(parent)
{
    auto* column = new QVBoxLayout(this);
    column->addWidget(withRole(new QLabel(tr("Make safe first"), this), "say"));
    m_why = wrapped(QString(), "", this);
    column->addWidget(m_why);
    for (const char* word : run::kMakeSafe) {
        auto* box = new StatementBox(makeSafeText(word, UnitSystem::Metric), this);
        m_boxes.emplace_back(word, box);
        column->addWidget(box);
    }
    m_finding = new FindingStrip(this);
    column->addWidget(m_finding);
    column->addStretch(1);
    auto* on = worded(tr("I have seen this. Go on with the run"), "main", this);
    on->setMinimumHeight(sizes().vital);
    column->addWidget(on);
    connect(on, &QPushButton::clicked, this, [this] {
        std::vector<std::string> stated;
        for (const auto& [word, box] : m_boxes)
            if (box->isChecked()) stated.push_back(word);
        emit said(stated);
    });
}

void MakeSafeCard::ask(const run::Run& run)
{
    m_why->setText(
        tr("Run %1 was interrupted. Go to the press and look; what was said about it before no longer counts.")
            .arg(dataText(run.id())));
    for (const auto& [word, box] : m_boxes) box->setChecked(false);
    m_finding->clear();
}

void MakeSafeCard::refuse(const Finding& finding, UnitSystem system) { m_finding->say(finding, system); }

ReviewCard::ReviewCard(QWidget* parent) : QWidget(parent)
{
    auto* column = new QVBoxLayout(this);
    column->addWidget(withRole(new QLabel(tr("Look through and sign"), this), "say"));
    m_steps = new QTextBrowser(this);
    m_steps->setAccessibleName(tr("Every step and its answer"));
    column->addWidget(m_steps, 1);
    column->addWidget(
        wrapped(tr("Your name, the time and everything above are sealed into the logbook. In this version the "
                   "record is sealed without a personal signature."),
                "soft", this));
    m_remarks = new QLineEdit(this);
    m_remarks->setPlaceholderText(tr("What the next person must know"));
    m_remarks->setMinimumHeight(sizes().control);
    named(m_remarks, tr("What the next person must know"));
    column->addWidget(m_remarks);
    m_finding = new FindingStrip(this);
    column->addWidget(m_finding);
    auto* row = new QHBoxLayout;
    auto* backButton = worded(tr("Back to the steps"), "answer", this);
    m_pin = new QLineEdit(this);
    m_pin->setEchoMode(QLineEdit::Password);
    m_pin->setPlaceholderText(tr("Your PIN"));
    m_pin->setMinimumHeight(sizes().control);
    named(m_pin, tr("Your PIN, to sign"));
    m_sign = worded(tr("Sign this run"), "main", this);
    m_sign->setMinimumHeight(sizes().answer);
    row->addWidget(backButton);
    row->addStretch(1);
    row->addWidget(m_pin);
    row->addWidget(m_sign);
    column->addLayout(row);
    connect(backButton, &QPushButton::clicked, this, &ReviewCard::back);
    connect(m_pin, &QLineEdit::returnPressed, m_sign, &QPushButton::click);
    connect(m_sign, &QPushButton::clicked, this, [this] { emit sign(m_remarks->text().trimmed(), m_pin->text()); });
}

void ReviewCard::show(const run::Run& run, UnitSystem system)
{
    QString rows;
    for (const procedure::Step& step : run.plan().steps) {
        const run::StepStanding standing = run.standing(step.id);
        rows += QStringLiteral(
                    "<tr><td style='padding:3px 12px 3px 0'>%1</td><td style='padding:3px 12px 3px 0'><b>%2</b></td>"
                    "<td style='padding:3px 0'>%3</td></tr>")
                    .arg(words(step.say, system).toHtmlEscaped(), standingLine(standing, system).toHtmlEscaped(),
                         dataText(standing.byName).toHtmlEscaped());
    }
    m_steps->setHtml(QStringLiteral("<table>%1</table>").arg(rows));
    m_pin->clear();
    m_finding->clear();
    QWidget::show();
}

void ReviewCard::refuse(const Finding& finding, UnitSystem system) { m_finding->say(finding, system); }

void ReviewCard::setBusy(bool busy) { m_sign->setEnabled(!busy); }

}  // namespace taut::app
