#pragma once

#include <QQuickItem>
#include <QQuickWindow>
#include <QStringList>

namespace lidlark::test {

/// Every control that Tab can meet, in the order in which the page is built.
[[nodiscard]] QList<QQuickItem *> tabStops(QQuickWindow *window);

/// Walks the page by Tab until it comes round, then back by Shift-Tab, and says what is wrong, one
/// line each: a control that is not met, or twice; one met out of reading order (top to bottom,
/// from the start of a line to its end, the foot last); one that is not seen whole where it has the
/// focus, or whose ring is not.
[[nodiscard]] QStringList hardToReach(QQuickWindow *window);

} // namespace lidlark::test
