#include "tests/tour/page_reach.h"

#include <QGuiApplication>
#include <QQmlEngine>
#include <QQuickItem>

namespace lidlark::test {

namespace {

QPointF middleOf(const QQuickItem *item)
{
    return item->mapToScene(QPointF(item->width() / 2, item->height() / 2));
}

bool isOf(const QQuickItem *item, const char *type)
{
    return QLatin1StringView(item->metaObject()->className()).startsWith(QLatin1StringView(type));
}

bool isLeftHanded(QQuickWindow *window)
{
    const int id = qmlTypeId("Lidlark.Design", 1, 0, "Theme");
    return qmlEngine(window)->singletonInstance<QObject *>(id)->property("leftHanded").toBool();
}

class Reach
{
public:
    explicit Reach(QQuickWindow *window) : m_size(window->size())
    {
        const bool mirrored = QGuiApplication::layoutDirection() == Qt::RightToLeft;
        m_nearIsLeft = isLeftHanded(window) != mirrored;
        look(window->contentItem());
    }

    [[nodiscard]] QStringList findings() const { return m_findings; }

private:
    void look(const QQuickItem *item)
    {
        if (!item->isVisible())
            return;
        const QString name = item->property("text").toString();
        const bool held = item->property("pressedTwice").toBool();
        // In an emergency the number comes before all else, the hand's reach among it.
        const bool first = item->objectName().startsWith(QLatin1StringView("call"));
        if (!first && (isOf(item, "Slip_") || isOf(item, "BigYes_")) &&
            middleOf(item).y() < m_size.height() / 2.0)
            m_findings.append(QStringLiteral("in the upper half: %1").arg(name));
        if (held && middleOf(item).y() > m_size.height() / 2.0 &&
            (middleOf(item).x() < m_size.width() / 2.0) != m_nearIsLeft)
            m_findings.append(QStringLiteral("on the other hand's side: %1").arg(name));
        if (isOf(item, "ActionFoot_"))
            lookAtFoot(item);
        const QList<QQuickItem *> children = item->childItems();
        for (const QQuickItem *child : children)
            look(child);
    }

    /// The quieter action lies at the end; in the left hand at the start.
    void lookAtFoot(const QQuickItem *foot)
    {
        const QString other = foot->property("otherText").toString();
        if (other.isEmpty() || foot->property("stacked").toBool())
            return;
        if (const QQuickItem *link = linkIn(foot, other);
            link != nullptr && (middleOf(link).x() < m_size.width() / 2.0) != m_nearIsLeft)
            m_findings.append(QStringLiteral("on the other hand's side: %1").arg(other));
    }

    static const QQuickItem *linkIn(const QQuickItem *item, const QString &text)
    {
        const QList<QQuickItem *> children = item->childItems();
        for (const QQuickItem *child : children) {
            if (child->isVisible() && child->inherits("QQuickAbstractButton") &&
                child->property("text").toString() == text)
                return child;
            if (const QQuickItem *found = linkIn(child, text))
                return found;
        }
        return nullptr;
    }

    QSizeF m_size;
    bool m_nearIsLeft = false;
    QStringList m_findings;
};

} // namespace

QStringList outOfReach(QQuickWindow *window)
{
    return Reach(window).findings();
}

} // namespace lidlark::test
