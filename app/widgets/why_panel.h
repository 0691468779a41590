// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QScrollArea>

#include "core/procedure/plan.h"
#include "core/targets/target.h"

class QVBoxLayout;

namespace taut::app {

/// Why a value is what it is: the value, its window and whose rule that is, the formula, each input with where it came
/// from, the source, and advice. For a step without a value: why it is asked. It scrolls by itself, by keys too.
class WhyPanel : public QScrollArea {
    Q_OBJECT

public:
    explicit WhyPanel(QWidget* parent = nullptr);
    /// among: the set that it belongs to, by which the targets that it was made of are called by their names.
    void show(const procedure::Step& step, const std::optional<targets::Target>& target, const targets::Targets& among,
              UnitSystem system);
    /// The same of a target alone.
    void show(const targets::Target& target, const targets::Targets& among, UnitSystem system);
    /// One sentence instead.
    void say(const QString& sentence);

private:
    void clear();
    void addTarget(const targets::Target& target, const targets::Targets& among, UnitSystem system);
    void addReady(const targets::Ready& ready, const targets::Targets& among, UnitSystem system);
    void addGiven(const targets::Ready& ready, const targets::Targets& among, UnitSystem system);
    void line(const QString& head, const QString& text, const char* role = "");
    void done();
    QWidget* m_body;
    QVBoxLayout* m_lines;
};

}  // namespace taut::app
