#include "mobile/bridge/phone_voice.h"

#include <QLocale>
#include <QTextToSpeech>

#include <algorithm>
#include <chrono>

namespace lidlark::mobile {

namespace {

/// An engine may stay "speaking" for ever. Slow speech has about ten letters a second; by then and
/// a little more the line is over whatever the engine says.
std::chrono::milliseconds longest(const QString &text)
{
    constexpr std::chrono::milliseconds aLetter{100};
    constexpr std::chrono::milliseconds toBegin{2000};
    return toBegin + aLetter * text.size();
}

} // namespace

PhoneVoice::PhoneVoice(QObject *parent) : Voice(parent)
{
    m_surelyOver.setSingleShot(true);
    connect(&m_surelyOver, &QTimer::timeout, this, [this] { setSpeaking(false); });
    QTimer::singleShot(0, this, &PhoneVoice::look);
}

void PhoneVoice::look()
{
    if (QTextToSpeech::availableEngines().isEmpty())
        return; // asking Qt for one all the same would only fill the log
    m_speech = new QTextToSpeech(this);
    // An engine without a sound device may first fail when it is to speak. It may also stay
    // "speaking" for ever, so nothing here waits for it to be ready again.
    connect(m_speech, &QTextToSpeech::stateChanged, this, [this](QTextToSpeech::State state) {
        if (state == QTextToSpeech::Error)
            setAvailable(false);
        if (state != QTextToSpeech::Speaking)
            setSpeaking(false);
        else if (!m_available && state == QTextToSpeech::Ready)
            findVoice();
    });
    if (m_speech->state() == QTextToSpeech::Ready)
        findVoice();
}

void PhoneVoice::findVoice()
{
    const QLocale app;
    const QList<QLocale> spoken = m_speech->availableLocales();
    auto found = std::ranges::find(spoken, app);
    if (found == spoken.end()) // another country's voice is better than none
        found = std::ranges::find(spoken, app.language(), &QLocale::language);
    if (found == spoken.end())
        return setAvailable(false);
    m_speech->setLocale(*found);
    setAvailable(!m_speech->availableVoices().isEmpty());
}

void PhoneVoice::changeLanguage()
{
    stop();
    if (m_speech != nullptr && m_speech->state() != QTextToSpeech::Error)
        findVoice();
}

void PhoneVoice::setAvailable(bool available)
{
    if (m_available == available)
        return;
    m_available = available;
    emit availableChanged();
}

void PhoneVoice::say(const QString &text)
{
    if (!m_available)
        return;
    m_speech->stop();
    m_speech->say(text);
    setSpeaking(true);
    m_surelyOver.start(longest(text));
}

void PhoneVoice::stop()
{
    if (m_available)
        m_speech->stop();
    setSpeaking(false);
}

} // namespace lidlark::mobile
