#pragma once

#include <QQuickWindow>
#include <QStringList>

namespace lidlark::audit {

/// What one hand cannot do as well as the other (job.md A7): the action of a page lies in its lower
/// half, and with the phone in the left hand what stands beside it changes sides. Where the two lie
/// below each other there is no side to change.
/// @param theme the singleton of Lidlark.Design; as before afterwards.
[[nodiscard]] QStringList checkHands(QQuickWindow *window, QObject *theme);

} // namespace lidlark::audit
