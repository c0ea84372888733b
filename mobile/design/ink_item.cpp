#include "ink_item.h"

namespace lidlark::design {

InkItem::InkItem(QQuickItem *parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
}

void InkItem::setColour(const QColor &colour)
{
    if (take(m_colour, colour))
        emit colourChanged();
}

} // namespace lidlark::design
