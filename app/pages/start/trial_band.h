// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

namespace taut::app {

/// The frame round what says that something is a trial: slanted bars all round, told from everything else on the
/// page without colour and from where one stands.
class TrialBand : public QWidget {
    Q_OBJECT

public:
    explicit TrialBand(QWidget* parent = nullptr);
    /// How thick the frame is.
    [[nodiscard]] int edge() const;

protected:
    void paintEvent(QPaintEvent* event) override;
};

}  // namespace taut::app
