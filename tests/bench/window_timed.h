// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <functional>
#include <string>
#include <utility>
#include <vector>

#include <QApplication>
#include <QThread>

namespace taut::bench {

/// Tells how long each event took, from its delivery to its end: as long the window answers nobody.
class TimedApplication : public QApplication {
public:
    using QApplication::QApplication;
    bool notify(QObject* receiver, QEvent* event) override
    {
        // The session and whoever asks have threads of their own, whose events come through here as well.
        if (QThread::currentThread() != thread()) return QApplication::notify(receiver, event);
        using Clock = std::chrono::steady_clock;
        const bool outer = m_depth++ == 0;
        const auto start = Clock::now();
        const bool done = QApplication::notify(receiver, event);
        --m_depth;
        // What waits in an event of ours, the loop of qWait for one, is not the window's work.
        if (outer) m_times.push_back(std::chrono::duration<double, std::milli>(Clock::now() - start).count());
        return done;
    }
    std::vector<double> taken() { return std::exchange(m_times, {}); }

private:
    int m_depth = 0;
    std::vector<double> m_times;
};

/// The longest time that an event took in each step, in the quietest round: what else the machine does only adds.
class LongestEvents {
public:
    struct Step {
        std::string name;
        std::size_t events;
        double most;
    };
    explicit LongestEvents(TimedApplication& app) : m_app(app) {}

    void measure(const std::string& name, const std::function<void()>& work)
    {
        (void)m_app.taken();
        work();
        const std::vector<double> times = m_app.taken();
        const double most = times.empty() ? 0 : *std::max_element(times.begin(), times.end());
        auto found = std::find_if(m_steps.begin(), m_steps.end(), [&](const Step& step) { return step.name == name; });
        if (found == m_steps.end()) found = m_steps.insert(found, {name, times.size(), most});
        found->most = std::min(found->most, most);
    }
    /// Of all steps; nothing was measured: an empty one.
    [[nodiscard]] Step longest() const
    {
        const auto most = std::max_element(m_steps.begin(), m_steps.end(),
                                           [](const Step& a, const Step& b) { return a.most < b.most; });
        return most == m_steps.end() ? Step{} : *most;
    }
    void print(double limitMs) const
    {
        for (const Step& step : m_steps)
            std::printf("%-52s %6zu events %7.1f ms most%s\n", step.name.c_str(), step.events, step.most,
                        step.most > limitMs ? "  LONG" : "");
    }

private:
    TimedApplication& m_app;
    std::vector<Step> m_steps;
};

}  // namespace taut::bench
