#include <QDir>
#include <QGuiApplication>
#include <QQuickStyle>
#include <QStandardPaths>
#include <QtQml/qqmlextensionplugin.h>

#include "command_line.h"
#include "graph.h"
#include "reader_watch.h"
#include "remind_once.h"

#include "mobile/bridge/appearance.h"
#include "mobile/bridge/crew_life.h"
#include "mobile/bridge/phone_voice.h"
#include "mobile/platform/battery.h"
#include "mobile/platform/desktop_notifier.h"
#include "mobile/platform/metered.h"
#include "mobile/platform/system_keychain.h"

#include <memory>
#include <span>
#include <string_view>

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

namespace {

QString usualStore()
{
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
    QDir().mkpath(folder); // when this fails, opening the store says so in plain words
    return folder + QStringLiteral("/home.lidlark");
}

/// A timer of the system has no screen, and an application with windows would not start there.
std::unique_ptr<QCoreApplication> applicationFor(int &argc, char **argv)
{
    for (const char *argument : std::span(argv, static_cast<std::size_t>(argc))) {
        if (std::string_view(argument) == "--remind")
            return std::make_unique<QCoreApplication>(argc, argv);
    }
    return std::make_unique<QGuiApplication>(argc, argv);
}

} // namespace

int main(int argc, char **argv)
{
    using namespace lidlark::mobile;
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    const std::unique_ptr<QCoreApplication> app = applicationFor(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("lidlark"));
    QGuiApplication::setApplicationDisplayName(QStringLiteral("Lidlark"));
    QCoreApplication::setApplicationVersion(QStringLiteral(LIDLARK_VERSION));

    const CommandLine line(QCoreApplication::arguments());
    if (const auto done = line.exitStatus())
        return *done;
    StartOptions options = line.options();
    if (options.store.isEmpty())
        options.store = usualStore();
    if (options.remind) {
        const Language language(options.language);
        DesktopNotifier notifier;
        return remindOnce(options, notifier);
    }
    Graph graph(options, std::make_unique<PhoneVoice>(), std::make_unique<DesktopNotifier>(),
                std::make_shared<SystemKeychain>());
    const ReaderWatch reader(graph.appearance());
    BatteryWatch battery{QDir(QStringLiteral("/sys/class/power_supply"))};
    QObject::connect(&battery, &BatteryWatch::lowChanged, &graph.appearance(),
                     &Appearance::setBatteryLow);
    battery.look();
    CrewLife &crew = graph.crewLife();
    crew.spareWhile(
        [&battery](bool onServer) { return battery.low() || (onServer && networkIsMetered()); });
    QObject::connect(qGuiApp, &QGuiApplication::applicationStateChanged, &crew,
                     [&crew](Qt::ApplicationState state) {
                         if (state == Qt::ApplicationActive)
                             crew.shareByItself();
                     });
    return graph.show() ? QGuiApplication::exec() : 1;
}
