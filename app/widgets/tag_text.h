// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QWidget>

namespace taut::app {

/// A tag as it was scanned, sign by sign, so that it can be laid beside the label: control characters as small framed
/// names, a wrong sign in a thick frame with a wedge under it.
class TagText : public QWidget {
    Q_OBJECT

public:
    explicit TagText(QWidget* parent = nullptr);
    /// Shows it. wrong: which sign, from 1; one more than there are is where the tag ends too early.
    void show(const QString& scanned, std::optional<std::size_t> wrong);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    [[nodiscard]] QSize cell() const;
    [[nodiscard]] std::vector<QRect> places(int width) const;
    QList<uint> m_signs;
    std::optional<std::size_t> m_wrong;
};

}  // namespace taut::app
