// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <QWidget>

#include "core/base/result.h"
#include "core/inputs/inputs.h"
#include "core/inputs/tag.h"

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace taut::app {

class FindingStrip;
class TagPanel;

/// A roll that lies there: its file's text and what to call it.
struct RollAtHand {
    QString name;
    std::string toml;
    bool otherMaterial = false;  ///< than what is being run
};

/// The roll that is to be used: one of those at hand, or one whose label and measures are typed. Only what was typed is
/// written; nothing is guessed. Its tag, scanned while this can be seen, fills what was not typed once somebody takes
/// it over.
class RollForm : public QWidget {
    Q_OBJECT

public:
    explicit RollForm(QWidget* parent = nullptr);
    /// Begins anew, with nothing chosen.
    void ask(const QString& title, const QString& text, std::vector<RollAtHand> rolls, UnitSystem system);
    /// What its tag is compared with, and the day, behind ask(); the roll among them is not this one.
    void compareWith(inputs::Inputs around, const inputs::TagDate& today);
    /// A tag that was scanned before this was seen.
    void scan(const QString& tag);
    /// Says why this roll was not taken; what was typed stays.
    void refuse(const Finding& finding);
    /// While it is being written nothing can be touched.
    void setBusy(bool busy);
    /// What using the chosen roll would do, said before anybody confirms it; "" for nothing to say.
    void sayEffect(const QString& sentence);
    /// Where whoever comes to it begins.
    [[nodiscard]] QWidget* first() const;
    /// The text of the chosen or typed roll.
    [[nodiscard]] Result<std::string> toml() const;

signals:
    void chosen(const std::string& rollToml);  ///< one of those at hand was picked, not confirmed yet
    /// The roll's file, chosen or made of what was typed.
    void given(const std::string& rollToml);
    /// Back, or Esc.
    void cancelled();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QLineEdit* addLine(QGridLayout* grid, int cell, const QString& label, const QString& hint);
    void addRolls(bool otherMaterial);
    [[nodiscard]] const RollAtHand* picked() const;
    [[nodiscard]] inputs::Roll entered(std::optional<Finding>& refusal) const;
    void follow();
    void takeOver();
    void takeBack();
    void choose(const QString& number);
    void give();
    void settle();
    std::vector<RollAtHand> m_rolls;
    UnitSystem m_system{};
    QLabel *m_title, *m_text, *m_effect;
    QComboBox *m_atHand, *m_winding;
    QLineEdit *m_id, *m_substrate, *m_width, *m_diameter, *m_core, *m_wall, *m_length, *m_mass, *m_splices;
    QWidget *m_typed, *m_foot;
    QPushButton* m_accept;
    FindingStrip* m_finding;
    TagPanel* m_tag;
    QLineEdit* m_tagLine;
    inputs::Inputs m_around;
    std::vector<std::pair<QLineEdit*, QString>> m_filled;  // by the tag that was taken over, and with what
    int m_filledWinding = -1;
};

}  // namespace taut::app
