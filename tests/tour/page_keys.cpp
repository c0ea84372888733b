#include "tests/tour/page_keys.h"

#include <QGuiApplication>
#include <QQuickItem>
#include <QtTest>

#include <algorithm>

namespace lidlark::test {

namespace {

constexpr qreal allowance = 2; // px
constexpr qreal teeth = 5;     // px of the cloth that lie over what scrolls

QString nameOf(const QQuickItem *item)
{
    if (item == nullptr)
        return QStringLiteral("nothing");
    const QString spoken = item->property("accessibleName").toString();
    const QString text = item->property("text").toString();
    const QString name = !spoken.isEmpty() ? spoken : !text.isEmpty() ? text : item->objectName();
    return name.isEmpty() ? QString::fromUtf8(item->metaObject()->className()) : name.left(60);
}

QRectF onWindow(const QQuickItem *item)
{
    return item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
}

const QQuickItem *scrollerOf(const QQuickItem *item)
{
    for (const QQuickItem *above = item->parentItem(); above != nullptr;
         above = above->parentItem()) {
        if (above->inherits("QQuickFlickable"))
            return above;
    }
    return nullptr;
}

/// Where it lies on what scrolls, however far that is scrolled.
QRectF onPage(const QQuickItem *item)
{
    const QQuickItem *scroller = scrollerOf(item);
    return onWindow(item).translated(
        0, scroller != nullptr ? scroller->property("contentY").toReal() : 0.0);
}

void gatherStops(QQuickItem *item, QList<QQuickItem *> &stops)
{
    if (!item->isVisible() || !item->isEnabled())
        return;
    if (item->activeFocusOnTab())
        stops.append(item);
    const QList<QQuickItem *> children = item->childItems();
    for (QQuickItem *child : children)
        gatherStops(child, stops);
}

bool onOneLine(const QRectF &one, const QRectF &other)
{
    const qreal common = std::min(one.bottom(), other.bottom()) - std::max(one.top(), other.top());
    return common > std::min(one.height(), other.height()) / 2;
}

/// Less lies left of more in every script: the keys of one stepper keep their order.
bool areKeysOfOneStepper(const QQuickItem *one, const QQuickItem *other)
{
    return one->parentItem() == other->parentItem() && one->property("pressedOften").toBool() &&
           other->property("pressedOften").toBool() && one->parentItem()->inherits("QQuickRow");
}

bool isReadBefore(const QQuickItem *one, const QQuickItem *other)
{
    if (other->property("pressedTwice").toBool())
        return true; // what an adult holds comes after the child's answers, on either side
    const QQuickItem *scroller = scrollerOf(one);
    const QQuickItem *otherScroller = scrollerOf(other);
    if (scroller != otherScroller) {
        const QRectF place = onWindow(scroller != nullptr ? scroller : one);
        const QRectF otherPlace = onWindow(otherScroller != nullptr ? otherScroller : other);
        return place.top() <= otherPlace.top() + allowance;
    }
    const QRectF place = onPage(one);
    const QRectF otherPlace = onPage(other);
    if (!onOneLine(place, otherPlace) || areKeysOfOneStepper(one, other))
        return place.top() <= otherPlace.top() + allowance;
    return QGuiApplication::layoutDirection() == Qt::RightToLeft
               ? place.right() >= otherPlace.right() - allowance
               : place.left() <= otherPlace.left() + allowance;
}

/// The ring round the focused control; null: none is shown.
const QQuickItem *ringOf(const QQuickItem *item)
{
    const QList<QQuickItem *> children = item->childItems();
    for (const QQuickItem *child : children) {
        if (child->isVisible() && QLatin1StringView(child->metaObject()->className())
                                      .startsWith(QLatin1StringView("FocusRing")))
            return child;
    }
    return nullptr;
}

class KeyWalk
{
public:
    explicit KeyWalk(QQuickWindow *window) : m_window(window), m_stops(tabStops(window))
    {
        const QList<QQuickItem *> onward = round(Qt::Key_Tab, {}, true);
        const QList<QQuickItem *> back = round(Qt::Key_Backtab, Qt::ShiftModifier, false);
        compare(onward);
        if (QList<QQuickItem *>(back.rbegin(), back.rend()) != rotated(onward, back))
            m_findings.append(QStringLiteral("Shift-Tab goes another way than Tab"));
    }

    [[nodiscard]] QStringList findings() const { return m_findings; }

private:
    QList<QQuickItem *> round(Qt::Key key, Qt::KeyboardModifiers modifiers, bool look)
    {
        QList<QQuickItem *> met;
        const qsizetype most = m_stops.size() + 3;
        for (qsizetype i = 0; i < most; ++i) {
            QTest::keyClick(m_window, key, modifiers);
            QQuickItem *focused = m_window->activeFocusItem();
            if (!met.isEmpty() && focused == met.constFirst())
                return met;
            met.append(focused);
            if (look)
                lookAt(focused);
        }
        if (!m_stops.isEmpty())
            m_findings.append(QStringLiteral("Tab never comes round"));
        return met;
    }

    /// @p onward begun where @p back ends.
    static QList<QQuickItem *> rotated(QList<QQuickItem *> onward, const QList<QQuickItem *> &back)
    {
        if (!back.isEmpty()) {
            const auto begin = std::ranges::find(onward, back.constLast());
            std::rotate(onward.begin(), begin, onward.end());
        }
        return onward;
    }

    void lookAt(const QQuickItem *item)
    {
        if (item == nullptr || !m_stops.contains(item))
            return;
        QRectF view(QPointF(), m_window->size());
        if (const QQuickItem *scroller = scrollerOf(item)) {
            const QRectF scrolled = onWindow(scroller);
            const bool onCloth = scrolled.bottom() >= view.bottom();
            view &= scrolled.adjusted(0, 0, 0, onCloth ? 0 : -teeth);
        }
        const QRectF place = onWindow(item);
        const QRectF room = view.adjusted(-allowance, -allowance, allowance, allowance);
        // What is taller than the page begins at its top.
        const bool seen = place.height() <= view.height()
                              ? room.contains(place)
                              : room.contains(place.topLeft()) && room.contains(place.topRight());
        if (!seen)
            m_findings.append(QStringLiteral("focused out of sight, %1 to %2 of %3 to %4: %5")
                                  .arg(place.top())
                                  .arg(place.bottom())
                                  .arg(view.top())
                                  .arg(view.bottom())
                                  .arg(nameOf(item)));
        lookAtRing(*item);
    }

    void lookAtRing(const QQuickItem &item)
    {
        if (item.inherits("QQuickTextField") || item.inherits("QQuickTextArea") ||
            item.inherits("QQuickMouseArea")) // their frames thicken; a whole page needs no ring
            return;
        const QQuickItem *ring = ringOf(&item);
        if (ring == nullptr)
            m_findings.append(QStringLiteral("no ring: %1").arg(nameOf(&item)));
        else if (onWindow(ring).left() < 0 || onWindow(ring).right() > m_window->width())
            m_findings.append(QStringLiteral("ring beside the screen: %1").arg(nameOf(&item)));
    }

    void compare(const QList<QQuickItem *> &met)
    {
        for (QQuickItem *stop : std::as_const(m_stops)) {
            if (met.count(stop) != 1)
                m_findings.append(
                    QStringLiteral("met %1 times: %2").arg(met.count(stop)).arg(nameOf(stop)));
        }
        for (const QQuickItem *item : met) {
            if (item == nullptr || !m_stops.contains(item))
                m_findings.append(
                    QStringLiteral("the focus on what is no control: %1")
                        .arg(item == nullptr ? QStringLiteral("nothing") : nameOf(item)));
        }
        const QList<QQuickItem *> inOrder =
            m_stops.isEmpty() ? m_stops : rotated(met, {m_stops.constFirst()});
        for (qsizetype i = 0; i + 1 < inOrder.size(); ++i) {
            const QQuickItem *one = inOrder[i];
            const QQuickItem *other = inOrder[i + 1];
            if (m_stops.contains(one) && m_stops.contains(other) && !isReadBefore(one, other))
                m_findings.append(QStringLiteral("out of reading order: %1, then %2")
                                      .arg(nameOf(one), nameOf(other)));
        }
    }

    QQuickWindow *m_window;
    QList<QQuickItem *> m_stops;
    QStringList m_findings;
};

} // namespace

QList<QQuickItem *> tabStops(QQuickWindow *window)
{
    QList<QQuickItem *> stops;
    gatherStops(window->contentItem(), stops);
    return stops;
}

QStringList hardToReach(QQuickWindow *window)
{
    return KeyWalk(window).findings();
}

} // namespace lidlark::test
