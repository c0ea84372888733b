// How long the screens keep a finger waiting on a whole evening (tests/tour), beside what an empty
// Qt Quick Controls window needs for one frame on the same machine. Ratios; a time alone says
// nothing.
//
//   lidlark-bench-frames FOLDER
//
// A frame is what its window does between `afterAnimating` and `frameSwapped`: polish, synchronise,
// render, here by the software renderer. A wait is one event with all it sets off: the page a tap
// opens is made within the tap. Writes the evening's pictures into FOLDER.

#include <QDir>
#include <QElapsedTimer>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QtQml/qqmlextensionplugin.h>

#include "tests/bench/start/empty_page.h"
#include "tests/tour/evening.h"

#include <algorithm>
#include <cstdio>
#include <vector>

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

namespace {

/// The two thresholds people are known by: a frame of a 60 Hz screen, and what is still felt as at
/// once (0.1 s: Nielsen, Usability Engineering, 1993, chapter 5, after Miller 1968; from memory).
constexpr double frameMs = 1000.0 / 60;
constexpr double atOnceMs = 100;

double msOf(const QElapsedTimer &timer)
{
    return static_cast<double>(timer.nsecsElapsed()) / 1e6;
}

/// An application that times its events, and the frames of every window that is shown.
class TimedApplication : public QGuiApplication
{
public:
    using QGuiApplication::QGuiApplication;

    std::vector<double> frames;
    std::vector<double> waits;

    bool notify(QObject *receiver, QEvent *event) override
    {
        if (event->type() == QEvent::Expose)
            watch(qobject_cast<QQuickWindow *>(receiver));
        if (m_depth > 0)
            return QGuiApplication::notify(receiver, event);
        ++m_depth;
        QElapsedTimer timer;
        timer.start();
        const bool done = QGuiApplication::notify(receiver, event);
        waits.push_back(msOf(timer));
        --m_depth;
        return done;
    }

private:
    void watch(QQuickWindow *window)
    {
        if (window == nullptr || window->property("watched").toBool())
            return;
        window->setProperty("watched", true);
        connect(window, &QQuickWindow::afterAnimating, this, [this] { m_frame.start(); });
        connect(window, &QQuickWindow::frameSwapped, this, [this] {
            if (m_frame.isValid())
                frames.push_back(msOf(m_frame));
            m_frame.invalidate();
        });
    }

    int m_depth = 0;
    QElapsedTimer m_frame;
};

double at(const std::vector<double> &sorted, double share)
{
    return sorted[static_cast<std::size_t>(share * static_cast<double>(sorted.size() - 1))];
}

std::ptrdiff_t over(const std::vector<double> &values, double limit)
{
    return std::ranges::count_if(values, [limit](double value) { return value > limit; });
}

/// The middle frame of a window with a label and a button, redrawn as a whole.
double emptyFrame(TimedApplication &app)
{
    QQmlApplicationEngine engine;
    engine.loadData(lidlark::bench::emptyPage);
    auto *window = qobject_cast<QQuickWindow *>(engine.rootObjects().value(0));
    if (window == nullptr)
        return 0;
    constexpr int frames = 200;
    for (int i = 0; i < frames; ++i) {
        window->resize(360, 640 + i % 2);
        window->requestUpdate();
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    }
    std::vector<double> taken = std::exchange(app.frames, {});
    app.waits.clear();
    std::ranges::sort(taken);
    return taken.empty() ? 0 : at(taken, 0.5);
}

void print(const char *what, std::vector<double> values, double floor)
{
    std::ranges::sort(values);
    std::printf("%-7s %6zu   middle %6.1f ms (%4.1f empty frames)   95 of 100 %6.1f ms (%4.1f)   "
                "longest %6.1f ms (%4.1f)   over one frame %4td   over 0.1 s %3td\n",
                what, values.size(), at(values, 0.5), at(values, 0.5) / floor, at(values, 0.95),
                at(values, 0.95) / floor, values.back(), values.back() / floor,
                over(values, frameMs), over(values, atOnceMs));
}

} // namespace

int main(int argc, char **argv)
{
    TimedApplication app(argc, argv);
    if (argc != 2) {
        std::fprintf(stderr, "lidlark-bench-frames FOLDER\n");
        return 2;
    }
    const double floor = emptyFrame(app);
    QDir folder(QString::fromLocal8Bit(argv[1]));
    if (floor <= 0 || !folder.mkpath(QStringLiteral(".")))
        return 1;
    const lidlark::test::Evening evening = lidlark::test::walkAnEvening(folder, {});
    if (!evening.failed.isEmpty()) {
        std::fprintf(stderr, "The evening stopped: %s\n", qPrintable(evening.failed));
        return 1;
    }
    std::printf("an empty window's frame: %.1f ms\n", floor);
    print("frames", app.frames, floor);
    print("waits", app.waits, floor);
    return 0;
}
