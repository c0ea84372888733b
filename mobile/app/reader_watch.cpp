#include "reader_watch.h"

#include "mobile/bridge/appearance.h"

namespace lidlark::mobile {

ReaderWatch::ReaderWatch(Appearance &appearance) : m_appearance(appearance)
{
    m_appearance.setListened(QAccessible::isActive());
    QAccessible::installActivationObserver(this);
}

ReaderWatch::~ReaderWatch()
{
    QAccessible::removeActivationObserver(this);
}

void ReaderWatch::accessibilityActiveChanged(bool active)
{
    m_appearance.setListened(active);
}

} // namespace lidlark::mobile
