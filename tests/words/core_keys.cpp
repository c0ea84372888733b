#include "tests/words/core_keys.h"

#include <QDir>
#include <QFile>
#include <QRegularExpression>

#include <algorithm>

namespace lidlark::words {

namespace {

QRegularExpressionMatch literalAt(const QString &code, qsizetype at)
{
    static const QRegularExpression literal(QStringLiteral(R"re(\s*"((?:[^"\\]|\\.)*)")re"));
    return literal.match(code, at, QRegularExpression::NormalMatch,
                         QRegularExpression::AnchorAtOffsetMatchOption);
}

const QRegularExpression &escape()
{
    static const QRegularExpression found(QStringLiteral(R"(\\(u[0-9A-Fa-f]{4}|.))"));
    return found;
}

/// What the compiler makes of the inside of a literal.
QString unescaped(const QString &inside)
{
    QString text;
    qsizetype from = 0;
    for (auto found = escape().globalMatch(inside); found.hasNext();) {
        const auto match = found.next();
        const QString code = match.captured(1);
        text += inside.mid(from, match.capturedStart() - from);
        text += code.startsWith(u'u') ? QString(QChar(code.mid(1).toUShort(nullptr, 16)))
                : code == u"n"        ? QStringLiteral("\n")
                                      : code;
        from = match.capturedEnd();
    }
    return text + inside.mid(from);
}

QString withoutComments(QString source)
{
    static const QRegularExpression comment(QStringLiteral(R"((?m)^\s*//.*$)"));
    return source.remove(comment);
}

} // namespace

FoundKeys coreKeysIn(const QString &name, const QString &source)
{
    static const QRegularExpression call(QStringLiteral(R"(\bsay(Counted)?\()"));
    const QString code = withoutComments(source);
    FoundKeys found;
    for (auto calls = call.globalMatch(code); calls.hasNext();) {
        const auto match = calls.next();
        QString text;
        qsizetype at = match.capturedEnd();
        for (auto part = literalAt(code, at); part.hasMatch(); part = literalAt(code, at)) {
            text += unescaped(part.captured(1));
            at = part.capturedEnd();
        }
        if (text.isEmpty() || !code.mid(at).trimmed().startsWith(u')'))
            found.problems.append(QStringLiteral("%1: not a plain literal: %2")
                                      .arg(name, code.mid(match.capturedStart(), 60)));
        else
            found.keys.push_back({QStringLiteral("core"), text, !match.captured(1).isEmpty()});
    }
    return found;
}

FoundKeys coreKeysOf(const QString &root)
{
    FoundKeys all;
    const QDir core(root + QStringLiteral("/core"));
    // Elsewhere in sync it is events that are said.
    const std::pair<QString, QString> places[] = {
        {QStringLiteral("wording"), QStringLiteral("*.cpp")},
        {QStringLiteral("sync"), QStringLiteral("*_words.cpp")}};
    for (const auto &[folder, names] : places) {
        const QDir within(core.filePath(folder));
        for (const QString &name : within.entryList({names}, QDir::Files)) {
            QFile file(within.filePath(name));
            if (!file.open(QIODevice::ReadOnly)) {
                all.problems.append(name + QStringLiteral(": cannot be read"));
                continue;
            }
            const FoundKeys here = coreKeysIn(name, QString::fromUtf8(file.readAll()));
            all.keys.insert(all.keys.end(), here.keys.begin(), here.keys.end());
            all.problems.append(here.problems);
        }
    }
    std::sort(all.keys.begin(), all.keys.end());
    for (std::size_t i = 1; i < all.keys.size(); ++i) {
        if (all.keys[i].place() == all.keys[i - 1].place() && !(all.keys[i] == all.keys[i - 1]))
            all.problems.append(QStringLiteral("counted in one place, not in another: ") +
                                all.keys[i].source);
    }
    all.keys.erase(std::unique(all.keys.begin(), all.keys.end()), all.keys.end());
    return all;
}

} // namespace lidlark::words
