// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/screen_keys.h"

#include <QApplication>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>
#include <QPlainTextEdit>
#include <QPushButton>

#include "app/widgets/controls.h"
#include "app/widgets/theme.h"

namespace taut::app {

namespace {

constexpr int kColumns = 26;  // two for an ordinary key
constexpr const char* kRows[] = {"1234567890-/.", "qwertyuiop,%+", "asdfghjkl'\"()", "zxcvbnm:;"};

}  // namespace

ScreenKeys::ScreenKeys(QWidget* parent) : QWidget(parent)
{
    setObjectName(QStringLiteral("screenKeys"));
    setAccessibleName(tr("Keys on the screen"));
    setFocusPolicy(Qt::NoFocus);
    hide();
    parent->installEventFilter(this);
    connect(qApp, &QApplication::focusChanged, this, &ScreenKeys::follow);
}

QPushButton* ScreenKeys::key(const QString& face, const QString& name, int row, int column, int wide)
{
    auto* button = worded(face, "key", this);
    button->setFocusPolicy(Qt::NoFocus);
    button->setAccessibleName(name);
    button->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    static_cast<QGridLayout*>(layout())->addWidget(button, row, column, 1, wide);
    return button;
}

void ScreenKeys::build()
{
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(8, 8, 8, 8);
    grid->setSpacing(4);
    for (int i = 0; i < kColumns; ++i) grid->setColumnStretch(i, 1);
    int row = 0;
    for (const char* signs : kRows) {
        int column = 0;
        for (const QChar sign : QString::fromLatin1(signs)) {
            QPushButton* button = key(QString(sign), tr("Key %1").arg(sign), row, column, 2);
            button->setProperty("types", QString(sign));
            // The letter as it stands on the key now, capital or small.
            connect(button, &QPushButton::clicked, this, [this, button] {
                const QString text = button->property("types").toString();
                press(text.at(0).toUpper().unicode(), text);
            });
            if (sign.isLetter()) m_letters.push_back(button);
            column += 2;
        }
        ++row;
    }
    connect(key(tr("delete"), tr("Delete the last character"), 3, 18, 4), &QPushButton::clicked, this,
            [this] { press(Qt::Key_Backspace, {}); });
    connect(key(tr("Enter"), tr("Enter"), 3, 22, 4), &QPushButton::clicked, this,
            [this] { press(Qt::Key_Return, QStringLiteral("\r")); });
    m_shift = key(tr("capitals"), tr("Capital letters"), 4, 0, 5);
    m_shift->setCheckable(true);
    connect(m_shift, &QPushButton::toggled, this, [this](bool large) {
        m_large = large;
        showCase();
    });
    QPushButton* space = key(tr("space"), tr("Space"), 4, 5, 16);
    space->setProperty("types", QStringLiteral(" "));
    connect(space, &QPushButton::clicked, this, [this] { press(Qt::Key_Space, QStringLiteral(" ")); });
    connect(key(tr("put away"), tr("Put the keys away"), 4, 21, 5), &QPushButton::clicked, this,
            [this] { setWanted(false); });
}

void ScreenKeys::showCase()
{
    for (QPushButton* button : m_letters) {
        const QString face = m_large ? button->text().toUpper() : button->text().toLower();
        button->setText(face);
        button->setProperty("types", face);
    }
}

void ScreenKeys::setWanted(bool wanted)
{
    if (wanted == m_wanted) return;
    m_wanted = wanted;
    follow();
    emit wantedChanged(wanted);
}

void ScreenKeys::press(int key, const QString& text)
{
    if (!m_field) return;
    const Qt::KeyboardModifiers held = m_large && !text.isEmpty() ? Qt::ShiftModifier : Qt::NoModifier;
    const QPointer<QWidget> field = m_field;
    for (const QEvent::Type type : {QEvent::KeyPress, QEvent::KeyRelease}) {
        QKeyEvent event(type, key, held, text);
        if (field) QApplication::sendEvent(field, &event);
    }
}

namespace {

bool isTypedInto(const QWidget* widget)
{
    const auto* line = qobject_cast<const QLineEdit*>(widget);
    const auto* prose = qobject_cast<const QPlainTextEdit*>(widget);
    return (line != nullptr && !line->isReadOnly()) || (prose != nullptr && !prose->isReadOnly());
}

}  // namespace

/// Comes up for the field that has the focus, where it does not cover it.
void ScreenKeys::follow()
{
    QWidget* focus = parentWidget()->window()->focusWidget();
    const bool had = m_field;
    m_field = isTypedInto(focus) && parentWidget()->isAncestorOf(focus) ? focus : nullptr;
    // They go with the field: the next step's caution must not come up behind them.
    if (m_wanted && had && !m_field) return setWanted(false);
    const bool comesUp = m_wanted && m_field && m_field->isVisible();
    // Where a keyboard stands at the press nobody ever asks for them.
    if (comesUp && layout() == nullptr) build();
    setVisible(comesUp);
    if (!isVisible()) return;
    const int height = qMin(layout()->minimumSize().height(), parentWidget()->height());
    const QRect of(m_field->mapTo(parentWidget(), QPoint(0, 0)), m_field->size());
    const bool below = of.bottom() < parentWidget()->height() - height;
    setGeometry(0, below ? parentWidget()->height() - height : 0, parentWidget()->width(), height);
    raise();
}

bool ScreenKeys::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == parentWidget() && event->type() == QEvent::Resize) follow();
    return QWidget::eventFilter(watched, event);
}

void ScreenKeys::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange && isVisible()) follow();
}

void ScreenKeys::paintEvent(QPaintEvent*)
{
    const Palette p = currentLook().palette;
    QPainter painter(this);
    painter.fillRect(rect(), p.ground);
    painter.setPen(QPen(p.ink, 2));
    painter.drawRect(rect().adjusted(1, 1, -2, -2));
}

}  // namespace taut::app
