// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shell/page_shelf.h"

#include <utility>

namespace taut::app {

PageShelf::PageShelf(QWidget* parent) : QStackedWidget(parent) {}

void PageShelf::keep(int place, Make make) { m_makes[place] = std::move(make); }

QWidget* PageShelf::page(int place)
{
    if (QWidget* there = made(place)) return there;
    // A child of the shelf from the beginning: given to it when it is whole, each widget of it would be styled again.
    QWidget* page = m_makes.at(place)(this);
    m_made[place] = page;
    addWidget(page);
    emit pageMade(page);
    return page;
}

QWidget* PageShelf::made(int place) const
{
    const auto found = m_made.find(place);
    return found == m_made.end() ? nullptr : found->second;
}

std::vector<int> PageShelf::places() const
{
    std::vector<int> places;
    for (const auto& [place, page] : m_made) places.push_back(place);
    return places;
}

void PageShelf::bring(int place) { setCurrentWidget(page(place)); }

bool PageShelf::shows(int place) const
{
    const QWidget* page = made(place);
    return page != nullptr && page == currentWidget();
}

}  // namespace taut::app
