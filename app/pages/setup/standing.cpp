// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/setup/standing.h"

#include "app/pages/setup/setup_page.h"

namespace taut::app {

QString standingOf(const people::PersonRecord& person, const logbook::DoorState* door)
{
    if (!person.active) return SetupPage::tr("out of service");
    if (!door || (!door->chosen && !door->invited)) return SetupPage::tr("cannot sign in");
    if (door->door.failures >= people::kTriesBeforeShut)
        return SetupPage::tr("shut out after %1 wrong tries").arg(door->door.failures);
    if (!door->chosen) return SetupPage::tr("has not chosen PIN and passphrase yet");
    QStringList parts{door->badge ? SetupPage::tr("signs with passphrase or badge")
                                  : SetupPage::tr("signs with a passphrase")};
    if (door->door.failures > 0) parts << SetupPage::tr("wrong tries just now: %1").arg(door->door.failures);
    return parts.join(QStringLiteral(", "));
}

const logbook::DoorState* doorOf(const Session& session, const people::PersonId& id)
{
    for (const logbook::DoorState& door : session.doors())
        if (door.person == id) return &door;
    return nullptr;
}

}  // namespace taut::app
