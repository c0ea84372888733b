#include "mobile/bridge/voice.h"

namespace lidlark::mobile {

namespace {

/// An engine pauses at the end of a sentence; a line without a full stop would run into the next.
QString asSentence(const QString &line)
{
    const QString bare = line.trimmed();
    const QString ends = QStringLiteral(".?!۔؟");
    const bool ended = !bare.isEmpty() && ends.contains(bare.back());
    return ended || bare.isEmpty() ? bare : bare + u'.';
}

} // namespace

void Voice::read(const QStringList &lines)
{
    if (m_silencedByTouch)
        return;
    if (m_speaking) // a key or a screen reader, which touches nothing
        return stop();
    QStringList sentences;
    for (const QString &line : lines)
        sentences << asSentence(line);
    sentences.removeAll(QString());
    say(sentences.join(u' '));
}

void Voice::touchBegan()
{
    m_silencedByTouch = m_speaking;
    if (m_speaking)
        stop();
}

void Voice::touchEnded()
{
    m_silencedByTouch = false;
}

void Voice::setSpeaking(bool speaking)
{
    if (m_speaking == speaking)
        return;
    m_speaking = speaking;
    emit speakingChanged();
}

} // namespace lidlark::mobile
