// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <memory>

#include "app/made/maker.h"
#include "core/run/run.h"

namespace taut::app::made {

/// How a run goes, as far as other events or other words follow from it.
struct Shape {
    Index job = 0;
    int edition = 1;
    std::string kind;
    bool interrupted = false, abandoned = false, noted = false, corrected = false, webBreak = false, handedOver = false;
    std::vector<Bad> bad;
    friend auto operator<=>(const Shape&, const Shape&) = default;
};

/// A run that was played, of which others of the same shape are told: the same events, with other times, people, roll,
/// values and words. Every reading is judged anew by the window in which it was read, and one whose judgement would
/// lead elsewhere is not taken.
class Pattern {
public:
    /// run: the played one, tale: what it was played from, of `shape`.
    Pattern(const run::Run& run, Tale tale, const seal::KnownWords& known);

    /// The document of another run, and when it is sealed.
    [[nodiscard]] Sealable told(const Tale& tale, const Shop& shop) const;

private:
    /// What is to be put into an event.
    struct Slot {
        std::int64_t afterMs = 0;           ///< after the event before it
        bool slow = false;                  ///< takes longer at night
        std::optional<std::size_t> target;  ///< of a reading: in m_targets
        bool outside = false;               ///< and that is how it came out
        std::size_t tries = 0;              ///< remedies of the step that was helped
    };
    struct Told;
    void setReading(Json& event, const Slot& slot, Told& told) const;
    void setEvent(Json& event, const Slot& slot, Told& told) const;
    void setSteps(Json& body, const Told& told) const;
    [[nodiscard]] std::string_view person(const std::string& id, const Told& told) const;

    Tale m_tale;
    UnitSystem m_units{};
    std::string m_roll;  ///< its text
    std::vector<targets::Target> m_targets;
    Json m_body;  ///< without events and steps
    Json::Array m_events, m_steps;
    std::vector<Slot> m_slots;
    std::shared_ptr<const std::vector<seal::Parted::Words>> m_words;
};

}  // namespace taut::app::made
