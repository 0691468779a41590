// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/sequels.h"

#include "core/run/words.h"

namespace taut::report {

namespace {

using seal::Present;

std::string timeOf(const seal::Sealing& sealing) { return localTime(sealing.atMs, sealing.offsetMinutes); }

/// The seal that made the run what it is: the last that follows it, of a void run the void; nullptr when none does.
const seal::Sealing* makerOf(std::span<const seal::Sealing> sealings)
{
    for (const seal::Sealing& sealing : sealings)
        if (sealing.sequel && std::holds_alternative<seal::Voiding>(*sealing.sequel)) return &sealing;
    return sealings.empty() || !sealings.back().sequel ? nullptr : &sealings.back();
}

Text whatOf(const seal::Sealing& sealing)
{
    if (!sealing.sequel) return "sealed";
    if (const auto* review = std::get_if<seal::Review>(&*sealing.sequel))
        return review->accepted ? "reviewed and accepted" : "reviewed and sent back";
    return std::holds_alternative<seal::Correction>(*sealing.sequel) ? "corrected" : "voided";
}

Text wordsOf(const seal::Sealing& sealing)
{
    if (!sealing.sequel) return {};
    const std::string& words = seal::wordsOf(*sealing.sequel);
    const auto* correction = std::get_if<seal::Correction>(&*sealing.sequel);
    if (correction == nullptr || correction->remark.empty()) return data(words);
    return Text("%1; remark: %2", {words, correction->remark});
}

/// How the corrected reading is judged; nothing where there is no window.
Cell verdictOf(const seal::CorrectedStep& step)
{
    if (step.verdict == "inside") return {Text("inside"), Mark::Inside, false};
    if (step.verdict == "near") return {Text("near"), Mark::Near, true};
    if (step.verdict == "outside") return {Text("outside"), Mark::Outside, true};
    return {};
}

Cell nameCell(const run::Run& run, const std::string& id)
{
    const procedure::Step* step = run.plan().find({id});
    return step == nullptr ? cell(data(id)) : cell(nameOf(*step, run.targets().find(step->target)));
}

}  // namespace

Text presentText(std::span<const seal::Sealing> sealings)
{
    const seal::Sealing* maker = makerOf(sealings);
    if (maker == nullptr) return {};
    const seal::State state = seal::stateOf(sealings);
    switch (state.present) {
    case Present::Sealed: return {};
    case Present::Reviewed: return {"reviewed by %1", {state.reviewedBy}};
    case Present::SentBack: return {"sent back by %1, to be corrected", {maker->byName}};
    case Present::Corrected: return {"corrected by %1, to be reviewed", {maker->byName}};
    case Present::Void: return {"void, by %1", {maker->byName}};
    }
    return {};
}

std::optional<Paragraph> sequelNotice(std::span<const seal::Sealing> sealings)
{
    const seal::Sealing* maker = makerOf(sealings);
    if (maker == nullptr) return std::nullopt;
    const Present present = seal::stateOf(sealings).present;
    const std::string words = seal::wordsOf(*maker->sequel);
    if (present == Present::Void)
        return Paragraph{
            {"VOID: %1 has voided this run, %2: %3. Nothing on this sheet counts as the record of a set-up.",
             {maker->byName, timeOf(*maker), words}},
            true};
    if (present == Present::SentBack)
        return Paragraph{{"Sent back by %1, %2: %3", {maker->byName, timeOf(*maker), words}}, true};
    for (const seal::Sealing& sealing : sealings)
        if (sealing.kind == seal::Kind::Correction)
            return Paragraph{
                "Corrected since it was sealed. The settings and steps below are as they were sealed; what "
                "stood and what it should be stands under \"Corrected after it was sealed\".",
                true};
    return std::nullopt;
}

std::optional<Table> correctionsTable(const run::Run& run, std::span<const seal::Sealing> sealings)
{
    Table table;
    table.caption = "Corrected after it was sealed";
    table.size = Size::Small;
    table.columns = {{"what", Align::Left, 12},   {"stood", Align::Left, 7},   {"should be", Align::Left, 9},
                     {"verdict", Align::Left, 6}, {"reason", Align::Left, 15}, {"by", Align::Left, 8},
                     {"at", Align::Left, 9}};
    for (const seal::Sealing& sealing : sealings) {
        const auto* correction = sealing.sequel ? std::get_if<seal::Correction>(&*sealing.sequel) : nullptr;
        if (correction == nullptr) continue;
        const auto add = [&](Cell what, Cell stood, Cell should, Cell verdict) {
            should.strong = true;
            table.rows.push_back({std::move(what), std::move(stood), std::move(should), std::move(verdict),
                                  cell(data(correction->reason)), cell(data(sealing.byName)),
                                  cell(data(timeOf(sealing)))});
        };
        for (const seal::CorrectedStep& one : correction->steps) {
            const procedure::Step* step = run.plan().find({one.step});
            add(nameCell(run, one.step), one.stood.empty() ? Cell{} : cell(run::enteredSaid(step, one.stood)),
                cell(run::enteredSaid(step, one.shouldBe)), verdictOf(one));
        }
        if (!correction->remark.empty()) add(cell("remark"), {}, cell(data(correction->remark)), {});
    }
    if (table.rows.empty()) return std::nullopt;
    return table;
}

std::optional<Table> sequelsTable(std::span<const seal::Sealing> sealings)
{
    if (makerOf(sealings) == nullptr) return std::nullopt;
    Table table;
    table.caption = "How this record came to stand as it does";
    table.size = Size::Small;
    table.columns = {{"seal", Align::Right, 4},     {"at", Align::Left, 10}, {"what", Align::Left, 12},
                     {"signed as", Align::Left, 8}, {"by", Align::Left, 10}, {"more", Align::Left, 24}};
    for (const seal::Sealing& sealing : sealings) {
        Cell what = cell(whatOf(sealing));
        what.strong = true;
        table.rows.push_back({cell(data(std::to_string(sealing.seq))), cell(data(timeOf(sealing))), std::move(what),
                              cell(Text(sealing.meaning)), cell(data(sealing.byName)), cell(wordsOf(sealing))});
    }
    return table;
}

std::vector<SignatureBlock::Entry> sequelSignatures(std::span<const seal::Sealing> sealings)
{
    const seal::Sealing* maker = makerOf(sealings);
    if (maker == nullptr) return {};
    switch (seal::stateOf(sealings).present) {
    case Present::Reviewed: return {{"Supervisor: I have reviewed this record", maker->byName, timeOf(*maker)}};
    case Present::Void: return {{"Supervisor: I have voided this record", maker->byName, timeOf(*maker)}};
    case Present::Sealed:
    case Present::SentBack:
    case Present::Corrected: break;
    }
    return {};
}

}  // namespace taut::report
