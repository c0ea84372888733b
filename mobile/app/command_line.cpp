#include "command_line.h"

#include <QCommandLineParser>
#include <QCoreApplication>

#include "core/base/instant.h"
#include "mobile/bridge/text.h"

#include <cstdio>

namespace lidlark::mobile {

namespace {

constexpr int wrongUseStatus = 2;
const QStringList schemes{QStringLiteral("light"), QStringLiteral("dark"),
                          QStringLiteral("contrast")};

QCommandLineOption option(const char *name, const char *what, const char *value)
{
    return QCommandLineOption(QString::fromLatin1(name), QString::fromLatin1(what),
                              QString::fromLatin1(value));
}

void print(FILE *stream, const QString &text)
{
    std::fputs(qPrintable(text), stream);
}

} // namespace

CommandLine::CommandLine(const QStringList &arguments)
{
    const auto store = option("store", "The store's file.", "file");
    const auto catalogue = option("catalogue", "Another catalogue's folder.", "folder");
    const auto clock = option("clock", "Run on from this moment (demo).", "2027-01-11T18:25:00Z");
    const auto scale = option("text-scale", "Text size, 1 to 2, for this run.", "1.5");
    const auto scheme = option("scheme", "light, dark or contrast, for this run.", "dark");
    const auto language = option("language", "Words and reading direction.", "ur");
    QCommandLineParser parser;
    parser.setApplicationDescription(QStringLiteral("Short play from a child's own box."));
    const QCommandLineOption help = parser.addHelpOption();
    const QCommandLineOption version = parser.addVersionOption();
    parser.addOptions({store, catalogue, clock, scale, scheme, language});
    if (!parser.parse(arguments))
        return wrongUse(parser.errorText());
    if (parser.isSet(help) || parser.isSet(version)) {
        print(stdout, parser.isSet(help) ? parser.helpText()
                                         : QCoreApplication::applicationName() + u' ' +
                                               QCoreApplication::applicationVersion() + u'\n');
        m_exitStatus = 0;
        return;
    }
    if (!parser.positionalArguments().isEmpty())
        return wrongUse(QStringLiteral("unknown: ") + parser.positionalArguments().constFirst());
    m_options.store = parser.value(store);
    m_options.catalogue = parser.value(catalogue);
    m_language = parser.value(language);
    if (parser.isSet(clock)) {
        const auto ms = msFromText(toCore(parser.value(clock)));
        if (!ms)
            return wrongUse(QStringLiteral("--clock: not a moment"));
        m_options.fromMs = *ms;
    }
    if (parser.isSet(scale)) {
        const double size = parser.value(scale).toDouble();
        if (!(size >= 1.0 && size <= 2.0))
            return wrongUse(QStringLiteral("--text-scale: 1 to 2"));
        m_options.textScale = size;
    }
    if (parser.isSet(scheme)) {
        const qsizetype index = schemes.indexOf(parser.value(scheme));
        if (index < 0)
            return wrongUse(QStringLiteral("--scheme: light, dark or contrast"));
        m_options.scheme = static_cast<int>(index);
    }
}

void CommandLine::wrongUse(const QString &reason)
{
    print(stderr, reason + u'\n');
    m_exitStatus = wrongUseStatus;
}

} // namespace lidlark::mobile
