// SPDX-License-Identifier: GPL-3.0-or-later
#include <ostream>

#include "app/verbs/verbs.h"
#include "core/logbook/logbook.h"
#include "core/units/plain.h"

namespace taut::app::verbs {

namespace {

Json anchorsJson(const std::vector<seal::AnchorVerdict>& anchors)
{
    Json list = Json::array();
    for (const seal::AnchorVerdict& held : anchors)
        list.add(
            Json::object().set("count", held.anchor.count).set("link", held.anchor.digits).set("holds", held.holds));
    return list;
}

/// An exported run: as far as its file holds it.
Exit verifyExport(const std::string& file, const std::vector<seal::PartialAnchor>& anchors, bool json,
                  const Console& console)
{
    const auto envelope = importedFrom(file);
    if (!envelope) return refused(console, json, envelope.error());
    const seal::EnvelopeCheck check = seal::checkEnvelope(*envelope, anchors);
    const bool inOrder = check.findings.empty();
    const seal::Envelope::Sealed* own = seal::runOf(*envelope);
    const auto count = static_cast<std::int64_t>(envelope->seals.size());
    if (json) {
        print(console, answer()
                           .set("file", file)
                           .set("run", envelope->run)
                           .set("count", count)
                           .set("link", own != nullptr ? Json(hex(own->seal.link)) : Json())
                           .set("in_order", inOrder)
                           .set("deep", false)
                           .set("anchors", anchorsJson(check.anchors))
                           .set("findings", findingsJson(check.findings)));
        return inOrder ? Exit::Done : Exit::NotInOrder;
    }
    for (const Finding& finding : check.findings) console.out << sentence(finding) << '\n';
    for (const seal::AnchorVerdict& held : check.anchors)
        if (held.holds)
            console.out << "The sheet with anchor " << held.anchor.count << ':' << held.anchor.digits
                        << " names a seal of this file.\n";
    console.out << file << (inOrder ? ": in order as far as it goes, run " : ": NOT in order, run ") << envelope->run
                << ", " << count << " seals\n";
    console.out << "What stands between these seals is not in the file: whether the record is whole, only its logbook "
                   "can say.\n";
    if (own != nullptr) console.out << "anchor " << own->seal.seq << ':' << hex(own->seal.link) << '\n';
    return inOrder ? Exit::Done : Exit::NotInOrder;
}

Exit run(const Options& options, const Console& console)
{
    const bool json = options.json();
    const std::string& file = options.words().front();
    const auto anchors = anchorsIn(options);
    if (!anchors) return refused(console, json, anchors.error());
    if (isExport(file)) return verifyExport(file, *anchors, json, console);
    const bool deep = options.has("--deep");
    const auto verified = logbook::verify(file, *anchors, deep ? logbook::Depth::Deep : logbook::Depth::Seals);
    if (!verified) {
        const Exit exit = refused(console, json, verified.error());
        // A file too damaged to be walked is the answer to the question, not a wrong question.
        return verified.error().code == "logbook.broken" ? Exit::NotInOrder : exit;
    }
    const Findings& findings = verified->findings;
    const bool inOrder = findings.empty();
    const std::string link = hex(verified->end.link);
    if (json) {
        print(console, answer()
                           .set("file", file)
                           .set("count", verified->end.count)
                           .set("link", link)
                           .set("in_order", inOrder)
                           .set("deep", deep)
                           .set("anchors", anchorsJson(verified->anchors))
                           .set("findings", findingsJson(findings)));
    } else {
        for (const Finding& finding : findings) console.out << sentence(finding) << '\n';
        for (const seal::AnchorVerdict& held : verified->anchors)
            if (held.holds)
                console.out << "The sheet with anchor " << held.anchor.count << ':' << held.anchor.digits
                            << " was printed from this logbook.\n";
        console.out << file << (inOrder ? ": in order, " : ": NOT in order, ") << verified->end.count << " seals";
        if (inOrder && deep) console.out << ", and every index table says what they say";
        console.out << '\n';
        // What was not looked at is said: lists and charts read the tables, not the seals.
        if (!deep)
            console.out << "The index tables, from which lists and charts are read, were NOT compared with the seals; "
                           "--deep compares them.\n";
        console.out << "anchor " << verified->end.count << ':' << link << '\n';
    }
    return inOrder ? Exit::Done : Exit::NotInOrder;
}

}  // namespace

Verb verifyVerb()
{
    return {
        {"verify",
         "LOGBOOK | EXPORT.json",
         "recomputes the chain of a logbook, or what of it an exported run holds, and compares it with printed sheets",
         {{"--anchor", "COUNT:LINK", "from the foot of a sheet, at least 32 digits of the link; may be repeated", true},
          {"--deep", "", "also makes every table anew from the sealed documents and compares"}},
         1,
         1},
        run};
}

}  // namespace taut::app::verbs
