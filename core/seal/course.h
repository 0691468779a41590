// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/seal/document.h"

namespace taut::seal {

// What a run's document tells of its course, read from its JSON: a store asks it of every run, so nothing is folded.

/// How long one stage took. Time between two events belongs to the stage of the step of the later one; an event without
/// a step belongs to the stage of the next event that has one, and what follows the last of those to the last stage. A
/// stage that was gone through again has all of its times in one. The gap in which the PC's clock was set counts
/// nowhere, and no gap counts less than nothing.
struct StageCourse {
    std::string stage;
    std::int64_t workedMs{};    ///< all that is none of the two below
    std::int64_t watchedMs{};   ///< of the time before an answer of a step with a wait, the wait at most
    std::int64_t awayMs{};      ///< from an interruption or a withdrawal of the press until the run is resumed
    std::int64_t externalMs{};  ///< of worked and watched, at steps for which somebody goes elsewhere
};
/// Something that was not as it should be, or not at once (records::Incident says which and with what).
struct CourseIncident {
    std::int64_t n{};  ///< of its event
    std::string what, step, target, detail;
    std::int64_t atMs{};
};
/// How a step came to its answer.
struct Answering {
    /// What its target aimed at when it was answered last, SI: where limits moved the aim, that; else its value.
    std::optional<double> aimed;
    std::string first;  ///< verdict when it was first entered in this run
};
/// Where the time before an event counts.
struct CourseGap {
    std::optional<std::size_t> stage;  ///< in Course::stages; nothing: nowhere
    bool away = false, external = false;
    std::int64_t waitMs{};  ///< of time that is not away, what counts as watched at most
};
struct Course {
    std::vector<StageCourse> stages;  ///< in the order in which the run came to them; none where no step was come to
    std::vector<CourseGap> gaps;      ///< before each event
    std::vector<CourseIncident> incidents;                  ///< in the order of their events
    std::map<std::string, Answering, std::less<>> answers;  ///< by step
    std::int64_t outside{};                                 ///< readings that were outside when first entered
};

/// The stages of a course whose events come at other times.
[[nodiscard]] std::vector<StageCourse> stagesAt(const Course& course, const std::vector<std::int64_t>& times);

/// Reads courses one after the other. What many documents say in the same words it reads once.
class CourseReader {
public:
    explicit CourseReader(TextBySha texts) : m_texts(std::move(texts)) {}
    /// Of a run's document. What does not follow (words that are not to be had, places that are not there) is left
    /// out: no step waits then, and no target aims.
    [[nodiscard]] Course of(const Json& body);

    /// Of an item of a target set or a plan what matters here.
    struct Item {
        std::string id, target;
        std::optional<double> value, aim;
        std::int64_t waitMs{};
        bool external{};
    };
    using List = std::vector<std::shared_ptr<const Item>>;

private:
    [[nodiscard]] std::vector<List> lists(const Json::Array& told, std::string_view member);
    [[nodiscard]] List words(const Json& named, std::string_view member);

    TextBySha m_texts;
    std::map<std::string, List, std::less<>> m_words;  ///< by hash
};

}  // namespace taut::seal
