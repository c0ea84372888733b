#include "tests/mobile/bridge/stand_in_engine.h"

namespace lidlark::test {

EngineRecord &engineRecord()
{
    static EngineRecord record;
    return record;
}

QList<QLocale> StandInEngine::availableLocales() const
{
    return engineRecord().locales;
}

QList<QVoice> StandInEngine::availableVoices() const
{
    if (!engineRecord().hasVoices)
        return {};
    return {createVoice(QStringLiteral("stand-in"), m_locale, QVoice::Unknown, QVoice::Other, {})};
}

void StandInEngine::say(const QString &text)
{
    engineRecord().asked.append(QStringLiteral("say ") + text);
    // Without a sound device an engine of Debian 12 goes to an error here.
    turn(engineRecord().state == QTextToSpeech::Error ? QTextToSpeech::Error
                                                      : QTextToSpeech::Speaking);
}

void StandInEngine::stop(QTextToSpeech::BoundaryHint)
{
    engineRecord().asked.append(QStringLiteral("stop"));
}

bool StandInEngine::setRate(double)
{
    engineRecord().asked.append(QStringLiteral("rate"));
    return true;
}

bool StandInEngine::setPitch(double)
{
    engineRecord().asked.append(QStringLiteral("pitch"));
    return true;
}

bool StandInEngine::setVolume(double)
{
    engineRecord().asked.append(QStringLiteral("volume"));
    return true;
}

bool StandInEngine::setLocale(const QLocale &locale)
{
    m_locale = locale;
    engineRecord().asked.append(QStringLiteral("locale ") + locale.name());
    return true;
}

QTextToSpeech::ErrorReason StandInEngine::errorReason() const
{
    return state() == QTextToSpeech::Error ? QTextToSpeech::ErrorReason::Playback
                                           : QTextToSpeech::ErrorReason::NoError;
}

void StandInEngine::turn(QTextToSpeech::State state)
{
    engineRecord().state = state;
    emit stateChanged(state);
}

QTextToSpeechEngine *StandInEnginePlugin::createTextToSpeechEngine(const QVariantMap &,
                                                                   QObject *parent, QString *) const
{
    return new StandInEngine(parent);
}

} // namespace lidlark::test
