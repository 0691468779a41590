// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QTimer>
#include <QWidget>

#include "app/sessions/session.h"
#include "core/inputs/form.h"

namespace taut::app {

class ChangedTargets;
class ElevationWidget;
class KeyTable;
class OneLine;
class RowList;

/// Where a press, substrate, job or procedure is written: its tables as a form, or the text itself, with what its
/// reader finds as somebody types, the press as it would be drawn, and which targets change. What is sealed is the
/// text; every change is made in it.
class DefinitionEditor : public QWidget {
    Q_OBJECT

public:
    /// What is opened.
    struct Opened {
        std::string what;     ///< press job substrate procedure
        std::string text;     ///< what is shown at first
        std::string against;  ///< the text whose targets it is held against; "" = none
        bool isNew = false;   ///< stands nowhere yet
    };
    explicit DefinitionEditor(Session* session, QWidget* parent = nullptr);
    /// Lets what was written before go.
    void open(Opened opened);
    /// As it stands now.
    [[nodiscard]] const std::string& text() const { return m_text; }
    /// Something stands here that is sealed nowhere.
    [[nodiscard]] bool changed() const;
    /// Where whoever comes to it begins.
    [[nodiscard]] QWidget* first() const;

signals:
    void left();  ///< back to the list

private:
    QWidget* buildBar();
    QWidget* buildForm();
    QWidget* buildRight();
    /// Makes the change, keeps what was before for "undo", and shows everything anew.
    void take(const Result<std::string>& edited);
    void read();
    void preview(const std::string& text);
    void showGroups();
    void showGroup();
    void showFindings(const inputs::Form& form);
    void showDrawing(const std::string& text);
    void goTo(int finding);
    void settle();
    void say(const QString& sentence);
    void leave();
    void save();
    void tellSealed();
    [[nodiscard]] const inputs::FormGroup* group() const;
    [[nodiscard]] QString said(const Finding& finding) const;
    [[nodiscard]] bool mayWrite() const;
    [[nodiscard]] bool asText() const;
    Session* m_session;
    Opened m_opened;
    std::string m_text, m_asked;  // m_asked: what is being sealed
    std::vector<std::string> m_undo;
    inputs::Form m_form;
    OneLine* m_title;
    QPushButton *m_textView, *m_undoButton, *m_compare, *m_save, *m_back;
    QStackedWidget *m_left, *m_right;
    RowList *m_groups, *m_found;
    KeyTable* m_table;
    QPushButton *m_add, *m_remove, *m_up, *m_down;
    QPlainTextEdit* m_plain;
    RowList* m_outline;
    ElevationWidget* m_drawing;
    QLabel *m_pathWrong, *m_said, *m_meaning;
    ChangedTargets* m_targets;
    QWidget* m_leaving;
    QTimer* m_settled;
};

}  // namespace taut::app
