// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QKeyEvent>
#include <QObject>
#include <QPointer>
#include <QTimer>
#include <QWidget>

namespace taut::app {

/// Catches what a bar code scanner types, whatever has the keyboard, while its owner can be seen and touched. A scanner
/// is known by its hurry, or by how a tag begins (]C1 ]d2 ]Q3 ]e0 [)>). Keys wait until it is plain who typed: those of
/// a person then go where they were typed, after less time than anybody notices; those of a scanner go nowhere else,
/// its Enter or Tab neither. Times are those of the key events; keys that have none are a person's, and so is
/// everything typed where nobody reads it.
class ScanCatcher : public QObject {
    Q_OBJECT

public:
    explicit ScanCatcher(QWidget* owner);

signals:
    /// What the scanner typed, whole, with the control characters that it sent and without its Enter or Tab.
    void scanned(const QString& text);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    struct Key {
        int key;
        Qt::KeyboardModifiers modifiers;
        QString text;
        ulong after;  ///< milliseconds behind the one before
    };
    [[nodiscard]] bool watches(const QObject* watched) const;
    bool take(QWidget* target, const QKeyEvent& event);
    void rested();
    void settle();
    void giveBack(const std::vector<Key>& keys);
    [[nodiscard]] std::size_t within(ulong gap) const;
    [[nodiscard]] bool isScan() const;
    [[nodiscard]] ulong patience() const;
    [[nodiscard]] QString text() const;

    QWidget* m_owner;
    QPointer<QWidget> m_target;
    std::vector<Key> m_keys;
    ulong m_last = 0;
    bool m_givingBack = false, m_looked = false;
    QTimer m_rest;
};

}  // namespace taut::app
