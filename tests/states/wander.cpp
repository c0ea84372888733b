#include "tests/states/wander.h"

#include "core/base/instant.h"
#include "mobile/bridge/appearance.h"
#include "mobile/bridge/crew_life.h"
#include "tests/support/phone.h"
#include "tests/tour/listening_voice.h"

#include <QProcess>
#include <QQmlApplicationEngine>

namespace lidlark::test {

namespace {

const QString english = QStringLiteral("en");

void ask(const QStringList &arguments)
{
    QProcess cli;
    cli.start(QStringLiteral(LIDLARK_CLI), arguments);
    cli.waitForFinished();
    if (cli.exitCode() != 0)
        qFatal("the demo island could not be written");
}

/// A copy of the catalogue that ships, to be spoilt.
void copyCatalogue(const QString &folder)
{
    std::filesystem::copy(sourceDir() + "/assets/catalogue", folder.toStdString(),
                          std::filesystem::copy_options::recursive |
                              std::filesystem::copy_options::overwrite_existing);
}

/// Names in the current folder: a path on a screen is the same on every machine.
mobile::StartOptions startOn(const Leg &leg, const QString &language)
{
    mobile::StartOptions options;
    options.store = QString::fromUtf8(leg.store);
    options.catalogue = QString::fromUtf8(leg.catalogue);
    options.fromMs = msFromText(leg.clock);
    options.textScale = 1.0;
    options.scheme = 0;
    options.reducedMotion = true;
    options.language = language;
    return options;
}

} // namespace

Wander::Wander(const QString &language) : m_language(language)
{
    for (const auto *island : {"fresh", "lived"})
        ask({QStringLiteral("demo"), m_folder.filePath(QString::fromUtf8(island))});
    ask({QStringLiteral("demo"), m_folder.filePath(QStringLiteral("lived")),
         QStringLiteral("--day"), QStringLiteral("9")});
}

QDir Wander::folderFor(const QString &language) const
{
    QDir folder(m_folder.filePath(QStringLiteral("in-") + language));
    (void)folder.mkpath(QStringLiteral("."));
    return folder;
}

QString Wander::lay(const Leg &leg, const QDir &folder) const
{
    const QString store = folder.filePath(QString::fromUtf8(leg.store));
    if (leg.from != nullptr) {
        QFile::remove(store);
        if (!QFile::copy(m_folder.filePath(QString::fromUtf8(leg.from)), store))
            return QStringLiteral("no store %1").arg(QString::fromUtf8(leg.from));
    }
    if (leg.catalogue != nullptr && leg.prepare != nullptr)
        copyCatalogue(folder.filePath(QString::fromUtf8(leg.catalogue)));
    if (leg.prepare != nullptr)
        leg.prepare(folder);
    return {};
}

QString Wander::walk(const Leg &leg, const QString &language, Trail &trail,
                     const Walk::Seen &seen) const
{
    const QDir folder = folderFor(language);
    const QString unlaid = lay(leg, folder);
    if (!unlaid.isEmpty())
        return unlaid;
    std::unique_ptr<mobile::Voice> voice;
    if (leg.aloud)
        voice = std::make_unique<ListeningVoice>(std::make_shared<QStringList>());
    QDir::setCurrent(folder.path());
    mobile::Graph graph(startOn(leg, language), std::move(voice));
    graph.crewLife().takeChanceFrom([](int errand) {
        return std::make_unique<SeededEntropy>("errand " + std::to_string(errand));
    });
    if (!graph.show())
        return QStringLiteral("the window could not be made");
    auto *window = qobject_cast<QQuickWindow *>(graph.engine().rootObjects().constFirst());
    window->resize(firstSize);
    Hand::settle(100);
    Walk walked(graph, window, trail, seen);
    leg.walk(walked);
    return walked.failed();
}

QString Wander::walk(const Leg &leg, const Walk::Seen &seen)
{
    Trail trail;
    if (m_language == english)
        return walk(leg, english, trail, seen);
    const QString failed = walk(leg, english, trail, [](const Stop &) {});
    if (!failed.isEmpty())
        return failed;
    trail.follow();
    return walk(leg, m_language, trail, seen);
}

void Wander::layOut(const Stop &stop, const QSize &size, double textScale, int scheme)
{
    const bool moves = stop.window->size() != size ||
                       !qFuzzyCompare(stop.graph->appearance().textScale(), textScale);
    stop.graph->appearance().tryOn(textScale, scheme, true);
    if (stop.window->size() != size)
        stop.window->resize(size);
    // What one frame has laid out may move what stands beside it in the next.
    for (int frame = 0; frame < (moves ? 3 : 1); ++frame) {
        QCoreApplication::processEvents();
        (void)stop.window->grabWindow();
    }
}

} // namespace lidlark::test
