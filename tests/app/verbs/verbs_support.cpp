// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/verbs/verbs_support.h"

#include <catch2/catch.hpp>
#include <cstdlib>
#include <sstream>

#include <QProcess>
#include <QProcessEnvironment>

#include "app/verbs/verbs.h"
#include "core/base/file.h"
#include "core/units/plain.h"

namespace taut::app::test {

namespace fs = std::filesystem;

Folder::Folder()
{
    // In memory where there is such a place that we may write in: hundreds of runs are played, and each event is
    // synced.
    std::string name;
    for (const fs::path& base : {fs::path("/dev/shm"), fs::temp_directory_path()}) {
        name = (base / "tautweb-test-XXXXXX").string();
        if (::mkdtemp(name.data()) != nullptr) break;
        name.clear();
    }
    if (name.empty()) FAIL("no folder");
    m_path = name;
}

Folder::~Folder()
{
    std::error_code error;
    fs::remove_all(m_path, error);
}

Json Ran::json() const
{
    auto read = Json::parse(out);
    if (!read) FAIL("not JSON: " << out << " " << err);
    if (!read->isObject()) FAIL("not an object: " << out);
    return *read;
}

namespace {

Ran run(const std::string& program, const std::vector<std::string>& args, const fs::path& folder, bool bare)
{
    QProcess process;
    if (bare) {
        QProcessEnvironment environment;
        environment.insert(QStringLiteral("PATH"), qEnvironmentVariable("PATH"));
        process.setProcessEnvironment(environment);
    }
    if (!folder.empty()) process.setWorkingDirectory(QString::fromStdString(folder.string()));
    QStringList list;
    for (const std::string& arg : args) list << QString::fromStdString(arg);
    process.start(QString::fromStdString(program), list);
    if (!process.waitForFinished(120000)) FAIL(program << " did not end");
    Ran ran;
    ran.exit = process.exitStatus() == QProcess::NormalExit ? process.exitCode() : 128;
    ran.out = process.readAllStandardOutput().toStdString();
    ran.err = process.readAllStandardError().toStdString();
    return ran;
}

}  // namespace

Ran runProgram(const std::vector<std::string>& args, const fs::path& folder)
{
    return run(std::string(TAUTWEB_BINARY_DIR) + "/tautweb", args, folder, true);
}

Ran runInside(const std::vector<std::string>& args)
{
    std::ostringstream out, err;
    const verbs::Exit exit = verbs::runCommand(args, verbs::Console{out, err});
    return {static_cast<int>(exit), out.str(), err.str()};
}

Ran runTool(const std::string& tool, const std::vector<std::string>& args) { return run(tool, args, {}, false); }

fs::path resources() { return fs::path(TAUTWEB_SOURCE_DIR) / "resources"; }

fs::path answersFile(const std::string& name) { return resources() / "demo" / "answers" / (name + ".toml"); }

verbs::Answers answersOf(const std::string& name)
{
    const auto text = readFile(answersFile(name));
    if (!text) FAIL(sentence(text.error()));
    Findings notes;
    auto answers = verbs::readAnswers(*text, name + ".toml", notes);
    if (!answers) FAIL(sentence(answers.error()));
    if (!notes.empty()) FAIL(sentence(notes.front()));
    return *answers;
}

Stage::Stage()
{
    auto opened = logbook::Writer::open(folder.path() / "demo.logbook", clock, ids, {false, "test", 0});
    if (!opened) FAIL(sentence(opened.error()));
    writer = std::move(*opened);
    auto filled = fillWithDemoShop(*writer, resources());
    if (!filled) FAIL(sentence(filled.error()));
    people = std::move(*filled);
}

Result<verbs::Told> Stage::tell(const verbs::Answers& answers, const std::string& parent)
{
    return verbs::Storyteller(*writer, clock, resources(), people).tell(answers, parent);
}

}  // namespace taut::app::test
