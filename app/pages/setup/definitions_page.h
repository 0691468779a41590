// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QWidget>

#include "app/pages/setup/definition_editor.h"
#include "app/pages/setup/taking_in.h"
#include "app/sessions/session.h"

namespace taut::app {

class ConstantCard;
class PickList;
class RowList;

/// What runs are begun from: presses, substrates, jobs and procedures with their editions, to be opened, copied, begun
/// anew, taken in from files and written out to them.
class DefinitionsPage : public QWidget {
    Q_OBJECT

public:
    explicit DefinitionsPage(Session* session, QWidget* parent = nullptr);
    /// Opens the card that finds what a setting of this zone does; "" = the first.
    void findConstant(const std::string& press, const std::string& zone = {});
    /// A press with another constant of this zone, to be looked at and sealed: as it was, and as it would be.
    void offerConstant(const std::string& before, const std::string& after, const std::string& zone);
    /// That card is what is shown.
    [[nodiscard]] bool findsConstant() const;
    /// Where whoever comes to it begins.
    [[nodiscard]] QWidget* first() const;
    /// Takes these files in and tells of each thing in them what came of it.
    void takeIn(const std::vector<std::filesystem::path>& files);
    /// This refusal is told here, beside what was asked for.
    [[nodiscard]] bool tells(const Finding& refusal) const;

signals:
    void left();  ///< back to the people

protected:
    void showEvent(QShowEvent* event) override;

private:
    QWidget* buildList();
    QWidget* buildCard();
    void refill();
    void showChosen();
    void settle();
    void begin();
    void copy();
    void chooseFiles();
    void writeOut();
    void edit(DefinitionEditor::Opened opened);
    struct Row {
        std::string what, id;
        int edition{};
        std::string text;
    };
    [[nodiscard]] const Row* chosen() const;
    /// The edition of it that is chosen; `earlier` tells whether there is a newer one.
    [[nodiscard]] std::optional<Row> shown(bool* earlier = nullptr) const;
    [[nodiscard]] bool isTaken(const std::string& what, const std::string& id) const;
    Session* m_session;
    std::vector<Row> m_rows;
    std::vector<records::Edition> m_known;  // the editions of the one that is chosen, the newest first
    TakingIn m_taking;
    QStackedWidget* m_pages;
    QWidget* m_overview;
    DefinitionEditor* m_editor;
    ConstantCard* m_constant;
    RowList *m_list, *m_editions;
    PickList* m_kind;
    QLabel *m_name, *m_whyNot, *m_said;
    QPushButton *m_open, *m_copy, *m_out, *m_find, *m_new, *m_take, *m_back;
};

}  // namespace taut::app
