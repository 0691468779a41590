// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QWidget>

#include "app/sessions/practice_session.h"
#include "app/widgets/drawn.h"

class QVBoxLayout;

namespace taut::app {

/// The last minute at the practice press: the tension of each zone with its window, and where the web lies sideways at
/// guides and print stations.
class StripCharts : public QWidget {
    Q_OBJECT

public:
    explicit StripCharts(QWidget* parent = nullptr);
    /// As it is now; nothing is reckoned while nobody looks.
    void show(const PracticeSession& practice);
    [[nodiscard]] const std::vector<ChartWidget*>& charts() const { return m_charts; }

private:
    QVBoxLayout* m_rows;
    std::vector<ChartWidget*> m_charts;
};

/// One of each zone of the line, then that of the places.
[[nodiscard]] std::vector<report::Chart> stripChartsOf(const PracticeSession& practice);

}  // namespace taut::app
