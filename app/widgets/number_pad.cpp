// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/number_pad.h"

#include <QGridLayout>
#include <QLineEdit>
#include <QPushButton>

#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/theme.h"

namespace taut::app {

NumberPad::NumberPad(QLineEdit* field, QWidget* parent) : QWidget(parent), m_field(field)
{
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(6);
    // Fractions of an inch need a slash and a space; a draw can be negative.
    static constexpr const char* kKeys[4][4] = {
        {"7", "8", "9", "/"}, {"4", "5", "6", "-"}, {"1", "2", "3", " "}, {"0", ".", "", ""}};
    const auto add = [&](const QString& face, const QString& name, int row, int column, int wide) {
        auto* key = worded(face, face.size() > 1 ? "" : "key", this);
        key->setFocusPolicy(Qt::NoFocus);
        key->setAccessibleName(name);
        grid->addWidget(key, row, column, 1, wide);
        return key;
    };
    for (int row = 0; row < 4; ++row)
        for (int column = 0; column < 4; ++column) {
            const QString text = QString::fromLatin1(kKeys[row][column]);
            if (text.isEmpty()) continue;
            const bool space = text == QLatin1String(" ");
            QPushButton* key =
                add(space ? tr("space") : text, space ? tr("Space") : tr("Key %1").arg(text), row, column, 1);
            key->setProperty("types", text);
            connect(key, &QPushButton::clicked, this, [this, text] { m_field->insert(text); });
        }
    QPushButton* back = add(tr("delete"), tr("Delete the last character"), 3, 2, 2);
    connect(back, &QPushButton::clicked, this, [this] { m_field->backspace(); });
}

}  // namespace taut::app
