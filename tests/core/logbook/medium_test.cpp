// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/medium.h"

#include "core/units/plain.h"
#include "tests/core/logbook/run_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

TEST_CASE("what a file lies on is told from what the system says")
{
    struct Case {
        const char* name;
        Mounted mounted;
        Medium medium;
    };
    // Numbers: linux/magic.h and statfs(2), as Debian 12 ships them.
    const Case cases[] = {
        {"ext4", {0xEF53, "ext4", false, "/sys/devices/pci0000:00/ata1/host0/block/sda/sda1", false}, Medium::Disk},
        {"btrfs, no disk told", {0x9123683E, "btrfs", false, "", false}, Medium::Disk},
        {"memory", {0x01021994, "tmpfs", false, "", false}, Medium::Disk},
        {"NFS", {0x6969, "nfs4", false, "", false}, Medium::Network},
        {"CIFS", {0xFF534D42, "cifs", false, "", false}, Medium::Network},
        {"SMB 3", {0xFE534D42, "smb3", false, "", false}, Medium::Network},
        {"over SSH", {0x65735546, "fuse.sshfs", false, "", false}, Medium::Network},
        {"a foreign disk by FUSE",
         {0x65735546, "fuseblk", false, "/sys/devices/pci0000:00/ata1/block/sdb", false},
         Medium::Disk},
        {"a USB disk",
         {0xEF53, "ext4", false, "/sys/devices/pci0000:00/usb1/1-2/block/sdc/sdc1", false},
         Medium::Removable},
        {"a card", {0xEF53, "ext4", false, "/sys/devices/platform/mmc0/block/mmcblk0", true}, Medium::Removable},
        {"FAT", {0x4D44, "vfat", false, "", false}, Medium::Removable},
        {"a network folder that is only read", {0x6969, "nfs", true, "", false}, Medium::Network},
        {"mounted for reading", {0xEF53, "ext4", true, "", false}, Medium::ReadOnly},
        {"a disc", {0x9660, "iso9660", false, "/sys/devices/pci0000:00/ata2/block/sr0", true}, Medium::ReadOnly},
    };
    for (const Case& one : cases) {
        INFO(one.name);
        CHECK(mediumFrom(one.mounted) == one.medium);
    }
    Folder folder;
    CHECK(mediumOf(folder.path) == mediumOf(folder / "not/there/yet/x.logbook"));
    // Of a file system that is mounted read-only on every Linux, whatever it lies on.
    CHECK(mediumOf("/proc/self/none") != Medium::Network);
}

TEST_CASE("a logbook on another machine or a medium that is only read is refused, one on a stick is warned of")
{
    Shop shop;
    const auto open = [&](const char* name, Medium lies) {
        Writer::Options options{false, "the test", 0};
        options.lies = lies;
        return Writer::open(shop.folder / name, shop.clock, shop.ids, options);
    };
    const auto network = open("network.logbook", Medium::Network);
    REQUIRE_FALSE(network);
    CHECK(network.error().code == "logbook.on_network");
    CHECK(sentence(network.error()).find("Keep the logbook on a disk of this PC") != std::string::npos);
    const auto readOnly = open("disc.logbook", Medium::ReadOnly);
    REQUIRE_FALSE(readOnly);
    CHECK(readOnly.error().code == "logbook.on_read_only");
    CHECK_FALSE(fs::exists(shop.folder / "network.logbook"));
    CHECK_FALSE(fs::exists(shop.folder / "network.logbook.pen"));
    const auto stick = open("stick.logbook", Medium::Removable);
    REQUIRE(stick);
    REQUIRE((*stick)->notes().size() == 1);
    CHECK((*stick)->notes().front().code == "logbook.on_removable");
    CHECK((*stick)->notes().front().severity == Severity::Warn);
    CHECK(shop.writer->notes().empty());
}

TEST_CASE("a folder for mirrors and copies is welcome on a stick and another machine, and said so")
{
    Folder folder;
    const auto say = [&](Medium medium) { return asHomeOfCopies(medium, folder.path, folder / "shop.logbook"); };
    CHECK(say(Medium::Network)->code == "keep.on_network");
    CHECK(say(Medium::Network)->severity == Severity::Note);
    CHECK(say(Medium::Removable)->severity == Severity::Note);
    CHECK(say(Medium::ReadOnly)->severity == Severity::Stop);
    CHECK(say(Medium::Disk)->code == "keep.same_disk");
    CHECK_FALSE(asHomeOfCopies(Medium::Disk, "/proc/self", folder / "shop.logbook"));
}
