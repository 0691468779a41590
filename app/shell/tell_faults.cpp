// SPDX-License-Identifier: GPL-3.0-or-later
#include <set>

#include "app/seams/crash_log.h"
#include "app/shell/main_window.h"

// What is told over every page, whatever is done there.
namespace taut::app {

void MainWindow::tellOfFaults(const std::vector<std::filesystem::path>& logs)
{
    m_faults = logs;
    if (logs.empty()) return;
    m_ended->setObjectName(QStringLiteral("ended"));
    m_ended->say(toldOf(logs.back()), UnitSystem::Metric);
    connect(m_ended, &FindingStrip::gone, this, [this] {
        markTold(m_faults);
        m_faults.clear();
    });
}

/// A mirror or a copy that fails stops nobody: it is told once, beside whatever is done here, until it is well again.
void MainWindow::tellOfKeeping()
{
    Findings all = m_session->notes();
    if (const auto& mirror = m_session->mirror())
        all.insert(all.begin(), mirror->findings.begin(), mirror->findings.end());
    if (const auto& copies = m_session->copies()) {
        if (copies->whyNot) all.push_back(*copies->whyNot);
        all.insert(all.end(), copies->findings.begin(), copies->findings.end());
    }
    std::erase_if(all, [](const Finding& one) { return one.severity != Severity::Warn; });
    const auto matterOf = [](const Finding& one) { return one.code + ' ' + one.subject; };
    std::set<std::string> matters;
    for (const Finding& one : all) matters.insert(matterOf(one));
    // What is well again may be told again another time.
    std::erase_if(m_keepingSeen, [&](const std::string& matter) { return !matters.contains(matter); });
    if (!matters.contains(m_keepingSaid)) {
        m_keeping->clear();
        m_keepingSaid.clear();
    }
    if (!m_keepingSaid.empty() && m_keeping->isVisibleTo(this)) return;  // one at a time
    for (const Finding& one : all) {
        if (!m_keepingSeen.insert(matterOf(one)).second) continue;
        m_keeping->say(one, UnitSystem::Metric);
        m_keepingSaid = matterOf(one);
        return;
    }
}

}  // namespace taut::app
