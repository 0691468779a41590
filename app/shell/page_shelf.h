// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <map>
#include <vector>

#include <QStackedWidget>

namespace taut::app {

/// The pages of a window, one in front. Each is made when it is first wanted: the window is there at once, and what
/// nobody comes to on a day costs nothing. A page shows from its first moment what stands then.
class PageShelf : public QStackedWidget {
    Q_OBJECT

public:
    /// Makes a page as a child of the widget that it is given.
    using Make = std::function<QWidget*(QWidget* parent)>;

    explicit PageShelf(QWidget* parent = nullptr);
    /// How the page of this place is made.
    void keep(int place, Make make);
    /// The page of a place that is kept, made now if nobody wanted it before; never null.
    QWidget* page(int place);
    /// nullptr while nobody has wanted it.
    [[nodiscard]] QWidget* made(int place) const;
    /// The places whose pages are made.
    [[nodiscard]] std::vector<int> places() const;
    /// Brings the page of this place to the front.
    void bring(int place);
    /// Whether it is in front.
    [[nodiscard]] bool shows(int place) const;

signals:
    /// It stands among the others, but need not be in front.
    void pageMade(QWidget* page);

private:
    std::map<int, Make> m_makes;
    std::map<int, QWidget*> m_made;
};

}  // namespace taut::app
