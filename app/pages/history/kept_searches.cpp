// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/history/kept_searches.h"

#include <algorithm>

#include "app/seams/kept_settings.h"

namespace taut::app {

namespace {

QString keyOf(const std::string& person) { return personalKey(person, "searches"); }

void write(const std::string& person, const std::vector<KeptSearch>& all)
{
    QSettings settings = keptSettings();
    settings.remove(keyOf(person));
    settings.beginWriteArray(keyOf(person), static_cast<int>(all.size()));
    for (int i = 0; i < static_cast<int>(all.size()); ++i) {
        settings.setArrayIndex(i);
        const auto& [name, search] = all[static_cast<std::size_t>(i)];
        settings.setValue(QStringLiteral("name"), name);
        settings.setValue(QStringLiteral("text"), search.text);
        settings.setValue(QStringLiteral("present"), search.present);
        settings.setValue(QStringLiteral("press"), search.press);
        settings.setValue(QStringLiteral("job"), search.job);
        settings.setValue(QStringLiteral("substrate"), search.substrate);
        settings.setValue(QStringLiteral("person"), search.person);
        settings.setValue(QStringLiteral("deviations"), search.withDeviations);
        settings.setValue(QStringLiteral("days"), search.period.days);
        settings.setValue(QStringLiteral("between"), search.period.between);
        settings.setValue(QStringLiteral("from"), search.period.from);
        settings.setValue(QStringLiteral("to"), search.period.to);
    }
    settings.endArray();
}

}  // namespace

std::vector<KeptSearch> keptSearches(const std::string& person)
{
    QSettings settings = keptSettings();
    std::vector<KeptSearch> all;
    const int count = settings.beginReadArray(keyOf(person));
    for (int i = 0; i < count; ++i) {
        settings.setArrayIndex(i);
        const auto text = [&](const char* key) { return settings.value(QLatin1String(key)).toString(); };
        KeptSearch kept;
        kept.name = text("name");
        kept.search = {text("text"),
                       text("present"),
                       text("press"),
                       text("job"),
                       text("substrate"),
                       text("person"),
                       {settings.value(QStringLiteral("days")).toInt(),
                        settings.value(QStringLiteral("between")).toBool(), text("from"), text("to")},
                       settings.value(QStringLiteral("deviations")).toBool()};
        if (!kept.name.isEmpty()) all.push_back(std::move(kept));
    }
    settings.endArray();
    std::sort(all.begin(), all.end(), [](const KeptSearch& a, const KeptSearch& b) {
        return QString::compare(a.name, b.name, Qt::CaseInsensitive) < 0;
    });
    return all;
}

void keepSearch(const std::string& person, const KeptSearch& kept)
{
    std::vector<KeptSearch> all = keptSearches(person);
    std::erase_if(all, [&](const KeptSearch& one) { return one.name == kept.name; });
    all.push_back(kept);
    write(person, all);
}

void forgetSearch(const std::string& person, const QString& name)
{
    std::vector<KeptSearch> all = keptSearches(person);
    std::erase_if(all, [&](const KeptSearch& one) { return one.name == name; });
    write(person, all);
}

}  // namespace taut::app
