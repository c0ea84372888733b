#pragma once

#include <QtQml/qqmlregistration.h>
#include <QtQuick/QQuickItem>

namespace lidlark::design {

/// Lays its visible children in rows of equal cells: one width for all, one height a row.
/// Children keep their order and need no width or height of their own.
class EvenGrid : public QQuickItem
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int columns READ columns WRITE setColumns NOTIFY columnsChanged FINAL)
    Q_PROPERTY(qreal spacing READ spacing WRITE setSpacing NOTIFY spacingChanged FINAL)
    Q_PROPERTY(bool mirrored READ mirrored WRITE setMirrored NOTIFY mirroredChanged FINAL)
public:
    explicit EvenGrid(QQuickItem *parent = nullptr);

    /// Cells in a row; 0 puts all children in one row.
    int columns() const { return m_columns; }
    void setColumns(int columns);
    /// px between cells, across and down.
    qreal spacing() const { return m_spacing; }
    void setSpacing(qreal spacing);
    /// Rows run from right to left.
    bool mirrored() const { return m_mirrored; }
    void setMirrored(bool mirrored);

signals:
    // One each: a number of columns may follow from the spacing.
    void columnsChanged();
    void spacingChanged();
    void mirroredChanged();

protected:
    void itemChange(ItemChange change, const ItemChangeData &data) override;
    void geometryChange(const QRectF &now, const QRectF &before) override;
    void updatePolish() override;

private:
    template <typename Value> void take(Value &member, Value value, void (EvenGrid::*taken)());
    QList<QQuickItem *> cells() const;
    qreal layOutRow(const QList<QQuickItem *> &row, int columns, qreal y);

    int m_columns = 0;
    qreal m_spacing = 0.0;
    bool m_mirrored = false;
};

} // namespace lidlark::design
