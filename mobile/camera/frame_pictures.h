#pragma once

#include <QImage>
#include <QObject>
#include <QPointer>
#include <QVideoSink>
#include <QtQml/qqmlregistration.h>

namespace lidlark::mobile {

/// Hands on single pictures of what a camera shows, while they are wanted. All others go by unread.
class FramePictures : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    /// Where the camera shows what it sees.
    Q_PROPERTY(QVideoSink *sink READ sink WRITE setSink NOTIFY sinkChanged FINAL)
    Q_PROPERTY(bool wanted MEMBER m_wanted NOTIFY wantedChanged FINAL)
    /// Something has come from this sink.
    Q_PROPERTY(bool seeing READ seeing NOTIFY seeingChanged FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] QVideoSink *sink() const { return m_sink; }
    void setSink(QVideoSink *sink);
    [[nodiscard]] bool seeing() const { return m_seeing; }

signals:
    void sinkChanged();
    void wantedChanged();
    void seeingChanged();
    void picture(const QImage &picture);

private:
    void take(const QVideoFrame &frame);
    void setSeeing(bool seeing);

    QPointer<QVideoSink> m_sink;
    bool m_wanted = false;
    bool m_seeing = false;
};

} // namespace lidlark::mobile
