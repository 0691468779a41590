// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cctype>

#include "core/base/utf8.h"
#include "core/inputs/fill.h"
#include "core/procedure/keys.h"
#include "core/procedure/lint.h"
#include "core/procedure/placeholders.h"
#include "core/units/parse.h"

namespace taut::procedure {
namespace {

/// Where a step may be done: words that every press has a meaning for.
const std::vector<std::string> kAt{"press", "disconnect", "panel",  "lift",        "unwind",
                                   "guide", "stations",   "rewind", "splice_table"};
const std::vector<std::string> kUses{"press", "job", "substrate", "roll", "diameter"};
/// The entries of a roll's file that a reading, a choice and a scanned tag can fill.
const std::vector<std::string> kRead{"roll.width",     "roll.outer_diameter", "roll.stripped_diameter",
                                     "roll.core",      "roll.core_wall",      "roll.core_mass",
                                     "roll.length",    "roll.mass",           "roll.splices",
                                     "roll.off_centre"};
const std::vector<std::string> kChosen{"roll.winding", "roll.condition", "roll.opened"};
const std::vector<std::string> kScanned{"roll.tag",    "roll.width",   "roll.core",
                                        "roll.length", "roll.winding", "roll.splices"};

bool mentionsGloves(std::string text)
{
    std::transform(text.begin(), text.end(), text.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return text.find("glove") != std::string::npos;
}

/// Looks at one step by itself.
class StepLint {
public:
    StepLint(const StepSpec& step, std::string subject, const Known& known, Findings& lint)
        : m_step(step),
          m_subject(std::move(subject)),
          m_known(known),
          m_lint(lint)
    {}

    void all()
    {
        words();
        targetAndControl();
        protection();
        texts();
        answers();
    }

private:
    void wrong(std::string code, Text text, Text remedy)
    {
        m_lint.push_back(refuse(std::move(code), m_subject, std::move(text), std::move(remedy)));
    }

    void each(const std::vector<std::string>& words, const std::vector<std::string>& known, const char* code,
              const char* text)
    {
        for (const std::string& w : words) {
            if (contains(known, w)) continue;
            const std::string near = nearest(w, known);
            wrong(code, {text, {w}},
                  near.empty() ? Text("Take it out, or look up the list of those that there are.")
                               : Text{"Did you mean %1?", {near}});
        }
    }

    void words()
    {
        const char* const fact = "There is no fact called %1.";
        each(m_step.when, m_known.facts, "lint.unknown_fact", fact);
        each(m_step.unless, m_known.facts, "lint.unknown_fact", fact);
        const char* const condition = "There is no condition called %1.";
        for (const auto* list : {&m_step.needs, &m_step.gives, &m_step.ends})
            each(*list, allConditions(), "lint.unknown_condition", condition);
        each(m_step.uses, kUses, "lint.unknown_input", "There is no input called %1 that a step could use.");
        fills();
        each(m_step.kinds, allRunKinds(), "lint.unknown_word", "There is no kind of run called %1.");
        if (m_step.kinds.empty())
            wrong("lint.no_kind_of_run", "This step belongs to no kind of run, so nobody would ever see it.",
                  "Name at least one in its key in: full, next_roll, re_web or restart.");
        if (m_step.at.empty() || contains(kAt, m_step.at)) return;
        if (!m_step.forEach.empty() && m_step.at == '{' + m_step.forEach + '}') return;
        each({m_step.at}, kAt, "lint.unknown_at", "There is no place at the press called %1.");
    }

    /// One answer is one value or one word; only a tag says several things at once.
    void fills()
    {
        static const std::vector<std::string> kNothing;
        const bool scan = m_step.kind == StepKind::Scan;
        const auto& known = scan                               ? kScanned
                            : m_step.kind == StepKind::Reading ? kRead
                            : m_step.kind == StepKind::Choice  ? kChosen
                                                               : kNothing;
        each(m_step.fills, known, "lint.unknown_input", "There is no entry called %1 that this answer could fill.");
        if (!scan && m_step.fills.size() > 1)
            wrong("lint.fills_too_much", "One answer cannot fill several entries.",
                  "Keep the entry that the answer tells; ask for the others in steps of their own.");
        if (m_step.kind != StepKind::Choice || m_step.fills.size() != 1 || !contains(known, m_step.fills.front()))
            return;
        for (const Choice& choice : m_step.choices) {
            inputs::Roll roll;
            if (!choice.stops && !inputs::fill(roll, m_step.fills.front(), choice.word))
                wrong("lint.unknown_word", {"%1 cannot be %2.", {m_step.fills.front(), choice.word}},
                      "Use the words that the roll's file knows.");
        }
    }

    void targetAndControl()
    {
        if (m_step.kind == StepKind::Reading && m_step.target.empty())
            wrong("lint.reading_without_target", "A reading without a target cannot be judged.",
                  "Name the target it is judged against, or make it a step that is confirmed.");
        if (!m_step.target.empty() && !m_known.target(m_step.target))
            wrong("lint.unknown_target", {"There is no target called %1.", {m_step.target}},
                  "Use the id of a target that this program computes.");
        const std::string role = withItem(m_step.control, m_step.forEach, "item");
        if (!role.empty() && role.find('{') == std::string::npos && !isControlRole(role))
            wrong("lint.unknown_role", {"There is no control with the role %1.", {m_step.control}},
                  "Use a role of the list; what this shop calls the control belongs in the press profile.");
        for (const std::string* pattern : {&m_step.target, &m_step.control, &m_step.at})
            for (const Piece& piece : piecesOf(*pattern))
                if (piece.placeholder && piece.text != m_step.forEach) badPlaceholder(piece.text);
    }

    void protection()
    {
        const bool gives =
            std::any_of(m_step.gives.begin(), m_step.gives.end(), [](const std::string& c) { return isProtective(c); });
        const bool lifts = m_step.target == "lift.pressure" || m_step.target == "lift.load";
        const bool moves = m_step.kind == StepKind::Motion;
        if ((gives || lifts || moves || m_step.kind == StepKind::Hold) && m_step.waivable)
            wrong("lint.must_not_be_waivable", "This step protects people, so nobody may pass it by.",
                  "Write waivable = false: the step ends done, or the press is withdrawn.");
        if (m_step.kind == StepKind::Hold && !contains(m_step.gives, "stop_held"))
            wrong("lint.hold_without_stop", "This step asks who holds the stop, but does not give stop_held.",
                  "Write gives = [\"stop_held\"].");
        if (!moves) return;
        if (m_step.hands)
            wrong("lint.hands_in_motion", "Hands are in the press while this step moves it.",
                  "Make it two steps: hands out and the stop given up, then the movement.");
        for (const char* need : kMotionNeeds)
            if (!contains(m_step.needs, need))
                wrong("lint.motion_needs",
                      {"The press moves in this step, which does not ask for %1.", {std::string(need)}},
                      "A movement needs guards_closed, stops_released and people_clear, each asked again.");
        if (mentionsGloves(m_step.say) || mentionsGloves(m_step.why) ||
            (m_step.caution && mentionsGloves(m_step.caution->text)))
            wrong("lint.motion_asks_gloves", "This step moves the press and speaks of gloves.",
                  "Take the word out: gloves are pulled into what turns. Say them where the press stands still.");
    }

    void texts()
    {
        text("say", m_step.say, kLongestSay);
        text("why", m_step.why, kLongestWhy);
        plainText("see", m_step.see, kLongestSay);
        plainText("done", m_step.done, kLongestSay);
        if (!m_step.done.empty() && m_step.kind != StepKind::Motion)
            wrong("lint.done_without_motion", "Only a movement is said to be done in words of its own.",
                  "Take done away, or make it a motion step.");
        if (m_step.caution) text("caution", m_step.caution->text, kLongestSay);
        for (const std::string& t : m_step.tries) text("tries", t, kLongestSay);
        for (const Choice& c : m_step.choices) {
            plainText("choices", c.say, kLongestSay);
            plainText("choices", c.remedy, kLongestSay);
        }
        if (m_step.vital && m_step.why.empty())
            wrong("lint.vital_without_why", "A vital step that does not say why is passed by one day.",
                  "Write why: what happens to a hand, an eye or the roll without it.");
        if (m_step.wait.empty()) return;
        if (const Result<Quantity> wait = parseQuantity(m_step.wait, Kind::Time); !wait)
            wrong("lint.wait_not_a_time", {"wait = \"%1\" is not a time.", {m_step.wait}},
                  "Write a number with s or min between quotes.");
    }

    void text(const char* key, const std::string& words, std::size_t longest)
    {
        length(key, words, longest);
        for (const Piece& piece : piecesOf(words)) {
            if (!piece.placeholder) {
                percent(piece.text);
                continue;
            }
            const bool isItem = !m_step.forEach.empty() && piece.text == m_step.forEach;
            const bool isTarget = piece.text == "target" && !m_step.target.empty();
            const bool isControl = piece.text == "control" && !m_step.control.empty();
            const bool isMark = piece.text == "register_mark" && m_step.control.rfind("register_", 0) == 0;
            // What is measured across the press is measured from one of its frames.
            const bool isFrame = piece.text == "frame" && !m_step.target.empty();
            if (!isItem && !isTarget && !isControl && !isMark && !isFrame &&
                !(quantityOf(piece, UnitSystem::Metric) && quantityOf(piece, UnitSystem::Us)))
                badPlaceholder(piece.text);
        }
    }

    /// A text that is shown as it stands, nothing filled in.
    void plainText(const char* key, const std::string& words, std::size_t longest)
    {
        length(key, words, longest);
        for (const Piece& piece : piecesOf(words))
            if (piece.placeholder) badPlaceholder(piece.text);
    }

    void length(const char* key, const std::string& words, std::size_t longest)
    {
        const std::size_t n = charactersIn(words);
        if (n > longest)
            wrong("lint.text_too_long",
                  {"The text of %1 has %2 characters; %3 fit on a card.",
                   {std::string(key), static_cast<std::int64_t>(n), static_cast<std::int64_t>(longest)}},
                  "Shorten it, or make it two steps.");
    }

    void percent(const std::string& words)
    {
        for (std::size_t i = 0; i + 1 < words.size(); ++i)
            if (words[i] == '%' && std::isdigit(static_cast<unsigned char>(words[i + 1])) != 0) badPlaceholder("%");
    }

    void badPlaceholder(const std::string& name)
    {
        wrong("lint.placeholder", {"Nothing can be put in the place of {%1} here.", {name}},
              "Use {target} where the step has a target, {control} where it has a control, {frame} where it reads a "
              "target "
              "across the press, {register_mark} where that is a register adjuster, the word of for_each, and "
              "{= 0.5 mm} for a quantity.");
    }

    void answers()
    {
        if (m_step.tries.size() > kMostTries)
            wrong("lint.too_many_tries",
                  {"There are %1 remedies; nobody reads more than %2.",
                   {static_cast<std::int64_t>(m_step.tries.size()), static_cast<std::int64_t>(kMostTries)}},
                  "Keep the likeliest, in the order in which to try them.");
        if (m_step.kind == StepKind::Choice && m_step.choices.size() < 2)
            wrong("lint.choices_missing", "A choice needs at least two words to choose from.",
                  "Write choices = [{ word = \"...\", say = \"...\" }, ...].");
        if (m_step.kind != StepKind::Choice && !m_step.choices.empty())
            wrong("lint.choices_without_question", "This step has choices but is not a choice.",
                  "Write kind = \"choice\", or take the choices out.");
        std::vector<std::string> seen;
        for (const Choice& c : m_step.choices) {
            if (contains(seen, c.word))
                wrong("lint.duplicate_id", {"The word %1 can be chosen twice.", {c.word}}, "Give each its own word.");
            seen.push_back(c.word);
        }
    }

    const StepSpec& m_step;
    std::string m_subject;
    const Known& m_known;
    Findings& m_lint;
};

void duplicate(std::vector<std::string>& seen, const std::string& id, std::string subject, Findings& lint)
{
    if (contains(seen, id))
        lint.push_back(refuse("lint.duplicate_id", std::move(subject), {"There are two things called %1 here.", {id}},
                              "Give each its own id: answers and records are kept under it."));
    seen.push_back(id);
}

}  // namespace

bool contains(const std::vector<std::string>& list, std::string_view word)
{
    return std::find(list.begin(), list.end(), word) != list.end();
}

std::string subjectOf(std::string_view file, const StageSpec& stage, const PlaceSpec& place, const StepSpec& step)
{
    return std::string(file) + ':' + std::to_string(step.line) + ' ' + stage.id + '.' + place.id + '.' + step.id;
}

void lintSteps(const Procedure& procedure, std::string_view file, const Known& known, Findings& lint)
{
    std::vector<std::string> stages;
    for (const StageSpec& stage : procedure.stages) {
        duplicate(stages, stage.id, std::string(file) + " stage " + stage.id, lint);
        std::vector<std::string> places;
        for (const PlaceSpec& place : stage.places) {
            const std::string where = std::string(file) + " place " + stage.id + '.' + place.id;
            duplicate(places, place.id, where, lint);
            if (!place.at.empty() && !contains(kAt, place.at))
                lint.push_back(refuse("lint.unknown_at", where,
                                      {"There is no place at the press called %1.", {place.at}},
                                      {"Did you mean %1?", {nearest(place.at, kAt)}}));
            std::vector<std::string> steps;
            for (const StepSpec& step : place.steps) {
                const std::string subject = subjectOf(file, stage, place, step);
                duplicate(steps, step.id, subject, lint);
                StepLint(step, subject, known, lint).all();
            }
        }
    }
}

}  // namespace taut::procedure
