// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/history/run_line.h"

#include <algorithm>

#include <QCoreApplication>
#include <QStringList>

#include "app/seams/kept_settings.h"
#include "app/text/words.h"
#include "core/history/times.h"
#include "core/history/times_report.h"

namespace taut::app {

namespace {

class RunLine {
    Q_DECLARE_TR_FUNCTIONS(taut::app::RunLine)

public:
    static QString partOf(const records::RunRow& row, const std::string& column)
    {
        if (column == "reviewed_by") return presentWords(row);
        if (column == "press") return dataText(row.press);
        if (column == "substrate") return dataText(row.substrate);
        if (column == "title") return dataText(row.title);
        if (column == "customer") return dataText(row.customer);
        if (column == "begun") return momentHereText(row.begunMs);
        if (column == "operator") return dataText(row.operatorName);
        if (column == "run") return dataText(row.run);
        if (column == "kind" && !row.kind.empty())
            return words(history::groupSaid(history::Group::RunKind, row.kind), UnitSystem::Metric);
        if (column == "ended" && row.endedMs > 0) return tr("took %1 min").arg((row.endedMs - row.begunMs) / 60000);
        if (column == "outside" && row.outside > 0)
            return row.outside == 1 ? tr("1 reading outside at first")
                                    : tr("%1 readings outside at first").arg(row.outside);
        if (column == "waste_m" && row.wasteM)
            return tr("%1 of web used up")
                .arg(quantityText(Quantity(*row.wasteM, Kind::Length, "m"), UnitSystem::Metric));
        return {};
    }
    static std::vector<LinePart> parts()
    {
        return {{"reviewed_by", tr("What became of it")},
                {"press", tr("Press")},
                {"title", tr("Title of the job")},
                {"customer", tr("Customer")},
                {"substrate", tr("Substrate")},
                {"begun", tr("When it began")},
                {"ended", tr("How long it took")},
                {"operator", tr("Whose run")},
                {"kind", tr("Kind of run")},
                {"outside", tr("Readings outside")},
                {"waste_m", tr("Web used up")},
                {"run", tr("Number of the run")}};
    }
    static QString became(const records::RunRow& row)
    {
        switch (seal::presentFrom(row.present).value_or(seal::Present::Sealed)) {
        case seal::Present::Sealed: return {};
        case seal::Present::Reviewed: return tr("accepted by %1").arg(dataText(row.reviewedBy));
        case seal::Present::SentBack: return tr("sent back");
        case seal::Present::Corrected: return tr("corrected, to be reviewed");
        case seal::Present::Void: return tr("VOID");
        }
        return {};
    }
};

constexpr const char* kUsual[] = {"reviewed_by", "begun", "operator", "run"};

QString keyOf(const std::string& person) { return personalKey(person, "line_of_runs"); }

}  // namespace

std::vector<LinePart> lineParts() { return RunLine::parts(); }

records::Columns keptLine(const std::string& person)
{
    const QSettings settings = keptSettings();
    if (!settings.contains(keyOf(person))) return {std::begin(kUsual), std::end(kUsual)};
    const QStringList kept = settings.value(keyOf(person)).toStringList();
    records::Columns columns;
    for (const LinePart& part : lineParts())
        if (kept.contains(QLatin1String(part.column))) columns.emplace_back(part.column);
    return columns;
}

void keepLine(const std::string& person, const records::Columns& columns)
{
    QStringList kept;
    for (const std::string& column : columns) kept << QString::fromStdString(column);
    keptSettings().setValue(keyOf(person), kept);
}

QString lineOf(const records::RunRow& row, const records::Columns& columns)
{
    QStringList said;
    for (const std::string& column : columns) said << RunLine::partOf(row, column);
    said.removeAll(QString());
    return said.join(QStringLiteral(" \u00B7 "));
}

records::Columns savedColumns(const records::Columns& columns)
{
    records::Columns all{"seq", "run", "job", "roll", "state", "present", "deviations"};
    for (const std::string& column : columns)
        if (std::find(all.begin(), all.end(), column) == all.end()) all.push_back(column);
    return all;
}

QString presentWords(const records::RunRow& row) { return RunLine::became(row); }

}  // namespace taut::app
