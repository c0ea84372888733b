#pragma once

#include "ink_item.h"

namespace lidlark::design {

/// A rounded frame of dashes (not now) or dots (a place that is empty).
class DashFrame : public lidlark::design::InkItem
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(qreal thickness READ thickness WRITE setThickness NOTIFY frameChanged FINAL)
    Q_PROPERTY(qreal radius READ radius WRITE setRadius NOTIFY frameChanged FINAL)
    Q_PROPERTY(bool dotted READ dotted WRITE setDotted NOTIFY frameChanged FINAL)
public:
    using InkItem::InkItem;

    qreal thickness() const { return m_thickness; }
    void setThickness(qreal thickness);
    qreal radius() const { return m_radius; }
    void setRadius(qreal radius);
    bool dotted() const { return m_dotted; }
    void setDotted(bool dotted);

    void paint(QPainter *painter) override;

signals:
    void frameChanged();

private:
    qreal m_thickness = 1.6;
    qreal m_radius = 5.0;
    bool m_dotted = false;
};

} // namespace lidlark::design
