// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/setup/taking_in.h"

#include <algorithm>

#include "app/pages/setup/definitions_page.h"
#include "app/seams/resources.h"
#include "app/text/words.h"
#include "core/base/crypto.h"
#include "core/base/file.h"
#include "core/base/toml.h"
#include "core/inputs/inputs.h"
#include "core/inputs/key_asked.h"

namespace taut::app {

namespace {

int newestEdition(const Session& session, const std::string& what, const std::string& id)
{
    for (const logbook::Definition& one : session.definitions(what.c_str()))
        if (one.source.id == id) return one.source.edition;
    return 0;
}

}  // namespace

QString nameIn(const std::string& what, const std::string& text, std::string* key)
{
    const auto root = readToml(text, "");
    if (!root) return {};
    const Toml* table = root->find(what);
    if (table != nullptr && table->array() != nullptr && !table->array()->empty()) table = &table->array()->front();
    if (table == nullptr) return {};
    for (const char* one : {"name", "title"}) {
        const Toml* name = table->find(one);
        if (name == nullptr || name->text() == nullptr || name->text()->empty()) continue;
        if (key != nullptr) *key = one;
        return dataText(*name->text());
    }
    return {};
}

void TakingIn::begin(const Session& session, const std::vector<std::filesystem::path>& files)
{
    m_on = true;
    m_all.clear();
    m_files.clear();
    for (const std::filesystem::path& file : files) {
        m_files.push_back(file.filename().string());
        const auto text = readFile(file);
        if (!text) continue;  // the session refuses it
        std::string what = inputs::whatIs(*text);
        if (what == "substrates") what = "substrate";
        for (InputFile& one : definitionsIn(what, *text, m_files.back()))
            m_all.push_back({what, one.id, std::move(one.text), newestEdition(session, what, one.id)});
    }
}

QString TakingIn::told(const Session& session)
{
    m_on = false;
    QStringList lines;
    for (const One& one : m_all) {
        const auto stands = session.reader() == nullptr ? Result<std::optional<run::Source>>(std::nullopt)
                                                        : session.reader()->definition(one.what, hex(sha256(one.text)));
        if (!stands || !*stands) continue;  // refused, or behind what was
        const QString name = nameIn(one.what, one.text);
        const int edition = (*stands)->edition;
        lines << (edition > one.before ? DefinitionsPage::tr("Taken in: %1, edition %2.")
                                       : DefinitionsPage::tr("Was there already: %1, edition %2."))
                     .arg(name.isEmpty() ? dataText(one.id) : name)
                     .arg(edition);
    }
    return lines.join(QLatin1Char('\n'));
}

QString TakingIn::refused(const Finding& finding)
{
    m_on = false;
    QString sentence = words(finding, UnitSystem::Metric);
    const auto file = std::find_if(m_files.begin(), m_files.end(),
                                   [&](const std::string& name) { return finding.subject.rfind(name, 0) == 0; });
    if (file == m_files.end()) return sentence;
    // foundAt takes what stands before the first colon for the file: a name may have one itself.
    const inputs::FoundAt at = inputs::foundAt({{}, {}, finding.subject.substr(file->size()), {}, {}});
    QStringList place{dataText(*file)};
    if (at.line > 0) place << DefinitionsPage::tr("line %1").arg(at.line);
    if (!at.path.empty()) place << dataText(at.path);
    if (place.size() == 1 && sentence.contains(place.front())) return sentence;
    return place.join(QStringLiteral(", ")) + QStringLiteral(": ") + sentence;
}

}  // namespace taut::app
