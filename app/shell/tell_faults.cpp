// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/seams/crash_log.h"
#include "app/shell/main_window.h"

namespace taut::app {

void MainWindow::tellOfFaults(const std::vector<std::filesystem::path>& logs)
{
    if (logs.empty()) return;
    m_ended->setObjectName(QStringLiteral("ended"));
    m_ended->say(toldOf(logs.back()), UnitSystem::Metric);
    connect(m_ended, &FindingStrip::gone, this, [logs] { markTold(logs); });
}

}  // namespace taut::app
