#include <QCommandLineParser>
#include <QDir>
#include <QGuiApplication>
#include <QStandardPaths>
#include <QtQml/qqmlextensionplugin.h>

#include "graph.h"

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
    QGuiApplication app(argc, argv);
    QGuiApplication::setApplicationName(QStringLiteral("lidlark"));
    QGuiApplication::setApplicationDisplayName(QStringLiteral("Lidlark"));
    QGuiApplication::setApplicationVersion(QStringLiteral(LIDLARK_VERSION));

    QCommandLineParser parser;
    parser.setApplicationDescription(QStringLiteral("Short play from a child's own box."));
    parser.addHelpOption();
    parser.addVersionOption();
    const QCommandLineOption store(QStringLiteral("store"), QStringLiteral("The store's file."),
                                   QStringLiteral("file"));
    const QCommandLineOption clock(QStringLiteral("clock"),
                                   QStringLiteral("Run on from this moment (for the demo)."),
                                   QStringLiteral("2027-01-11T18:25:00Z"));
    const QCommandLineOption scale(QStringLiteral("text-scale"),
                                   QStringLiteral("Text size, 1 to 2."), QStringLiteral("1.5"));
    const QCommandLineOption scheme(QStringLiteral("scheme"),
                                    QStringLiteral("light, dark or contrast."),
                                    QStringLiteral("dark"));
    parser.addOptions({store, clock, scale, scheme});
    parser.process(app);

    lidlark::mobile::StartOptions options;
    options.store = parser.isSet(store) ? parser.value(store) : usualStore();
    options.clock = parser.value(clock);
    options.textScale = parser.value(scale).toDouble();
    options.scheme = parser.value(scheme);
    lidlark::mobile::Graph graph(options);
    return graph.show() ? QGuiApplication::exec() : 1;
}
