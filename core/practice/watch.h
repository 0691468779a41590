// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/practice/world.h"

namespace taut::practice {

/// Looks at a world after each tick and lets happen what its state brings about: web that tears where it is pulled
/// beyond what is left of it, hangs and wraps, is caught, scorches, shows the wrong face.
class Watch {
public:
    explicit Watch(World& world) : m_world(world) {}
    void look();

private:
    void slip();
    void swing();
    [[nodiscard]] double atShortSide(std::size_t span, double pull) const;
    void tear();
    void hang();
    void runOut();
    void carry();
    void scorch();
    void wander();
    void tearAt(std::size_t span, const World::Mark* weak);
    [[nodiscard]] double soundShare(std::size_t span) const;
    [[nodiscard]] std::string between(std::size_t span) const;
    [[nodiscard]] Cause settingOf(std::size_t span) const;
    World& m_world;
};

}  // namespace taut::practice
