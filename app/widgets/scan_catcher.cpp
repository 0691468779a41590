// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/scan_catcher.h"

#include <algorithm>
#include <array>
#include <utility>

#include <QApplication>
#include <QLineEdit>

namespace taut::app {

namespace {

/// Scanners type a key every 1 to 20 ms; two quick fingers of one person come no nearer than 30 to 60 ms, and never so
/// for a whole word (common practice, no source).
constexpr ulong kHurry = 35;
/// Nobody types several keys so near to each other.
constexpr ulong kMachine = 20;
/// Who may be a scanner is waited for, and who is known to be one longer: a radio link, a slow setting, a busy PC.
constexpr ulong kDoubt = 250, kStutter = 500;
/// So many keys in a hurry, the Enter at their end among them, are a scanner's.
constexpr std::size_t kEnough = 5;

/// When the last scan ended: what it brings up has a catcher of its own.
ulong& lastScan()
{
    static ulong at = 0;
    return at;
}

bool isEnd(int key) { return key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Tab; }

bool isModifier(int key)
{
    switch (key) {
    case Qt::Key_Shift:
    case Qt::Key_Control:
    case Qt::Key_Alt:
    case Qt::Key_AltGr:
    case Qt::Key_Meta:
    case Qt::Key_CapsLock:
    case Qt::Key_NumLock: return true;
    default: return false;
    }
}

/// A sign that stands on tags: what can be printed, and GS, RS and EOT as Ctrl with a key.
bool isSign(const QKeyEvent& event)
{
    if (isEnd(event.key()) || event.text().isEmpty()) return false;
    const ushort sign = event.text().at(0).unicode();
    if (sign == 0x1d || sign == 0x1e || sign == 0x04) return true;
    const Qt::KeyboardModifiers with = event.modifiers() & (Qt::AltModifier | Qt::ControlModifier | Qt::MetaModifier);
    // Both together are AltGr of many keyboards.
    return event.text().at(0).isPrint() && (!with || with == (Qt::AltModifier | Qt::ControlModifier));
}

/// Nothing else that people type begins so: a carrier's name, or the envelope.
bool beginsAsTag(const QString& text)
{
    constexpr std::array kBegins{u"]C1", u"]d2", u"]Q3", u"]e0", u"[)>"};
    return std::any_of(kBegins.begin(), kBegins.end(),
                       [&](const char16_t* begin) { return text.startsWith(QStringView(begin)); });
}

bool isSecret(const QWidget* target)
{
    const auto* line = qobject_cast<const QLineEdit*>(target);
    return line && line->echoMode() != QLineEdit::Normal;
}

/// Who gets a key of the keyboard now.
const QWidget* receiver(const QWidget* owner)
{
    if (const QWidget* popup = QApplication::activePopupWidget())
        return popup->focusWidget() ? popup->focusWidget() : popup;
    const QWidget* window = owner->window();
    return window->focusWidget() ? window->focusWidget() : window;
}

}  // namespace

ScanCatcher::ScanCatcher(QWidget* owner) : QObject(owner), m_owner(owner)
{
    m_rest.setSingleShot(true);
    connect(&m_rest, &QTimer::timeout, this, &ScanCatcher::rested);
    qApp->installEventFilter(this);
}

/// A key goes from whoever has the keyboard to those around it; it is looked at once.
bool ScanCatcher::watches(const QObject* watched) const
{
    if (m_givingBack || !m_owner->isVisible() || !m_owner->isEnabled() || watched != receiver(m_owner)) return false;
    const auto* target = static_cast<const QWidget*>(watched);
    const QWidget* modal = QApplication::activeModalWidget();
    return !isSecret(target) && (!modal || modal->isAncestorOf(m_owner) || modal == m_owner);
}

bool ScanCatcher::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::MouseButtonPress && !m_keys.empty()) settle();
    // An open list would choose and close by the Enter at the end of a tag before that came as a key.
    if (event->type() == QEvent::ShortcutOverride && !m_keys.empty() && watched == m_target) {
        event->accept();
        return true;
    }
    if (event->type() != QEvent::KeyPress || !watched->isWidgetType() || !watches(watched)) return false;
    return take(static_cast<QWidget*>(watched), static_cast<const QKeyEvent&>(*event));
}

/// True when the key waits, or was a scanner's.
bool ScanCatcher::take(QWidget* target, const QKeyEvent& event)
{
    const ulong now = static_cast<ulong>(event.timestamp());
    if (!m_keys.empty() && (target != m_target || now == 0 || now < m_last || now - m_last > patience())) settle();
    const bool sign = isSign(event), first = m_keys.empty();
    // No tag begins with a blank, which presses buttons, or with the end of a message.
    const bool begins = sign && now != 0 && event.text() != QLatin1String(" ") && event.text() != QLatin1String("\x04");
    if (isModifier(event.key())) return false;
    // Some scanners end with two keys; the second must not press what has the keyboard now.
    if (first && isEnd(event.key()) && lastScan() != 0 && now >= lastScan() && now - lastScan() <= kDoubt) return true;
    // A window system may call the second of two equal signs that a scanner sends a repetition; a key that is held
    // repeats itself only after it has rested.
    const bool held = event.isAutoRepeat() && (first || now - m_last > kMachine);
    if (held || (first && !begins) || (!first && !sign && !isEnd(event.key()))) {
        settle();
        return false;
    }
    m_keys.push_back({event.key(), event.modifiers(), event.text(), first ? 0 : now - m_last});
    m_target = target;
    m_last = now;
    m_looked = false;
    if (isEnd(event.key()))
        settle();
    else
        m_rest.start(static_cast<int>(patience()));
    return true;
}

QString ScanCatcher::text() const
{
    QString text;
    for (const Key& key : m_keys)
        if (!isEnd(key.key)) text += key.text;
    return text;
}

/// How many keys came so near behind the one before.
std::size_t ScanCatcher::within(ulong gap) const
{
    return static_cast<std::size_t>(
        std::count_if(m_keys.begin() + 1, m_keys.end(), [gap](const Key& key) { return key.after <= gap; }));
}

bool ScanCatcher::isScan() const
{
    const std::size_t hurried = static_cast<std::size_t>(
        std::find_if(m_keys.begin(), m_keys.end(), [](const Key& key) { return key.after > kHurry; }) - m_keys.begin());
    return hurried >= kEnough || within(kMachine) + 1 >= kEnough || (m_keys.size() > 3 && beginsAsTag(text()));
}

/// How long the next key may take. A bracket begins nothing that is typed into fields here.
ulong ScanCatcher::patience() const
{
    const bool bracket = m_keys.front().text == QLatin1String("]") || m_keys.front().text == QLatin1String("[");
    return isScan() ? kStutter : bracket || within(kMachine) > 1 ? kDoubt : kHurry;
}

/// Nothing came for as long as a scanner may take. On a busy PC the next key may have come and not been handed on yet.
void ScanCatcher::rested()
{
    if (std::exchange(m_looked, true))
        settle();
    else
        m_rest.start(0);
}

/// It is plain now who typed.
void ScanCatcher::settle()
{
    m_rest.stop();
    if (m_keys.empty()) return;
    const bool scan = isScan() && m_owner->isVisible() && m_owner->isEnabled();
    const QString typed = text();
    const std::vector<Key> keys = std::exchange(m_keys, {});
    if (!scan) return giveBack(keys);
    lastScan() = m_last;
    // An open list would lie over what is shown now.
    if (QWidget* popup = QApplication::activePopupWidget()) popup->close();
    emit scanned(typed);
}

void ScanCatcher::giveBack(const std::vector<Key>& keys)
{
    m_givingBack = true;
    const QPointer<ScanCatcher> self(this);
    for (const Key& key : keys) {
        // Each goes on from where the one before left the keyboard.
        if (!m_target) break;
        QKeyEvent press(QEvent::KeyPress, key.key, key.modifiers, key.text);
        QCoreApplication::sendEvent(m_target, &press);
        if (!self) return;
        QKeyEvent release(QEvent::KeyRelease, key.key, key.modifiers, key.text);
        if (m_target) QCoreApplication::sendEvent(m_target, &release);
        // cppcheck-suppress identicalConditionAfterEarlyExit ; whoever got the key may have closed this
        if (!self) return;
    }
    m_givingBack = false;
}

}  // namespace taut::app
