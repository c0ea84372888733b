#pragma once

#include <QtCore/QPointer>
#include <QtQuick/QQuickItem>

#include <vector>

namespace lidlark::design {

/// The part of the window that @p items take up together, as far as what they scroll in shows it.
[[nodiscard]] QRectF shownPart(const std::vector<QPointer<QQuickItem>> &items);

/// Scrolls so that @p items are seen, or the first of them where not all can be.
void scrollTo(const std::vector<QPointer<QQuickItem>> &items);

} // namespace lidlark::design
