// The floor of any Qt Quick Controls program: a window with one label and one button in it. Prints
// nothing; ends with its first frame.

#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QQuickWindow>

namespace {

constexpr auto page = R"(
import QtQuick
import QtQuick.Controls.Basic
ApplicationWindow {
    visible: true; width: 360; height: 640
    Column { Label { text: "Today" } Button { text: "Play" } }
})";

} // namespace

int main(int argc, char **argv)
{
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    QGuiApplication app(argc, argv);
    QQmlApplicationEngine engine;
    engine.loadData(page);
    auto *window = qobject_cast<QQuickWindow *>(engine.rootObjects().value(0));
    if (window == nullptr)
        return 1;
    QObject::connect(window, &QQuickWindow::frameSwapped, &app, &QGuiApplication::quit,
                     Qt::QueuedConnection);
    return QGuiApplication::exec();
}
