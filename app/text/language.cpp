// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/text/language.h"

#include <algorithm>
#include <array>
#include <memory>

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

// Q_INIT_RESOURCE may not stand in a namespace.
static void openTranslations() { Q_INIT_RESOURCE(tautweb_translations); }

namespace taut::app {

namespace {

constexpr std::array kLanguages{Language{"en", "English"}, Language{"es", "Espa\u00F1ol"}, Language{"de", "Deutsch"}};

/// What stands now; texts are English until somebody chooses.
struct Standing {
    QString id = QStringLiteral("en");
    std::unique_ptr<QTranslator> ours, ofQt;
    UnitsWish units = UnitsWish::AsPress;
    int onPaper = 0;
};

Standing& standing()
{
    static Standing one;
    return one;
}

bool isKnown(const QString& id)
{
    return std::any_of(kLanguages.begin(), kLanguages.end(),
                       [&](const Language& one) { return id == QLatin1String(one.id); });
}

std::unique_ptr<QTranslator> opened(const QString& file, const QString& folder)
{
    auto translator = std::make_unique<QTranslator>();
    if (!translator->load(file, folder)) return nullptr;
    QCoreApplication::installTranslator(translator.get());
    return translator;
}

}  // namespace

std::span<const Language> languages() { return kLanguages; }

QString language() { return standing().id; }

void setLanguage(const QString& id)
{
    Standing& now = standing();
    if (!isKnown(id)) return;
    openTranslations();
    now.ours.reset();
    now.ofQt.reset();
    now.id = id;
    if (id != QLatin1String("en")) {
        // Its own words for buttons and dialogs, where the system has them.
        now.ofQt = opened(QStringLiteral("qtbase_") + id, QLibraryInfo::path(QLibraryInfo::TranslationsPath));
        now.ours = opened(QStringLiteral("tautweb_") + id, QStringLiteral(":/translations"));
    }
    // The PC's own way of writing numbers, where it is of this language: a decimal point in Mexico, a comma in Spain.
    const QLocale ofPc = QLocale::system();
    const bool same = ofPc.name().section(QLatin1Char('_'), 0, 0) == id;
    QLocale::setDefault(same ? ofPc : QLocale(id));
}

QString usualLanguage()
{
    const QString ofPc = QLocale::system().name().section(QLatin1Char('_'), 0, 0);
    return isKnown(ofPc) ? ofPc : QStringLiteral("en");
}

void setUnitsWish(UnitsWish wish) { standing().units = wish; }

UnitsWish unitsWish() { return standing().units; }

UnitSystem unitsFor(UnitSystem ofPress)
{
    if (standing().onPaper > 0) return ofPress;
    switch (standing().units) {
    case UnitsWish::Metric: return UnitSystem::Metric;
    case UnitsWish::Us: return UnitSystem::Us;
    case UnitsWish::AsPress: break;
    }
    return ofPress;
}

InPressUnits::InPressUnits() { ++standing().onPaper; }

InPressUnits::~InPressUnits() { --standing().onPaper; }

}  // namespace taut::app
