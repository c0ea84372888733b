#include "tests/audit/page.h"

#include <QAccessible>

namespace lidlark::audit {

namespace {

QString typeOf(const QMetaObject *meta)
{
    const QString name = QString::fromLatin1(meta->className());
    const qsizetype mark = name.indexOf(QStringLiteral("_QML"));
    return mark > 0 ? name.left(mark) : name;
}

bool isWords(const QQuickItem *item)
{
    return (item->inherits("QQuickText") || item->inherits("QQuickTextInput") ||
            item->inherits("QQuickTextEdit")) &&
           !item->property("text").toString().isEmpty();
}

bool isControl(const QQuickItem *item)
{
    return item->inherits("QQuickAbstractButton") || item->inherits("QQuickTextInput") ||
           item->inherits("QQuickTextEdit") || item->objectName() == QStringLiteral("wake");
}

/// What scrolls runs on under the teeth of the cloth.
constexpr double teeth = 5;

QString spokenName(QQuickItem *item)
{
    QAccessibleInterface *spoken = QAccessible::queryAccessibleInterface(item);
    const QString name = spoken != nullptr ? spoken->text(QAccessible::Name) : QString();
    return name.isEmpty() ? item->property("text").toString() : name;
}

QRectF onWindow(const QQuickItem *item, const QRectF &rect)
{
    return item->mapRectToScene(rect);
}

QRectF whole(const QQuickItem *item)
{
    return onWindow(item, {0, 0, item->width(), item->height()});
}

} // namespace

bool isA(const QQuickItem *item, const QString &type)
{
    for (const QMetaObject *meta = item->metaObject(); meta != nullptr; meta = meta->superClass()) {
        if (typeOf(meta) == type)
            return true;
    }
    return false;
}

bool liesIn(const QQuickItem *item, const QQuickItem *above)
{
    for (; item != nullptr; item = item->parentItem()) {
        if (item == above)
            return true;
    }
    return false;
}

QRectF inView(const Part &part, const QQuickWindow *window)
{
    QRectF seen = part.where.intersected(QRectF(QPointF(), window->size()));
    for (const QQuickItem *above = part.item->parentItem(); above != nullptr;
         above = above->parentItem()) {
        if (above->clip())
            seen = seen.intersected(whole(above));
        else if (above->inherits("QQuickFlickable"))
            seen = seen.intersected(whole(above).adjusted(0, 0, 0, -teeth));
    }
    return seen;
}

bool isInactive(const QQuickItem *item)
{
    for (; item != nullptr; item = item->parentItem()) {
        if (item->inherits("QQuickAbstractButton"))
            return !item->isEnabled() && !item->property("notNow").toBool() &&
                   !item->property("checked").toBool();
    }
    return false;
}

Page::Page(QQuickWindow *window) : m_window(window)
{
    read(window->contentItem(), nullptr);
}

void Page::read(QQuickItem *item, QQuickItem *scroller)
{
    if (!item->isVisible() || item->opacity() == 0)
        return;
    sort(item, scroller);
    if (item->inherits("QQuickFlickable")) {
        m_scrollers.push_back(item);
        scroller = item;
    }
    const QList<QQuickItem *> children = item->childItems();
    // What lies on top of all else is met first, so that what it covers is known when it is met.
    for (QQuickItem *child : children) {
        if (child->isVisible() && (isA(child, QStringLiteral("QuietPicture")) ||
                                   child->objectName() == QStringLiteral("failed")))
            m_covers.push_back(child);
    }
    for (QQuickItem *child : children)
        read(child, scroller);
}

bool Page::isCovered(const Part &part) const
{
    for (const QQuickItem *cover : m_covers) {
        const bool all = whole(cover).contains(QRectF(QPointF(), m_window->size()));
        if (!liesIn(part.item, cover) && (all || whole(cover).intersects(part.where)))
            return true;
    }
    return false;
}

void Page::keep(std::vector<Part> &parts, const Part &part) const
{
    if (!part.where.isEmpty() && !isCovered(part))
        parts.push_back(part);
}

void Page::sort(QQuickItem *item, QQuickItem *scroller)
{
    const QString type = typeOf(item->metaObject());
    if (isWords(item))
        keep(m_words, {item, type, item->property("text").toString(),
                       onWindow(item, item->boundingRect()), scroller});
    if (isControl(item))
        keep(m_controls, {item, type, spokenName(item), whole(item), scroller});
    else if (item->inherits("QQuickMouseArea"))
        keep(m_touched, {item, type, spokenName(item), whole(item), scroller});
    if (isA(item, QStringLiteral("Drawing")) && !item->property("name").toString().isEmpty())
        keep(m_pictures, {item, type, item->property("name").toString(), whole(item), scroller});
}

} // namespace lidlark::audit
