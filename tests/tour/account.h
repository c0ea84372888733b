#pragma once

#include "tests/tour/hand.h"

#include <QDir>

#include <vector>

namespace lidlark::test {

/// What is wrong with the page as it stands, one line each.
using PageCheck = QStringList (*)(QQuickWindow *);

/// What is kept of a walk through the app: a numbered picture of each page, one line about it, and
/// what was found wrong with it. A tap that finds no control ends the walk; later taps do nothing.
class Account
{
public:
    /// @param checks what each page is looked at for.
    /// @param pictures that the folder holds already.
    Account(const QDir &folder, QQuickWindow *window, std::vector<PageCheck> checks,
            int pictures = 0)
        : m_folder(folder), m_hand(window), m_checks(std::move(checks)), m_number(pictures)
    {
    }

    /// One tap, one picture, one line.
    void tap(const char *name, const char *picture, const char *line);
    /// Like tap, for a control that asks to be held.
    void hold(const char *name, const char *picture, const char *line);
    /// A tap that is not worth a picture.
    void pass(const char *name);
    void show(const char *picture, const char *line);
    void add(const QString &text) { m_text += text; }

    [[nodiscard]] const Hand &hand() const { return m_hand; }
    [[nodiscard]] const QString &text() const { return m_text; }
    [[nodiscard]] int pictures() const { return m_number; }
    /// Why the walk ended early; empty: it did not.
    [[nodiscard]] const QString &failed() const { return m_failed; }
    /// "07-play-1: cut short: ..."
    [[nodiscard]] const QStringList &findings() const { return m_findings; }

private:
    void missing(const char *name);

    QDir m_folder;
    Hand m_hand;
    QString m_text;
    QString m_failed;
    QStringList m_findings;
    std::vector<PageCheck> m_checks;
    int m_number;
};

} // namespace lidlark::test
