#include "mobile/bridge/phone_voice.h"

#include <QLocale>
#include <QTextToSpeech>
#include <QTimer>

#include <algorithm>

namespace lidlark::mobile {

PhoneVoice::PhoneVoice(QObject *parent) : Voice(parent)
{
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
}

void PhoneVoice::stop()
{
    if (m_available)
        m_speech->stop();
}

} // namespace lidlark::mobile
