#pragma once

#include <QQuickWindow>
#include <QStringList>

namespace lidlark::test {

/// What one hand that holds the phone could not do on the page, one line each (job.md A7): a main
/// action in the upper half; what lies beside it, or what an adult holds, on the wrong side for the
/// hand that is set.
[[nodiscard]] QStringList outOfReach(QQuickWindow *window);

} // namespace lidlark::test
