// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <string>
#include <vector>

#include "core/records/records.h"

// What waits for somebody in a store of records.
namespace taut::history {

/// A run that a supervisor sent back, with what was asked, and that nobody has corrected since.
struct SentBack {
    records::RunRow run;
    std::string byName, note;
    std::int64_t atMs{};
};
/// Those of one person, who had it in hand last, or of everybody (""): what was asked last stands first.
[[nodiscard]] Result<std::vector<SentBack>> sentBackTo(const records::Reader& reader, const std::string& person);

/// What a supervisor has to look at, what is most urgent first.
struct Waiting {
    std::vector<records::Withdrawal> withdrawn;  ///< presses out of use
    std::vector<records::RunRow> deviations;     ///< runs to be reviewed in which something outside was accepted
    std::vector<records::RunRow> others;         ///< the other runs to be reviewed
    std::int64_t toReview{};                     ///< how many in all, also beyond those listed
    std::vector<SentBack> sentBack;
};
/// Lists at most so many runs, newest first.
[[nodiscard]] Result<Waiting> waitingOf(const records::Reader& reader, std::size_t most = 200);

/// Which runs somebody has had in front of them, as they stood then: several are accepted at once only when each was.
class Opened {
public:
    /// This run was opened as it stands in the store now. Refuses as Reader::sealsAbout does.
    [[nodiscard]] Result<Done> open(const records::Reader& reader, const std::string& run);
    [[nodiscard]] bool has(const std::string& run) const { return m_seen.contains(run); }
    /// It is not to be among them after all.
    void leaveOut(const std::string& run) { m_seen.erase(run); }
    /// Somebody else is at the screen.
    void forget() { m_seen.clear(); }
    /// Whether all of them may be accepted together: review.none (no run), review.not_opened (one was never opened, or
    /// something was sealed about it since); subject the run.
    [[nodiscard]] Result<Done> mayAccept(const records::Reader& reader, const std::vector<std::string>& runs) const;

private:
    std::map<std::string, std::uint64_t> m_seen;  ///< run -> its newest seal
};

}  // namespace taut::history
