// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <vector>

#include <QWidget>

#include "core/practice/handles.h"

class QStackedWidget;

namespace taut::app {

class HandleRow;

/// Everything at the practice press that somebody puts a hand to, place by place: one stands at one of them.
class HandPanel : public QWidget {
    Q_OBJECT

public:
    explicit HandPanel(QWidget* parent = nullptr);
    /// Makes the rows of this press.
    void build(const inputs::Press& press);
    /// How everything at the place where one stands is now.
    void show(const practice::World& world);
    void stand(practice::At at);
    /// Beside the row that was used.
    void refuse(const practice::Deed& deed, const Finding& finding);

signals:
    void done(const taut::practice::Deed& deed);

private:
    struct Place {
        QWidget* page = nullptr;
        std::vector<HandleRow*> rows;
    };
    QStackedWidget* m_stack;
    std::map<practice::At, Place> m_places;
    practice::At m_at{};
};

/// What the place is called.
[[nodiscard]] QString placeText(practice::At at);

}  // namespace taut::app
