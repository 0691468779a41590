// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/chain.h"

#include <catch2/catch.hpp>

#include "core/base/utf8.h"
#include "core/units/plain.h"

using namespace taut;
using namespace taut::seal;

namespace {

constexpr Instant kMorning{1'764'052'863'120, 60};

run::Source sourceOf(const std::string& id, const std::string& text) { return {id, 1, hex(sha256(text)), text}; }

/// A chain of n definitions, each row as a store would keep it.
std::vector<Seal> chainOf(int n)
{
    std::vector<Seal> chain;
    Link previous{};
    for (int i = 1; i <= n; ++i) {
        const Document document =
            sealedBy(definitionOf("press", sourceOf("press-" + std::to_string(i), "a = " + std::to_string(i))), "p-1",
                     "Inka Thorsby", {kMorning.utcMs + i, 60});
        const Head head = headOf(document);
        Seal seal{static_cast<std::uint64_t>(i),
                  document.kind,
                  head.id,
                  head.subject,
                  head.sealedAtMs,
                  head.person,
                  write(document),
                  previous,
                  {}};
        seal.link = linkAfter(previous, seal.document);
        previous = seal.link;
        chain.push_back(seal);
    }
    return chain;
}

Findings check(const std::vector<Seal>& chain, const std::vector<PartialAnchor>& anchors = {})
{
    ChainCheck walk(anchors);
    for (const Seal& seal : chain) walk.next(seal, {});
    return walk.finish();
}

Anchor anchorOf(const std::vector<Seal>& chain) { return {chain.back().seq, chain.back().link}; }
PartialAnchor typed(const Anchor& anchor, std::size_t digits = 32)
{
    return {anchor.count, hex(anchor.link).substr(0, digits)};
}

}  // namespace

TEST_CASE("an untouched chain is in order and its end is the anchor")
{
    const auto chain = chainOf(5);
    ChainCheck walk({typed(anchorOf(chain)), typed({0, {}})});
    for (const Seal& seal : chain) walk.next(seal, {});
    CHECK(walk.finish().empty());
    CHECK(walk.end() == anchorOf(chain));
    for (const AnchorVerdict& verdict : walk.anchors()) CHECK(verdict.holds);
}

TEST_CASE("each way to tamper is found and the first finding names the seal")
{
    const auto whole = chainOf(6);
    const Anchor anchor = anchorOf(whole);
    struct Case {
        const char* name;
        std::function<void(std::vector<Seal>&)> tamper;
        const char* code;
        const char* subject;
    };
    const std::vector<Case> cases{
        {"a byte of a document", [](auto& c) { c[2].document[20] = 'X'; }, "chain.broken", "seal 3"},
        {"a link", [](auto& c) { c[2].link[7] ^= 1U; }, "chain.broken", "seal 3"},
        {"the last link", [](auto& c) { c[5].link[0] ^= 1U; }, "chain.broken", "seal 6"},
        {"a previous link", [](auto& c) { c[3].previous[31] ^= 1U; }, "chain.previous", "seal 4"},
        {"a row taken out", [](auto& c) { c.erase(c.begin() + 2); }, "chain.gap", "seal 3"},
        {"a row taken out and the rest renumbered",
         [](auto& c) {
             c.erase(c.begin() + 2);
             for (std::size_t i = 0; i < c.size(); ++i) c[i].seq = i + 1;
         },
         "chain.previous", "seal 3"},
        {"two rows changed places",
         [](auto& c) {
             std::swap(c[2], c[3]);
             std::swap(c[2].seq, c[3].seq);
         },
         "chain.previous", "seal 3"},
        {"a number twice", [](auto& c) { c.insert(c.begin() + 3, c[2]); }, "chain.gap", "seal 4"},
        {"the first row taken out", [](auto& c) { c.erase(c.begin()); }, "chain.gap", "seal 1"},
        {"a row with a wrong previous put at the end",
         [](auto& c) {
             Seal extra = c[1];
             extra.seq = 7;
             c.push_back(extra);
         },
         "chain.previous", "seal 7"},
        {"the person of a row", [](auto& c) { c[2].person = "p-9"; }, "chain.head", "seal 3"},
        {"the time of a row", [](auto& c) { c[2].sealedAtMs += 1; }, "chain.head", "seal 3"},
        {"the id of a row", [](auto& c) { c[2].id = "press-33"; }, "chain.head", "seal 3"},
        {"the subject of a row", [](auto& c) { c[2].subject = "aa"; }, "chain.head", "seal 3"},
        {"the kind of a row", [](auto& c) { c[2].kind = seal::Kind::Void; }, "chain.head", "seal 3"},
        {"the tail cut off", [](auto& c) { c.resize(4); }, "anchor.missing", "seal 5"},
        {"all rows gone", [](auto& c) { c.clear(); }, "anchor.missing", "seal 1"},
        {"everything written anew",
         [](auto& c) {
             Link previous{};
             for (Seal& seal : c) {
                 if (seal.seq == 2) seal.document.insert(seal.document.size() - 1, R"(,"more":1)");
                 seal.previous = previous;
                 seal.link = previous = linkAfter(previous, seal.document);
             }
         },
         "anchor.differs", "seal 6"},
    };
    for (const Case& one : cases) {
        INFO(one.name);
        auto chain = whole;
        one.tamper(chain);
        const Findings findings = check(chain, {typed(anchor)});
        REQUIRE_FALSE(findings.empty());
        CHECK(findings.front().code == one.code);
        CHECK(findings.front().subject == one.subject);
        CHECK_FALSE(findings.front().text.empty());
        CHECK_FALSE(findings.front().remedy.empty());
    }
}

TEST_CASE("one changed byte is one finding and no anchor from there on holds")
{
    auto chain = chainOf(6);
    const Anchor before{2, chain[1].link};
    const Anchor after = anchorOf(chain);
    chain[2].document[20] = 'X';
    ChainCheck walk({typed(before), typed(after, 64)});
    for (const Seal& seal : chain) walk.next(seal, {});
    const Findings findings = walk.finish();
    REQUIRE(findings.size() == 2);
    CHECK(findings[0].code == "chain.broken");
    CHECK(findings[1].code == "anchor.differs");
    CHECK(walk.anchors()[0].holds);
    CHECK_FALSE(walk.anchors()[1].holds);
}

TEST_CASE("without an anchor a cut tail and a rewritten chain go unseen, which is why sheets carry one")
{
    auto cut = chainOf(6);
    cut.resize(4);
    CHECK(check(cut).empty());
}

TEST_CASE("an anchor reads back as typed in any case, as scanned, and cut to 32 digits")
{
    const auto chain = chainOf(3);
    const Anchor anchor = anchorOf(chain);
    std::string text = anchorText(anchor);
    CHECK(readAnchor(text).value() == anchor);
    for (char& c : text) c = static_cast<char>(std::toupper(c));
    CHECK(readAnchor("  " + text + "\n").value() == anchor);
    const auto partial = readPartialAnchor(text.substr(0, 2 + 32));
    REQUIRE(partial);
    CHECK(partial->count == 3);
    CHECK(check(chain, {*partial}).empty());
    const std::string uri = anchorUri("Halle 1/ä-2026-11-25-01", anchor);
    CHECK(uri == "tautweb:run/Halle%201%2f%c3%a4-2026-11-25-01?n=3&link=" + hex(anchor.link));
    const auto read = readAnchorUri(uri);
    REQUIRE(read);
    CHECK(read->run == "Halle 1/ä-2026-11-25-01");
    CHECK(read->anchor == anchor);
    CHECK(readPartialAnchor(uri)->digits == hex(anchor.link));
}

TEST_CASE("what is no anchor is refused with what to do")
{
    const std::string digits(64, 'a');
    for (const std::string& text :
         {std::string{}, std::string("9"), digits, "9:" + digits.substr(0, 31), "9:" + digits + "a", "x:" + digits,
          "-1:" + digits, "9:" + digits.substr(0, 40) + "g", "99999999999999999999:" + digits, "9 :" + digits,
          "tautweb:run/?n=1&link=" + digits, "tautweb:run/a?n=1&link=" + digits.substr(0, 63),
          "tautweb:run/a%4?n=1&link=" + digits, "tautweb:run/a&link=" + digits + "?n=1"}) {
        INFO(text);
        const auto read = readPartialAnchor(text);
        REQUIRE_FALSE(read);
        CHECK(read.error().code == "anchor.unreadable");
        CHECK_FALSE(read.error().remedy.empty());
    }
    CHECK_FALSE(readAnchor("9:" + digits.substr(0, 32)));
}

TEST_CASE("what is no anchor is told back as text, and no longer than a line")
{
    const std::string link(64, 'a');
    for (const std::string& text : {std::string("9:\xff\xfe"), "tautweb:run/%FF%fe?n=9&link=" + link,
                                    std::string(5000, 'x'), "tautweb:run/" + std::string(5000, 'x')}) {
        const auto read = readPartialAnchor(text);
        REQUIRE_FALSE(read);
        const std::string line = sentence(read.error());
        CHECK(firstBadUtf8(line) == std::string::npos);
        CHECK(line.size() < 500);
    }
    // A run's id is text: what a code hides behind escapes is looked at as well.
    CHECK_FALSE(readAnchorUri("tautweb:run/%FF?n=9&link=" + link));
    CHECK(readAnchorUri("tautweb:run/J%c3%a9?n=9&link=" + link)->run == "J\u00e9");
}

TEST_CASE("a document keeps its bytes and says who sealed it and when")
{
    const Document document =
        sealedBy(definitionOf("press", sourceOf("north", "a = \"é\"\n")), "p-1", "Inka Thorsby", kMorning);
    const std::string bytes = write(document);
    const auto back = read(bytes);
    REQUIRE(back);
    CHECK(back->kind == seal::Kind::Definition);
    CHECK(write(*back) == bytes);
    CHECK(headOf(*back) == Head{"definition", "north", "", kMorning.utcMs, "p-1"});
    CHECK(back->body["text"].text() == "a = \"é\"\n");
    CHECK(back->body["sealed_offset"].text() == "+01:00");
}

TEST_CASE("bytes that are no document are refused")
{
    for (const char* bytes : {"", "[]", "{}", "{\"format\":1}", "{\"format\":1,\"kind\":\"poem\"}",
                              "{\"format\":1,\"kind\":\"run\"", "{\"format\":1,\"kind\":\"run\",\"id\":\"\xff\"}"}) {
        INFO(bytes);
        const auto document = read(bytes);
        REQUIRE_FALSE(document);
        CHECK(document.error().code == "document.broken");
    }
}
