// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/book.h"

#include <algorithm>
#include <cassert>
#include <cctype>
#include <cmath>

#include "core/inputs/sane.h"
#include "core/physics/formula.h"
#include "core/targets/aim.h"
#include "core/targets/coarse.h"
#include "core/units/format.h"

namespace taut::targets {

namespace {

template <class T>
std::shared_ptr<const T> orEmpty(const std::shared_ptr<const T>& p)
{
    return p ? p : std::make_shared<const T>();
}

Result<std::vector<inputs::NamedPath>> pathsFor(const inputs::Press& press, std::optional<Length> diameter,
                                                inputs::Winding winding, std::optional<inputs::Winding> finished)
{
    // Hung the way that shows the right face; before that is known, the way the press prefers.
    inputs::Feed feed = press.printFeed.value_or(inputs::Feed::Over);
    if (press.printWinding && winding != inputs::Winding::Unknown && winding != *press.printWinding)
        feed = feed == inputs::Feed::Over ? inputs::Feed::Under : inputs::Feed::Over;
    if (press.unwind && !press.unwind->feeds.empty() &&
        std::find(press.unwind->feeds.begin(), press.unwind->feeds.end(), feed) == press.unwind->feeds.end())
        feed = press.unwind->feeds.front();
    return inputs::pathsOf(press, diameter, feed, finished);
}

}  // namespace

Book::Book(const inputs::Inputs& in, std::optional<Length> presentDiameter)
    : m_press(orEmpty(in.press)),
      m_job(orEmpty(in.job)),
      m_substrate(orEmpty(in.substrate)),
      m_roll(orEmpty(in.roll)),
      m_present(presentDiameter),
      m_leftOff(leftOff(*m_press, *m_job)),
      m_paths(pathsFor(*m_press, inputs::diameterAsItRuns(*m_roll, presentDiameter), m_roll->winding, m_job->winding))
{
    if (m_paths || m_paths.error().subject != "roll.outer_diameter") return;
    const Length some = m_press->unwind && m_press->unwind->largestDiameter
                            ? m_press->unwind->largestDiameter->measure()
                            : Length::si(0.5);
    if (auto paths = pathsFor(*m_press, some, m_roll->winding, m_job->winding)) m_someRoll = std::move(*paths);
}

Term Book::diameter() const { return m_impossibleDiameter ? impossible(*m_impossibleDiameter) : givenDiameter(); }

SharedString Book::provenance(SharedString said) const
{
    if (m_roll->fromTag.empty()) return said;
    std::string from = said.str();
    const auto goesOn = [](char c) { return c == '_' || std::isalnum(static_cast<unsigned char>(c)) != 0; };
    for (const std::string& key : m_roll->fromTag)
        for (std::size_t at = from.find(key); at != std::string::npos; at = from.find(key, at + 1)) {
            const std::size_t end = at + key.size();
            if ((at > 0 && (goesOn(from[at - 1]) || from[at - 1] == ':')) || (end < from.size() && goesOn(from[end])))
                continue;
            from.replace(at, key.size(), "roll.tag");
        }
    return from;
}

Term Book::givenDiameter() const
{
    const SharedString unit = m_roll->outerDiameter ? m_roll->outerDiameter->quantity().unit() : SharedString();
    const double reading = figure("diameter_reading");
    if (m_present)
        return doubted(known(Quantity(*m_present, Kind::Length, unit), "measured:roll.diameter"), reading, "D");
    return doubted(term(m_roll->outerDiameter, "roll.outer_diameter"), reading, "D");
}

Term Book::runningDiameter() const
{
    if (m_impossibleDiameter || !m_roll->strippedDiameter) return diameter();
    if (m_impossibleStripped) return impossible(*m_impossibleStripped);
    return doubted(term(m_roll->strippedDiameter, "roll.stripped_diameter"), figure("diameter_reading"), "D");
}

Term Book::countedDiameter() const { return onlyLeft() ? runningDiameter() : diameter(); }

namespace {

Quantity farBeyond(const inputs::Maybe<Kind::Length>& largest, const inputs::Sane& any, UnitSystem units)
{
    if (!largest) return {any.most, Kind::Length, units == UnitSystem::Us ? "in" : "mm"};
    return {std::min(inputs::sane::kOverLargest * largest->si(), any.most), Kind::Length, largest->quantity().unit()};
}

}  // namespace

Quantity Book::mostAcross(const inputs::Rewind* rewind) const
{
    const inputs::Maybe<Kind::Length> largest = rewind != nullptr ? rewind->largestDiameter
                                                : m_press->unwind ? m_press->unwind->largestDiameter
                                                                  : std::nullopt;
    return farBeyond(largest, inputs::sane::kRollDiameter, m_press->units);
}

Quantity Book::mostWide() const { return farBeyond(m_press->webMost, inputs::sane::kPressWidth, m_press->units); }

bool Book::knowsWall() const { return m_roll->coreWall || (m_press->unwind && m_press->unwind->coreWall); }

Term Book::coreOuter(Wall unknown) const
{
    const Term core = term(m_roll->core, "roll.core");
    const auto plusWalls = [](const std::vector<double>& v) { return v[0] + 2 * v[1]; };
    if (m_roll->coreWall)
        return combine({core, term(m_roll->coreWall, "roll.core_wall")}, "roll.core + 2 roll.core_wall", plusWalls,
                       Kind::Length);
    if (knowsWall())
        return combine({core, term(m_press->unwind->coreWall, "press.unwind.core_wall")},
                       "roll.core + 2 press.unwind.core_wall", plusWalls, Kind::Length);
    const Term least = row("core_wall_least"), most = row("core_wall_most");
    if (unknown != Wall::Middle) {
        const Term& wall = unknown == Wall::Thinnest ? least : most;
        return combine({core, wall}, "roll.core + 2 " + wall.from.str(), plusWalls, Kind::Length);
    }
    const Term middle = combine(
        {core, least, most}, "roll.core + " + least.from.str() + " + " + most.from.str(),
        [](const std::vector<double>& v) { return v[0] + v[1] + v[2]; }, Kind::Length);
    return doubted(middle, most.value->si() - least.value->si(), "wall");
}

Term Book::caliper() const
{
    // The wound caliper: what the data say within this tolerance.
    const Term t = term(m_substrate->caliper, "substrate.caliper");
    const double share = m_substrate->caliperTolerance.value_or(figure("caliper_tolerance"));
    return t.known() ? doubted(t, share * t.value->si(), "t") : t;
}

Term Book::share(Term of, const char* rowName, const SharedString& source) const
{
    const double part = figure(rowName);
    return of.known() ? doubted(of, part * std::abs(of.value->si()), source) : of;
}

Term Book::grammage() const
{
    return share(term(m_substrate->grammage, "substrate.grammage"), "grammage_tolerance", "g");
}

Term Book::modulus() const { return share(term(m_substrate->modulus, "substrate.modulus"), "modulus_tolerance", "E"); }

Term Book::width() const
{
    const double slit = figure("width_reading");
    if (m_roll->width || !m_job->webWidth) return doubted(term(m_roll->width, "roll.width"), slit, "w");
    return doubted(term(m_job->webWidth, "job.web_width"), slit, "w");
}

Term Book::speed() const { return term(m_job->speed, "job.speed"); }

const physics::WebPath* Book::mainPath() const
{
    if (!m_paths || m_paths->empty()) return nullptr;
    return &m_paths->front().path;
}

const std::vector<inputs::NamedPath>* Book::pathsOfSomeRoll() const { return m_someRoll ? &*m_someRoll : nullptr; }

bool Book::waitsForRoll(std::string_view roller) const
{
    if (!m_someRoll) return false;
    const auto& rollers = m_someRoll->front().path.rollers;
    return rollers.size() > 1 && rollers[1].id == roller;
}

const physics::PathArc* Book::arc(std::string_view roller) const
{
    if (waitsForRoll(roller) || (!m_paths && !m_someRoll)) return nullptr;
    for (const inputs::NamedPath& named : m_paths ? *m_paths : *m_someRoll)
        if (const physics::PathArc* found = named.path.arc(roller)) return found;
    return nullptr;
}

Stated Book::add(Target target, Doubt doubt)
{
    assert(m_byId.count(target.id) == 0);
    for (const LeftOff& off : m_leftOff)
        if (off.speaksOf(target.id)) {
            target.state = Cannot{off.why, {}, "the job's lanes"};
            doubt.clear();
        }
    auto* ready = std::get_if<Ready>(&target.state);
    if (ready != nullptr)
        for (Given& g : ready->because.given) g.from = provenance(std::move(g.from));
    const Quantity* value = target.quantity();
    if (const double u = expandedOf(doubt); ready != nullptr && value != nullptr && u > 0)
        ready->uncertainty = Quantity(u, value->kind(), value->unit());
    m_all.push_back({std::move(target), std::move(doubt)});
    Entry& entry = m_all.back();
    m_byId.emplace(entry.target.id, &entry);
    return Stated(entry.target, &entry.doubt);
}

Stated Book::lacking(std::string id, Text name, Shape shape, const Term& lackTerm, SharedString source)
{
    if (lackTerm.cannot)
        return add({std::move(id), shape, std::move(name), Cannot{*lackTerm.cannot, {}, std::move(source)}});
    return add({std::move(id), shape, std::move(name), Needs{lackTerm.missing, {}, std::move(source)}});
}

Stated Book::formula(std::string id, Text name, const SharedString& formulaId, ListOf<Argument> arguments,
                     const SharedString& unit)
{
    const physics::Formula* formula = physics::findFormula(formulaId);
    assert(formula != nullptr);
    Term result = evaluated(*formula, arguments, {});
    if (!result.known()) {
        if (result.cannot && result.cannot->subject.empty()) {
            Finding why = *result.cannot;
            why.subject = id;
            result = impossible(std::move(why));
        }
        return lacking(std::move(id), std::move(name), Shape::Quantity, result, SharedString::ofTable(formula->source));
    }
    Because because{formulaId, SharedString::ofTable(formula->symbols), {}, SharedString::ofTable(formula->source)};
    because.given.reserve(arguments.size());
    for (const auto& [symbol, part] : arguments) {
        auto argument =
            std::find_if(formula->arguments.begin(), formula->arguments.end(),
                         [wanted = symbol.view()](const physics::Argument& a) { return a.symbol == wanted; });
        assert(argument != formula->arguments.end());
        because.given.push_back(given(symbol, SharedString::ofTable(argument->name), *part.value, part.from));
    }
    return add(
        {std::move(id), Shape::Quantity, std::move(name),
         Ready{unit.empty() ? result.value->in("") : result.value->in(unit), {}, {}, {}, {}, std::move(because), {}}},
        std::move(result.doubt));
}

Stated Book::value(std::string id, Text name, SharedString how, Term result, SharedString source,
                   ListOf<Argument> arguments)
{
    if (!result.known()) return lacking(std::move(id), std::move(name), Shape::Quantity, result, std::move(source));
    Because because{std::move(how), {}, {}, std::move(source)};
    Arguments itself;
    if (arguments.empty() && !result.from.empty()) {
        itself.emplace_back("x", result);
        arguments = itself;
    }
    because.given.reserve(arguments.size());
    for (const auto& [symbol, part] : arguments)
        if (part.known())
            because.given.push_back(given(symbol, part.name.empty() ? name : part.name, *part.value, part.from));
    return add({std::move(id), Shape::Quantity, std::move(name),
                Ready{*std::move(result.value), {}, {}, {}, {}, std::move(because), {}}},
               std::move(result.doubt));
}

Stated Book::word(std::string id, Text name, std::string value, SharedString source, std::vector<Given> because)
{
    return add({std::move(id), Shape::Word, std::move(name),
                Ready{std::move(value), {}, {}, {}, {}, {"rule", {}, std::move(because), std::move(source)}, {}}});
}

Stated Book::yesNo(std::string id, Text name, bool value, SharedString source, std::vector<Given> because)
{
    return add({std::move(id), Shape::YesNo, std::move(name),
                Ready{value, {}, {}, {}, {}, {"rule", {}, std::move(because), std::move(source)}, {}}});
}

bool Book::isLeftOff(const inputs::Zone& zone) const
{
    return std::any_of(m_leftOff.begin(), m_leftOff.end(),
                       [&](const LeftOff& off) { return !off.zone.empty() && off.zone == zone.id; });
}

bool Book::isNoted(const Text& text) const
{
    return std::any_of(m_targets.findings.begin(), m_targets.findings.end(),
                       [&](const Finding& f) { return f.text == text; });
}

Term Book::target(std::string_view id) const
{
    const auto found = m_byId.find(id);
    if (found == m_byId.end()) return missing("target:" + std::string(id));
    return termOf(found->second->target, &found->second->doubt);
}

void Book::sayTooNarrow(const Target& target)
{
    // Where a gauge is named, that it is too coarse says it.
    const Ready* ready = target.ready();
    const Window& window = ready->window;
    if (ready->instrument || !window.low || !window.high || finerFor(*window.low, *window.high, m_press->units) == 0)
        return;
    const Magnitude low = shownLimit(*window.low, m_press->units, true),
                    high = shownLimit(*window.high, m_press->units, false);
    if (low.si <= high.si) return;
    note(
        Finding{"window.too_narrow", Severity::Note, target.id,
                Text("%1: its window at %2 is narrower than the last place that is usually shown, so that its ends are "
                     "shown with more places than an instrument may have.",
                     {std::vector<Text>{target.name}, target.quantity()->magnitude()}),
                Text("A wider range entered with job or material helps.")});
}

Term Book::settled(std::string_view id)
{
    if (const auto found = m_byId.find(id); found != m_byId.end()) settle(*found->second);
    return target(id);
}

const Window* Book::windowOf(std::string_view id) const
{
    const auto found = m_byId.find(id);
    const Ready* ready = found == m_byId.end() ? nullptr : found->second->target.ready();
    return ready == nullptr ? nullptr : &ready->window;
}

void Book::finishReadings(Target& target)
{
    auto* ready = std::get_if<Ready>(&target.state);
    const Quantity* value = target.quantity();
    if (ready == nullptr || value == nullptr) return;
    // A panel's own unit holds for all that is said beside the value.
    if (mannerOf(value->unit()).fixed)
        for (std::optional<Quantity>* q :
             {&ready->uncertainty, &ready->instrument, &ready->most, &ready->window.low, &ready->window.high})
            if (*q) *q = (*q)->in(value->unit());
    // Less than the last place that is shown says nothing, and may be the noise of the arithmetic.
    if (ready->uncertainty) {
        if (showsNothing(Quantity(ready->uncertainty->si(), value->kind(), value->unit()), m_press->units))
            ready->uncertainty.reset();
    }
    sayTooNarrow(target);
    if (!ready->instrument || ready->window.rule == Rule::None) return;
    if (auto coarse = tooCoarse(ready->instrument->si(), ready->window)) {
        coarse->subject = target.id;
        // As the table beside it shows them: rounded inward.
        const Magnitude low = shownLimit(*ready->window.low, m_press->units, true),
                        high = shownLimit(*ready->window.high, m_press->units, false);
        if (low.si < high.si) {
            coarse->text.args.at(1) = low;
            coarse->text.args.at(2) = high;
        } else {
            coarse->text = Text("This gauge reads to %1 either way, and the window at %2 is narrower than the last "
                                "place that is shown: nothing can be sure to be inside.",
                                {coarse->text.args.at(0), low.si > high.si ? value->magnitude() : low});
        }
        coarse->text = Text("%1 \u2013 %2", {std::vector<Text>{target.name}, std::vector<Text>{coarse->text}});
        note(*std::move(coarse));
    }
}

Targets Book::finish() &&
{
    layOwnLimits();
    for (Entry& e : m_all) finishReadings(e.target);
    m_byId.clear();  // its keys are about to be moved away
    std::vector<Target*> sorted;
    sorted.reserve(m_all.size());
    for (Entry& e : m_all) {
        explain(e.target);
        sorted.push_back(&e.target);
    }
    std::sort(sorted.begin(), sorted.end(), [](const Target* a, const Target* b) { return a->id < b->id; });
    m_targets.all.reserve(sorted.size());
    for (Target* t : sorted) m_targets.all.push_back(std::move(*t));
    // What keeps the job off this press is read before what only wants a thought.
    std::stable_sort(m_targets.findings.begin(), m_targets.findings.end(),
                     [](const Finding& a, const Finding& b) { return a.severity > b.severity; });
    return std::move(m_targets);
}

}  // namespace taut::targets
