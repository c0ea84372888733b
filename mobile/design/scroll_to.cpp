#include "scroll_to.h"

#include <algorithm>

namespace lidlark::design {
namespace {

constexpr qreal room = 12.0; // for the ring, and for the teeth of the cloth

QQuickItem *scrollerOf(const QQuickItem *item)
{
    for (QQuickItem *above = item->parentItem(); above != nullptr; above = above->parentItem()) {
        if (above->inherits("QQuickFlickable"))
            return above;
    }
    return nullptr;
}

QRectF onScreen(const QQuickItem *item)
{
    return item->mapRectToScene(item->boundingRect());
}

void bringIn(QQuickItem *scroller, const QRectF &first, const QRectF &all)
{
    const QRectF view = onScreen(scroller).adjusted(0, room, 0, -room);
    const QRectF wanted = all.height() <= view.height() ? all : first;
    qreal by = 0;
    if (wanted.top() < view.top() || wanted.height() > view.height())
        by = wanted.top() - view.top();
    else if (wanted.bottom() > view.bottom())
        by = wanted.bottom() - view.bottom();
    const qreal most = scroller->property("contentHeight").toReal() - scroller->height();
    const qreal now = scroller->property("contentY").toReal();
    scroller->setProperty("contentY", std::clamp(now + by, 0.0, std::max(0.0, most)));
}

} // namespace

QRectF shownPart(const std::vector<QPointer<QQuickItem>> &items)
{
    QRectF all;
    for (const QPointer<QQuickItem> &item : items) {
        if (!item || !item->isVisible())
            continue;
        const QQuickItem *scroller = scrollerOf(item);
        all |= scroller != nullptr ? onScreen(item) & onScreen(scroller) : onScreen(item);
    }
    return all;
}

void scrollTo(const std::vector<QPointer<QQuickItem>> &items)
{
    QQuickItem *scroller = nullptr;
    QRectF first;
    QRectF all;
    for (const QPointer<QQuickItem> &item : items) {
        if (!item || !item->isVisible())
            continue;
        QQuickItem *own = scrollerOf(item);
        if (first.isEmpty()) {
            scroller = own;
            first = onScreen(item);
        }
        if (own == scroller)
            all |= onScreen(item);
    }
    if (scroller != nullptr)
        bringIn(scroller, first, all);
}

} // namespace lidlark::design
