// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/controls.h"

#include <algorithm>
#include <utility>

#include <QAbstractScrollArea>
#include <QApplication>
#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPlainTextEdit>
#include <QStyleOption>
#include <QStylePainter>
#include <QStyledItemDelegate>
#include <QVBoxLayout>

#include "app/drawing/marks.h"
#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/theme.h"

namespace taut::app {

namespace {

/// Triangle with a mark of exclamation and the word, on the word's own ground.
class SignalWordPanel final : public QWidget {
public:
    explicit SignalWordPanel(QWidget* parent) : QWidget(parent)
    {
        setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    }
    void setWord(procedure::SignalWord word)
    {
        m_word = word;
        updateGeometry();
        update();
    }
    [[nodiscard]] QSize sizeHint() const override
    {
        const QFontMetricsF metrics(currentLook(1.1, true).font);
        const double triangle = m_word == procedure::SignalWord::Notice ? 0 : metrics.height() * 1.2;
        return {qCeil(metrics.horizontalAdvance(signalText(m_word)) + triangle + 24), qCeil(metrics.height() + 10)};
    }

protected:
    void paintEvent(QPaintEvent*) override
    {
        const Look look = currentLook(1.1, true);
        const SignalColours colours = signalColours(m_word);
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.fillRect(rect(), colours.ground);
        double left = 10;
        if (m_word != procedure::SignalWord::Notice) {
            const double h = QFontMetricsF(look.font).height() * 0.95, top = (height() - h) / 2;
            painter.setPen(Qt::NoPen);
            painter.setBrush(colours.ink);
            painter.drawPolygon(QPolygonF{{left + h / 2, top}, {left + h * 1.05, top + h}, {left - h * 0.05, top + h}});
            painter.setBrush(colours.ground);
            painter.drawRect(QRectF(left + h / 2 - h * 0.055, top + h * 0.34, h * 0.11, h * 0.34));
            painter.drawEllipse(QPointF(left + h / 2, top + h * 0.83), h * 0.065, h * 0.065);
            left += h * 1.2;
        }
        painter.setFont(look.font);
        painter.setPen(colours.ink);
        painter.drawText(QRectF(left + 4, 0, width() - left, height()), Qt::AlignLeft | Qt::AlignVCenter,
                         signalText(m_word));
    }

private:
    procedure::SignalWord m_word{};
};

/// Alt and a letter is meant for a button. Where none has that letter just now, a field would take it as typed.
class NoAltLetters final : public QObject {
public:
    using QObject::QObject;
    bool eventFilter(QObject*, QEvent* event) override
    {
        if (event->type() != QEvent::KeyPress) return false;
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->modifiers().testFlag(Qt::AltModifier) && !key->modifiers().testFlag(Qt::ControlModifier) &&
            !key->text().isEmpty() && key->text()[0].isPrint()) {
            event->ignore();  // the page may still know it
            return true;
        }
        return false;
    }
};

}  // namespace

QLabel* wrapped(const QString& text, const char* role, QWidget* parent)
{
    auto* label = new QLabel(text, parent);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    withRole(label, role);
    return label;
}

QPushButton* worded(const QString& text, const char* role, QWidget* parent)
{
    auto* button = new WordButton(text, parent);
    QString name = text;
    button->setAccessibleName(name.remove(QLatin1Char('&')));
    return withRole(button, role);
}

void named(QWidget* field, const QString& name)
{
    QString plain = name;
    field->setAccessibleName(plain.remove(QLatin1Char('&')));
    if (qobject_cast<QLineEdit*>(field) || qobject_cast<QPlainTextEdit*>(field))
        field->installEventFilter(new NoAltLetters(field));
    // Only this delegate gives the rows of an open list the height that the style sheet asks for.
    if (auto* list = qobject_cast<QComboBox*>(field)) list->setItemDelegate(new QStyledItemDelegate(list));
}

OneLine::OneLine(const char* role, QWidget* parent) : QLabel(parent)
{
    withRole(this, role);
    setTextFormat(Qt::PlainText);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
}

void OneLine::say(const QString& text)
{
    m_all = text;
    setAccessibleName(text);
    fit();
}

QSize OneLine::minimumSizeHint() const { return {0, QLabel::minimumSizeHint().height()}; }

void OneLine::fit()
{
    const QMargins around = contentsMargins();
    const QString fitting = fontMetrics().elidedText(m_all, Qt::ElideRight, width() - around.left() - around.right());
    if (fitting != text()) setText(fitting);
    setToolTip(fitting == m_all ? QString() : m_all);
}

void OneLine::resizeEvent(QResizeEvent* event)
{
    QLabel::resizeEvent(event);
    fit();
}

void OneLine::changeEvent(QEvent* event)
{
    QLabel::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) fit();
}

WordButton::WordButton(const QString& text, QWidget* parent) : QPushButton(text, parent)
{
    static int made = 0;
    m_number = ++made;
    setAutoDefault(false);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void WordButton::mousePressEvent(QMouseEvent* event)
{
    struct Touch {
        int button = 0;
        quint64 at = 0;
        QPoint where;
    };
    static Touch last;
    constexpr int kSamePlace = 24;
    constexpr quint64 kUnread = 500;  // ms: nobody has read what came up under the finger
    const Touch now{m_number, event->timestamp(), event->globalPosition().toPoint()};
    // Keys are typed fast, and stay where they are.
    const bool again = last.button != now.button && now.at - last.at < kUnread &&
                       (now.where - last.where).manhattanLength() < kSamePlace &&
                       property("role") != QLatin1String("key");
    if (!again) {
        last = now;
        return QPushButton::mousePressEvent(event);
    }
    // Touched on and on it is still the one touch that was meant for what stood there before.
    last.at = now.at;
    event->accept();
    giveFocusUp();
}

/// A touch that does not count must not leave the focus here either: Enter would do what it did not.
void WordButton::giveFocusUp()
{
    for (QWidget* w = parentWidget(); w != nullptr; w = w->parentWidget())
        if (w->focusPolicy() != Qt::NoFocus && qobject_cast<QAbstractScrollArea*>(w) == nullptr) return w->setFocus();
    clearFocus();
}

/// Enter presses what has the focus, as it does everywhere else; one that is held presses once.
void WordButton::keyPressEvent(QKeyEvent* event)
{
    if (event->key() != Qt::Key_Return && event->key() != Qt::Key_Enter) return QPushButton::keyPressEvent(event);
    event->accept();
    if (!event->isAutoRepeat()) click();
}

int WordButton::sidePadding() const
{
    // As the style sheet has it: border and padding on both sides.
    const QVariant role = property("role");
    if (role == QLatin1String("quiet")) return 24;
    return role == QLatin1String("key") ? 8 : 40;
}

int WordButton::plainHeight() const { return QPushButton::sizeHint().height(); }

QSize WordButton::sizeHint() const
{
    ensurePolished();
    const int words = fontMetrics().size(Qt::TextShowMnemonic | Qt::TextSingleLine, text()).width();
    constexpr int kSlack = 4;  // a word wrapped for half a pixel looks broken
    return {words + sidePadding() + kSlack, plainHeight()};
}

QSize WordButton::minimumSizeHint() const
{
    ensurePolished();
    int longest = 0;
    QString plain = text();
    const QStringList all = plain.remove(QLatin1Char('&')).split(QLatin1Char(' '));
    for (const QString& word : all) longest = qMax(longest, fontMetrics().horizontalAdvance(word));
    return {longest + sidePadding(), plainHeight()};
}

int WordButton::heightForWidth(int width) const
{
    ensurePolished();
    const QRect room(0, 0, qMax(20, width - sidePadding()), 10000);
    const int words = fontMetrics().boundingRect(room, Qt::TextWordWrap | Qt::TextShowMnemonic, text()).height();
    return qMax(plainHeight(), words + 16);
}

void WordButton::paintEvent(QPaintEvent*)
{
    QStylePainter painter(this);
    QStyleOptionButton option;
    initStyleOption(&option);
    option.text.clear();
    painter.drawControl(QStyle::CE_PushButton, option);
    const Palette& p = currentLook().palette;
    const QString role = property("role").toString();
    const bool filled = role == QLatin1String("main") || role == QLatin1String("vital");
    QColor ink = role == QLatin1String("quiet") ? p.accent : filled ? p.onAccent : p.ink;
    if (!isEnabled()) ink = p.soft;
    painter.setFont(font());
    painter.setPen(ink);
    const bool left = role == QLatin1String("row");
    const int side = sidePadding() / 2;
    painter.drawText(rect().adjusted(side, 0, -side, 0),
                     Qt::TextWordWrap | Qt::TextShowMnemonic | Qt::AlignVCenter |
                         (left ? Qt::AlignLeft : Qt::AlignHCenter),
                     shownWords());
}

StatementBox::StatementBox(const QString& sentence, QWidget* parent) : QCheckBox(sentence, parent)
{
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setAccessibleName(sentence);
}

int StatementBox::boxSide() const { return qMax(24, qRound(QFontMetricsF(currentLook(1.15).font).height() * 1.1)); }

int StatementBox::heightForWidth(int width) const
{
    const QFontMetrics metrics(currentLook(1.1).font);
    const int textWidth = qMax(60, width - boxSide() - 28);
    const int text = metrics.boundingRect(0, 0, textWidth, 10000, Qt::TextWordWrap, QCheckBox::text()).height();
    return qMax(qRound(sizes().row * 1.2), text + 14);
}

QSize StatementBox::sizeHint() const { return {420, heightForWidth(420)}; }

QSize StatementBox::minimumSizeHint() const { return {180, qRound(sizes().row * 1.2)}; }

bool StatementBox::hitButton(const QPoint& point) const { return rect().contains(point); }

void StatementBox::paintEvent(QPaintEvent*)
{
    const Look look = currentLook(1.1);
    const int side = boxSide();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (isChecked()) painter.fillRect(rect(), look.palette.wash);
    const QRectF box(9, (height() - side) / 2.0, side, side);
    painter.setPen(QPen(isEnabled() ? look.palette.ink : look.palette.rule, 2));
    painter.setBrush(look.palette.sheet);
    painter.drawRect(box);
    if (isChecked()) {
        painter.setPen(QPen(look.palette.accent, side * 0.16, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.drawPolyline(QPolygonF{box.topLeft() + QPointF(side * 0.2, side * 0.52),
                                       box.topLeft() + QPointF(side * 0.42, side * 0.74),
                                       box.topLeft() + QPointF(side * 0.82, side * 0.26)});
    }
    painter.setFont(look.font);
    painter.setPen(isEnabled() ? look.palette.ink : look.palette.soft);
    painter.drawText(QRectF(side + 22, 0, width() - side - 26, height()), Qt::TextWordWrap | Qt::AlignVCenter, text());
    if (hasFocus()) {
        painter.setPen(QPen(look.palette.accent, 3, Qt::DotLine));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(rect()).adjusted(2, 2, -2, -2));
    }
}

SignalPanel::SignalPanel(QWidget* parent) : QWidget(parent)
{
    auto* word = new SignalWordPanel(this);
    m_word = word;
    m_text = wrapped({}, "strong", this);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(sizes().gap);
    layout->addWidget(m_word, 0, Qt::AlignTop | Qt::AlignLeft);
    layout->addWidget(m_text, 1);
    hide();
}

void SignalPanel::setCaution(procedure::SignalWord word, const QString& text)
{
    setVisible(word != procedure::SignalWord::None && !text.isEmpty());
    static_cast<SignalWordPanel*>(m_word)->setWord(word);
    m_text->setText(text);
    setAccessibleName(signalText(word));
    setAccessibleDescription(text);
}

}  // namespace taut::app
