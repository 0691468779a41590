// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/trace.h"

#include <algorithm>
#include <cstdio>

namespace taut::practice {

namespace {

std::string spaceless(std::string id)
{
    std::replace(id.begin(), id.end(), ' ', '_');
    return id;
}

void put(std::string& line, double value)
{
    char figures[32];
    std::snprintf(figures, sizeof figures, "%.7g,", value);
    line += figures;
}

}  // namespace

Trace::Trace(const World& world, bool keeps) : m_keeps(keeps)
{
    std::string head = "t,speed,unwind_radius,rewind_radius,tension.unwind";
    for (const auto& place : world.line().places) head += ",tension." + spaceless(place.id);
    for (const auto& place : world.line().places) head += ",place." + spaceless(place.id);
    say(head + "\r\n");
}

void Trace::add(const World& world)
{
    const auto& web = world.line().web;
    std::string line;
    put(line, world.time());
    put(line, world.speed().si());
    put(line, unwindRadius(web, world.web()).si());
    put(line, rewindRadius(web, world.web()).si());
    for (std::size_t s = 0; s < web.spans.size(); ++s) put(line, tensionIn(web, world.web(), s).si());
    for (std::size_t i = 0; i < web.rollers.size(); ++i) put(line, world.lateral().at[i]);
    line.back() = '\r';
    say(line + '\n');
}

void Trace::say(std::string_view line)
{
    m_hash.add(line);
    if (m_keeps) m_text += line;
}

}  // namespace taut::practice
