// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <memory>
#include <string>

#include <QTemporaryDir>

#include "app/pages/run/run_view.h"
#include "app/shell/main_window.h"
#include "tests/app/window/hands_support.h"

namespace taut::app::hands {

/// What somebody chooses on the start page.
struct Choice {
    std::string press = "north", job = "J-2101", roll = "R0041", kind = "full", substrate;
    bool webInPress = true;
};
inline const Choice kNorth{};
inline const Choice kSouth{"south", "J-2103", "R0048", "full", {}, true};

/// A crew at the window of the demo shop: the very MainWindow that main.cpp opens, on a real logbook, with its thread
/// and its syncs.
class Crew {
public:
    /// pressText: a profile that the demo shop does not have, "" = none; kept under its own id before the window opens.
    explicit Crew(Way way, const std::string& pressText = {});
    ~Crew();
    Hand hand;

    [[nodiscard]] Session& session() { return *m_window->session(); }
    [[nodiscard]] RunView& page() { return *m_window->findChild<RunView*>(); }
    [[nodiscard]] const run::Run& run();
    [[nodiscard]] std::filesystem::path file() const;

    void signIn(const char* person);  ///< "p-1"; locks first when somebody is signed in
    void begin(const Choice& choice);
    /// The step that the page shows; fails when it is not the one that comes next.
    [[nodiscard]] const procedure::Step& next();
    /// Answers the step that is shown; entered as in an answers file.
    void answer(const std::string& entered);
    void answerWell();
    /// Answers well, by hand, until this step is next; "" until nothing is open.
    void walkTo(const std::string& step);
    /// The same through the session, for a test that begins later than the run.
    void skipTo(const std::string& step);
    void skipTo(const std::function<bool(const procedure::Step&)>& wanted);
    /// One of the acts at the foot of the page or under "More".
    void act(RunAct act);
    /// Signs the run on the page that looks through it, and waits for the seal.
    void sign(const QString& remarks);
    /// Waits until what was asked is on disk or refused.
    void settle();
    [[nodiscard]] QString pin(const char* person) const;
    [[nodiscard]] QString passphrase(const char* person) const;
    [[nodiscard]] QString name(const char* person) const;
    /// The sealed documents of runs in this logbook, read by another connection, oldest first.
    [[nodiscard]] std::vector<std::string> sealedRuns() const;

private:
    void perform(const run::Command& command);
    QTemporaryDir m_folder;
    std::unique_ptr<MainWindow> m_window;
};

/// The id that stands first on a step's answer: what the shop says is right here.
[[nodiscard]] std::string rightAnswer(const run::Run& run, const procedure::Step& step, const std::string& who);

}  // namespace taut::app::hands
