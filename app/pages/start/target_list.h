// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <set>
#include <string>

#include <QLabel>
#include <QWidget>

#include "core/targets/target.h"

class QSplitter;

namespace taut::app {

class RowList;
class WhyPanel;

/// What follows from the inputs: first everything that cannot work, in large sentences, then what is set on the press,
/// then every other target by family with its window, and for the chosen one why it is what it is.
class TargetList : public QWidget {
    Q_OBJECT

public:
    explicit TargetList(QWidget* parent = nullptr);
    /// By family, what is set on the press first.
    void show(const targets::Targets& targets, UnitSystem system);
    /// Nothing to show yet, and why.
    void showNothing(const QString& why);
    /// The sentences shown above the list.
    [[nodiscard]] QString troubles() const { return m_troubles->text(); }

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void addFamily(const QString& family);
    void addRows(const QString& head, const std::function<bool(const targets::Target&)>& belongs);
    void explain();
    QLabel* m_troubles;
    QSplitter* m_split;
    bool m_placed = false;
    RowList* m_list;
    WhyPanel* m_why;
    targets::Targets m_targets;
    std::set<std::string> m_added;  // what stands in the list already
    QString m_head;                 // the last headline
    UnitSystem m_system{};
};

}  // namespace taut::app
