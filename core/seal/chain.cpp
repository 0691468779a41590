// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/chain.h"

#include <algorithm>
#include <charconv>

#include "core/base/utf8.h"
#include "core/units/number_text.h"

namespace taut::seal {

namespace {

constexpr std::size_t kLeastDigits = 32;
constexpr std::size_t kAllDigits = 64;
constexpr std::string_view kUriStart = "tautweb:run/";

Finding unreadableAnchor(std::string_view text)
{
    const std::string typed = quoted(text);
    return refuse("anchor.unreadable", typed,
                  {"%1 is not an anchor: it is the number of seals, a colon, and at least the first %2 of the %3 "
                   "characters of the link (digits and a to f).",
                   {typed, static_cast<std::int64_t>(kLeastDigits), static_cast<std::int64_t>(kAllDigits)}},
                  "Copy it again from the foot of the sheet, or scan the sheet's code.");
}

std::optional<std::uint64_t> countFrom(std::string_view text)
{
    std::uint64_t count = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), count);
    if (error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
    return count;
}

/// Lower case; empty when it is not hex.
std::string hexDigits(std::string_view text)
{
    std::string digits;
    for (const char c : text) {
        if ((c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'))
            digits += c;
        else if (c >= 'A' && c <= 'F')
            digits += static_cast<char>(c - 'A' + 'a');
        else
            return {};
    }
    return digits;
}

Link linkFrom(const std::string& digits)
{
    Link link{};
    for (std::size_t i = 0; i < link.size(); ++i)
        std::from_chars(digits.data() + 2 * i, digits.data() + 2 * i + 2, link[i], 16);
    return link;
}

bool isUnreserved(char c)
{
    return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '-' || c == '_' ||
           c == '.' || c == '~';
}

/// RFC 3986, 2.1: everything but unreserved characters as %XX.
std::string percentEncoded(std::string_view text)
{
    std::string out;
    for (const char c : text) {
        if (isUnreserved(c))
            out += c;
        else
            out += '%' + hex(bytesOf({&c, 1}));
    }
    return out;
}

std::optional<std::string> percentDecoded(std::string_view text)
{
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] != '%') {
            out += text[i];
            continue;
        }
        const std::string digits = i + 2 < text.size() ? hexDigits(text.substr(i + 1, 2)) : std::string{};
        if (digits.size() != 2) return std::nullopt;
        unsigned char byte = 0;
        std::from_chars(digits.data(), digits.data() + 2, byte, 16);
        out += static_cast<char>(byte);
        i += 2;
    }
    return out;
}

std::string sealName(std::uint64_t seq) { return "seal " + std::to_string(seq); }
std::int64_t number(std::uint64_t n) { return static_cast<std::int64_t>(n); }

}  // namespace

Link linkAfter(const Link& previous, std::string_view document) { return sha256(previous, bytesOf(document)); }

std::string anchorText(const Anchor& anchor) { return std::to_string(anchor.count) + ":" + hex(anchor.link); }

Result<PartialAnchor> readPartialAnchor(std::string_view text)
{
    const std::string_view whole = text;
    while (!text.empty() && (text.front() == ' ' || text.front() == '\t')) text.remove_prefix(1);
    while (!text.empty() && (text.back() == ' ' || text.back() == '\t' || text.back() == '\n' || text.back() == '\r'))
        text.remove_suffix(1);
    if (text.starts_with(kUriStart)) {
        const auto uri = readAnchorUri(text);
        if (!uri) return uri.error();
        return PartialAnchor{uri->anchor.count, hex(uri->anchor.link)};
    }
    const std::size_t colon = text.find(':');
    if (colon == std::string_view::npos) return unreadableAnchor(whole);
    const auto count = countFrom(text.substr(0, colon));
    const std::string digits = hexDigits(text.substr(colon + 1));
    if (!count || digits.size() < kLeastDigits || digits.size() > kAllDigits) return unreadableAnchor(whole);
    return PartialAnchor{*count, digits};
}

Result<Anchor> readAnchor(std::string_view text)
{
    const auto partial = readPartialAnchor(text);
    if (!partial) return partial.error();
    if (partial->digits.size() != kAllDigits) return unreadableAnchor(text);
    return Anchor{partial->count, linkFrom(partial->digits)};
}

std::string anchorUri(std::string_view run, const Anchor& anchor)
{
    return std::string(kUriStart) + percentEncoded(run) + "?n=" + std::to_string(anchor.count) +
           "&link=" + hex(anchor.link);
}

Result<AnchorUri> readAnchorUri(std::string_view uri)
{
    if (!uri.starts_with(kUriStart)) return unreadableAnchor(uri);
    const std::string_view rest = uri.substr(kUriStart.size());
    const std::size_t question = rest.find("?n=");
    const std::size_t amp = rest.find("&link=");
    if (question == std::string_view::npos || amp == std::string_view::npos || amp < question)
        return unreadableAnchor(uri);
    const auto run = percentDecoded(rest.substr(0, question));
    const auto count = countFrom(rest.substr(question + 3, amp - question - 3));
    const std::string digits = hexDigits(rest.substr(amp + 6));
    const bool isId = run && !run->empty() && firstBadUtf8(*run) == std::string_view::npos;
    if (!isId || !count || digits.size() != kAllDigits) return unreadableAnchor(uri);
    return AnchorUri{*run, {*count, linkFrom(digits)}};
}

ChainCheck::ChainCheck(const std::vector<PartialAnchor>& anchors)
{
    for (const PartialAnchor& anchor : anchors) {
        // Before the first seal stands the link of 32 zero bytes.
        const bool holds = anchor.count == 0 && anchor.digits.find_first_not_of('0') == std::string::npos;
        m_anchors.push_back({anchor, holds});
    }
}

void ChainCheck::next(const Seal& seal, std::span<const SealSignature> signatures)
{
    const std::uint64_t expected = m_end.count + 1;
    if (seal.seq != expected) {
        m_findings.push_back(refuse("chain.gap", sealName(expected),
                                    {"Seal %1 is missing: after seal %2 comes seal %3.",
                                     {number(expected), number(m_end.count), number(seal.seq)}},
                                    "Restore the logbook from a backup and compare it with the printed sheets."));
    } else if (seal.previous != m_stored && seal.previous != m_end.link) {
        m_findings.push_back(
            refuse("chain.previous", sealName(seal.seq),
                   {"Seal %1 does not continue the seal before it: one was taken out, put in, moved or "
                    "changed here.",
                    {number(seal.seq)}},
                   "Restore the logbook from a backup and compare it with the printed sheets."));
    }
    const Link own = linkAfter(seal.previous, seal.document);
    if (own == seal.link)
        checkHead(seal, signatures);
    else
        m_findings.push_back(refuse("chain.broken", sealName(seal.seq),
                                    {"Seal %1 is broken: its document and its link do not belong together, so one of "
                                     "them was changed after sealing.",
                                     {number(seal.seq)}},
                                    "Do not trust this record. Restore the logbook from a backup and compare it with "
                                    "the printed sheets."));
    m_stored = seal.link;
    // Where the chain holds, the two are one: nothing is hashed twice.
    m_end = {seal.seq, seal.previous == m_end.link ? own : linkAfter(m_end.link, seal.document)};
    const std::string digits = hex(m_end.link);
    for (AnchorVerdict& verdict : m_anchors)
        if (verdict.anchor.count == seal.seq) verdict.holds = digits.starts_with(verdict.anchor.digits);
}

void ChainCheck::checkHead(const Seal& seal, std::span<const SealSignature> signatures)
{
    const auto document = gistOf(seal.document, seal.kind);
    if (!document) {
        Finding broken = document.error();
        broken.subject = sealName(seal.seq);
        m_findings.push_back(std::move(broken));
        return;
    }
    const Head row{kindWord(seal.kind), seal.id, seal.subject, seal.sealedAtMs, seal.person};
    if (headOf(*document) != row)
        m_findings.push_back(refuse("chain.head", sealName(seal.seq),
                                    {"The row of seal %1 says something else than its document about what was sealed, "
                                     "when or by whom: the row was changed.",
                                     {number(seal.seq)}},
                                    "Trust the document, not the row. Restore the logbook from a backup."));
    for (Finding& finding : m_signatures.next(seal, *document, signatures)) m_findings.push_back(std::move(finding));
    if (auto missing = m_words.next(seal, *document)) m_findings.push_back(*std::move(missing));
}

Findings ChainCheck::finish()
{
    for (const AnchorVerdict& verdict : m_anchors) {
        if (verdict.holds) continue;
        const std::uint64_t count = verdict.anchor.count;
        if (count > m_end.count)
            m_findings.push_back(
                refuse("anchor.missing", sealName(m_end.count + 1),
                       {"A sheet was printed when there were %1 seals; this logbook ends after %2: the "
                        "newest were cut off.",
                        {number(count), number(m_end.count)}},
                       "Look for a newer copy of the logbook; restore it from a backup."));
        else
            m_findings.push_back(
                refuse("anchor.differs", sealName(count),
                       {"Up to seal %1 this logbook is not the one that the sheet was printed from.", {number(count)}},
                       "Check the typed anchor once more; if it is right, restore the logbook from a "
                       "backup."));
    }
    return std::exchange(m_findings, {});
}

}  // namespace taut::seal
