#pragma once

#include <QPointer>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

#include "mobile/prints/print_view_model.h"

namespace lidlark::mobile {

/// A page as it will come out of the printer, as wide as its place; or twice as large its left or
/// its right half, to be read.
class PagePreview : public QQuickPaintedItem
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::PrintViewModel *source READ source WRITE setSource REQUIRED)
    Q_PROPERTY(int page MEMBER m_page NOTIFY shown REQUIRED)
    /// The whole page, or twice as large its left or its right half.
    Q_PROPERTY(Part part MEMBER m_part NOTIFY shown FINAL)

public:
    enum Part { Whole, LeftHalf, RightHalf };
    Q_ENUM(Part)

    explicit PagePreview(QQuickItem *parent = nullptr);
    [[nodiscard]] PrintViewModel *source() const { return m_source; }
    void setSource(PrintViewModel *source);
    void paint(QPainter *painter) override;

signals:
    void shown();

protected:
    void geometryChange(const QRectF &now, const QRectF &before) override;

private:
    void fit();
    [[nodiscard]] const PrintPage *page() const;

    QPointer<PrintViewModel> m_source;
    int m_page = 0;
    Part m_part = Whole;
};

} // namespace lidlark::mobile
