#include "command_line.h"

#include <QCommandLineParser>
#include <QCoreApplication>

#include "core/base/instant.h"
#include "mobile/bridge/known_languages.h"
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

QString versionText()
{
    return QCoreApplication::applicationName() + u' ' + QCoreApplication::applicationVersion() +
           u'\n';
}

} // namespace

CommandLine::CommandLine(const QStringList &arguments)
{
    const QString problem = read(arguments);
    if (problem.isEmpty())
        return;
    print(stderr, problem + u'\n');
    m_exitStatus = wrongUseStatus;
}

QString CommandLine::read(const QStringList &arguments)
{
    const auto store = option("store", "The store's file.", "file");
    const auto catalogue = option("catalogue", "Another catalogue's folder.", "folder");
    const auto clock = option("clock", "Run on from this moment (demo).", "2027-01-11T18:25:00Z");
    const auto scale = option("text-scale", "Text size, 1 to 2, for this run.", "1.5");
    const auto scheme = option("scheme", "light, dark or contrast, for this run.", "dark");
    const auto language = option("language", "Words for this run: en, pl, ur or pseudo.", "ur");
    const QCommandLineOption still(QStringLiteral("reduced-motion"),
                                   QStringLiteral("Nothing moves in this run."));
    const QCommandLineOption remind(
        QStringLiteral("remind"),
        QStringLiteral("No window: say the reminder of the day if it is due, once."));
    QCommandLineParser parser;
    parser.setApplicationDescription(QStringLiteral("Short play from a child's own box."));
    const QCommandLineOption help = parser.addHelpOption();
    const QCommandLineOption version = parser.addVersionOption();
    parser.addOptions({store, catalogue, clock, scale, scheme, language, still, remind});
    if (!parser.parse(arguments))
        return parser.errorText();
    if (parser.isSet(help) || parser.isSet(version)) {
        print(stdout, parser.isSet(help) ? parser.helpText() : versionText());
        m_exitStatus = 0;
        return {};
    }
    if (!parser.positionalArguments().isEmpty())
        return QStringLiteral("unknown: ") + parser.positionalArguments().constFirst();
    m_options.store = parser.value(store);
    m_options.catalogue = parser.value(catalogue);
    m_options.language = parser.value(language);
    m_options.remind = parser.isSet(remind);
    const bool known = knownLanguage(m_options.language) != nullptr ||
                       m_options.language == QLatin1String(stretchedLanguage);
    if (parser.isSet(language) && !known)
        return QStringLiteral("--language: en, pl, ur or pseudo");
    m_options.reducedMotion = parser.isSet(still);
    if (parser.isSet(clock)) {
        m_options.fromMs = msFromText(toCore(parser.value(clock)));
        if (!m_options.fromMs)
            return QStringLiteral("--clock: not a moment");
    }
    if (parser.isSet(scale)) {
        m_options.textScale = parser.value(scale).toDouble();
        if (!(*m_options.textScale >= 1.0 && *m_options.textScale <= 2.0))
            return QStringLiteral("--text-scale: 1 to 2");
    }
    if (parser.isSet(scheme)) {
        m_options.scheme = static_cast<int>(schemes.indexOf(parser.value(scheme)));
        if (*m_options.scheme < 0)
            return QStringLiteral("--scheme: light, dark or contrast");
    }
    return {};
}

} // namespace lidlark::mobile
