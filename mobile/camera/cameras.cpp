#include "cameras.h"

#include <QDir>
#include <QGuiApplication>
#include <QLibraryInfo>
#include <QMediaDevices>

#include <algorithm>

namespace lidlark::mobile {

namespace {

/// Debian's Qt has two backends. The one it takes by itself sees a camera only with plugins that no
/// package of Qt asks for; the other one needs nothing more. Asked for where it is not, Qt ends the
/// program.
void chooseBackend()
{
    static constexpr auto variable = "QT_MEDIA_BACKEND";
    const QDir backends(QLibraryInfo::path(QLibraryInfo::PluginsPath) +
                        QStringLiteral("/multimedia"));
    const bool there = !backends.entryList({QStringLiteral("*ffmpegmediaplugin*")}).isEmpty();
    if (there && !qEnvironmentVariableIsSet(variable))
        qputenv(variable, "ffmpeg");
}

/// Then nobody stands before a camera, and none is to be opened: tests run on people's own
/// machines.
bool nobodyLooks()
{
    return QGuiApplication::platformName() == QStringLiteral("offscreen");
}

} // namespace

Cameras::Cameras(QObject *parent) : QObject(parent)
{
    chooseBackend();
    if (nobodyLooks())
        return;
    // Not an object of QMediaDevices: that one asks a sound server as well.
    const QList<QCameraDevice> all = QMediaDevices::videoInputs();
    const auto looksAway = [](const QCameraDevice &device) {
        return device.position() == QCameraDevice::BackFace;
    };
    const auto away = std::ranges::find_if(all, looksAway);
    if (away != all.end())
        m_best = *away;
    else if (!all.isEmpty())
        m_best = QMediaDevices::defaultVideoInput();
}

} // namespace lidlark::mobile
