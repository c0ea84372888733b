#include "tests/audit/touch_check.h"

#include "tests/audit/findings.h"
#include "tests/audit/words_check.h"

#include <QAccessible>

namespace lidlark::audit {

namespace {

constexpr double leastTarget = 48;
constexpr double rounding = 0.51;

bool overlap(const QRectF &one, const QRectF &other, double more)
{
    const QRectF common = one.intersected(other);
    return common.width() > more && common.height() > more;
}

/// Of a sign its target is twice as large as what is drawn, and words may stand at its edge.
QRectF drawnOf(const Part &control)
{
    const double spare = isA(control.item, QStringLiteral("SignButton")) ? 12 : 0;
    return control.where.adjusted(spare, spare, -spare, -spare);
}

bool apart(const Part &one, const Part &other)
{
    return !liesIn(one.item, other.item) && !liesIn(other.item, one.item) &&
           one.scroller == other.scroller;
}

/// Areas that only keep a touch from what lies below, or that are the whole screen of one switch.
bool takesNoTap(const Part &part)
{
    for (const char *type : {"ClothFoot", "FullStop", "BeforeAndNow", "SwitchScan"}) {
        if (isA(part.item->parentItem(), QString::fromLatin1(type)))
            return true;
    }
    return false;
}

QStringList checkControl(const Part &control, const QQuickWindow *window)
{
    QStringList findings;
    const QString called = QStringLiteral("%1 %2").arg(control.type, quoted(control.name));
    if (control.where.width() < leastTarget - rounding ||
        control.where.height() < leastTarget - rounding)
        findings.append(
            QStringLiteral("small target, %1 x %2: %3")
                .arg(shown(control.where.width()), shown(control.where.height()), called));
    QAccessibleInterface *spoken = QAccessible::queryAccessibleInterface(control.item);
    if (spoken == nullptr || spoken->text(QAccessible::Name).trimmed().isEmpty())
        findings.append(QStringLiteral("touched, but has no name: %1").arg(called));
    const QString why = whyOutOfReach(control, window);
    if (!why.isEmpty())
        findings.append(QStringLiteral("%1: %2").arg(why, called));
    return findings;
}

} // namespace

QStringList checkTouch(const Page &page)
{
    QStringList findings;
    const std::vector<Part> &controls = page.controls();
    for (auto one = controls.begin(); one != controls.end(); ++one) {
        findings += checkControl(*one, page.window());
        for (auto other = std::next(one); other != controls.end(); ++other) {
            if (apart(*one, *other) && overlap(one->where, other->where, 1.0))
                findings.append(QStringLiteral("targets on each other: %1 and %2")
                                    .arg(quoted(one->name), quoted(other->name)));
        }
        for (const Part &words : page.words()) {
            if (apart(words, *one) && overlap(words.where, drawnOf(*one), allowance))
                findings.append(QStringLiteral("words on a control: %1 on %2")
                                    .arg(quoted(words.name), quoted(one->name)));
        }
    }
    for (const Part &area : page.touched()) {
        if (area.name.isEmpty() && !takesNoTap(area))
            findings.append(
                QStringLiteral("touched, but has no name: %1 in %2")
                    .arg(area.type, area.item->parentItem()->metaObject()->className()));
    }
    return findings;
}

namespace {

/// On a phone lying down there is less height than on the smallest: its sizes hold there too.
bool isSmallest(const QQuickWindow *window)
{
    return window->height() <= 568;
}

/// A child's picture that an adult taps, for a guess of their own, may be as small as any control.
bool isTappedByAdult(const QQuickItem *item)
{
    for (; item != nullptr; item = item->parentItem()) {
        if (item->property("byAdult").toBool())
            return true;
    }
    return false;
}

bool isChilds(const Part &control)
{
    if (isTappedByAdult(control.item))
        return false;
    for (const char *type : {"ChildTile", "HomeWell", "LidWell"}) {
        if (isA(control.item, QString::fromLatin1(type)))
            return true;
    }
    return false;
}

double leastMm(const Part &control, bool smallest)
{
    const QString name = control.item->objectName();
    if (name == QStringLiteral("hand"))
        return 12;
    if (smallest && (name == QStringLiteral("kite-clouds") || name == QStringLiteral("kite-bag")))
        return 12;
    return smallest ? 16 : 20;
}

/// How far two targets lie apart, px; negative: they lie on each other.
double gapBetween(const QRectF &one, const QRectF &other)
{
    const double across = std::max(one.left(), other.left()) - std::min(one.right(), other.right());
    const double down = std::max(one.top(), other.top()) - std::min(one.bottom(), other.bottom());
    return std::max(across, down);
}

bool isKites(const Part &control)
{
    const QString name = control.item->objectName();
    return name.startsWith(QStringLiteral("kite-")) || name == QStringLiteral("hand");
}

} // namespace

QStringList checkChildsTouch(const Page &page, double dotsPerMm)
{
    QStringList findings;
    const bool smallest = isSmallest(page.window());
    std::vector<Part> childs;
    std::copy_if(page.controls().begin(), page.controls().end(), std::back_inserter(childs),
                 isChilds);
    for (auto one = childs.begin(); one != childs.end(); ++one) {
        const double least = leastMm(*one, smallest);
        const double side = std::min(one->where.height(), one->where.width());
        if (side + rounding < least * dotsPerMm)
            findings.append(QStringLiteral("%1 mm for a child's finger, %2 wanted: %3")
                                .arg(shown(side / dotsPerMm), shown(least), quoted(one->name)));
        if (isKites(*one) && one->scroller != nullptr)
            findings.append(QStringLiteral("a kite that scrolls: %1").arg(quoted(one->name)));
        for (auto other = std::next(one); other != childs.end(); ++other) {
            const double gap = gapBetween(one->where, other->where);
            if (isKites(*one) && isKites(*other) && gap + 1 + rounding < 4 * dotsPerMm)
                findings.append(
                    QStringLiteral("%1 mm between %2 and %3, 4 wanted")
                        .arg(shown(gap / dotsPerMm), quoted(one->name), quoted(other->name)));
        }
    }
    return findings;
}

} // namespace lidlark::audit
