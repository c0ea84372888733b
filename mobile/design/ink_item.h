#pragma once

#include <QtGui/QColor>
#include <QtQml/qqmlregistration.h>
#include <QtQuick/QQuickPaintedItem>

namespace lidlark::design {

/// Something drawn with one ink: dashes, dots, rings. Repaints when the ink changes.
class InkItem : public QQuickPaintedItem
{
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(QColor colour READ colour WRITE setColour NOTIFY colourChanged FINAL)
public:
    explicit InkItem(QQuickItem *parent = nullptr);

    QColor colour() const { return m_colour; }
    void setColour(const QColor &colour);

signals:
    void colourChanged();

protected:
    /// Takes on a new value, repaints, and tells whether anything changed.
    template <typename Value> bool take(Value &member, const Value &value)
    {
        if (member == value)
            return false;
        member = value;
        update();
        return true;
    }

private:
    QColor m_colour;
};

} // namespace lidlark::design
