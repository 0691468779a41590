// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <deque>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/inputs/path_of.h"
#include "core/inputs/policy.h"
#include "core/targets/lanes.h"
#include "core/targets/target.h"
#include "core/targets/term.h"

// How a target set is written, private to this folder: each family states its targets, the book follows what is
// missing or impossible through every formula, so that no family handles either by hand.
namespace taut::targets {

/// Which rule gave each end of a window.
struct Rules {
    Rule low = Rule::None, high = Rule::None;
};

/// A handle on a target just stated; on one that is not ready its setters do nothing, save the sentence for one that
/// only needs keys.
class Stated {
public:
    Stated(Target& target, const Doubt* doubt) : m_target(&target), m_doubt(doubt) {}
    Stated& window(std::optional<Quantity> low, std::optional<Quantity> high, Rule rule, Text source);
    Stated& window(std::optional<Quantity> low, std::optional<Quantity> high, Rules rules, Text source);
    /// Value plus and minus.
    Stated& within(double below, double above, Rule rule, Text source);
    Stated& advice(Text text);
    /// The relation in symbols, where no formula of the catalogue says it.
    Stated& symbols(SharedString relation);
    Stated& instrument(const std::optional<Quantity>& u);
    /// Where the control or gauge ends; what is not of the target's kind says nothing.
    Stated& most(const std::optional<Quantity>& end);
    Stated& cannot(Finding why);
    /// Speaks of the value, and of window and instrument set later, in this unit.
    Stated& in(const SharedString& unit);
    [[nodiscard]] const Ready* ready() const { return std::get_if<Ready>(&m_target->state); }
    /// As the input of another formula.
    [[nodiscard]] Term term() const;

private:
    Target* m_target;
    const Doubt* m_doubt;
};

/// A target as an input of a formula; what it lacks travels on.
[[nodiscard]] Term termOf(const Target& target, const Doubt* doubt);

/// A policy row as it holds for this press, with the words that say so.
struct Limit {
    Quantity value;
    Rule rule{};
    const inputs::PolicyRow* row = nullptr;
    [[nodiscard]] double si() const { return value.si(); }
    [[nodiscard]] Text source() const;
};

class Book {
public:
    Book(const inputs::Inputs& in, std::optional<Length> presentDiameter);

    // The four inputs, an empty one where nothing was given, so that every key can be asked for.
    [[nodiscard]] const inputs::Press& press() const { return *m_press; }
    [[nodiscard]] const inputs::Job& job() const { return *m_job; }
    [[nodiscard]] const inputs::Substrate& substrate() const { return *m_substrate; }
    [[nodiscard]] const inputs::Roll& roll() const { return *m_roll; }
    [[nodiscard]] bool measuredDiameter() const { return m_present.has_value(); }
    /// Nothing was taken off the roll since its label was written, as far as anybody said.
    [[nodiscard]] bool untouched() const { return !m_roll->opened && !m_present; }
    /// Of this roll only what was left of it was measured: what it was like as a whole, and with that what its label
    /// and its weight speak of, nobody knows.
    [[nodiscard]] bool onlyLeft() const { return m_roll->strippedDiameter && !m_roll->outerDiameter && !m_present; }
    /// Where an entry of the roll comes from: its key, or "roll.tag" where the tag filled it.
    [[nodiscard]] SharedString provenance(SharedString from) const;

    // Terms that several families use.
    [[nodiscard]] Term diameter() const;         ///< of the roll now; impossible where that cannot be
    [[nodiscard]] Term givenDiameter() const;    ///< the same as it was entered or measured
    [[nodiscard]] Term runningDiameter() const;  ///< stripped of its outer wraps where that was measured
    [[nodiscard]] Term countedDiameter() const;  ///< round which its web is counted: the whole, or only what was left
    /// Where the web starts: core and two walls. A wall that nobody entered lies somewhere in a band (policy): the
    /// middle with its doubt, or the end on whose side a mistake does no harm.
    enum class Wall : std::uint8_t { Middle, Thinnest, Thickest };
    [[nodiscard]] Term coreOuter(Wall unknown = Wall::Middle) const;
    [[nodiscard]] bool knowsWall() const;
    [[nodiscard]] Term caliper() const;
    [[nodiscard]] Term width() const;  ///< of the web that is there: the roll's, else the job's
    [[nodiscard]] Term speed() const;
    [[nodiscard]] Term grammage() const;
    [[nodiscard]] Term modulus() const;
    /// A policy row: from "press.policy.NAME" where the shop has set it, else "policy:NAME".
    [[nodiscard]] Term row(std::string_view name) const;
    [[nodiscard]] Limit limit(std::string_view name) const;
    /// The number of a policy row, SI.
    [[nodiscard]] double figure(std::string_view name) const;
    /// Where what a tape says of a roll is no longer large but misread: far beyond the largest that the unwind, or this
    /// rewind, takes; the same of a web's width.
    [[nodiscard]] Quantity mostAcross(const inputs::Rewind* rewind) const;
    [[nodiscard]] Quantity mostWide() const;
    /// Known to the share that a policy row says.
    [[nodiscard]] Term share(Term of, const char* rowName, const SharedString& source) const;
    /// The paths for this roll and the feed it needs, or what keeps them from being drawn.
    [[nodiscard]] const Result<std::vector<inputs::NamedPath>>& paths() const { return m_paths; }
    [[nodiscard]] const physics::WebPath* mainPath() const;
    /// All paths drawn with some roll in place of one whose diameter is not known: right from the roller behind the
    /// first one on. nullptr where the paths are known, or lack something else.
    [[nodiscard]] const std::vector<inputs::NamedPath>* pathsOfSomeRoll() const;
    /// Whether the wrap of this roller waits for the roll's diameter alone: the one that the roll's web meets first.
    [[nodiscard]] bool waitsForRoll(std::string_view roller) const;
    /// The wrap of a roller on whichever path it is.
    [[nodiscard]] const physics::PathArc* arc(std::string_view roller) const;

    /// Value by a formula of the catalogue.
    Stated formula(std::string id, Text name, const SharedString& formulaId, ListOf<Argument> arguments,
                   const SharedString& unit = {});
    /// Value by a rule in words ("rule"), as entered ("stated") or from a table ("lookup").
    Stated value(std::string id, Text name, SharedString how, Term result, SharedString source,
                 ListOf<Argument> because = {});
    Stated word(std::string id, Text name, std::string value, SharedString source, std::vector<Given> because);
    Stated yesNo(std::string id, Text name, bool value, SharedString source, std::vector<Given> because);
    /// What cannot be said yet, or not at all; `source` is whose relation or fact would say it.
    Stated lacking(std::string id, Text name, Shape shape, const Term& lack, SharedString source = "definition");
    void note(Finding finding) { m_targets.findings.push_back(std::move(finding)); }
    /// Why the roll's diameter cannot be: said by all that would follow from it.
    void blame(const Finding& diameter) { m_impossibleDiameter = diameter; }
    /// Why what is left of it cannot be: said by all that goes by it.
    void blameStripped(const Finding& stripped) { m_impossibleStripped = stripped; }
    /// Whether a zone carries no web of this job: its rewind has no lane to wind.
    [[nodiscard]] bool isLeftOff(const inputs::Zone& zone) const;
    /// Whether a finding says just this.
    [[nodiscard]] bool isNoted(const Text& text) const;
    [[nodiscard]] bool hasSchedule(std::string_view id) const { return m_targets.schedule(id) != nullptr; }
    void schedule(Schedule s) { m_targets.schedules.push_back(std::move(s)); }
    /// A target already stated, as a term; missing key "target:ID" when there is none (asserted by tests).
    [[nodiscard]] Term target(std::string_view id) const;
    /// The same for what others follow from though it may be aimed elsewhere (isAim): this press's own limits are laid
    /// on it first.
    [[nodiscard]] Term settled(std::string_view id);
    /// The window of a target already stated; nullptr where it is not ready.
    [[nodiscard]] const Window* windowOf(std::string_view id) const;
    [[nodiscard]] Targets finish() &&;

private:
    /// A policy row as this press has set it; nullptr where it has not.
    [[nodiscard]] const Quantity* ownRow(std::string_view name) const;
    [[nodiscard]] Quantity usualRow(const inputs::PolicyRow& row) const;
    Stated add(Target target, Doubt doubt = {});
    /// Lays this press's own limits on its targets, and says what of them does not hold or is broken.
    void layOwnLimits();
    struct Entry {
        Target target;
        Doubt doubt;
        bool settled = false;  ///< this press's own limits lie on it
    };
    /// Lays this press's own limits on one target, once.
    void settle(Entry& entry);
    /// What can be said of a reading only when its unit and window stand: doubt too small to show, a gauge too coarse.
    void finishReadings(Target& target);
    /// Of a window that is narrower than the last place that is usually shown.
    void sayTooNarrow(const Target& target);
    std::shared_ptr<const inputs::Press> m_press;
    std::shared_ptr<const inputs::Job> m_job;
    std::shared_ptr<const inputs::Substrate> m_substrate;
    std::shared_ptr<const inputs::Roll> m_roll;
    std::optional<Length> m_present;
    std::optional<Finding> m_impossibleDiameter, m_impossibleStripped;
    std::vector<LeftOff> m_leftOff;
    Result<std::vector<inputs::NamedPath>> m_paths;
    std::optional<std::vector<inputs::NamedPath>> m_someRoll;
    std::deque<Entry> m_all;  ///< a deque, so that a Stated and the index stay good while others are added
    std::unordered_map<std::string_view, Entry*> m_byId;
    Findings m_limitsSaid;  ///< what laying this press's own limits has found so far
    Targets m_targets;      ///< schedules and findings; `all` is filled by finish
};

/// Fills in what a family left unsaid: the relation in symbols, the sentence for an apprentice, and why nothing is
/// judged.
void explain(Target& target);

// The families, in the order in which they need each other.
void stateRoll(Book& book);
void stateJob(Book& book);
void stateCoreAndLift(Book& book);
void stateThreading(Book& book, bool webInPress);
void stateTension(Book& book);
void stateTraction(Book& book);
void stateStops(Book& book);
void stateSplice(Book& book);
void stateGuides(Book& book);
void stateAlignment(Book& book);
void stateRegisterAndInk(Book& book);
void stateShopReadings(Book& book);

/// Which roll a zone's torque acts on.
enum class ZoneEnd : std::uint8_t { Unwind, Rewind, Waste, Between };
[[nodiscard]] ZoneEnd endOf(const inputs::Press& press, const inputs::Zone& zone);
[[nodiscard]] const inputs::Rewind* rewindOf(const inputs::Press& press, const inputs::Zone& zone);
/// The zone that is bounded round a roller; nullptr for none.
[[nodiscard]] const inputs::Zone* zoneRound(const inputs::Press& press, const inputs::Roller& roller);
/// How large the zone's roll is when it is done: the unwinding core, the finished roll of the job or the largest that
/// its rewind winds, the waste rewind when full. Impossible where that is no more than the core it is wound on.
[[nodiscard]] Term lastDiameterOf(const Book& book, const inputs::Zone& zone);
/// What the web is under when its roll is finished: a taper leaves less than at the core, a draw as much all the way.
[[nodiscard]] Term finishedTension(const Book& book, const inputs::Zone& zone);
/// Web that the automatic stop has to leave on the roll: the profile's reserve, or what passes while the press stops
/// from job speed where that is more.
[[nodiscard]] Term stopReserve(const Book& book);
/// "press.zone.unwind.torque_per_setting"
[[nodiscard]] std::string zoneKey(const inputs::Zone& zone, const char* key);

}  // namespace taut::targets
