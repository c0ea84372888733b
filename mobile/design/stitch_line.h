#pragma once

#include "ink_item.h"

namespace lidlark::design {

/// A running stitch along the item's longer side, ending in a whole stitch.
class StitchLine : public lidlark::design::InkItem
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(qreal thickness READ thickness WRITE setThickness NOTIFY stitchChanged FINAL)
    Q_PROPERTY(qreal on READ on WRITE setOn NOTIFY stitchChanged FINAL)
    Q_PROPERTY(qreal off READ off WRITE setOff NOTIFY stitchChanged FINAL)
public:
    using InkItem::InkItem;

    qreal thickness() const { return m_thickness; }
    void setThickness(qreal thickness);
    qreal on() const { return m_on; }
    void setOn(qreal on);
    qreal off() const { return m_off; }
    void setOff(qreal off);

    void paint(QPainter *painter) override;

signals:
    void stitchChanged();

private:
    qreal m_thickness = 2.2;
    qreal m_on = 7.5; ///< px seen: 6 and the round ends.
    qreal m_off = 3.5;
};

} // namespace lidlark::design
