#include "page_preview.h"

#include <QPainter>

namespace lidlark::mobile {

PagePreview::PagePreview(QQuickItem *parent) : QQuickPaintedItem(parent)
{
    setFillColor(Qt::white); // paper, in any light
    connect(this, &PagePreview::shown, this, &PagePreview::fit);
}

void PagePreview::setSource(PrintViewModel *source)
{
    m_source = source;
    connect(source, &PrintViewModel::changed, this, &PagePreview::fit);
    fit();
}

const PrintPage *PagePreview::page() const
{
    if (m_source == nullptr || m_page < 0 || m_page >= m_source->pageCount())
        return nullptr;
    return &m_source->pages()[static_cast<std::size_t>(m_page)];
}

void PagePreview::geometryChange(const QRectF &now, const QRectF &before)
{
    QQuickPaintedItem::geometryChange(now, before);
    if (now.width() != before.width())
        fit();
}

void PagePreview::fit()
{
    const PrintPage *shownPage = page();
    const double across = m_part == Whole ? 1.0 : 0.5;
    setImplicitHeight(shownPage == nullptr ? 0.0
                                           : width() * shownPage->size.height() /
                                                 (shownPage->size.width() * across));
    update();
}

void PagePreview::paint(QPainter *painter)
{
    const PrintPage *shownPage = page();
    if (shownPage == nullptr)
        return;
    const double across = shownPage->size.width() * (m_part == Whole ? 1.0 : 0.5);
    const double scale = width() / across;
    painter->setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    painter->scale(scale, scale);
    if (m_part == RightHalf)
        painter->translate(-across, 0.0);
    shownPage->paint(*painter);
}

} // namespace lidlark::mobile
