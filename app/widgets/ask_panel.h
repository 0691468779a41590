// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <utility>
#include <vector>

#include <QStringList>
#include <QWidget>

#include "app/widgets/answer.h"

class QBoxLayout;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace taut::app {

class FindingStrip;
class SecretLine;

/// Asks in line for a few words, a choice, or a person with a PIN: no window opens over the page. Nothing is filled in.
class AskPanel : public QWidget {
    Q_OBJECT

public:
    /// One thing to be typed or chosen.
    struct Field {
        QString label;
        std::vector<std::pair<QString, QString>> options;  ///< word, shown; none = a line to type
        bool required = true;
        QString hint;
        bool secret = false;  ///< typed where nobody reads it, unless asked for
        bool prose = false;   ///< a sentence or two: a field of some lines
    };
    /// A reason, a note, a remark.
    [[nodiscard]] static Field prose(const QString& label, bool required = true, const QString& hint = {});
    /// Everything that is asked in one go.
    struct Question {
        QString title, text;
        std::vector<Field> fields;
        /// What shows that it is them: a PIN to answer, a passphrase to sign.
        enum class Secret { None, Pin, Passphrase };
        Secret secret = Secret::None;
        bool person = false;  ///< also asks for a person, whose secret it is; else it is that of whoever is signed in
        std::vector<PersonChoice> people;
        QString accept;            ///< the button's words
        QString secretLabel = {};  ///< beside the secret, "" = the usual words
    };
    explicit AskPanel(QWidget* parent = nullptr);
    /// Begins anew, with nothing filled in.
    void ask(const Question& question);
    /// What stands in the fields so far, secrets left out; and it put there again.
    [[nodiscard]] QStringList typed() const;
    void setTyped(const QStringList& values);
    /// Where whoever comes to it begins.
    [[nodiscard]] QWidget* first() const;
    /// What is wrong is said above what gives it, in a room kept for it, the field that it is about in sight and with
    /// the focus. It goes when that field has another value.
    void refuse(const Finding& finding, UnitSystem system);
    /// The same about one of the fields, which is typed anew.
    void refuseField(std::size_t field, const Finding& finding, UnitSystem system);
    /// To the first field that is still empty; with all of them filled, to the secret.
    void takeFocus();
    /// Somebody left the screen, or came to it: what was typed stays, a PIN does not.
    void forgetPin();
    /// While it is being written nothing can be touched.
    void setBusy(bool busy);

signals:
    /// values: one for each field, in order.
    void given(const QStringList& values, const QString& personId, const QString& pin);
    /// Back, or Esc.
    void cancelled();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void give();
    void back();
    /// Says what is still wanted and goes there.
    void want(QWidget* field, const QString& label);
    void sayOf(QWidget* field, const Finding& finding, UnitSystem system);
    void keepRoom();
    void forgive();
    [[nodiscard]] QWidget* blamedBy(const Finding& finding) const;
    [[nodiscard]] QWidget* wanted() const;
    QWidget* makeField(const Field& field);
    void addShow(QVBoxLayout* column);
    void addSecret(QBoxLayout* who);
    void placeWho();
    void addLabelled(const QString& label, QWidget* field, QBoxLayout* into);
    Question m_question;
    QWidget* m_fieldsBox = nullptr;
    QVBoxLayout* m_layout;
    QVBoxLayout* m_column = nullptr;  // the fields, one below the other
    QBoxLayout* m_who = nullptr;      // its last row: person and secret
    QScrollArea* m_scroll;
    std::vector<QWidget*> m_fields;
    QComboBox* m_person = nullptr;
    QLineEdit* m_pin = nullptr;
    SecretLine* m_passphrase = nullptr;  // m_pin, when it is one
    FindingStrip* m_finding;
    QWidget* m_blamed = nullptr;  // the field that it is about
    QLabel* m_writing;
    QWidget* m_foot;
    QPushButton *m_accept, *m_back;
};

}  // namespace taut::app
