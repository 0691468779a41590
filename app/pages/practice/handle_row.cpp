// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/practice/handle_row.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/theme.h"
#include "core/units/format.h"
#include "core/units/parse.h"

namespace taut::app {

namespace {

using practice::Handle;

/// The unit in which somebody speaks of what this is set to.
std::string unitFor(const Handle& handle, const inputs::Press& press)
{
    if (handle.kinds.empty()) return {};
    for (const inputs::Zone& zone : press.zones)
        if (handle.deed.what == zone.id + "_setting" && zone.setting.least)
            return std::string(mannerOf(std::string_view(zone.setting.least->unit())).symbol);
    const Kind kind = handle.kinds.front();
    constexpr double kSmall = 0.01;  // lengths of a guide or a roll on its shaft are millimetres or inches
    return std::string(usualUnit(kind, press.units, kind == Kind::Length ? kSmall : 1e5).symbol);
}

}  // namespace

HandleRow::HandleRow(const Handle& handle, const inputs::Press& press, QWidget* parent)
    : QWidget(parent),
      m_handle(handle),
      m_system(press.units),
      m_unit(unitFor(handle, press))
{
    constexpr int kSecondTouchMs = 4000;
    m_armed.setSingleShot(true);
    m_armed.setInterval(kSecondTouchMs);
    connect(&m_armed, &QTimer::timeout, this, [this] { arm(false); });
    build();
}

QString HandleRow::said(const Text& text) const { return words(text, m_system); }

void HandleRow::build()
{
    const QString name = said(m_handle.name), what = said(m_handle.what);
    m_calls = what.isEmpty() ? name : tr("%1, %2").arg(name, what);
    setObjectName(QString::fromStdString("handle_" + m_handle.deed.what + "_" + m_handle.deed.item));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 2, 0, 2);
    column->setSpacing(2);
    auto* row = new QHBoxLayout;
    row->setSpacing(sizes().gap);
    auto* told = new QVBoxLayout;
    told->setSpacing(0);
    told->addStretch(1);
    told->addWidget(wrapped(name, "strong", this));
    if (!what.isEmpty()) told->addWidget(wrapped(what, "small", this));
    m_stands = wrapped({}, "soft", this);
    m_stands->hide();
    told->addWidget(m_stands);
    told->addStretch(1);
    row->addLayout(told, 5);
    if (!m_handle.kinds.empty()) {
        m_value = new QLineEdit(this);
        m_value->setObjectName(QStringLiteral("value"));
        named(m_value, tr("%1: to what").arg(m_calls));
        hint(m_value, unitText(m_unit));
        row->addWidget(m_value, 2);
    }
    const bool either = m_handle.sort == Handle::Sort::Either;
    m_do = addButton(m_handle.does, "do");
    row->addWidget(m_do, 3);
    if (!m_handle.undoes.empty()) {
        m_undo = addButton(m_handle.undoes, "undo");
        row->addWidget(m_undo, 3);
    }
    column->addLayout(row);
    m_refusal = wrapped({}, "strong", this);
    m_refusal->setObjectName(QStringLiteral("refusal"));
    m_refusal->hide();
    column->addWidget(m_refusal);
    column->addWidget(ruledLine(this));
    connect(m_do, &QPushButton::clicked, this, [this] {
        if (m_handle.sort == Handle::Sort::Motion && !m_armed.isActive()) return arm(true);
        arm(false);
        give(true, m_handle.ways[0]);
    });
    if (m_undo) connect(m_undo, &QPushButton::clicked, this, [this, either] { give(either, m_handle.ways[1]); });
    if (m_value) connect(m_value, &QLineEdit::returnPressed, m_do, &QPushButton::click);
    for (QLineEdit* value : {m_value})
        if (value) connect(value, &QLineEdit::textEdited, m_refusal, &QWidget::hide);
}

QPushButton* HandleRow::addButton(const Text& words, const char* name)
{
    QPushButton* button = worded(said(words), "", this);
    button->setObjectName(QString::fromLatin1(name));
    button->setAccessibleName(tr("%1: %2").arg(m_calls, said(words)));
    button->setMinimumHeight(sizes().control);
    return button;
}

/// The first touch says what the second will do; it is waited for only a little while.
void HandleRow::arm(bool armed)
{
    if (m_handle.sort != Handle::Sort::Motion) return;
    armed ? m_armed.start() : m_armed.stop();
    m_do->setText(armed ? tr("Once more: the pretend press moves") : said(m_handle.does));
    m_do->setAccessibleName(tr("%1: %2").arg(m_calls, m_do->text()));
}

/// A number alone is in the unit that stands in the field.
Result<std::optional<Quantity>> HandleRow::typed() const
{
    const std::string text = m_value ? m_value->text().trimmed().toStdString() : std::string();
    if (text.empty()) return std::optional<Quantity>();
    std::optional<Finding> first;
    for (const Kind kind : m_handle.kinds)
        for (const std::string& tried : {text, text + ' ' + m_unit}) {
            auto read = parseQuantity(tried, kind);
            if (read) return std::optional<Quantity>(*std::move(read));
            if (!first || first->code == "quantity.no_unit") first = read.error();
        }
    return *first;
}

void HandleRow::give(bool on, const std::string& item)
{
    m_refusal->hide();
    practice::Deed deed = m_handle.deed;
    deed.on = on;
    if (!item.empty()) deed.item = item;
    if (on && m_value) {
        auto to = typed();
        if (!to) return refuse(to.error());
        deed.to = *to;
    }
    emit done(deed);
}

void HandleRow::refuse(const Finding& finding)
{
    m_refusal->setText(words(finding, m_system));
    m_refusal->show();
}

QString HandleRow::refusal() const { return m_refusal->isHidden() ? QString() : m_refusal->text(); }

void HandleRow::show(const practice::World& world)
{
    QString now;
    if (const auto standing = practice::stands(world, m_handle))
        now = said(*standing ? m_handle.stands : m_handle.rests);
    if (const auto set = practice::setTo(world, m_handle)) now = tr("is set to %1").arg(quantityText(*set, m_system));
    if (now == m_stands->text()) return;
    m_stands->setText(now);
    m_stands->setVisible(!now.isEmpty());
}

}  // namespace taut::app
