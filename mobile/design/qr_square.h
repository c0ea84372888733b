#pragma once

#include <QtGui/QImage>
#include <QtQml/qqmlregistration.h>
#include <QtQuick/QQuickPaintedItem>

namespace lidlark::design {

/// A text for another phone's camera. Always black on white, its white edge part of it, and never
/// mirrored: a reader knows no scheme and no direction. Each module is the same whole number of the
/// screen's own dots, as many as there is room for.
class QrSquare : public QQuickPaintedItem
{
    Q_OBJECT
    QML_ELEMENT
    /// Printable ASCII (mobile/platform/qr).
    Q_PROPERTY(QString text READ text WRITE setText NOTIFY textChanged FINAL)
    /// The text cannot be shown: nothing is painted.
    Q_PROPERTY(bool missing READ missing NOTIFY textChanged FINAL)
public:
    explicit QrSquare(QQuickItem *parent = nullptr);

    QString text() const { return m_text; }
    void setText(const QString &text);
    bool missing() const { return m_modules.isNull(); }

    void paint(QPainter *painter) override;

signals:
    void textChanged();

private:
    QString m_text;
    QImage m_modules; ///< One dot a module.
};

} // namespace lidlark::design
