// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include <QTimer>
#include <QWidget>

#include "core/practice/handles.h"

class QLabel;
class QLineEdit;
class QPushButton;

namespace taut::app {

/// One thing at the practice press that somebody puts a hand to: what it is called there, how it stands, what can be
/// done to it, and beside it what the press says that does not do it. A movement takes two touches, never a held one.
class HandleRow : public QWidget {
    Q_OBJECT

public:
    HandleRow(const practice::Handle& handle, const inputs::Press& press, QWidget* parent = nullptr);
    [[nodiscard]] const practice::Handle& handle() const { return m_handle; }
    /// How it stands in this world now.
    void show(const practice::World& world);
    /// Why it was not done; a new try clears it.
    void refuse(const Finding& finding);
    [[nodiscard]] QString refusal() const;

signals:
    void done(const taut::practice::Deed& deed);

private:
    QPushButton* addButton(const Text& words, const char* name);
    void build();
    void give(bool on, const std::string& item = {});
    void arm(bool armed);
    [[nodiscard]] Result<std::optional<Quantity>> typed() const;
    [[nodiscard]] QString said(const Text& text) const;
    practice::Handle m_handle;
    UnitSystem m_system{};
    std::string m_unit;  // of a bare number
    QString m_calls;     // the row, for assistive technology
    QLabel *m_stands = nullptr, *m_refusal = nullptr;
    QLineEdit* m_value = nullptr;
    QPushButton *m_do = nullptr, *m_undo = nullptr;
    QTimer m_armed;  // the second touch is waited for
};

}  // namespace taut::app
