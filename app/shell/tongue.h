// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QObject>

#include "app/sessions/session.h"
#include "app/text/language.h"

namespace taut::app {

/// What somebody chose of how they are spoken to.
struct Wish {
    QString language;  ///< "" = as it was
    std::optional<UnitsWish> units;
    bool forThisPc = false;  ///< also for everybody who is not signed in
};

/// As it was left on this PC, for whoever is not signed in.
[[nodiscard]] QString keptLanguage();
[[nodiscard]] UnitsWish keptUnits();

/// In which language and units the window speaks: as this PC was left, and for whoever is signed in as they chose
/// here. A setting of this PC; nothing of it is in the record.
class Tongue : public QObject {
    Q_OBJECT

public:
    /// What stands when it is made is what holds while nobody is signed in; a language that was asked for only this
    /// time (it is not the one that is kept) holds for everybody, until somebody chooses.
    explicit Tongue(Session* session, QObject* parent = nullptr);
    /// Keeps it: for whoever is signed in, else for the PC.
    void choose(const Wish& wish);
    /// Whether what is wanted by whoever is there is not what stands.
    [[nodiscard]] bool differs() const;
    /// Makes it stand. What is on a screen has to be made anew.
    void take();

signals:
    /// Something else is wanted than stands.
    void wanted();

private:
    void look();
    [[nodiscard]] QString language() const;
    [[nodiscard]] UnitsWish units() const;
    Session* m_session;
    QString m_language;  // of the PC
    bool m_thisTime;     // it was asked for as the program was started
    UnitsWish m_units;
};

}  // namespace taut::app
