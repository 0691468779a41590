// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QLabel>

#include "app/seams/demo_shop.h"
#include "app/sessions/session.h"

namespace taut::app {

/// Over a demo shop while nobody is signed in: that nothing in it is real, and with what its people sign in and sign.
class DemoNote : public QLabel {
    Q_OBJECT

public:
    explicit DemoNote(Session* session, QWidget* parent = nullptr);
    /// Tells of whoever is chosen to sign in.
    void tellOf(const QString& personId);

private:
    void settle();
    Session* m_session;
    std::vector<DemoPerson> m_people;
    QString m_chosen;
};

}  // namespace taut::app
