// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <utility>
#include <vector>

#include <QString>
#include <QVariant>

class QWidget;

namespace taut::app {

/// What somebody entered, chose and looked at in a part of the window, taken out of it before it is made anew and put
/// into what was made: what is typed in fields, what is chosen in lists, which buttons are down, where it is scrolled
/// to, what has the focus. A field is known by where it stands among its like.
class CarryOver {
public:
    explicit CarryOver(QWidget* from);
    /// What has no place there any more is left out.
    void into(QWidget* to) const;

private:
    std::vector<std::pair<QString, QVariantList>> m_entered;  // from the top down
    QString m_focus;
};

}  // namespace taut::app
