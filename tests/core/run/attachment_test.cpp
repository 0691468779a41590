// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/run/attachment.h"

#include <catch2/catch.hpp>

#include "core/base/crypto.h"
#include "core/units/plain.h"
#include "tests/core/run/small_press.h"

using namespace taut;
using namespace taut::run;
using namespace taut::run::small;
using namespace std::string_literals;

namespace {

std::shared_ptr<const std::string> bytes(std::string content)
{
    return std::make_shared<const std::string>(std::move(content));
}
constexpr const char* kGuard = "safety.walk.guard/a";

}  // namespace

// How files of each kind begin: PNG (Third Edition), 5.2, 2023; JPEG: ISO/IEC 10918-1, B.2.1 with the first marker
// (from memory); PDF: ISO 32000-1, 7.5.2, 2008; WebP: RFC 9649, 2.4, 2024 (from memory).
TEST_CASE("what a file is, is told by its bytes and not by its name")
{
    CHECK(attachmentType("\x89PNG\r\n\x1A\n and more"s) == "image/png");
    CHECK(attachmentType("\xFF\xD8\xFF\xE0 and more"s) == "image/jpeg");
    CHECK(attachmentType("RIFF\x10\0\0\0WEBPVP8 "s) == "image/webp");
    CHECK(attachmentType("RIFF\x10\0\0\0WAVEfmt "s) == "application/octet-stream");
    CHECK(attachmentType("%PDF-1.7\n%\xE2\xE3"s) == "application/pdf");
    CHECK(attachmentType("Gr\u00fc\u00dfe\n\tvon der Rolle\r\n"s) == "text/plain");
    CHECK(attachmentType("a\0b"s) == "application/octet-stream");
    CHECK(attachmentType("\xFF\xFE"s) == "application/octet-stream");
    CHECK(isPicture("image/webp"));
    CHECK_FALSE(isPicture("application/pdf"));
}

TEST_CASE("a picture is attached to a step, or to the run, with its size and its hash")
{
    Walk walk;
    walk.must(Attach{{kGuard}, " latch.jpg ", bytes("\xFF\xD8\xFF latch")});
    walk.must(Attach{{}, "floor.txt", bytes("dry")});
    const std::vector<Attachment> all = attachmentsOf(walk.run());
    REQUIRE(all.size() == 2);
    CHECK(all[0].what.step.value == kGuard);
    CHECK(all[0].what.name == "latch.jpg");
    CHECK(all[0].what.type == "image/jpeg");
    CHECK(all[0].what.size == 9);
    CHECK(all[0].what.sha256 == hex(sha256("\xFF\xD8\xFF latch")));
    CHECK(all[0].stamp.byName == "Ana Wetherby");
    CHECK(all[1].what.step.value.empty());
    // It answers nothing.
    CHECK(walk.state(kGuard) == StepState::Open);
    CHECK(pictureOf(walk.refolded()) == pictureOf(walk.run()));
}

TEST_CASE("what cannot be attached is refused with what to do")
{
    struct Row {
        const char* name;
        std::string content;
        const char* code;
    };
    const std::vector<Row> rows{
        {"", "x", "attachment.no_name"},
        {"  ", "x", "attachment.no_name"},
        {"a/b.jpg", "x", "attachment.no_name"},
        {"a\\b.jpg", "x", "attachment.no_name"},
        {"a\nb.jpg", "x", "attachment.no_name"},
        {"empty.jpg", "", "attachment.empty"},
        {"huge.jpg", std::string(kMostAttachmentBytes + 1, 'x'), "attachment.too_large"},
    };
    Walk walk;
    for (const Row& row : rows) {
        INFO(row.name);
        const auto why = walk.tryTo(Attach{{kGuard}, row.name, bytes(row.content)});
        REQUIRE(why);
        CHECK(why->code == row.code);
        CHECK_FALSE(why->remedy.empty());
    }
    CHECK(walk.codeOf(Attach{{kGuard}, std::string(121, 'a'), bytes("x")}) == "attachment.no_name");
    CHECK(walk.codeOf(Attach{{kGuard}, "none.jpg", nullptr}) == "attachment.empty");
    CHECK(walk.codeOf(Attach{{"safety.walk.sing"}, "a.jpg", bytes("x")}) == "gate.no_step");
    walk.must(Attach{{kGuard}, "largest.jpg", bytes(std::string(kMostAttachmentBytes, 'x'))});
    CHECK(plain(walk.tryTo(Attach{{kGuard}, "huge.jpg", bytes(std::string(kMostAttachmentBytes + 1, 'x'))})->text) ==
          "huge.jpg has 11 MB; at most 10 MB are kept with a run.");
}

TEST_CASE("the same bytes stand at a step once, and a run has a few pictures and no more")
{
    Walk walk;
    walk.must(Attach{{kGuard}, "a.jpg", bytes("x")});
    CHECK(walk.codeOf(Attach{{kGuard}, "b.jpg", bytes("x")}) == "attachment.there");
    walk.must(Attach{{}, "b.jpg", bytes("x")});
    for (std::size_t i = 2; i < kMostAttachments; ++i) walk.must(Attach{{}, "c.jpg", bytes(std::to_string(i))});
    CHECK(walk.codeOf(Attach{{}, "d.jpg", bytes("one more")}) == "attachment.too_many");
}

TEST_CASE("a picture can be attached while the press is withdrawn, by whoever may answer, and not after the end")
{
    Walk walk;
    walk.must(Withdraw{"the guard is broken"}, "pip");
    walk.must(Attach{{}, "guard.jpg", bytes("x")}, "ben");  // in nobody's hands but the first one's
    walk.must(Return{"mended"}, "sue");
    walk.must(Attach{{}, "mended.jpg", bytes("y")});
    walk.must(Abandon{"no order"});
    CHECK(walk.codeOf(Attach{{}, "late.jpg", bytes("z")}) == "gate.ended");
}
