#include "tests/tour/page_reading.h"

#include <QQuickItem>

#include <vector>

namespace lidlark::test {

namespace {

constexpr qreal touchTarget = 48;
// px by which glyphs may touch a neighbour's box without being hard to read.
constexpr qreal allowance = 4;

/// Some words on the page, and what they scroll with.
struct Words {
    QString text;
    QRectF where; ///< On the window.
    const QQuickItem *scroller = nullptr;
};

const QQuickItem *scrollerOf(const QQuickItem *item)
{
    for (const QQuickItem *above = item->parentItem(); above != nullptr;
         above = above->parentItem()) {
        if (above->inherits("QQuickFlickable"))
            return above;
    }
    return nullptr;
}

bool isText(const QQuickItem *item)
{
    return item->inherits("QQuickText") && !item->property("text").toString().isEmpty();
}

class Reading
{
public:
    explicit Reading(QQuickWindow *window) : m_width(window->width())
    {
        read(window->contentItem());
        overlaps();
    }

    [[nodiscard]] QStringList findings() const { return m_findings; }

private:
    void read(const QQuickItem *item)
    {
        if (!item->isVisible() || item->opacity() == 0)
            return;
        if (isText(item))
            readText(item);
        if (item->inherits("QQuickAbstractButton") && item->isEnabled())
            readControl(item);
        for (const QQuickItem *child : item->childItems())
            read(child);
    }

    void readText(const QQuickItem *item)
    {
        const QString text = item->property("text").toString().left(40);
        if (text.contains(QStringLiteral("(s)")))
            m_findings.append(QStringLiteral("one or many not decided: %1").arg(text));
        if (item->property("truncated").toBool())
            m_findings.append(QStringLiteral("cut short: %1").arg(text));
        if (item->property("contentWidth").toReal() > item->width() + allowance)
            m_findings.append(QStringLiteral("wider than its place: %1").arg(text));
        if (item->implicitHeight() > item->height() + allowance)
            m_findings.append(QStringLiteral("taller than its place: %1").arg(text));
        const QRectF box = item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
        if (box.left() < -allowance || box.right() > m_width + allowance)
            m_findings.append(QStringLiteral("beside the screen: %1").arg(text));
        m_words.push_back({text, box, scrollerOf(item)});
    }

    void readControl(const QQuickItem *item)
    {
        const QString name = item->property("text").toString();
        if (item->width() < touchTarget || item->height() < touchTarget)
            m_findings.append(QStringLiteral("small target, %1 x %2: %3")
                                  .arg(item->width())
                                  .arg(item->height())
                                  .arg(name));
    }

    void overlaps()
    {
        for (auto one = m_words.begin(); one != m_words.end(); ++one) {
            for (auto other = std::next(one); other != m_words.end(); ++other) {
                const QRectF common = one->where.intersected(other->where);
                if (one->scroller == other->scroller && common.width() > allowance &&
                    common.height() > allowance)
                    m_findings.append(
                        QStringLiteral("on each other: %1 | %2").arg(one->text, other->text));
            }
        }
    }

    qreal m_width;
    std::vector<Words> m_words;
    QStringList m_findings;
};

} // namespace

QStringList hardToRead(QQuickWindow *window)
{
    return Reading(window).findings();
}

} // namespace lidlark::test
