#include "tests/audit/words_check.h"

#include "tests/audit/findings.h"

#include <QFontMetricsF>
#include <QTextBoundaryFinder>

namespace lidlark::audit {

namespace {

/// Common practice, no source: less than this of a page that scrolls is a slit.
constexpr double leastPage = 72;

QRectF widened(const QRectF &rect)
{
    return rect.adjusted(-allowance, -allowance, allowance, allowance);
}

QRectF contentsOf(const QQuickItem *scroller)
{
    const QRectF shown(0, 0, scroller->width(), scroller->height());
    const auto *contents = scroller->property("contentItem").value<QQuickItem *>();
    const double width = std::max(shown.width(), scroller->property("contentWidth").toDouble());
    const double height = std::max(shown.height(), scroller->property("contentHeight").toDouble());
    return contents->mapRectToScene(QRectF(0, 0, width, height));
}

bool scrolls(const QQuickItem *scroller)
{
    return scroller->property("interactive").toBool() ||
           scroller->property("contentHeight").toDouble() <= scroller->height() + allowance;
}

/// How wide the widest piece is that no line may break.
double widestPiece(const QString &words, const QFont &font)
{
    const QFontMetricsF metrics(font);
    QTextBoundaryFinder finder(QTextBoundaryFinder::Line, words);
    double widest = 0;
    qsizetype from = 0;
    for (qsizetype to = finder.toNextBoundary(); to >= 0; to = finder.toNextBoundary()) {
        const QString piece = words.mid(from, to - from).trimmed();
        widest = std::max(widest, metrics.horizontalAdvance(piece));
        from = to;
    }
    return widest;
}

bool isBroken(const QQuickItem *item)
{
    return widestPiece(item->property("text").toString(), item->property("font").value<QFont>()) >
           item->width() + 1;
}

QString whyCut(const QQuickItem *item)
{
    if (item->property("truncated").toBool())
        return QStringLiteral("cut short");
    if (!item->inherits("QQuickText"))
        return {};
    if (item->property("contentWidth").toDouble() > item->width() + allowance)
        return QStringLiteral("wider than its place");
    if (item->implicitHeight() > item->height() + allowance)
        return QStringLiteral("taller than its place");
    if (isBroken(item))
        return QStringLiteral("a word is broken");
    return {};
}

/// Of the same control the words may lie side by side as it likes; so may what scrolls apart.
bool onEachOther(const Part &one, const Part &other)
{
    const QRectF common = one.where.intersected(other.where);
    return one.scroller == other.scroller && common.width() > allowance &&
           common.height() > allowance;
}

} // namespace

QString whyOutOfReach(const Part &part, const QQuickWindow *window)
{
    QRectF where = part.where;
    for (const QQuickItem *above = part.item->parentItem(); above != nullptr;
         above = above->parentItem()) {
        const QRectF frame = above->mapRectToScene({0, 0, above->width(), above->height()});
        if (above->inherits("QQuickFlickable")) {
            if (!widened(contentsOf(above)).contains(where))
                return QStringLiteral("cannot be scrolled to");
            if (!scrolls(above))
                return QStringLiteral("lies in something that does not scroll");
            where = frame;
        } else if (above->clip() && !widened(frame).contains(where)) {
            return QStringLiteral("clipped");
        }
    }
    if (!widened(QRectF(QPointF(), window->size())).contains(where))
        return QStringLiteral("beside the screen");
    return {};
}

QStringList checkWords(const Page &page)
{
    QStringList findings;
    const std::vector<Part> &words = page.words();
    for (auto one = words.begin(); one != words.end(); ++one) {
        if (one->name.contains(QStringLiteral("(s)")))
            findings.append(QStringLiteral("one or many not decided: %1").arg(quoted(one->name)));
        for (const QString &why : {whyCut(one->item), whyOutOfReach(*one, page.window())}) {
            if (!why.isEmpty())
                findings.append(QStringLiteral("%1: %2").arg(why, quoted(one->name)));
        }
        for (auto other = std::next(one); other != words.end(); ++other) {
            if (onEachOther(*one, *other))
                findings.append(QStringLiteral("words on words: %1 and %2")
                                    .arg(quoted(one->name), quoted(other->name)));
        }
    }
    for (const QQuickItem *scroller : page.scrollers()) {
        const bool more = scroller->property("contentHeight").toDouble() > scroller->height() + 1;
        if (more && scroller->height() < std::min(leastPage, page.window()->height() * 0.15))
            findings.append(QStringLiteral("the page shows through a slit of %1 px")
                                .arg(shown(scroller->height())));
    }
    return findings;
}

} // namespace lidlark::audit
