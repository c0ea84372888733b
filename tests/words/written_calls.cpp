#include "tests/words/written_calls.h"

#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>

namespace lidlark::words {

namespace {

/// The first literal of a call, and what follows it directly.
const QRegularExpression &call()
{
    static const QRegularExpression found(QStringLiteral(
        R"re(\b(?:qsTr|tr|QT_TRANSLATE_NOOP\(\s*"\w+",)\(?\s*((?:"(?:[^"\\]|\\.)*"\s*)+))re"));
    return found;
}

QString joined(const QString &literals)
{
    static const QRegularExpression seam(QStringLiteral(R"("\s*")"));
    QString text = literals.trimmed();
    text.remove(seam);
    text = text.mid(1, text.size() - 2);
    return text.replace(QLatin1String("\\\""), QLatin1String("\""))
        .replace(QLatin1String("\\u2011"), QString(QChar(0x2011)));
}

} // namespace

QStringList writtenCallsIn(const QString &root)
{
    QStringList texts;
    QDirIterator files(root + QStringLiteral("/mobile"),
                       {QStringLiteral("*.cpp"), QStringLiteral("*.h"), QStringLiteral("*.qml")},
                       QDir::Files, QDirIterator::Subdirectories);
    while (files.hasNext()) {
        QFile file(files.next());
        if (!file.open(QIODevice::ReadOnly))
            continue;
        const QString source = QString::fromUtf8(file.readAll());
        for (auto calls = call().globalMatch(source); calls.hasNext();)
            texts.append(joined(calls.next().captured(1)));
    }
    return texts;
}

} // namespace lidlark::words
