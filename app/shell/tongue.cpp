// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shell/tongue.h"

#include <array>
#include <utility>

#include "app/seams/kept_settings.h"

namespace taut::app {

namespace {

constexpr std::array kUnitWords{std::pair{"press", UnitsWish::AsPress}, std::pair{"metric", UnitsWish::Metric},
                                std::pair{"us", UnitsWish::Us}};

QString wordOf(UnitsWish wish)
{
    for (const auto& [word, one] : kUnitWords)
        if (one == wish) return QString::fromLatin1(word);
    return {};
}

UnitsWish wishFrom(const QString& word, UnitsWish otherwise)
{
    for (const auto& [known, wish] : kUnitWords)
        if (word == QLatin1String(known)) return wish;
    return otherwise;
}

/// Where what this person chose is kept, "" while nobody is signed in.
QString keyOf(const Session& session, const char* what)
{
    return session.actor() ? personalKey(session.actor()->id().value, what) : QString();
}

}  // namespace

QString keptLanguage() { return keptSettings().value(QStringLiteral("language"), usualLanguage()).toString(); }

UnitsWish keptUnits() { return wishFrom(keptSettings().value(QStringLiteral("units")).toString(), UnitsWish::AsPress); }

Tongue::Tongue(Session* session, QObject* parent)
    : QObject(parent),
      m_session(session),
      m_language(app::language()),
      m_thisTime(m_language != keptLanguage()),
      m_units(unitsWish())
{
    // Not at once: whoever hears of the same signal finishes first.
    connect(session, &Session::actorChanged, this, &Tongue::look, Qt::QueuedConnection);
}

void Tongue::look()
{
    if (differs()) emit wanted();
}

QString Tongue::language() const
{
    const QString key = m_thisTime ? QString() : keyOf(*m_session, "language");
    return key.isEmpty() ? m_language : keptSettings().value(key, m_language).toString();
}

UnitsWish Tongue::units() const
{
    const QString key = keyOf(*m_session, "units");
    return key.isEmpty() ? m_units : wishFrom(keptSettings().value(key).toString(), m_units);
}

void Tongue::choose(const Wish& wish)
{
    QSettings settings = keptSettings();
    const bool own = m_session->actor().has_value(), pc = !own || wish.forThisPc;
    if (!wish.language.isEmpty()) {
        m_thisTime = false;
        if (own) settings.setValue(keyOf(*m_session, "language"), wish.language);
        if (pc) settings.setValue(QStringLiteral("language"), m_language = wish.language);
    }
    if (wish.units) {
        if (own) settings.setValue(keyOf(*m_session, "units"), wordOf(*wish.units));
        if (pc) {
            settings.setValue(QStringLiteral("units"), wordOf(*wish.units));
            m_units = *wish.units;
        }
    }
    // The menu that it was chosen in closes first.
    QMetaObject::invokeMethod(this, &Tongue::look, Qt::QueuedConnection);
}

bool Tongue::differs() const { return language() != app::language() || units() != unitsWish(); }

void Tongue::take()
{
    setUnitsWish(units());
    if (const QString wanted = language(); wanted != app::language()) setLanguage(wanted);
}

}  // namespace taut::app
