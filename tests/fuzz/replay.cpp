// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <csignal>
#include <cstdio>
#include <exception>
#include <filesystem>
#include <random>
#include <vector>

#include "core/base/file.h"
#include "tests/fuzz/property.h"

// Runs a fuzz target over its corpus without a fuzzer: every file as it stands, then seeded variations of it.
// Usage: fuzz_TARGET FOLDER|FILE [VARIATIONS]; a failing variation is written to failed_input in the working folder.

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace {

using Bytes = std::string;
const Bytes* g_now = nullptr;
const char* g_from = "";

void keepInput(int /*signal*/)
{
    std::fprintf(stderr, "  input: %s, kept as failed_input (%zu bytes)\n", g_from, g_now->size());
    if (std::FILE* file = std::fopen("failed_input", "wb")) {
        (void)std::fwrite(g_now->data(), 1, g_now->size(), file);
        (void)std::fclose(file);
    }
}

void run(const Bytes& input)
{
    g_now = &input;
    LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(input.data()), input.size());
}

/// One to three small changes: a byte turned, a piece taken out or said twice, the end cut off.
Bytes varied(Bytes text, std::mt19937& random)
{
    constexpr std::string_view kSigns = "\"'[]{}=,.:#%-+/\\\n 0919eE\x1d\x80\xff";
    const auto below = [&](std::size_t n) { return std::size_t{random()} % std::max<std::size_t>(n, 1); };
    for (std::size_t n = 1 + below(3); n > 0 && !text.empty(); --n) {
        const std::size_t at = below(text.size());
        const std::size_t length = 1 + below(std::min<std::size_t>(text.size() - at, 40));
        switch (below(5)) {
        case 0: text[at] = kSigns[below(kSigns.size())]; break;
        case 1: text.erase(at, length); break;
        case 2: text.insert(at, text.substr(at, length)); break;
        case 3: text.insert(at, 1, kSigns[below(kSigns.size())]); break;
        default: text.resize(below(10) == 0 ? at : std::max(at, text.size() - 1)); break;
        }
    }
    return text;
}

}  // namespace

int main(int argc, char** argv)
{
    if (argc < 2) {
        std::fprintf(stderr, "Usage: %s FOLDER|FILE [VARIATIONS]\n", argv[0]);
        return 2;
    }
    std::vector<std::filesystem::path> files;
    if (std::filesystem::is_directory(argv[1]))
        for (const auto& entry : std::filesystem::directory_iterator(argv[1])) files.push_back(entry.path());
    else
        files.emplace_back(argv[1]);
    std::sort(files.begin(), files.end());
    const int variations = argc > 2 ? std::atoi(argv[2]) : 0;
    (void)std::signal(SIGABRT, keepInput);
    std::size_t runs = 0;
    std::mt19937 random(4);
    for (const auto& path : files) {
        const auto text = taut::readFile(path);
        if (!text) {
            std::fprintf(stderr, "%s\n", taut::sentence(text.error()).c_str());
            return 1;
        }
        const std::string name = path.filename().string();
        g_from = name.c_str();
        try {
            run(*text);
            for (int i = 0; i < variations; ++i) run(varied(*text, random));
        } catch (const std::exception& error) {
            std::fprintf(stderr, "Does not hold: nothing is thrown\n  %s\n", error.what());
            keepInput(0);
            return 1;
        }
        runs += 1 + static_cast<std::size_t>(variations);
    }
    std::printf("%zu files, %zu runs\n", files.size(), runs);
    return files.empty() ? 1 : 0;
}
