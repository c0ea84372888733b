#include "theme.h"

#include <QtGui/QGuiApplication>
#include <QtGui/QScreen>

#include <algorithm>
#include <cmath>

namespace lidlark::design {
namespace {

constexpr qreal floorDotsPerMm = 6.3;
// A screen that claims more than this per logical px has misread its own size.
constexpr qreal believableDotsPerMm = 12.6;
constexpr qreal millimetresPerInch = 25.4;

qreal primaryDotsPerMm()
{
    const QScreen *screen = QGuiApplication::primaryScreen();
    return screen ? screen->physicalDotsPerInch() / millimetresPerInch : 0.0;
}

} // namespace

Theme::Theme(QObject *parent) : ThemeColours(parent), m_screenDotsPerMm(primaryDotsPerMm()) {}

void Theme::setTextScale(qreal textScale)
{
    read({std::clamp(textScale, 1.0, 2.0), m_reading.arabicScript});
}

void Theme::setArabicScript(bool arabicScript)
{
    read({m_reading.textScale, arabicScript});
}

void Theme::read(const Reading &reading)
{
    if (qFuzzyCompare(reading.textScale, m_reading.textScale) &&
        reading.arabicScript == m_reading.arabicScript)
        return;
    m_reading = reading;
    m_styles.fill({});
    emit typeChanged();
}

void Theme::setReducedMotion(bool reducedMotion)
{
    if (reducedMotion == m_reducedMotion)
        return;
    m_reducedMotion = reducedMotion;
    emit motionChanged();
}

void Theme::setLeftHanded(bool leftHanded)
{
    if (leftHanded == m_leftHanded)
        return;
    m_leftHanded = leftHanded;
    emit leftHandedChanged();
}

void Theme::setScreenDotsPerMm(qreal dotsPerMm)
{
    if (qFuzzyCompare(dotsPerMm + 1.0, m_screenDotsPerMm + 1.0))
        return;
    m_screenDotsPerMm = dotsPerMm;
    emit dotsPerMmChanged();
}

qreal Theme::dotsPerMm() const
{
    return m_screenDotsPerMm > believableDotsPerMm ? floorDotsPerMm
                                                   : std::max(floorDotsPerMm, m_screenDotsPerMm);
}

int Theme::mm(qreal millimetres) const
{
    return static_cast<int>(std::ceil(millimetres * dotsPerMm()));
}

const TypeStyle &Theme::styleOf(Role role, bool bold, bool arabicScript) const
{
    const std::size_t kind = (bold ? 1U : 0U) + (arabicScript ? 2U : 0U);
    std::optional<TypeStyle> &style = m_styles.at(static_cast<std::size_t>(role)).at(kind);
    if (!style)
        style = typeStyle(role, bold, {m_reading.textScale, arabicScript});
    return *style;
}

QColor Theme::clothOf(Place place, Scheme scheme) const
{
    return paletteFor(scheme, place).cloth;
}

bool Theme::boldByRole(Role role) const
{
    return design::boldByRole(role);
}

QFont Theme::font(Role role, bool bold, qreal /*textScale*/, bool arabicScript) const
{
    return styleOf(role, bold, arabicScript).font;
}

qreal Theme::lineHeight(Role role, qreal /*textScale*/, bool arabicScript) const
{
    return styleOf(role, boldByRole(role), arabicScript).lineHeight;
}

qreal Theme::lift(Role role, qreal /*textScale*/, bool arabicScript) const
{
    return styleOf(role, boldByRole(role), arabicScript).lift;
}

qreal Theme::trim(Role role, qreal /*textScale*/, bool arabicScript) const
{
    return styleOf(role, boldByRole(role), arabicScript).trim;
}

} // namespace lidlark::design
