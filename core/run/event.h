// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/base/json.h"
#include "core/people/person.h"
#include "core/run/basis.h"
#include "core/verdict/verdict.h"

namespace taut::run {

using procedure::StepId;

/// Which, when, who.
struct Stamp {
    std::uint64_t n{};
    std::int64_t utcMs{};
    int offsetMinutes{};
    people::PersonId by;
    std::string byName, byRole;
};

/// A condition taken over from the run before, and how long the answer that gave it holds.
struct Carried {
    std::string condition;
    procedure::ValidFor validFor{};
    friend bool operator==(const Carried&, const Carried&) = default;
};

// What can happen in a run. Targets and plans travel inside, so that a fold never computes.
struct Began {
    std::string runId, workplace, kind, parent;  ///< parent: the run it continues, "" = none
    bool practice = false;
    bool webInPress = true;
    Sources sources;
    std::vector<std::string> facts;
    targets::Targets targets;
    procedure::Plan plan;
    std::vector<Carried> carried;  ///< standing conditions taken over from the parent
    UnitSystem units{};
    std::optional<Length> presentDiameter;  ///< of the roll, when it is not what its file says
};
struct InputsChanged {
    Sources sources;
    std::vector<std::string> facts;
    targets::Targets targets;
    procedure::Plan plan;
    std::vector<StepId> stale;
    std::string what;  ///< "roll", "diameter", or the entry that an answer filled: "width"
    std::optional<Length> presentDiameter;
};
struct Answered {  ///< also `corrected`, with a reason
    StepId step;
    std::string entered;
    std::optional<Quantity> value;
    targets::Window window;
    double uncertainty = 0;
    verdict::Judgement judgement;
    std::vector<std::string> stated;  ///< machine states said anew for a movement
    bool correction = false;
    std::string reason;
    /// What the answer made known of the inputs, where its step fills one; null when nothing is new.
    std::shared_ptr<const InputsChanged> filled;
};
struct NotApplicable {
    StepId step;
    std::string reason, approvedBy, approvedByName;  ///< a supervisor's id and name, "" = none was needed
};
struct Deviated {
    StepId step;
    Quantity value;
    std::string entered;
    targets::Window window;
    std::string reason, by, byName;                 ///< by: the supervisor
    std::shared_ptr<const InputsChanged> filled{};  ///< as of an answer: only now does the reading stand
    std::int64_t atMs = 0;                          ///< when it was accepted
    std::string signature{};                        ///< of deviationText(), hex
};
struct StopHeld {
    std::string holder, where;
};
struct StopGivenUp {
    std::string holder;
    std::string reason, saidBy, saidByName;  ///< whose word it was, when not that of whoever had the run; "" = theirs
};
struct Interrupted {
    std::string reason;
};  ///< ended_without_sign_off, power, break, stop_by_other, left_alone (nobody at the screen), left_page (on purpose)
struct Resumed {
    std::vector<std::string> stated;
    std::vector<StepId> reconfirm;
    std::string from;  ///< name of the person out of whose hands the run was taken, "" = it was their own
};
struct HandedOver {
    people::PersonId to;
    std::string toName, toRole;
    std::vector<StepId> reconfirm;
};
struct Repeated {
    std::string stage, cause;      ///< cause: web_break, wrong_roll, other
    std::vector<StepId> reopened;  ///< due again: this stage, and what was answered of those that rest on it
};
struct Noted {
    StepId step;
    std::string text;
};
struct Attached {
    StepId step;             ///< "" = to the run
    std::string name, type;  ///< type by its bytes, as of the internet's registry: "image/jpeg"
    std::int64_t size = 0;   ///< bytes
    std::string sha256;      ///< of the bytes, hex: by it they are found in the logbook
};
struct Helped {
    StepId step;
    int remedy = 0;  ///< which of the step's remedies, counted from 1; 0 = none of them
    std::string words;
};
struct ClockJumped {
    std::int64_t byMs = 0;  ///< how far somebody set the PC's clock: the times before and after are not to be compared
};
struct Withdrawn {
    std::string reason;
};  ///< the press is out of use until a supervisor returns it
struct Returned {
    std::string done;
};
struct Completed {
    std::string remarks;
    std::string supervisor = {}, supervisorName = {};  ///< who countersigned, "" = nobody had to
};
struct Abandoned {
    std::string reason;
    std::vector<StopHeld> held;  ///< stops that nobody had given up when the run ended
};
using Happening =
    std::variant<Began, Answered, NotApplicable, Deviated, InputsChanged, StopHeld, StopGivenUp, Interrupted, Resumed,
                 HandedOver, Repeated, Noted, Attached, Helped, ClockJumped, Withdrawn, Returned, Completed, Abandoned>;

/// One thing that happened. Only decide() and a store's reader can make one; the JSON is what was written to disk.
/// Copies share what they hold, so that a run of many events is cheap to copy.
class Event {
public:
    [[nodiscard]] const Stamp& stamp() const noexcept { return m_stamp; }
    [[nodiscard]] const Happening& happening() const noexcept { return *m_happening; }
    /// As it is stored; a stored one with all that stood there, also what this version does not know.
    [[nodiscard]] const Json& body() const noexcept { return *m_body; }
    [[nodiscard]] std::string json() const { return m_body->dump(); }  ///< one line
    [[nodiscard]] const std::shared_ptr<const Happening>& shared() const noexcept { return m_happening; }

private:
    Event() = default;
    friend class EventMaker;
    Stamp m_stamp;
    std::shared_ptr<const Happening> m_happening;
    std::shared_ptr<const Json> m_body;
};
/// "answered", "inputs_changed" ...
[[nodiscard]] const char* whatWord(const Happening& happening);

}  // namespace taut::run
