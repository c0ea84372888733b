// Lidlark from a cold start to its first frame: the whole app on a family's store.
//
//   lidlark-first-frame STORE

#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QtQml/qqmlextensionplugin.h>

#include "core/base/instant.h"
#include "mobile/app/graph.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

int main(int argc, char **argv)
{
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    QGuiApplication app(argc, argv);
    lidlark::mobile::StartOptions options;
    options.store = QString::fromLocal8Bit(argc > 1 ? argv[1] : "");
    options.fromMs = lidlark::msFromText("2027-01-11T18:25:00Z");
    lidlark::mobile::Graph graph(options);
    if (!graph.show())
        return 1;
    auto *window = qobject_cast<QQuickWindow *>(graph.engine().rootObjects().constFirst());
    QObject::connect(window, &QQuickWindow::frameSwapped, &app, &QGuiApplication::quit,
                     Qt::QueuedConnection);
    return QGuiApplication::exec();
}
