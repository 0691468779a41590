// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <memory>
#include <vector>

#include <QPointF>
#include <QString>

class QPainter;

namespace taut::app::print {

/// A piece of a page that is never divided: a row of a table, a line, a drawing. Measured before it is drawn.
struct Strip {
    double height = 0;
    std::function<void(QPainter&, QPointF)> draw;  ///< at its top left corner
    bool withNext = false;                         ///< must not be the last of a page
    std::shared_ptr<const Strip> head;             ///< drawn again when a page begins with this strip
    QString name;                                  ///< for the message when it is larger than a page
};
/// Strips one below the other.
struct Stack {
    double x = 0, width = 0;
    std::vector<Strip> strips;
};
/// Stacks beside each other; each flows on by itself when the page ends.
struct Band {
    std::vector<Stack> stacks;
    bool newPage = false;
};

/// A strip with a place on a page.
struct Placed {
    QPointF at;
    const Strip* strip = nullptr;
};
using Page = std::vector<Placed>;

/// Fills pages of this height. A strip taller than a whole page is placed alone and told to `tooTall`.
[[nodiscard]] std::vector<Page> fillPages(const std::vector<Band>& bands, double height, double gap,
                                          const std::function<void(const QString&)>& tooTall);

}  // namespace taut::app::print
