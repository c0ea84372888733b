#include <QDir>
#include <QGuiApplication>
#include <QQuickStyle>
#include <QStandardPaths>
#include <QtQml/qqmlextensionplugin.h>

#include "command_line.h"
#include "graph.h"
#include "reader_watch.h"

#include "mobile/bridge/phone_voice.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

namespace {

QString usualStore()
{
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
    QDir().mkpath(folder); // when this fails, opening the store says so in plain words
    return folder + QStringLiteral("/home.lidlark");
}

} // namespace

int main(int argc, char **argv)
{
    using namespace lidlark::mobile;
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    QGuiApplication app(argc, argv);
    QGuiApplication::setApplicationName(QStringLiteral("lidlark"));
    QGuiApplication::setApplicationDisplayName(QStringLiteral("Lidlark"));
    QGuiApplication::setApplicationVersion(QStringLiteral(LIDLARK_VERSION));

    const CommandLine line(QGuiApplication::arguments());
    if (const auto done = line.exitStatus())
        return *done;
    StartOptions options = line.options();
    if (options.store.isEmpty())
        options.store = usualStore();
    Graph graph(options, std::make_unique<PhoneVoice>());
    const ReaderWatch reader(graph.appearance());
    return graph.show() ? QGuiApplication::exec() : 1;
}
