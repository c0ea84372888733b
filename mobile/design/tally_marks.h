#pragma once

#include "ink_item.h"

namespace lidlark::design {

/// One upright stroke a minute. Takes its width from the count.
class TallyMarks : public lidlark::design::InkItem
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int count READ count WRITE setCount NOTIFY countChanged FINAL)
public:
    explicit TallyMarks(QQuickItem *parent = nullptr);

    int count() const { return m_count; }
    void setCount(int count);

    void paint(QPainter *painter) override;

signals:
    void countChanged();

private:
    int m_count = 0;
};

} // namespace lidlark::design
