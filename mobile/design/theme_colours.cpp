#include "theme_colours.h"

namespace lidlark::design {

ThemeColours::ThemeColours(QObject *parent)
    : ThemeChoices(parent), m_palette(paletteFor(m_scheme, m_place))
{
}

void ThemeColours::setScheme(Scheme scheme)
{
    choose(scheme, m_place);
}

void ThemeColours::setPlace(Place place)
{
    choose(m_scheme, place);
}

void ThemeColours::choose(Scheme scheme, Place place)
{
    if (scheme == m_scheme && place == m_place)
        return;
    m_scheme = scheme;
    m_place = place;
    m_palette = paletteFor(scheme, place);
    emit coloursChanged();
}

} // namespace lidlark::design
