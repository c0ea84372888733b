#pragma once

#include <QQuickWindow>
#include <QStringList>

namespace lidlark::test {

/// What a screen reader says of the page from its first word to its last: "button: Next step".
[[nodiscard]] QStringList saidAloud(QQuickWindow *window);

/// What somebody who only hears the page could not know, one line each: a control without a role
/// or a name, two that sound alike, a choice whose state is not said, a picture without words,
/// words said twice, a page without a heading.
[[nodiscard]] QStringList hardToHear(QQuickWindow *window);

} // namespace lidlark::test
