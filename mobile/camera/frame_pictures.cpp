#include "frame_pictures.h"

#include "frame_light.h"

namespace lidlark::mobile {

void FramePictures::setSink(QVideoSink *sink)
{
    if (sink == m_sink)
        return;
    if (m_sink)
        m_sink->disconnect(this);
    m_sink = sink;
    setSeeing(false);
    // A camera may show what it sees from a thread of its own; this runs on the screens'.
    if (sink != nullptr)
        connect(sink, &QVideoSink::videoFrameChanged, this, &FramePictures::take);
    emit sinkChanged();
}

void FramePictures::take(const QVideoFrame &frame)
{
    if (!frame.isValid()) // a camera that is switched off shows this
        return;
    setSeeing(true);
    if (!m_wanted)
        return;
    const QImage seen = pictureOf(frame);
    if (!seen.isNull())
        emit picture(seen);
}

void FramePictures::setSeeing(bool seeing)
{
    if (seeing == m_seeing)
        return;
    m_seeing = seeing;
    emit seeingChanged();
}

} // namespace lidlark::mobile
