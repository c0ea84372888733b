#pragma once

#include "ink_item.h"

namespace lidlark::design {

/// A ring round a dot. The ring thickens evenly, inward and outward, until it meets the dot.
class HoldRing : public lidlark::design::InkItem
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(qreal progress READ progress WRITE setProgress NOTIFY progressChanged FINAL)
public:
    explicit HoldRing(QQuickItem *parent = nullptr);

    /// 0 not held, 1 held long enough.
    qreal progress() const { return m_progress; }
    void setProgress(qreal progress);

    void paint(QPainter *painter) override;

signals:
    void progressChanged();

private:
    qreal m_progress = 0.0;
};

} // namespace lidlark::design
