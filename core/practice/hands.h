// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/practice/world.h"

namespace taut::practice {

/// Each deed is a row; those that a press has not are refused by name.
class Hands {
public:
    explicit Hands(World& world) : m_w(world), m_press(*world.m_setup.inputs.press) {}
    using Work = Result<Done> (Hands::*)(const Deed&);
    struct Row {
        const char* what;
        Work work;
        bool inTheWay = false;  ///< hands, arms or head are where the web runs
    };
    static const std::vector<Row>& rows();
    Result<Done> perform(const Deed& deed);

private:
    Result<Done> mains(const Deed& d);
    Result<Done> air(const Deed& d);
    Result<Done> stop(const Deed& d);
    Result<Done> reset(const Deed& d);
    Result<Done> holdStop(const Deed& d);
    Result<Done> guard(const Deed& d);
    Result<Done> inch(const Deed& d);
    Result<Done> holdToRun(const Deed& d);
    Result<Done> run(const Deed& d);
    Result<Done> halt(const Deed& d);
    Result<Done> liftAir(const Deed& d);
    Result<Done> liftUp(const Deed& d);
    Result<Done> liftDown(const Deed& d);
    Result<Done> shaftAir(const Deed& d);
    Result<Done> lamp(const Deed& d);
    Result<Done> clamp(const Deed& d);
    Result<Done> rollToLift(const Deed& d);
    Result<Done> hang(const Deed& d);
    Result<Done> strip(const Deed& d);
    Result<Done> lead(const Deed& d);
    Result<Done> cut(const Deed& d);
    Result<Done> tape(const Deed& d);
    Result<Done> trim(const Deed& d);
    Result<Done> trimOld(const Deed& d);
    Result<Done> core(const Deed& d);
    Result<Done> rag(const Deed& d);
    Result<Done> guideOn(const Deed& d);
    Result<Done> guideMiddle(const Deed& d);
    Result<Done> guideSensor(const Deed& d);
    Result<Done> cleanSensor(const Deed& d);
    Result<Done> zeroCell(const Deed& d);
    Result<Done> fitAdapter(const Deed& d);
    Result<Done> engageCalipers(const Deed& d);
    Result<Done> dancerPin(const Deed& d);
    Result<Done> registers(const Deed& d);
    [[nodiscard]] Result<GuideState*> guideOf(const Deed& d);
    Result<Done> zone(const inputs::Zone& zone, const Deed& d);
    Result<Done> diameter(const inputs::Zone& zone, const Deed& d);
    Result<Done> move(Motion motion, Speed speed);
    [[nodiscard]] Speed crawl() const;
    [[nodiscard]] Result<Done> ofZone(const Deed& d, const char* fault, Text none) const;
    [[nodiscard]] Result<Done> mayJoin() const;
    void unjoin();
    [[nodiscard]] double heldShare() const;
    [[nodiscard]] double off(double usually);
    [[nodiscard]] double upstream(std::size_t spans) const;
    World& m_w;
    const inputs::Press& m_press;
};

/// That something else has to be done before.
[[nodiscard]] Finding first(const std::string& what, Text text);

}  // namespace taut::practice
