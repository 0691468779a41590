// SPDX-License-Identifier: GPL-3.0-or-later
// The pages behind the door "Shop" beside the people.
#include <QStackedWidget>

#include "app/pages/setup/competence_card.h"
#include "app/pages/setup/definitions_page.h"
#include "app/pages/setup/setup_page.h"
#include "app/pages/setup/this_pc_page.h"

namespace taut::app {

void SetupPage::showDefinitions()
{
    m_pages->setCurrentWidget(m_definitions);
    m_definitions->first()->setFocus();
}

void SetupPage::showCompetence()
{
    const people::PersonRecord* person = chosen();
    if (person == nullptr) return;
    m_home = m_competence;
    back();
    m_competence->showFor(*person);
    m_competence->first()->setFocus();
}

void SetupPage::showThisPc(bool firstTime)
{
    m_thisPc->show(firstTime);
    m_pages->setCurrentWidget(m_thisPc);
    m_thisPc->first()->setFocus();
}

void SetupPage::findConstant(const std::string& press, const std::string& zone)
{
    showDefinitions();
    m_definitions->findConstant(press, zone);
}

void SetupPage::offerConstant(const std::string& before, const std::string& after, const std::string& zone)
{
    showDefinitions();
    m_definitions->offerConstant(before, after, zone);
}

QString SetupPage::helpPage() const
{
    const QWidget* page = m_pages->currentWidget();
    if (page == m_thisPc) return QStringLiteral("this_pc");
    if (page != m_definitions) return QStringLiteral("setup");
    return m_definitions->findsConstant() ? QStringLiteral("find_setting") : QStringLiteral("definitions");
}

}  // namespace taut::app
