#include "mobile/bridge/square_reader.h"

#include "mobile/bridge/text.h"

namespace lidlark::mobile {

SquareReader::SquareReader(QObject *parent) : QObject(parent)
{
    m_thread.setMaxThreadCount(1);
    m_rest.setSingleShot(true);
    m_rest.setInterval(restMs);
    connect(&m_rest, &QTimer::timeout, this, &SquareReader::readyChanged);
}

SquareReader::~SquareReader()
{
    m_thread.waitForDone(); // what it looks at answers to this
}

void SquareReader::setReading(bool reading)
{
    if (reading == m_reading)
        return;
    m_reading = reading;
    ++m_turn;
    if (reading) {
        m_rest.stop();
        setForeign(false);
    }
    emit readingChanged();
    emit readyChanged();
}

void SquareReader::look(const QImage &picture)
{
    if (!ready() || picture.isNull())
        return;
    m_looking = true;
    emit readyChanged();
    m_thread.start([this, picture, turn = m_turn] {
        const auto answer = [this, turn, seen = squaresIn(picture)] { take(turn, seen); };
        QMetaObject::invokeMethod(this, answer, Qt::QueuedConnection);
    });
}

void SquareReader::take(int turn, const std::optional<SeenSquares> &seen)
{
    m_looking = false;
    m_rest.start();
    if (turn != m_turn || !seen)
        return;
    if (!seen->invitation) {
        setForeign(true);
        return;
    }
    setForeign(false);
    setReading(false);
    emit read(fromCore(seen->text));
}

void SquareReader::setForeign(bool foreign)
{
    if (foreign == m_foreign)
        return;
    m_foreign = foreign;
    emit foreignChanged();
}

} // namespace lidlark::mobile
