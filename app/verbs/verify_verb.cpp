// SPDX-License-Identifier: GPL-3.0-or-later
#include <ostream>

#include "app/verbs/verbs.h"
#include "core/logbook/logbook.h"
#include "core/units/plain.h"

namespace taut::app::verbs {

namespace {

Result<std::vector<seal::PartialAnchor>> anchorsIn(const Options& options)
{
    std::vector<seal::PartialAnchor> all;
    for (const std::string& said : options.values("--anchor")) {
        auto anchor = seal::readPartialAnchor(said);
        if (!anchor) return anchor.error();
        all.push_back(std::move(*anchor));
    }
    return all;
}

Exit run(const Options& options, const Console& console)
{
    const bool json = options.json();
    const std::string& file = options.words().front();
    const auto anchors = anchorsIn(options);
    if (!anchors) return refused(console, json, anchors.error());
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
        Json list = Json::array();
        for (const seal::AnchorVerdict& held : verified->anchors)
            list.add(Json::object()
                         .set("count", held.anchor.count)
                         .set("link", held.anchor.digits)
                         .set("holds", held.holds));
        print(console, answer()
                           .set("file", file)
                           .set("count", verified->end.count)
                           .set("link", link)
                           .set("in_order", inOrder)
                           .set("deep", deep)
                           .set("anchors", std::move(list))
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
         "LOGBOOK",
         "recomputes the chain of a logbook and compares it with printed sheets",
         {{"--anchor", "COUNT:LINK", "from the foot of a sheet, at least 32 digits of the link; may be repeated", true},
          {"--deep", "", "also makes every table anew from the sealed documents and compares"}},
         1,
         1},
        run};
}

}  // namespace taut::app::verbs
