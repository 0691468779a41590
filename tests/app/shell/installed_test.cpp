// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <map>

#include <QFile>
#include <QFileInfo>
#include <QProcess>
#include <QSet>
#include <QStandardPaths>
#include <QSvgRenderer>
#include <QTemporaryDir>
#include <QXmlStreamReader>

namespace {

/// The program as it is installed, once for all tests.
const QString& installed()
{
    static const QTemporaryDir folder;
    static const QString path = [] {
        QProcess cmake;
        cmake.start(QStringLiteral(TAUTWEB_CMAKE), {QStringLiteral("--install"), QStringLiteral(TAUTWEB_BINARY_DIR),
                                                    QStringLiteral("--prefix"), folder.path()});
        REQUIRE(cmake.waitForFinished(60000));
        INFO(cmake.readAllStandardError().toStdString());
        REQUIRE(cmake.exitCode() == 0);
        return folder.path();
    }();
    return path;
}

QByteArray contentOf(const char* file)
{
    QFile in(installed() + QLatin1Char('/') + QString::fromLatin1(file));
    INFO(file);
    REQUIRE(in.open(QIODevice::ReadOnly));
    return in.readAll();
}

constexpr char kDesktop[] = "share/applications/tautweb.desktop";

using Group = std::map<QString, QString>;

/// Groups and keys of a desktop file (Desktop Entry Specification 1.4, "Basic format of the file").
std::map<QString, Group> desktopGroups()
{
    std::map<QString, Group> groups;
    QString group;
    for (const QString& line : QString::fromUtf8(contentOf(kDesktop)).split(QLatin1Char('\n'))) {
        if (line.isEmpty() || line.startsWith(QLatin1Char('#'))) continue;
        if (line.startsWith(QLatin1Char('['))) {
            REQUIRE(line.endsWith(QLatin1Char(']')));
            group = line.mid(1, line.size() - 2);
            CHECK_FALSE(groups.contains(group));
            groups[group];
            continue;
        }
        const qsizetype equals = line.indexOf(QLatin1Char('='));
        INFO(line.toStdString());
        REQUIRE(equals > 0);
        CHECK_FALSE(groups[group].contains(line.left(equals)));
        groups[group][line.left(equals)] = line.mid(equals + 1);
    }
    return groups;
}

}  // namespace

TEST_CASE("the desktop file has the keys that a desktop asks for, and starts what is installed")
{
    auto groups = desktopGroups();
    REQUIRE(groups.contains(QStringLiteral("Desktop Entry")));
    Group& entry = groups[QStringLiteral("Desktop Entry")];
    // Desktop Entry Specification 1.4, "Recognized desktop entry keys": Type and Name are required, Exec of a program.
    CHECK(entry[QStringLiteral("Type")] == QStringLiteral("Application"));
    CHECK_FALSE(entry[QStringLiteral("Name")].isEmpty());
    CHECK(entry[QStringLiteral("Terminal")] == QStringLiteral("false"));
    CHECK(QFileInfo(installed() + QStringLiteral("/bin/") + entry[QStringLiteral("Exec")]).isExecutable());
    CHECK(QFileInfo::exists(installed() + QStringLiteral("/share/icons/hicolor/scalable/apps/") +
                            entry[QStringLiteral("Icon")] + QStringLiteral(".svg")));
    // The same, "Categories": several strings, each ended by a semicolon; one at least is a main category (Desktop Menu
    // Specification 1.1, "Registered categories").
    for (const char* list : {"Categories", "Keywords", "Keywords[de]", "Keywords[es]", "Actions"})
        CHECK(entry[QString::fromLatin1(list)].endsWith(QLatin1Char(';')));
    const QSet<QString> main{QStringLiteral("Education"), QStringLiteral("Office"), QStringLiteral("Science"),
                             QStringLiteral("System"), QStringLiteral("Utility")};
    bool isMain = false;
    for (const QString& one : entry[QStringLiteral("Categories")].split(QLatin1Char(';'))) isMain |= main.contains(one);
    CHECK(isMain);
    // Every key of a language has one for everybody else beside it.
    for (const auto& [name, keys] : groups)
        for (const auto& [key, value] : keys) {
            INFO(key.toStdString());
            CHECK_FALSE(value.isEmpty());
            CHECK(keys.contains(key.section(QLatin1Char('['), 0, 0)));
        }
    for (const QString& action : entry[QStringLiteral("Actions")].split(QLatin1Char(';'), Qt::SkipEmptyParts)) {
        Group& one = groups[QStringLiteral("Desktop Action ") + action];
        CHECK_FALSE(one[QStringLiteral("Name")].isEmpty());
        CHECK(one[QStringLiteral("Exec")].startsWith(entry[QStringLiteral("Exec")]));
    }
    const QString validator = QStandardPaths::findExecutable(QStringLiteral("desktop-file-validate"));
    if (!validator.isEmpty()) {
        QProcess program;
        program.start(validator, {installed() + QLatin1Char('/') + QLatin1String(kDesktop)});
        REQUIRE(program.waitForFinished());
        INFO(program.readAllStandardOutput().toStdString());
        CHECK(program.exitCode() == 0);
    }
}

TEST_CASE("what a software centre shows names the desktop file, the licence and this version")
{
    QXmlStreamReader xml(contentOf("share/metainfo/invalid.tautweb.tautweb.metainfo.xml"));
    QString launches, licence;
    QStringList versions, elements;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) continue;
        elements << xml.name().toString();
        if (xml.name() == QLatin1String("release"))
            versions << xml.attributes().value(QLatin1String("version")).toString();
        if (xml.name() == QLatin1String("launchable")) launches = xml.readElementText();
        if (xml.name() == QLatin1String("project_license")) licence = xml.readElementText();
    }
    INFO(xml.errorString().toStdString());
    REQUIRE_FALSE(xml.hasError());
    // AppStream 0.16, "Desktop applications" and "Generic component": what a component must have.
    for (const char* needed : {"id", "metadata_license", "name", "summary", "description"})
        CHECK(elements.count(QString::fromLatin1(needed)) == 1);
    CHECK(QFileInfo::exists(installed() + QStringLiteral("/share/applications/") + launches));
    CHECK(licence == QStringLiteral("GPL-3.0-or-later"));
    CHECK(versions.contains(QStringLiteral(TAUTWEB_VERSION)));
}

TEST_CASE("the icon can be drawn at every size, and is square")
{
    QSvgRenderer icon(contentOf("share/icons/hicolor/scalable/apps/tautweb.svg"));
    REQUIRE(icon.isValid());
    CHECK(icon.viewBoxF().width() == icon.viewBoxF().height());
}

TEST_CASE("the manual page is of this version and names every option of the window")
{
    QProcess gzip;
    gzip.start(QStringLiteral("gzip"),
               {QStringLiteral("-dc"), installed() + QStringLiteral("/share/man/man1/tautweb.1.gz")});
    REQUIRE(gzip.waitForFinished());
    const QString page = QString::fromUtf8(gzip.readAllStandardOutput()).remove(QLatin1Char('\\'));
    CHECK(page.contains(QStringLiteral("Tautweb " TAUTWEB_VERSION)));
    for (const char* option : {"--demo", "--logbook", "--dark", "--text-size", "--language"}) {
        INFO(option);
        CHECK(page.contains(QString::fromLatin1(option)));
    }
}

TEST_CASE("what changed is told up to this version, and the licence of what is installed beside it")
{
    QFile changes(QStringLiteral(TAUTWEB_SOURCE_DIR "/packaging/CHANGELOG.md"));
    REQUIRE(changes.open(QIODevice::ReadOnly));
    const QString first = QString::fromUtf8(changes.readAll()).section(QStringLiteral("\n## "), 1, 1);
    CHECK(first.startsWith(QStringLiteral(TAUTWEB_VERSION " (")));
    CHECK(contentOf("share/doc/tautweb/copyright").contains("GPL-3.0-or-later"));
    CHECK_FALSE(contentOf("share/doc/tautweb/changelog.gz").isEmpty());
    CHECK(contentOf("share/bash-completion/completions/tautweb").contains("complete -F _tautweb tautweb"));
    CHECK_FALSE(QFileInfo::exists(installed() + QStringLiteral("/share/tautweb/translations")));
}

TEST_CASE("the installed program finds its presses beside it, from any folder")
{
    // A press that stands nowhere else tells which folder was read.
    const QString presses = installed() + QStringLiteral("/share/tautweb/presses/");
    QFile north(presses + QStringLiteral("north.toml"));
    REQUIRE(north.open(QIODevice::ReadOnly));
    QByteArray moved = north.readAll();
    REQUIRE(moved.contains("id = \"north\""));
    moved.replace("id = \"north\"", "id = \"north-moved\"");
    QFile copy(presses + QStringLiteral("moved.toml"));
    REQUIRE(copy.open(QIODevice::WriteOnly));
    copy.write(moved);
    copy.close();
    QProcess program;
    program.setWorkingDirectory(QStringLiteral("/"));
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.remove(QStringLiteral("TAUTWEB_RESOURCES"));
    program.setProcessEnvironment(environment);
    program.start(installed() + QStringLiteral("/bin/tautweb"),
                  {QStringLiteral("targets"), QStringLiteral("--press"), QStringLiteral("north-moved"),
                   QStringLiteral("--job"), QStringLiteral("J-2101"), QStringLiteral("--roll"),
                   QStringLiteral("R0041")});
    REQUIRE(program.waitForFinished(60000));
    INFO(program.readAllStandardError().toStdString());
    CHECK(program.exitCode() == 0);
    copy.remove();
}
