#pragma once

#include "ink_item.h"

#include <QtCore/QPointF>

namespace lidlark::design {

/// The string of a kite, from the stick in the hand to the kite, hanging a little. Both ends are in
/// px of the item. It has the width of the drawings' own line.
class KiteString : public lidlark::design::InkItem
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QPointF hand READ hand WRITE setHand NOTIFY handChanged FINAL)
    Q_PROPERTY(QPointF kite READ kite WRITE setKite NOTIFY kiteChanged FINAL)
    Q_PROPERTY(qreal thickness READ thickness WRITE setThickness NOTIFY thicknessChanged FINAL)
public:
    using InkItem::InkItem;

    QPointF hand() const { return m_hand; }
    void setHand(const QPointF &hand);
    QPointF kite() const { return m_kite; }
    void setKite(const QPointF &kite);
    qreal thickness() const { return m_thickness; }
    void setThickness(qreal thickness);

    void paint(QPainter *painter) override;

signals:
    void handChanged();
    void kiteChanged();
    void thicknessChanged();

private:
    QPointF m_hand;
    QPointF m_kite;
    qreal m_thickness = 4.0;
};

} // namespace lidlark::design
