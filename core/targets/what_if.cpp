// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/what_if.h"

#include "core/inputs/sane.h"
#include "core/units/parse.h"

namespace taut::targets {

namespace {

template <class T>
T copyOf(const std::shared_ptr<const T>& p)
{
    return p ? *p : T{};
}

template <Kind K>
Result<Entry<K>> readTried(std::string_view text, const inputs::Sane& sane)
{
    Result<Quantity> q = parseQuantity(text, K);
    if (!q) return q.error();
    if (q->si() < sane.least || q->si() > sane.most)
        return refuse("whatif.absurd", "",
                      {"%1 cannot be right here: between %2 and %3 can be believed.",
                       {q->magnitude(), Magnitude{sane.least, K, q->unit()}, Magnitude{sane.most, K, q->unit()}}},
                      "Look at the unit and at the decimal mark.");
    return Entry<K>(*std::move(q));
}

}  // namespace

Tried tryOut(const Tried& real, const WhatIf& whatIf)
{
    Tried tried = real;
    if (whatIf.empty()) return tried;
    inputs::Roll roll = copyOf(real.inputs.roll);
    inputs::Job job = copyOf(real.inputs.job);
    const bool another = whatIf.diameter || whatIf.width || whatIf.substrate;
    if (another) {
        roll.tag.clear();
        std::erase(roll.fromTag, "roll.width");
        std::erase(roll.fromTag, "roll.length");
        roll.length.reset();
        roll.mass.reset();
    }
    if (whatIf.diameter) {
        roll.outerDiameter = whatIf.diameter;
        tried.present.reset();
    }
    if (whatIf.width) {
        roll.width = whatIf.width;
        job.webWidth = whatIf.width;
        roll.coreMass.reset();
    }
    if (whatIf.speed) job.speed = whatIf.speed;
    if (whatIf.substrate) {
        tried.inputs.substrate = whatIf.substrate;
        roll.substrate = whatIf.substrate->id;
        job.substrate = whatIf.substrate->id;
    }
    tried.inputs.roll = std::make_shared<const inputs::Roll>(std::move(roll));
    tried.inputs.job = std::make_shared<const inputs::Job>(std::move(job));
    return tried;
}

Result<Entry<Kind::Length>> readTriedDiameter(std::string_view text)
{
    return readTried<Kind::Length>(text, inputs::sane::kRollDiameter);
}
Result<Entry<Kind::Length>> readTriedWidth(std::string_view text)
{
    return readTried<Kind::Length>(text, inputs::sane::kPressWidth);
}
Result<Entry<Kind::Speed>> readTriedSpeed(std::string_view text)
{
    return readTried<Kind::Speed>(text, inputs::sane::kSpeed);
}

}  // namespace taut::targets
