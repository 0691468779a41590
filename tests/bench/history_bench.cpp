// SPDX-License-Identifier: GPL-3.0-or-later
// How fast a history is made, and how much of the disk it takes. Usage: history_bench FILE [RUNS [YEARS [brief]]]; the
// file is left there, for whoever measures what is asked of it. history_bench --verify FILE tells how long verifying
// takes.
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <string>

#include "app/made/history.h"
#include "core/logbook/logbook.h"
#include "core/units/plain.h"

using namespace taut;

namespace {

double secondsSince(std::chrono::steady_clock::time_point start)
{
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

int verified(const char* file)
{
    const auto start = std::chrono::steady_clock::now();
    const auto found = logbook::verify(file, {});
    if (!found || !found->findings.empty()) {
        std::fprintf(stderr, "%s\n", sentence(found ? found->findings.front() : found.error()).c_str());
        return 1;
    }
    std::printf("in order: %llu seals, verified in %.1f s\n", static_cast<unsigned long long>(found->end.count),
                secondsSince(start));
    return 0;
}

}  // namespace

int main(int argc, char** argv)
{
    if (argc == 3 && std::string(argv[1]) == "--verify") return verified(argv[2]);
    if (argc < 2) {
        std::fprintf(stderr, "history_bench FILE [RUNS [YEARS [brief]]]\n");
        return 2;
    }
    app::made::Wish wish;
    if (argc > 2) wish.runs = std::strtoull(argv[2], nullptr, 10);
    if (argc > 3) wish.years = std::atoi(argv[3]);
    wish.brief = argc > 4 && std::string(argv[4]) == "brief";
    const auto start = std::chrono::steady_clock::now();
    const auto made = app::made::makeHistory(wish, std::string(TAUTWEB_SOURCE_DIR) + "/resources", argv[1]);
    const double seconds = secondsSince(start);
    if (!made) {
        std::fprintf(stderr, "%s\n", sentence(made.error()).c_str());
        return 1;
    }
    const auto bytes = static_cast<double>(std::filesystem::file_size(argv[1]));
    const auto runs = static_cast<double>(made->runs);
    std::printf("%-10s %9zu runs %9llu seals %8.1f s %8.0f runs/s %10.0f bytes a run\n", wish.brief ? "brief" : "full",
                made->runs, static_cast<unsigned long long>(made->seals), seconds, runs / seconds, bytes / runs);
    return 0;
}
