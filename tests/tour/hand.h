#pragma once

#include <QQuickItem>
#include <QQuickWindow>
#include <QString>

namespace lidlark::test {

/// Call once, right after the application object: the offscreen platform has no screen reader to
/// wake the accessible tree.
void wakeAccessibleTree();

/// A hand that knows controls by what a screen reader would say, and taps where they are.
class Hand
{
public:
    explicit Hand(QQuickWindow *window) : m_window(window) {}

    [[nodiscard]] QQuickWindow *window() const { return m_window; }

    /// The first control on screen whose accessible name begins with @p name; null: none.
    [[nodiscard]] QQuickItem *find(const QString &name) const;
    /// Scrolls it into view and taps it. @returns false when there is no such control.
    bool tap(const QString &name) const;
    /// Presses it for the time that a held control asks for.
    bool hold(const QString &name) const;
    /// Lets animations and timers run; without @p ms as long as the longest of them.
    static void settle();
    static void settle(int ms);
    /// From here on nothing moves (reduced motion), so a tap needs no time to settle.
    static void beQuick();
    /// Whether some words on screen, a control's name among them, hold @p words.
    [[nodiscard]] bool reads(const QString &words) const;
    /// Everything a screen reader would say, for a message.
    [[nodiscard]] QStringList words() const;
    /// Types @p text into the field whose accessible name begins with @p name.
    bool write(const QString &name, const QString &text) const;
    /// All names on screen, for the account.
    [[nodiscard]] QStringList names() const;
    bool picture(const QString &file) const;

private:
    QQuickWindow *m_window;
};

} // namespace lidlark::test
