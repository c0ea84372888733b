// The floor of any Qt Quick Controls program: a window with one label and one button in it. Prints
// nothing; ends with its first frame.

#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QQuickWindow>

#include "tests/bench/start/empty_page.h"

int main(int argc, char **argv)
{
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    QGuiApplication app(argc, argv);
    QQmlApplicationEngine engine;
    engine.loadData(lidlark::bench::emptyPage);
    auto *window = qobject_cast<QQuickWindow *>(engine.rootObjects().value(0));
    if (window == nullptr)
        return 1;
    QObject::connect(window, &QQuickWindow::frameSwapped, &app, &QGuiApplication::quit,
                     Qt::QueuedConnection);
    return QGuiApplication::exec();
}
