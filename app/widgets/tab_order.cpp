// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/controls.h"

namespace taut::app {

void tabsBefore(QWidget* next, const QWidget* box)
{
    const auto takes = [](const QWidget* w) { return (w->focusPolicy() & Qt::TabFocus) != 0; };
    QWidget* last = next->previousInFocusChain();
    while (last != next && (!takes(last) || box->isAncestorOf(last))) last = last->previousInFocusChain();
    if (last == next) return;
    for (QWidget* one : box->findChildren<QWidget*>()) {
        // The rows of a list that opens live in a window of their own.
        if (!takes(one) || one->window() != next->window()) continue;
        QWidget::setTabOrder(last, one);
        last = one;
    }
}

}  // namespace taut::app
