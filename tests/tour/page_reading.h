#pragma once

#include <QQuickWindow>
#include <QStringList>

namespace lidlark::test {

/// What a person could not read or hit on the page as it stands, one line each: words cut short,
/// a plural left open, painted beside the screen or over other words of the same page; a control
/// under 48 x 48 px (common practice for touch; WCAG 2.2 success criterion 2.5.5 asks for 44).
[[nodiscard]] QStringList hardToRead(QQuickWindow *window);

} // namespace lidlark::test
