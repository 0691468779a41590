// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include <QStringList>
#include <QWidget>

#include "core/inputs/inputs.h"
#include "core/inputs/tag_rows.h"
#include "core/inputs/tag_scan.h"

class QLabel;
class QPushButton;

namespace taut::app {

class MarkWidget;
class ScanCatcher;
class TagTable;
class TagText;

/// The tag of a roll, scanned while this can be seen, whatever has the keyboard: what it says line by line, and where
/// it is wrong. Nothing of it counts before somebody takes it over.
class TagPanel : public QWidget {
    Q_OBJECT

public:
    /// Takes: people take it over here. Shows: who owns it has an answer for that.
    enum class Manner : std::uint8_t { Takes, Shows };
    explicit TagPanel(Manner manner, QWidget* parent = nullptr);
    /// Forgets the tag and begins anew, on this day.
    void begin(UnitSystem system, const std::optional<inputs::TagDate>& today);
    /// What it is compared with, and the roll as far as it is entered.
    void compareWith(inputs::Inputs around);
    /// What is no tag and yet names a roll when it is scanned.
    void setNumbers(const QStringList& numbers) { m_numbers = numbers; }
    /// Reads what a scanner typed.
    void scan(const QString& typed);
    /// Reads what a person typed; "" is none. It takes the place of the tag before.
    void type(const QString& typed);
    /// The tag counts from now on, or is to be taken over anew.
    void setTaken(bool taken = true);
    /// The tag goes.
    void putAway();

    /// What the bar codes scanned so far say together; nullptr while none can be read.
    [[nodiscard]] const inputs::RollTag* tag() const { return m_tag ? &*m_tag : nullptr; }
    /// Its text, as it was scanned where it can be read again so; what was scanned last where it cannot be read.
    [[nodiscard]] const std::string& text() const { return m_text; }
    /// Read, and nobody has taken it over.
    [[nodiscard]] bool waits() const { return m_tag && !m_taken; }
    [[nodiscard]] bool isTaken() const { return m_tag && m_taken; }
    /// What takes it over or puts it away, under its lines unless whoever owns the panel places it elsewhere.
    [[nodiscard]] QWidget* acts() const { return m_acts; }
    /// What is wrong or odd, of all its lines.
    [[nodiscard]] Findings findings() const;

signals:
    void takeWanted();                  ///< it is to be taken over
    void dropped();                     ///< a tag that was taken over counts no more
    void read(const QString& tag);      ///< another text stands here
    void stood();                       ///< waits() or isTaken() may be otherwise than before
    void named(const QString& number);  ///< one of the numbers was scanned

private:
    void build(Manner manner);
    void take(const QString& typed, bool scanned);
    void say(const QString& sentence, bool wrong);
    void showWrong(const QString& typed, const Finding& finding);
    void showRows();
    std::optional<inputs::RollTag> m_tag;
    std::string m_text;
    std::optional<inputs::TagDate> m_today;
    inputs::Inputs m_around;
    UnitSystem m_system{};
    QStringList m_numbers;
    bool m_taken = false, m_takes = false;
    QWidget *m_said, *m_acts;
    MarkWidget* m_mark;
    QLabel* m_sentence;
    TagText* m_signs;
    TagTable* m_table;
    QPushButton* m_take;
};

}  // namespace taut::app
