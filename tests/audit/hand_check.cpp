#include "tests/audit/hand_check.h"

#include "tests/audit/findings.h"
#include "tests/audit/page.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>

namespace lidlark::audit {

namespace {

/// What one hand does on a page, by the types of the design system.
const QStringList &ofOneHand()
{
    static const QStringList types{QStringLiteral("Slip"), QStringLiteral("StitchedLink"),
                                   QStringLiteral("HeldAdultControl")};
    return types;
}

bool isInAFoot(const QQuickItem *item)
{
    for (const QQuickItem *above = item; above != nullptr; above = above->parentItem()) {
        if (isA(above, QStringLiteral("ActionFoot")))
            return true;
    }
    return false;
}

bool isMain(const Part &control)
{
    return isA(control.item, QStringLiteral("HeldAdultControl")) || isInAFoot(control.item);
}

/// Where they lie, by what they are called: of the two links in a foot only one shows at a time.
std::map<QString, QRectF> placesOf(QQuickWindow *window)
{
    std::map<QString, QRectF> places;
    const Page page(window);
    for (const Part &control : page.controls()) {
        const bool oneHand = std::ranges::any_of(
            ofOneHand(), [&](const QString &type) { return isA(control.item, type); });
        if (oneHand && isMain(control))
            places[control.name] = control.where;
    }
    return places;
}

void layOut(QQuickWindow *window)
{
    for (int frame = 0; frame < 2; ++frame) {
        QCoreApplication::processEvents();
        (void)window->grabWindow();
    }
}

/// As wide as the page: there is no side to it.
bool hasASide(const QRectF &where, double pageWidth)
{
    return std::abs(where.center().x() - pageWidth / 2) > pageWidth / 20;
}

} // namespace

QStringList checkHands(QQuickWindow *window, QObject *theme)
{
    const auto right = placesOf(window);
    const bool before = theme->property("leftHanded").toBool();
    theme->setProperty("leftHanded", !before);
    layOut(window);
    const auto left = placesOf(window);
    theme->setProperty("leftHanded", before);
    layOut(window);

    const double width = window->width();
    QStringList findings;
    for (const auto &[name, where] : right) {
        if (where.center().y() < window->height() / 2.0)
            findings.append(QStringLiteral("too high for a thumb: %1").arg(quoted(name)));
        const auto other = left.find(name);
        if (other == left.end())
            findings.append(QStringLiteral("gone in the other hand: %1").arg(quoted(name)));
        else if (hasASide(where, width) && hasASide(other->second, width) &&
                 (where.center().x() < width / 2) == (other->second.center().x() < width / 2))
            findings.append(QStringLiteral("on the same side in both hands: %1").arg(quoted(name)));
    }
    return findings;
}

} // namespace lidlark::audit
