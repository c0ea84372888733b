#include "tests/tour/account.h"

namespace lidlark::test {

void Account::tap(const char *name, const char *picture, const char *line)
{
    pass(name);
    show(picture, line);
}

void Account::hold(const char *name, const char *picture, const char *line)
{
    if (m_failed.isEmpty() && !m_hand.hold(QString::fromUtf8(name)))
        missing(name);
    show(picture, line);
}

void Account::pass(const char *name)
{
    if (m_failed.isEmpty() && !m_hand.tap(QString::fromUtf8(name)))
        missing(name);
}

void Account::show(const char *picture, const char *line)
{
    if (!m_failed.isEmpty())
        return;
    const QString name = QStringLiteral("%1-%2")
                             .arg(++m_number, 2, 10, QLatin1Char('0'))
                             .arg(QString::fromUtf8(picture));
    if (!m_hand.picture(m_folder.filePath(name + QStringLiteral(".png"))))
        m_failed = QStringLiteral("Could not save %1.png").arg(name);
    m_text += QStringLiteral("%1.png  %2\n").arg(name, QString::fromUtf8(line));
    for (const PageCheck check : m_checks) {
        for (const QString &finding : check(m_hand.window()))
            m_findings.append(name + QStringLiteral(": ") + finding);
    }
}

void Account::missing(const char *name)
{
    m_failed = QStringLiteral("No control called \"%1\". On screen: %2")
                   .arg(QString::fromUtf8(name), m_hand.names().join(QStringLiteral(" | ")));
}

} // namespace lidlark::test
