// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/course.h"

#include <algorithm>
#include <utility>

#include "core/seal/difference.h"

namespace taut::seal {

namespace {

using Item = CourseReader::Item;
using List = CourseReader::List;

constexpr std::size_t kMostWords = 500;  // those of a shop's presses and procedures, in all their editions
constexpr double kLongestWaitS = 24.0 * 3600;

std::optional<double> numberIn(const Json& value)
{
    return value.isNumber() ? std::optional(value.number()) : std::nullopt;
}

void setWait(Item& item, const Json& seconds)
{
    item.waitMs = static_cast<std::int64_t>(std::clamp(seconds.number(), 0.0, kLongestWaitS) * 1000);
}

/// Takes over what a statement says of an item; what it does not say stays.
void state(Item& item, const Json& said)
{
    for (const auto& [key, value] : said.members()) {
        if (key == "id") item.id = value.text();
        if (key == "target") item.target = value.text();
        if (key == "value") item.value = numberIn(value);
        if (key == "aim") item.aim = numberIn(value);
        if (key == "wait") setWait(item, value);
        if (key == "external") item.external = value.boolean();
    }
    for (const Json& gone : said["without"].items()) {
        const std::string key = gone.text();
        if (key == "target") item.target.clear();
        if (key == "value") item.value.reset();
        if (key == "aim") item.aim.reset();
        if (key == "wait") item.waitMs = 0;
        if (key == "external") item.external = false;
    }
}

/// A list told by another one (difference.h); empty where that names a place which is not there.
List listFrom(const List& before, const Json::Array& told)
{
    List list;
    list.reserve(before.size());
    for (const Json& said : told) {
        if (said.isString()) {
            const auto places = placesIn(said.text());
            if (!places || places->second >= before.size()) return {};
            for (std::size_t i = places->first; i <= places->second; ++i) list.push_back(before[i]);
            continue;
        }
        Item item;
        if (said.has("was")) {
            const auto place = static_cast<std::size_t>(said["was"].integer(-1));
            if (place >= before.size()) return {};
            item = *before[place];
        }
        state(item, said);
        list.push_back(std::make_shared<const Item>(std::move(item)));
    }
    return list;
}

/// Looks items up by their id; what is asked for one after the other mostly stands so.
class Finder {
public:
    void use(const List* list)
    {
        m_list = list;
        m_at = 0;
    }
    [[nodiscard]] const Item* find(std::string_view id)
    {
        const std::size_t size = m_list == nullptr ? 0 : m_list->size();
        for (std::size_t tried = 0; tried < size; ++tried, m_at = (m_at + 1) % size)
            if ((*m_list)[m_at]->id == id) return (*m_list)[m_at].get();
        return nullptr;
    }

private:
    const List* m_list = nullptr;
    std::size_t m_at = 0;
};

bool isAnswer(std::string_view what) { return what == "answered" || what == "corrected"; }

/// Goes through the events in their order.
class Walker {
public:
    Walker(const std::vector<List>& sets, const std::vector<List>& plans) : m_sets(sets), m_plans(plans) {}

    void take(const Json& event)
    {
        const std::string what = event["what"].text(), step = event["step"].text();
        const auto read = readUtc(event["at"].text());
        m_times.push_back(read ? *read : m_times.empty() ? 0 : m_times.back());
        const Item* planned = step.empty() ? nullptr : m_steps.find(step);
        time(step, what, planned);
        if (what == "interrupted" || what == "withdrawn") m_away = true;
        if (what == "resumed") m_away = false;
        const std::string target = planned != nullptr ? planned->target : std::string();
        if (isAnswer(what)) answer(step, target, event);
        incident(what, step, target, event);
        // What an event changes holds after it.
        use(m_targets, m_sets, event["target_set"]);
        use(m_steps, m_plans, event["plan"]);
    }
    [[nodiscard]] Course course() &&
    {
        if (!m_course.stages.empty()) settle(m_stage);
        m_course.stages = stagesAt(m_course, m_times);
        return std::move(m_course);
    }

private:
    static void use(Finder& finder, const std::vector<List>& lists, const Json& place)
    {
        const auto at = static_cast<std::size_t>(place.integer(-1));
        if (place.isWhole() && at < lists.size()) finder.use(&lists[at]);
    }
    /// What waited for the next stage is of this one.
    void settle(std::size_t stage)
    {
        for (const std::size_t gap : std::exchange(m_waiting, {})) m_course.gaps[gap].stage = stage;
    }
    void time(const std::string& step, const std::string& what, const Item* planned)
    {
        CourseGap gap;
        gap.away = m_away;
        const bool counts = what != "clock_jumped";
        if (step.empty()) {
            if (counts) m_waiting.push_back(m_course.gaps.size());
        } else {
            m_stage = stageOf(std::string_view(step).substr(0, step.find('.')));
            settle(m_stage);
            if (counts) gap.stage = m_stage;
            if (planned != nullptr && !m_away) {
                gap.waitMs = what == "answered" ? planned->waitMs : 0;
                gap.external = planned->external;
            }
        }
        m_course.gaps.push_back(gap);
    }
    std::size_t stageOf(std::string_view name)
    {
        std::vector<StageCourse>& all = m_course.stages;
        const auto found = std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.stage == name; });
        const auto at = static_cast<std::size_t>(found - all.begin());
        if (found == all.end()) all.push_back({std::string(name)});
        return at;
    }
    void answer(const std::string& step, const std::string& target, const Json& event)
    {
        Answering& answering = m_course.answers[step];
        const Item* aim = target.empty() ? nullptr : m_targets.find(target);
        answering.aimed = aim == nullptr ? std::nullopt : aim->aim ? aim->aim : aim->value;
        if (!answering.first.empty()) return;
        answering.first = event["verdict"].text();
        if (answering.first == "outside" && event["value"].isNumber()) ++m_course.outside;
    }
    void incident(const std::string& what, const std::string& step, const std::string& target, const Json& event)
    {
        const auto add = [&](const char* word, const std::string& where, std::string detail) {
            m_course.incidents.push_back(
                {event["n"].integer(), word, where, target, std::move(detail), m_times.back()});
        };
        if (isAnswer(what) && event["value"].isNumber() && event["verdict"].text() == "outside")
            add("outside", step, {});
        for (const char* word : {"deviated", "corrected", "not_applicable", "interrupted"})
            if (what == word) add(word, step, event["reason"].text());
        if (what == "repeated") add("repeated", event["stage"].text(), event["cause"].text());
        if (what == "helped")
            add("helped", step, std::to_string(event["remedy"].integer()) + " " + event["words"].text());
        if (what == "handed_over") add("handed_over", step, {});
    }

    const std::vector<List>&m_sets, &m_plans;
    Finder m_targets, m_steps;  ///< of the set and the plan that stand
    Course m_course;
    std::vector<std::int64_t> m_times;   ///< of the events
    std::vector<std::size_t> m_waiting;  ///< gaps that are of the next stage
    std::size_t m_stage = 0;             ///< in which the run was last
    bool m_away = false;
};

}  // namespace

std::vector<StageCourse> stagesAt(const Course& course, const std::vector<std::int64_t>& times)
{
    std::vector<StageCourse> stages;
    stages.reserve(course.stages.size());
    for (const StageCourse& one : course.stages) stages.push_back({one.stage});
    for (std::size_t i = 1; i < times.size() && i < course.gaps.size(); ++i) {
        const CourseGap& gap = course.gaps[i];
        const std::int64_t ms = times[i] - times[i - 1];
        if (!gap.stage || ms <= 0) continue;
        StageCourse& stage = stages[*gap.stage];
        if (gap.away) {
            stage.awayMs += ms;
            continue;
        }
        const std::int64_t watched = std::min(ms, gap.waitMs);
        stage.watchedMs += watched;
        stage.workedMs += ms - watched;
        if (gap.external) stage.externalMs += ms;
    }
    return stages;
}

List CourseReader::words(const Json& named, std::string_view member)
{
    const std::string sha256 = named["sha256"].text();
    if (const auto found = m_words.find(sha256); found != m_words.end()) return found->second;
    const std::string text = m_texts ? m_texts(named["what"].text(), sha256) : std::string();
    const auto json = text.empty() ? Result<Json>(Json()) : Json::parse(text);
    // What is not to be had now may be there the next time.
    if (!json || json->isNull()) return {};
    if (m_words.size() >= kMostWords) m_words.clear();
    return m_words[sha256] = listFrom({}, (*json)[member].items());
}

std::vector<List> CourseReader::lists(const Json::Array& told, std::string_view member)
{
    std::vector<List> all;
    all.reserve(told.size());
    for (const Json& one : told) {
        const Json& since = one["since"];
        const auto place = static_cast<std::size_t>(since.integer(-1));
        List before;
        if (since.isObject())
            before = words(since, member);
        else if (since.isWhole() && place < all.size())
            before = all[place];
        all.push_back(one.has(member) ? listFrom(before, one[member].items()) : std::move(before));
    }
    return all;
}

Course CourseReader::of(const Json& body)
{
    const std::vector<List> sets = lists(body["target_sets"].items(), "targets");
    const std::vector<List> plans = lists(body["plans"].items(), "steps");
    Walker walker(sets, plans);
    for (const Json& event : body["events"].items()) walker.take(event);
    return std::move(walker).course();
}

}  // namespace taut::seal
