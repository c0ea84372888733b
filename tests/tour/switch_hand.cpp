#include "tests/tour/switch_hand.h"

#include <QAccessible>
#include <QtTest>

#include "tests/tour/page_keys.h"

namespace lidlark::test {

namespace {

constexpr int mostSteps = 2000;
constexpr int bothSwitches = 2;

QRectF onWindow(const QQuickItem *item)
{
    return item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
}

QString spokenName(QQuickItem *item)
{
    QAccessibleInterface *node = QAccessible::queryAccessibleInterface(item);
    return node != nullptr ? node->text(QAccessible::Name) : QString();
}

} // namespace

SwitchHand::SwitchHand(QQuickWindow *window)
    : m_window(window), m_scan(window->findChild<QQuickItem *>(QStringLiteral("scan")))
{
}

QQuickItem *SwitchHand::lit() const
{
    return m_scan->property("lit").value<QQuickItem *>();
}

QString SwitchHand::litName() const
{
    QQuickItem *item = lit();
    return item != nullptr ? spokenName(item) : QString();
}

bool SwitchHand::leaving() const
{
    return m_scan->property("leaving").toBool();
}

void SwitchHand::onward() const
{
    QTest::keyClick(m_window, Qt::Key_Tab);
}

void SwitchHand::select() const
{
    QTest::keyClick(m_window, Qt::Key_Space);
}

QQuickItem *SwitchHand::next()
{
    onward();
    for (int step = 0; step < mostSteps && lit() == nullptr; ++step) {
        const bool out = leaving();
        select();
        if (out)
            onward(); // back on the group it came from
    }
    return lit();
}

bool SwitchHand::reach(const QString &name)
{
    QList<QQuickItem *> met;
    QQuickItem *item = lit() != nullptr ? lit() : next();
    for (; item != nullptr && !met.contains(item); item = next()) {
        if (spokenName(item).startsWith(name))
            return true;
        met.append(item);
    }
    return false;
}

bool SwitchHand::press(const QString &name)
{
    if (!reach(name))
        return false;
    select();
    Hand::settle(700); // the second of two presses within 600 ms is ignored
    return true;
}

QList<QQuickItem *> SwitchHand::everyControl()
{
    QMetaObject::invokeMethod(m_scan, "restart");
    QList<QQuickItem *> all;
    QQuickItem *item = lit();
    if (item == nullptr) { // a group comes first: open it without going on
        select();
        item = lit() != nullptr ? lit() : next();
    }
    for (; item != nullptr && !all.contains(item); item = next()) {
        all.append(item);
        m_scan->ensurePolished();
        const QRectF window(QPointF(), m_window->size());
        if (!window.intersects(onWindow(item)))
            m_hidden.append(spokenName(item));
    }
    return all;
}

QStringList hardToScan(QQuickWindow *window)
{
    SwitchHand hand(window);
    auto *scan = window->findChild<QQuickItem *>(QStringLiteral("scan"));
    const int before = scan->property("switches").toInt();
    scan->setProperty("switches", bothSwitches);
    QStringList findings;
    const QList<QQuickItem *> lit = hand.everyControl();
    const QList<QQuickItem *> stops = tabStops(window);
    for (QQuickItem *stop : stops) {
        if (lit.count(stop) != 1)
            findings.append(
                QStringLiteral("lit %1 times: %2").arg(lit.count(stop)).arg(spokenName(stop)));
    }
    if (findings.isEmpty() && lit != stops)
        findings.append(QStringLiteral("lit in another order than by Tab"));
    for (const QString &name : hand.litOutOfSight())
        findings.append(QStringLiteral("lit out of sight: %1").arg(name));
    scan->setProperty("switches", before);
    return findings;
}

} // namespace lidlark::test
