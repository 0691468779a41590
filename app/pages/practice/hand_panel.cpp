// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/practice/hand_panel.h"

#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/pages/practice/handle_row.h"
#include "app/widgets/room.h"

namespace taut::app {

QString placeText(practice::At at)
{
    switch (at) {
    case practice::At::Panel: return HandPanel::tr("Panel");
    case practice::At::Unwind: return HandPanel::tr("Unwind");
    case practice::At::Table: return HandPanel::tr("Splice table");
    case practice::At::Stations: return HandPanel::tr("Stations");
    case practice::At::Guide: return HandPanel::tr("Web guide");
    case practice::At::Rewind: return HandPanel::tr("Rewind");
    }
    return {};
}

HandPanel::HandPanel(QWidget* parent) : QWidget(parent), m_stack(new QStackedWidget(this))
{
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_stack);
}

void HandPanel::build(const inputs::Press& press)
{
    while (QWidget* page = m_stack->widget(0)) delete page;
    m_places.clear();
    const std::vector<practice::Handle> handles = practice::handlesOf(press);
    for (const practice::At at : practice::kEverywhere) {
        auto* body = new QWidget;
        auto* rows = new QVBoxLayout(body);
        rows->setContentsMargins(0, 0, 6, 0);
        rows->setSpacing(2);
        Place place;
        for (const practice::Handle& handle : handles) {
            if (handle.at != at) continue;
            auto* row = new HandleRow(handle, press, body);
            connect(row, &HandleRow::done, this, &HandPanel::done);
            rows->addWidget(row);
            place.rows.push_back(row);
        }
        rows->addStretch(1);
        place.page = new ScrollRoom(body, m_stack);
        m_stack->addWidget(place.page);
        m_places[at] = place;
    }
    stand(m_at);
}

void HandPanel::stand(practice::At at)
{
    m_at = at;
    if (const auto found = m_places.find(at); found != m_places.end()) m_stack->setCurrentWidget(found->second.page);
}

void HandPanel::show(const practice::World& world)
{
    for (HandleRow* row : m_places[m_at].rows) row->show(world);
}

void HandPanel::refuse(const practice::Deed& deed, const Finding& finding)
{
    for (auto& [at, place] : m_places)
        for (HandleRow* row : place.rows) {
            const practice::Deed& own = row->handle().deed;
            if (own.what == deed.what && (own.item.empty() || own.item == deed.item)) return row->refuse(finding);
        }
}

}  // namespace taut::app
