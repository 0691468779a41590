// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QSignalSpy>

#include "app/widgets/step_card.h"

namespace taut::app::cards {

/// A step of a kind as a card shows it, open and not answered.
[[nodiscard]] StepContent stepOf(procedure::StepKind kind, bool vital = false);
/// With a target of 1.0 bar to 2.0 bar, aimed at 1.5.
[[nodiscard]] StepContent readingStep();
/// Read as so many bar, outside the window.
[[nodiscard]] StepContent outsideStep(double bar);
/// Every kind of step, for what must hold for all of them.
[[nodiscard]] std::vector<StepContent> everyStep();

/// The one command that the card has sent; nullopt when it sent none.
[[nodiscard]] std::optional<run::Command> sent(const QSignalSpy& spy);
[[nodiscard]] std::optional<run::Answer> answered(const QSignalSpy& spy);

template <class W>
W* child(QWidget& card, const char* name)
{
    for (W* w : card.findChildren<W*>(QString::fromLatin1(name)))
        if (w->isVisibleTo(&card)) return w;
    return nullptr;
}

}  // namespace taut::app::cards
