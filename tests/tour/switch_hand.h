#pragma once

#include "tests/tour/hand.h"

namespace lidlark::test {

/// Somebody with two switches: one key goes on, one presses. Looks at what is lit, opens every
/// group in turn, and leaves it again where what is wanted is not in it.
class SwitchHand
{
public:
    explicit SwitchHand(QQuickWindow *window);

    /// The control that is lit; null: a group, the way out of one, or nothing.
    [[nodiscard]] QQuickItem *lit() const;
    [[nodiscard]] QString litName() const;
    /// Goes on until a control is lit whose name begins with @p name. @returns false when all were
    /// lit and none was it.
    bool reach(const QString &name);
    /// Reaches it and presses it.
    bool press(const QString &name);
    /// Every control of the page in the order in which they are lit.
    QList<QQuickItem *> everyControl();

    /// Names of those that everyControl() found lit where nobody sees it.
    [[nodiscard]] const QStringList &litOutOfSight() const { return m_hidden; }

    void onward() const;
    void select() const;

private:
    /// Goes on to the next control, through groups.
    QQuickItem *next();
    [[nodiscard]] bool leaving() const;

    QQuickWindow *m_window;
    QQuickItem *m_scan;
    QStringList m_hidden;
};

/// What one with switches could not reach on the page as it stands, one line each: a control that
/// is not lit, or twice, or out of the order of the Tab key; one that is lit out of sight.
[[nodiscard]] QStringList hardToScan(QQuickWindow *window);

} // namespace lidlark::test
