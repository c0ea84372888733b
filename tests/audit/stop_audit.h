#pragma once

#include "tests/states/wander.h"

#include <QMap>
#include <QStringList>

namespace lidlark::audit {

/// How a page can be held and shown.
struct Shown {
    QSize size;
    double textScale = 1.0;
    int scheme = 0; ///< 0 light, 1 dark, 2 high contrast.
};

/// Every way that is promised: the smallest phone, an ordinary one, a tablet, a phone lying down
/// (job.md A1); 100 and 200 %; light, dark, high contrast. Of a language in a script that another
/// is looked at in, the tightest and the usual one; all of them in the slow mode (LIDLARK_LONG).
[[nodiscard]] std::vector<Shown> everyWay(const QString &language);

/// Looks at one state in every way, laid out again each time by the same process.
class StopAudit
{
public:
    StopAudit(const test::Stop &stop, QString language);

    void run();
    /// One line each: state, size, scale, scheme, language, and the words.
    [[nodiscard]] QStringList findings() const;

private:
    void lookAt(const Shown &way);
    [[nodiscard]] QStringList lookAtWords() const;
    void add(const QStringList &findings, const Shown &way);

    test::Stop m_stop;
    QString m_language;
    QMap<QString, QStringList> m_findings; ///< To each, the ways in which it was found.
};

} // namespace lidlark::audit
