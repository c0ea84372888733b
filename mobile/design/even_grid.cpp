#include "even_grid.h"

#include <algorithm>

namespace lidlark::design {
namespace {

/// A Repeater is a child too, but takes no room.
bool takesRoom(const QQuickItem *item)
{
    return item->isVisible() && item->implicitHeight() > 0.0;
}

} // namespace

EvenGrid::EvenGrid(QQuickItem *parent) : QQuickItem(parent) {}

template <typename Value> void EvenGrid::take(Value &member, Value value, void (EvenGrid::*taken)())
{
    if (member == value)
        return;
    member = value;
    polish();
    emit(this->*taken)();
}

void EvenGrid::setColumns(int columns)
{
    take(m_columns, std::max(0, columns), &EvenGrid::columnsChanged);
}

void EvenGrid::setSpacing(qreal spacing)
{
    take(m_spacing, spacing, &EvenGrid::spacingChanged);
}

void EvenGrid::setMirrored(bool mirrored)
{
    take(m_mirrored, mirrored, &EvenGrid::mirroredChanged);
}

void EvenGrid::itemChange(ItemChange change, const ItemChangeData &data)
{
    if (change == ItemChildAddedChange) {
        const auto again = [this] { polish(); };
        connect(data.item, &QQuickItem::implicitHeightChanged, this, again);
        connect(data.item, &QQuickItem::implicitWidthChanged, this, again);
        connect(data.item, &QQuickItem::visibleChanged, this, again);
        polish();
    } else if (change == ItemChildRemovedChange) {
        disconnect(data.item, nullptr, this, nullptr);
        polish();
    }
    QQuickItem::itemChange(change, data);
}

void EvenGrid::geometryChange(const QRectF &now, const QRectF &before)
{
    QQuickItem::geometryChange(now, before);
    if (!qFuzzyCompare(now.width() + 1.0, before.width() + 1.0))
        polish();
}

QList<QQuickItem *> EvenGrid::cells() const
{
    QList<QQuickItem *> found;
    const QList<QQuickItem *> children = childItems();
    std::copy_if(children.begin(), children.end(), std::back_inserter(found), takesRoom);
    return found;
}

/// Places one row and returns its height.
qreal EvenGrid::layOutRow(const QList<QQuickItem *> &row, int columns, qreal y)
{
    const qreal cell = (width() - m_spacing * (columns - 1)) / columns;
    qreal height = 0.0;
    for (qsizetype place = 0; place < row.size(); ++place) {
        QQuickItem *item = row.at(place);
        const qreal x = (cell + m_spacing) * static_cast<qreal>(place);
        item->setWidth(cell);
        item->setPosition({m_mirrored ? width() - x - cell : x, y});
        height = std::max(height, item->implicitHeight());
    }
    for (QQuickItem *item : row)
        item->setHeight(height);
    return height;
}

void EvenGrid::updatePolish()
{
    const QList<QQuickItem *> all = cells();
    const int columns = m_columns > 0 ? m_columns : static_cast<int>(all.size());
    qreal widest = 0.0;
    qreal y = 0.0;
    for (qsizetype first = 0; first < all.size(); first += columns) {
        const QList<QQuickItem *> row = all.mid(first, columns);
        y += (first > 0 ? m_spacing : 0.0) +
             layOutRow(row, columns, y + (first > 0 ? m_spacing : 0.0));
    }
    for (const QQuickItem *item : all)
        widest = std::max(widest, item->implicitWidth());
    setImplicitSize((widest + m_spacing) * std::max(columns, 1) - m_spacing, y);
}

} // namespace lidlark::design
