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
        int edition = 0;      ///< an earlier one that is looked at; 0 = the newest, or none
    };
    explicit DefinitionEditor(Session* session, QWidget* parent = nullptr);
    /// Lets what was written before go.
    void open(Opened opened);
    /// Makes the change, keeps what was before for "undo", and shows everything anew.
    void take(const Result<std::string>& edited);
    /// As it stands now.
    [[nodiscard]] const std::string& text() const { return m_text; }
    /// Something stands here that is sealed nowhere.
    [[nodiscard]] bool changed() const;
    /// What it is called, for whoever is asked about it elsewhere.
    [[nodiscard]] QString name() const;
    /// Where whoever comes to it begins.
    [[nodiscard]] QWidget* first() const;
    /// To this key of the row that bears this id.
    void showKey(const std::string& group, const std::string& id, const std::string& key);
    /// Back to the list; what is sealed nowhere is asked about first.
    void leave();

signals:
    void left();  ///< back to the list

private:
    QWidget* buildBar();
    QWidget* buildForm();
    QWidget* buildRight();
    void read();
    void preview(const std::string& text);
    void showGroups();
    void showGroup();
    void showFindings(const inputs::Form& form);
    void showDrawing(const std::string& text, const inputs::Form& form);
    void markRow();
    void goTo(int finding);
    void settle();
    void say(const QString& sentence);
    void save();
    void tellSealed();
    [[nodiscard]] inputs::Around around() const;
    [[nodiscard]] inputs::Form formOf(const std::string& text) const;
    [[nodiscard]] const inputs::FormGroup* group() const;
    [[nodiscard]] QString said(const Finding& finding) const;
    [[nodiscard]] bool mayWrite() const;
    [[nodiscard]] bool asText() const;
    Session* m_session;
    Opened m_opened;
    std::string m_text, m_asked;  // m_asked: what is being sealed
    std::vector<std::string> m_undo;
    inputs::Form m_form;
    std::string m_blamed;  // the roller that the path's finding is about
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
