// SPDX-License-Identifier: GPL-3.0-or-later
// What is asked of a store, beside the same SQL through the engine's C interface; how it grows with the store; and how
// long an operator's answer takes to be on disk while another process computes over the whole store. Usage:
// store_bench STORE SMALL: a large store and one of a hundredth of its runs (tests/bench/bench.sh makes both). A few
// runs are added to STORE. Exit 1 when a limit is not kept.
#include <fcntl.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <limits>
#include <thread>

#include "app/made/shop.h"
#include "core/history/times.h"
#include "core/logbook/open_run.h"
#include "core/records/sheet.h"
#include "core/units/plain.h"
#include "tests/bench/at_press.h"
#include "tests/bench/overheard.h"
#include "tests/bench/stopwatch.h"
#include "tests/bench/told.h"

using namespace taut;

namespace {

template <class T>
T must(Result<T> result)
{
    if (result) return *std::move(result);
    std::fprintf(stderr, "%s\n", sentence(result.error()).c_str());
    std::exit(4);
}

using Question = std::function<std::size_t(const records::Reader&)>;
/// A page is of one size in every store. A search goes through what has its rarest word, however few of that fit.
enum class Sort : std::uint8_t { Page, Search, Series };
struct Case {
    const char* name;
    Question ask;  ///< gives how many rows came
    Sort sort = Sort::Page;
};

/// Against the same SQL, and in milliseconds a call (records::Reader).
constexpr double kMostRatio = 1.5, kMostMs = 50;
/// What takes less is over before anybody could tell: a ratio of it is one of the machine's whims.
constexpr double kTooShort = 20e-6;

std::string markAt(const std::string& file, std::int64_t depth)
{
    const std::int64_t seq = bench::Plain(file).number(
        "SELECT seq FROM run_rows WHERE seq IS NOT NULL ORDER BY seq DESC LIMIT 1 OFFSET " + std::to_string(depth));
    return "sealed/" + std::to_string(seq);
}

Question page(records::RunQuery query, std::string after = {})
{
    return [query = std::move(query), after = std::move(after)](const records::Reader& reader) {
        return must(reader.runs(query, after)).rows.size();
    };
}

/// Points of a series, as a chart takes them: page after page.
Question series(std::string press, std::string target, std::size_t points)
{
    return [=](const records::Reader& reader) {
        records::SeriesQuery query{press, target, 500};
        std::size_t rows = 0;
        std::string after;
        do {
            const auto next = must(reader.readings(query, after));
            rows += next.rows.size();
            after = next.next;
        } while (rows < points && !after.empty());
        return rows;
    };
}

records::RunQuery found(std::string text)
{
    records::RunQuery query;
    query.text = std::move(text);
    return query;
}

std::vector<Case> casesOf(const std::string& file, std::int64_t runs)
{
    records::RunQuery press, waiting, person, deviations, state, dates,
        nobody = found("marchbank"), nowhere = found("thermal"), voids = found("applegarth");
    press.press = "south";
    waiting.job = "J-2111";
    waiting.present = records::kWantsReview;
    person.person = "p-8";
    deviations.withDeviations = true;
    state.state = "abandoned";
    const auto middle = must(must(logbook::openReader(file))->runs({}, markAt(file, runs / 2)));
    dates.untilMs = middle.rows.front().begunMs;
    dates.press = "north";
    nobody.person = "p-8";
    nowhere.press = "south";
    voids.present = "void";
    return {
        {"newest page", page({})},
        {"page nine tenths down", page({}, markAt(file, runs / 10 * 9))},
        {"page of a press", page(press)},
        {"page of a press, nine tenths down", page(press, markAt(file, runs / 10 * 9))},
        {"page of a job, to be reviewed", page(waiting)},
        {"page of a person", page(person)},
        {"page with deviations", page(deviations)},
        {"page of abandoned runs", page(state)},
        {"page of a press before a day", page(dates)},
        {"search, a word of most runs", page(found("paper")), Sort::Search},
        {"search, the beginning of a word", page(found("quin")), Sort::Search},
        {"search, two words", page(found("marchbank honey")), Sort::Search},
        {"search, a roll", page(found("R1777")), Sort::Search},
        {"search, nothing has it", page(found("quicksilver")), Sort::Search},
        {"search and a person that fits nothing", page(nobody), Sort::Search},
        {"search and a press that fits nothing", page(nowhere), Sort::Search},
        {"search among void runs", page(voids), Sort::Search},
        {"how many are found among void runs",
         [=](const records::Reader& reader) { return static_cast<std::size_t>(must(reader.count(voids, 10'000))); },
         Sort::Search},
        {"10 000 points of a series", series("north", "tension.unwind.setting", 10'000), Sort::Series},
        {"10 000 points of both presses", series("", "guide.web.rest", 10'000), Sort::Series},
    };
}

constexpr int kCalls = 15;

/// The two in turns, so that neither has a quieter machine than the other.
std::pair<double, double> sideBySide(const std::function<void()>& ours, const std::function<void()>& theirs)
{
    constexpr int kBatches = 10;
    double own = std::numeric_limits<double>::infinity(), other = own;
    for (int i = 0; i < kBatches; ++i) {
        own = std::min(own, bench::medianOf(kCalls, ours));
        other = std::min(other, bench::medianOf(kCalls, theirs));
    }
    return {own, other};
}

bool compared(const std::string& file, const std::string& small)
{
    const auto reader = must(logbook::openReader(file)), few = must(logbook::openReader(small));
    const bench::Plain plain(file);
    const char* const kCount = "SELECT count(*) FROM run_rows WHERE seq IS NOT NULL";
    const std::int64_t runs = plain.number(kCount), fewRuns = bench::Plain(small).number(kCount);
    const std::vector<Case> cases = casesOf(file, runs), casesOfFew = casesOf(small, fewRuns);
    // As the logarithms of what is in them are to each other.
    const double mostGrowth = std::log(static_cast<double>(runs)) / std::log(static_cast<double>(fewRuns));
    bool within = true;
    bench::Measured worst;
    std::pair<std::string, double> latest, grown;
    std::printf("%-40s %6s %10s %10s %6s %10s %7s\n", (std::to_string(runs) + " runs").c_str(), "rows", "ours",
                "plain SQL", "ratio", "in few", "growth");
    for (std::size_t i = 0; i < cases.size(); ++i) {
        const Case& one = cases[i];
        std::size_t rows = 0;
        const auto statements = bench::overheard(file, [&](const records::Reader& r) { rows = one.ask(r); });
        const auto [ours, theirs] = sideBySide([&] { (void)one.ask(*reader); }, [&] { (void)plain.run(statements); });
        const double before = bench::median(kCalls, [&] { (void)casesOfFew[i].ask(*few); });
        const double ratio = ours / theirs, growth = ours / before;
        const bool slow = ratio > kMostRatio && ours > kTooShort;
        // Where the few do not fill a page, it is another page.
        const bool isSame = one.sort == Sort::Page && casesOfFew[i].ask(*few) == rows && ours > kTooShort;
        const bool grew = isSame && growth > mostGrowth;
        const bool late = one.sort != Sort::Series && ours * 1e3 > kMostMs;
        within = within && !slow && !grew && !late;
        if (one.sort != Sort::Series && ours > latest.second) latest = {one.name, ours};
        if (isSame && growth > grown.second) grown = {one.name, growth};
        bench::tellGrowth(std::string("history: ") + one.name, fewRuns, before * 1e3, 0);
        bench::tellGrowth(std::string("history: ") + one.name, runs, ours * 1e3, theirs * 1e3);
        if (ours > kTooShort && (worst.floor == 0 || ratio > worst.ours / worst.floor))
            worst = {std::string("history queries, the slowest: ") + one.name, ours * 1e3, theirs * 1e3, kMostRatio};
        std::printf("%-40s %6zu %7.3f ms %7.3f ms %6.2f %7.3f ms %7.2f%s%s%s\n", one.name, rows, ours * 1e3,
                    theirs * 1e3, ratio, before * 1e3, growth, slow ? "  RATIO" : "", grew ? "  GROWTH" : "",
                    late ? "  LATE" : "");
        std::fflush(stdout);
    }
    if (!worst.what.empty()) within = bench::tell(worst) && within;
    within = bench::tell({"history, the longest page or search: " + latest.first, latest.second * 1e3, 0, kMostMs,
                          bench::Held::AtMost}) &&
             within;
    within = bench::tell(
                 {"growth of a history page: " + grown.first, grown.second, 0, mostGrowth, bench::Held::AtMost, "x"}) &&
             within;
    std::printf("limits: ratio %.1f; growth of a page %.2f, from %lld runs; a page or search %.0f ms\n\n", kMostRatio,
                mostGrowth, static_cast<long long>(fewRuns), kMostMs);
    return within;
}

/// Runs from all over the store open as their sheets.
bool opened(const std::string& file)
{
    constexpr std::int64_t kOpened = 200;
    const auto reader = must(logbook::openReader(file));
    const std::int64_t runs = bench::Plain(file).number("SELECT count(*) FROM run_rows WHERE seq IS NOT NULL");
    std::vector<double> times;
    for (std::int64_t i = 0; i < kOpened; ++i) {
        records::RunQuery one;
        one.limit = 1;
        const std::string run = must(reader->runs(one, markAt(file, i * runs / kOpened))).rows.front().run;
        const auto start = std::chrono::steady_clock::now();
        const report::Report sheet = must(records::sheetOf(*reader, run));
        times.push_back(std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
        if (sheet.runId != run) return false;
    }
    std::sort(times.begin(), times.end());
    std::printf("%lld runs from all over opened as their sheets: %.1f ms median, %.1f ms most\n",
                static_cast<long long>(kOpened), times[times.size() / 2] * 1e3, times.back() * 1e3);
    return bench::tell({"any run's sheet, the longest of 200", times.back() * 1e3, 0, kMostMs, bench::Held::AtMost});
}

/// Causes of all losses over every run, again and again, until it is ended.
[[noreturn]] void computeParetos(const std::string& file, int told)
{
    for (;;) {
        // Where the disk is so slow that a reader is told that the logbook is busy, it asks again.
        const auto reader = logbook::openReader(file);
        const auto times = reader ? history::timesOf(**reader, {}, {}, std::numeric_limits<std::size_t>::max())
                                  : Result<history::Times>(reader.error());
        if (!times && times.error().code != "logbook.busy") (void)must(times);
        bool all = static_cast<bool>(times);
        for (const auto loss : {history::Loss::Outside, history::Loss::Repeated, history::Loss::Remedies})
            all = all && !history::lossesOf(*times, loss).empty();
        if (times && !all) ::_exit(4);
        if (::write(told, all ? "p" : "b", 1) != 1) ::_exit(4);
    }
}

/// How long each of at least so many answers took until it was on disk; `goOn` may want more. Between two of them
/// somebody thinks, however shortly: a disk that is written to without a pause lets nobody read.
std::vector<double> answers(const std::string& file, const std::function<bool(std::size_t)>& goOn)
{
    using Clock = std::chrono::steady_clock;
    const SystemClock clock;
    RandomIds ids;
    const auto writer = must(logbook::Writer::open(file, clock, ids, {false, "store_bench"}));
    const people::Signer inka = must(writer->unlock("p-2", "copper kettle by the window"));
    const auto beginning = bench::beginningBy(*writer, std::string(app::made::kBriefId));
    Chance chance(1);
    std::vector<double> times;
    while (goOn(times.size())) {
        logbook::OpenRun open = must(logbook::OpenRun::begin(*writer, beginning, inka.actor()));
        while (open.run().next()) {
            std::this_thread::sleep_for(std::chrono::duration<double>(chance.between(0.005, 0.04)));
            const run::Command deed = bench::nextDeed(open.run(), chance);
            const auto start = Clock::now();
            (void)must(open.perform(deed, inka.actor()));
            times.push_back(std::chrono::duration<double>(Clock::now() - start).count());
        }
        (void)must(open.perform(run::SignOff{}, inka.actor()));
        (void)must(open.seal(inka));
    }
    std::sort(times.begin(), times.end());
    return times;
}

bool answersMeanwhile(const std::string& file)
{
    constexpr std::size_t kAnswers = 560, kMostAnswers = 6000;
    constexpr double kMostLate = 0.150, kTail = 0.99;
    const auto at = [](const std::vector<double>& times, double share) {
        return times[static_cast<std::size_t>(std::ceil(share * static_cast<double>(times.size()))) - 1];
    };
    const auto quiet = answers(file, [](std::size_t given) { return given < kAnswers; });
    int told[2];
    std::fflush(stdout);
    if (::pipe(told) != 0 || ::fcntl(told[0], F_SETFL, O_NONBLOCK) != 0) std::exit(4);
    const pid_t other = ::fork();
    if (other == 0) computeParetos(file, told[1]);
    std::size_t paretos = 0, refused = 0;
    const auto round = [&] {
        const std::size_t before = paretos;
        return answers(file, [&](std::size_t given) {
            std::array<char, 64> done{};
            const ssize_t more = ::read(told[0], done.data(), done.size());
            for (ssize_t i = 0; i < more; ++i) ++(done[static_cast<std::size_t>(i)] == 'p' ? paretos : refused);
            if (::waitpid(other, nullptr, WNOHANG) != 0) std::exit(4);  // it has said why
            return given < kAnswers || (paretos == before && given < kMostAnswers);
        });
    };
    // The quietest of three: the disk is everybody's.
    auto busy = round();
    for (int more = 0; more < 2; ++more)
        if (auto next = round(); at(next, kTail) < at(busy, kTail)) busy = std::move(next);
    ::kill(other, SIGKILL);
    (void)::waitpid(other, nullptr, 0);
    std::printf("%-48s %10s %10s %10s\n", "an answer is on disk after", "median", "p99", "most");
    for (const auto& [name, times] :
         {std::pair("alone", std::as_const(quiet)),
          std::pair("beside Paretos of the whole store, quietest of 3", std::as_const(busy))})
        std::printf("%-48s %7.1f ms %7.1f ms %7.1f ms\n", name, at(times, 0.5) * 1e3, at(times, kTail) * 1e3,
                    times.back() * 1e3);
    std::printf("%zu answers, %zu Paretos came to an end meanwhile, %zu found the logbook busy\n", busy.size(), paretos,
                refused);
    return bench::tell({"event on disk beside Paretos of the whole store, p99", at(busy, kTail) * 1e3, 0,
                        kMostLate * 1e3, bench::Held::AtMost});
}

}  // namespace

int main(int argc, char** argv)
{
    if (argc < 3) {
        std::fprintf(stderr, "store_bench STORE SMALL\n");
        return 2;
    }
    const bool pages = compared(argv[1], argv[2]);
    const bool sheets = opened(argv[1]);
    const bool prompt = answersMeanwhile(argv[1]);
    return pages && sheets && prompt ? 0 : 1;
}
