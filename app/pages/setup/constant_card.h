// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QWidget>

#include "app/sessions/session.h"
#include "app/widgets/controls.h"
#include "core/inputs/find_constant.h"
#include "core/inputs/press.h"

namespace taut::app {

/// Finds what a setting does: with the web clamped to a spring scale, two to five settings and what the scale read at
/// each give torque per setting and where it begins, for a new edition of the press.
class ConstantCard : public QWidget {
    Q_OBJECT

public:
    explicit ConstantCard(Session* session, QWidget* parent = nullptr);
    /// Begins anew, for this press and this zone of it ("" = the first that can be found).
    void open(const std::string& pressToml, const std::string& zone);
    /// Where whoever comes to it begins.
    [[nodiscard]] QWidget* first() const { return m_zone; }

signals:
    /// The press before and after, to be looked at and sealed, and which zone of it.
    void found(const std::string& before, const std::string& after, const std::string& zone);
    void left();  ///< back to the list

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void work();
    [[nodiscard]] const inputs::Zone* zone() const;
    /// What stands in a line; nullopt with a sentence in m_result where it cannot be read, or is empty.
    [[nodiscard]] std::optional<Quantity> typed(const QLineEdit* line, std::initializer_list<Kind> kinds,
                                                const QString& name);
    struct Row {
        QLineEdit *setting, *force;
    };
    Session* m_session;
    std::string m_text;
    inputs::Press m_press;
    std::optional<inputs::Constant> m_found;
    PickList* m_zone;
    QLineEdit *m_diameter, *m_scale;
    std::array<Row, 5> m_rows{};
    QLabel* m_result;
    QPushButton *m_take, *m_back;
    bool m_wrong = false;
};

}  // namespace taut::app
