// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <map>
#include <memory>

#include "app/made/gapped.h"
#include "app/made/gauge.h"
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
    // NOLINTNEXTLINE(modernize-use-nullptr): what the compiler makes of it compares with zero
    friend auto operator<=>(const Shape&, const Shape&) = default;
};

/// A run that was played, of which others of the same shape are told: the same events, with other times, people, roll,
/// values and words. Its document is laid out once, with gaps where runs differ, and what it answers beside it. Every
/// reading is judged anew by the window in which it was read, and one whose judgement would lead elsewhere is not
/// taken.
class Pattern {
public:
    /// run: the played one, tale: what it was played from.
    Pattern(const run::Run& run, const Tale& tale, const seal::KnownWords& known);

    /// Another run, as it is sealed and when.
    [[nodiscard]] Sealable told(const Tale& tale, const Shop& shop) const;

private:
    /// Gaps that every pattern has. Behind them comes one for the time of each event.
    enum Gap : std::size_t {
        kRun,
        kParentSaid,  ///< a text, which may be empty
        kParent,      ///< the same, or null
        kRollId,
        kRollText,
        kRollHash,
        kBy,
        kByName,
        kNext,
        kNextName,
        kOffset,
        kInterrupted,
        kAbandoned,
        kNote,
        kRemarks,
        kTimes
    };
    /// Who stands in a pattern: who began it, who took it over, or a supervisor, who stays.
    enum class Who : std::uint8_t { By, Next, Other };
    /// A reading that is taken anew: where its figures go, and what it was read with.
    struct Read {
        std::optional<Gauge> gauge;
        Kind kind{};
        std::optional<Quantity> instrument;
        targets::Window window;
        bool outside = false, doubtful = false;  ///< how it came out; that stays
        double value = 0, uncertainty = 0;       ///< as it was played
        std::string entered, verdict;
        std::size_t gaps = 0;  ///< the first of four: entered, value, uncertainty, verdict
    };
    /// An acceptance, which its supervisor signs over its own text.
    struct Accepted {
        std::string by;  ///< the supervisor's name
        Gapped text;
        std::size_t gap = 0;  ///< of the signature
    };
    struct Helped {
        std::size_t tries = 0;  ///< remedies of the step that was helped
        std::string words;
        std::size_t gap = 0;
    };
    /// What is anew in an event.
    struct Slot {
        std::int64_t afterMs = 0;  ///< after the event before it
        bool slow = false;         ///< takes longer at night
        std::optional<std::size_t> read, accepted, helped;
    };
    /// What a row of answers takes over from what was told.
    struct Row {
        std::optional<std::size_t> read, first;  ///< readings: as it stands, and as it was first entered
        std::size_t event = 0;
        Who by{};
    };
    struct Told;

    void layEvent(Json& event, const run::Event& played, const run::Run& run);
    void layRead(Json& event, const run::Answered& read, const run::Run& run, Slot& slot);
    void layAccepted(Json& event, Slot& slot);
    void layStep(Json& step, const Json::Array& playedEvents);
    void layRest(Json& body);
    void layRows(const Json::Array& playedSteps, const Json::Array& playedEvents);
    [[nodiscard]] static Json withRoll(Json inputs);
    [[nodiscard]] Who who(const std::string& id) const;
    [[nodiscard]] Json person(const std::string& id) const;
    std::size_t gaps(std::size_t n);

    void setEvent(std::size_t event, Told& told) const;
    void setRead(std::size_t read, Told& told) const;
    [[nodiscard]] logbook::RunAnswers answers(const Told& told) const;

    Tale m_tale;
    UnitSystem m_units{};
    std::size_t m_gaps = 0;
    std::vector<Slot> m_slots;  ///< an event each
    std::vector<Read> m_reads;
    std::vector<Accepted> m_accepted;
    std::vector<Helped> m_helped;
    std::map<std::string, std::size_t> m_lastRead, m_firstRead;  ///< by step, while it is laid out: in m_reads
    std::map<std::string, Json> m_acceptances;                   ///< by step: as the document lists it
    std::string m_roll;                                          ///< its text
    Gapped m_document{""};
    Who m_operator{};
    std::size_t m_notes = 0;
    bool m_abandoned = false;
    logbook::RunAnswers m_answers;
    std::vector<Row> m_rows;  ///< of m_answers.readings
    std::shared_ptr<const std::vector<seal::Parted::Words>> m_words;
};

}  // namespace taut::app::made
