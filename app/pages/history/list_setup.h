// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QLineEdit>
#include <QPushButton>
#include <QWidget>

#include "app/pages/history/kept_searches.h"
#include "app/sessions/session.h"
#include "core/records/listed.h"

class QLabel;

class QVBoxLayout;

namespace taut::app {

class Narrowing;
class PickList;
class StatementBox;

/// How the list of runs is set up: what narrows it, what each of its lines says, and the search kept under a name.
class ListSetup : public QWidget {
    Q_OBJECT

public:
    explicit ListSetup(Session* session, QWidget* parent = nullptr);
    /// What can be chosen now, and what whoever is signed in has chosen for the lines.
    void fill();
    /// All but the words that are looked for and how the runs stand, which are chosen above the list.
    [[nodiscard]] Search search() const;
    [[nodiscard]] records::CourseQuery course() const;
    /// Sets all of it, and the name.
    void choose(const KeptSearch& kept);
    [[nodiscard]] records::Columns line() const;

signals:
    void changed();                        ///< what narrows
    void lineChanged();                    ///< what each line says
    void keepWanted(const QString& name);  ///< the search as it stands, under this name
    void forgetWanted(const QString& name);
    void saveWanted();  ///< the list, as a file

private:
    void head(const QString& text);
    void settleName();
    void tellNotKept(const QString& why);
    Session* m_session;
    QVBoxLayout* m_layout;
    Narrowing* m_narrow;
    PickList* m_person;
    StatementBox* m_deviations;
    QLineEdit* m_name;
    QPushButton *m_keep, *m_forget;
    QLabel* m_notKept;
    std::vector<std::pair<std::string, QPushButton*>> m_parts;  ///< of a line, by column
    bool m_filling = false;
};

/// By whose choices a screen goes: the id of whoever is signed in, "" while nobody is.
[[nodiscard]] std::string whoChooses(const Session& session);

}  // namespace taut::app
