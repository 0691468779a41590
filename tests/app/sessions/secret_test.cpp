// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/text/secret.h"

#include "tests/app/shop.h"

// The examples of one letter written in two ways are those of Unicode Standard Annex 15, "Unicode Normalization Forms",
// figures 3 and 6 (from memory): composed and decomposed, and compatibility forms such as a ligature or a full-width
// digit.

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

namespace {

const QString kComposed = QStringLiteral("caf\u00E9 br\u00FBl\u00E9 \u00E0 midi");
const QString kDecomposed = QStringLiteral("cafe\u0301 bru\u0302le\u0301 a\u0300 midi");

Session::Options emptyIn(const QTemporaryDir& folder)
{
    Session::Options options = optionsIn(folder);
    options.loadDemo = false;
    options.begin = true;
    return options;
}

std::string refusalOf(Session& session, const people::Chosen& chosen)
{
    QSignalSpy refused(&session, &Session::refused);
    session.enrolFirst(QStringLiteral("Odile Varga"), chosen);
    until([&] { return !session.busy(); }, "it was answered");
    return refused.isEmpty() ? std::string() : refused[0][0].value<Finding>().code;
}

}  // namespace

TEST_CASE("each way to write a letter is one secret, whatever the keyboard made of it")
{
    REQUIRE(kComposed != kDecomposed);
    CHECK(secretText(kComposed) == secretText(kDecomposed));
    CHECK(secretText(QStringLiteral("\uFF14\uFF17\uFF10\uFF19")) == "4709");  // full-width digits
    CHECK(secretText(QStringLiteral("\uFB01ligree")) == "filigree");          // the ligature fi
    CHECK(secretText(QStringLiteral("\u1E9B\u0323")) == "\xE1\xB9\xA9");      // to s with dot below and above
    CHECK(secretText(QStringLiteral("Plain 4709!")) == "Plain 4709!");        // what is ASCII stays as it is
    CHECK(secretText(people::Chosen{"\xEF\xBC\x94", "e\xCC\x81"}).passphrase == "\xC3\xA9");
}

TEST_CASE("a passphrase chosen with one way to write a letter opens the key with the other, and so does a PIN")
{
    QTemporaryDir folder;
    Session session(emptyIn(folder));
    open(session);
    REQUIRE(refusalOf(session, {"\xEF\xBC\x94\xEF\xBC\x97\xEF\xBC\x90\xEF\xBC\x99", kComposed.toStdString()}).empty());
    REQUIRE(session.actor());
    const QString id = QString::fromStdString(session.actor()->id().value);
    QSignalSpy refused(&session, &Session::refused), invited(&session, &Session::invited);
    session.signOut();
    session.signIn(id, QStringLiteral("4709"));
    until([&] { return session.actor().has_value() && !session.busy(); }, "signed in");
    session.enrol(QStringLiteral("Ines Roth"), people::Role::Operator, kDecomposed);
    until([&] { return !session.busy(); }, "it was answered");
    CHECK(refused.isEmpty());
    CHECK(invited.size() == 1);
    // Other letters are another passphrase.
    session.enrol(QStringLiteral("Jan Roth"), people::Role::Operator, QStringLiteral("cafe brule a midi"));
    until([&] { return !session.busy(); }, "it was answered");
    CHECK(refused.size() == 1);
    CHECK(invited.size() == 1);
}

TEST_CASE("the length of a passphrase counts letters, not the pieces of which they were typed")
{
    QTemporaryDir folder;
    Session session(emptyIn(folder));
    open(session);
    // Fourteen letters, typed as twenty-one pieces: one too few.
    const QString pieces = QStringLiteral("e\u0301a\u0301o\u0301i\u0301u\u0301e\u0302a\u0302bcdfghj");
    REQUIRE(pieces.size() == 21);
    CHECK(refusalOf(session, {"4709", pieces.toStdString()}) == "person.weak_passphrase");
    CHECK_FALSE(session.actor());
    CHECK(refusalOf(session, {"4709", (pieces + QLatin1Char('k')).toStdString()}).empty());
    CHECK(session.actor());
}
