// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <string>
#include <vector>

#include <QFont>
#include <QPointF>
#include <QString>
#include <QTextLayout>

#include "app/drawing/palette.h"
#include "core/base/result.h"
#include "core/units/unit.h"

class QPaintDevice;
class QPainter;

namespace taut::app::print {

/// The one family of every sheet: what is measured must be what is printed.
inline constexpr const char* kFamily = "DejaVu Sans";

/// Whether that family is the one found; code font.missing names the one that would come out instead.
[[nodiscard]] Result<Done> checkFont(const char* family = kFamily);

/// Lines of text set into a width, ready to be drawn.
struct SetText {
    std::shared_ptr<QTextLayout> layout;
    double height = 0;
    double width = 0;  ///< of the longest line
    /// With its upper left corner there.
    void draw(QPainter& painter, QPointF topLeft) const;
};

/// Sets type for one device: sizes in points and millimetres become the device's own units, and whatever does not fit
/// is remembered by name.
class Type {
public:
    /// Lengths are in dots of this device.
    Type(const QPaintDevice& device, UnitSystem system);
    /// So many millimetres in dots.
    [[nodiscard]] double mm(double millimetres) const { return millimetres * m_perMm; }
    [[nodiscard]] UnitSystem system() const { return m_system; }
    /// Unshaped, so that the PDF's text reads back letter by letter.
    [[nodiscard]] QFont font(double points, bool bold = false) const;
    /// Wraps between words, and inside one that is longer than the line.
    [[nodiscard]] SetText set(const QString& text, const QFont& font, double width,
                              Qt::Alignment align = Qt::AlignLeft) const;
    /// From one line to the next, in dots.
    [[nodiscard]] double lineHeight(const QFont& font) const;
    /// On one line, in dots.
    [[nodiscard]] double widthOf(const QString& text, const QFont& font) const;
    /// The widest piece of a text that is only broken when there is no other way.
    [[nodiscard]] double longestWord(const QString& text, const QFont& font) const;
    /// Black on white, with the device's fine line.
    [[nodiscard]] Look look(double points) const;
    /// A black line so many millimetres thick.
    [[nodiscard]] QPen rule(double millimetres) const;

    /// From 0, roomy, to 1: drawings lower and settings smaller, so that the first page holds what belongs on it.
    void setTightness(double tightness) { m_tightness = tightness; }
    [[nodiscard]] double tightness() const { return m_tightness; }

    /// Notes what did not fit its place.
    void tooLarge(const QString& what) { m_overflow.push_back(what.toStdString()); }
    /// Before it is set anew.
    void forgetOverflow() { m_overflow.clear(); }
    /// What did not fit, in order.
    [[nodiscard]] const std::vector<std::string>& overflow() const { return m_overflow; }

private:
    const QPaintDevice& m_device;
    UnitSystem m_system;
    double m_perMm;
    double m_tightness = 0;
    std::vector<std::string> m_overflow;
};

}  // namespace taut::app::print
