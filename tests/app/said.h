// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QString>
#include <QWidget>

namespace taut::app::test {

/// What stands in sight on it, a label a line, with plain spaces.
inline QString said(const QWidget& on)
{
    QString all;
    for (const auto* label : on.findChildren<QLabel*>())
        if (label->isVisible()) all += label->text() + QLatin1Char('\n');
    return all.replace(QChar::Nbsp, QLatin1Char(' '));
}

}  // namespace taut::app::test
