// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/practice/press_picture.h"

#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/theme.h"

namespace taut::app {

PressPicture::PressPicture(QWidget* parent) : QWidget(parent)
{
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setAccessibleName(tr("The practice press"));
}

void PressPicture::show(LivePress press)
{
    const bool first = m_press.view.paths.empty();
    m_press = std::move(press);
    if (themeChoice().still) {
        for (LivePress::Span& span : m_press.spans) span.marks.clear();
        m_press.unwindTurned = m_press.rewindTurned = 0;
    }
    const QString said = livePressInWords(m_press);
    if (said != accessibleDescription()) setAccessibleDescription(said);
    if (first) updateGeometry();
    update();
}

QSize PressPicture::sizeHint() const { return {480, heightForWidth(480)}; }

QSize PressPicture::minimumSizeHint() const { return {240, sizes().control * 2}; }

int PressPicture::heightForWidth(int width) const
{
    if (m_press.extent.paths.empty()) return sizes().control * 2;
    // Words give way to each other, downwards.
    const int words = fontMetrics().height();
    return qMin(qCeil(livePressHeight(m_press, width, currentLook())) + words, width * 2 / 3);
}

void PressPicture::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    paintLivePress(painter, rect(), m_press, currentLook());
}

Gauges::Gauges(QWidget* parent) : QWidget(parent)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    m_lamps = wrapped({}, "", this);
    m_lamps->setObjectName(QStringLiteral("lamps"));
    column->addWidget(m_lamps);
    m_row = new QWidget(this);
    auto* row = new FlowRow(m_row);
    row->setSpacing(8);
    column->addWidget(m_row);
}

/// Lit is filled, dark is a ring: told by shape and word, and nothing flashes.
void Gauges::light(const practice::World& world, const inputs::Press& press)
{
    const practice::PressState& state = world.press();
    QStringList shown, lit;
    const auto lamp = [&](bool on, const QString& name) {
        // The word stays beside its lamp where the line ends.
        QString word = name;
        shown << (on ? QStringLiteral("\u25CF\u00A0") : QStringLiteral("\u25CB\u00A0")) +
                     word.replace(QLatin1Char(' '), QChar(QChar::Nbsp));
        if (on) lit << name;
    };
    lamp(state.mains, tr("Power"));
    if (press.hasAir) lamp(state.air, tr("Air"));
    lamp(state.reset, tr("Reset"));
    lamp(!state.stops.empty(), tr("Stop latched"));
    lamp(state.held, tr("Stop held"));
    lamp(!state.open.empty(), tr("Guard open"));
    lamp(world.speed() > Speed{}, tr("Moves"));
    const QString text = shown.join(QStringLiteral("  "));
    if (text == m_lamps->text()) return;
    m_lamps->setText(text);
    m_lamps->setAccessibleName(lit.isEmpty() ? tr("No lamp is lit.")
                                             : tr("Lit: %1.").arg(lit.join(QStringLiteral(", "))));
}

/// The cells stay where they are: only what they say changes.
void Gauges::say(const QString& name, const QString& value)
{
    if (m_next == m_cells.size()) {
        auto* cell = new QWidget(m_row);
        auto* column = new QVBoxLayout(cell);
        column->setContentsMargins(0, 0, 0, 0);
        column->setSpacing(0);
        auto* head = withRole(new QLabel(cell), "small");
        auto* figure = withRole(new QLabel(cell), "strong");
        column->addWidget(head);
        column->addWidget(figure);
        m_row->layout()->addWidget(cell);
        m_cells.emplace_back(head, figure);
    }
    auto& [head, figure] = m_cells[m_next++];
    if (head->text() != name) head->setText(name);
    if (figure->text() == value) return;
    figure->setText(value);
    figure->setAccessibleName(tr("%1: %2").arg(name, value));
    // A figure that grows shorter again leaves its neighbours where they stand.
    figure->setMinimumWidth(qMax(figure->minimumWidth(), figure->sizeHint().width()));
}

void Gauges::show(const practice::World& world, const inputs::Press& press)
{
    const UnitSystem system = press.units;
    const practice::Line& line = world.line();
    const practice::PressState& state = world.press();
    m_next = 0;
    light(world, press);
    const auto text = [&](auto measure, Kind kind) { return quantityText(Quantity(measure, kind), system); };
    say(tr("Speed"), text(world.speed(), Kind::Speed));
    if (press.hasAir) say(tr("Air supply"), text(world.supply(), Kind::Pressure));
    for (const inputs::Zone& zone : press.zones) {
        const auto set = world.shownSetting(zone);
        say(tr("Set: %1").arg(dataText(zone.name)), set ? quantityText(*set, system) : tr("not set"));
        // A press shows the tension where it has what weighs it; anywhere else it is for the charts of practice alone.
        if (zone.control != inputs::Control::LoadCell) continue;
        for (const practice::LineZone& one : line.zones)
            if (one.id == zone.id)
                say(tr("Reads: %1").arg(dataText(zone.name)), text(world.shownPull(one), Kind::Force));
    }
    const bool hung = state.roll == practice::RollAt::Shaft;
    say(tr("Unwind roll"),
        hung ? text(practice::unwindRadius(line.web, world.web()) * 2, Kind::Length) : tr("not hung"));
    say(tr("Rewind roll"), text(practice::rewindRadius(line.web, world.web()) * 2, Kind::Length));
}

}  // namespace taut::app
