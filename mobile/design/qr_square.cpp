#include "qr_square.h"

#include "mobile/platform/qr/qr_picture.h"

#include <QtGui/QPainter>
#include <QtQuick/QQuickWindow>

#include <algorithm>
#include <cmath>

namespace lidlark::design {

namespace {

constexpr int comfortableModule = 4; ///< px

} // namespace

QrSquare::QrSquare(QQuickItem *parent) : QQuickPaintedItem(parent)
{
    setSmooth(false);
    setAntialiasing(false);
}

void QrSquare::setText(const QString &text)
{
    if (m_text == text)
        return;
    m_text = text;
    m_modules = mobile::qrPicture(text, 1);
    setImplicitSize(m_modules.width() * comfortableModule, m_modules.height() * comfortableModule);
    update();
    emit textChanged();
}

void QrSquare::paint(QPainter *painter)
{
    if (m_modules.isNull())
        return;
    const qreal dots = window() != nullptr ? window()->effectiveDevicePixelRatio() : 1.0;
    const qreal room = std::min(width(), height()) * dots;
    const qreal module = std::max(1.0, std::floor(room / m_modules.width()));
    const qreal side = module * m_modules.width();
    const QPointF corner(std::floor((width() * dots - side) / 2.0) / dots,
                         std::floor((height() * dots - side) / 2.0) / dots);
    painter->setRenderHint(QPainter::SmoothPixmapTransform, false);
    painter->drawImage(QRectF(corner, QSizeF(side, side) / dots), m_modules);
}

} // namespace lidlark::design
