#pragma once

#include <QStringList>
#include <QTextToSpeechEngine>
#include <QTextToSpeechPlugin>

namespace lidlark::test {

/// What the engine of the tests can do, and what it was asked to.
struct EngineRecord {
    QList<QLocale> locales;
    bool hasVoices = true;
    QTextToSpeech::State state = QTextToSpeech::Ready;
    QStringList asked; ///< "say ...", "stop", "locale ...", "rate", "pitch", "volume".
};
EngineRecord &engineRecord();

/// A speech engine without a sound device: no such engine is packaged for Debian 12.
class StandInEngine : public QTextToSpeechEngine
{
    Q_OBJECT

public:
    using QTextToSpeechEngine::QTextToSpeechEngine;

    [[nodiscard]] QList<QLocale> availableLocales() const override;
    [[nodiscard]] QList<QVoice> availableVoices() const override;
    void say(const QString &text) override;
    void stop(QTextToSpeech::BoundaryHint hint) override;
    void pause(QTextToSpeech::BoundaryHint) override {}
    void resume() override {}
    [[nodiscard]] double rate() const override { return 0; }
    bool setRate(double rate) override;
    [[nodiscard]] double pitch() const override { return 0; }
    bool setPitch(double pitch) override;
    [[nodiscard]] QLocale locale() const override { return m_locale; }
    bool setLocale(const QLocale &locale) override;
    [[nodiscard]] double volume() const override { return 1; }
    bool setVolume(double volume) override;
    [[nodiscard]] QVoice voice() const override { return {}; }
    bool setVoice(const QVoice &) override { return true; }
    [[nodiscard]] QTextToSpeech::State state() const override { return engineRecord().state; }
    [[nodiscard]] QTextToSpeech::ErrorReason errorReason() const override;
    [[nodiscard]] QString errorString() const override { return {}; }

private:
    void turn(QTextToSpeech::State state);

    QLocale m_locale = QLocale::c();
};

/// By which Qt finds the engine.
class StandInEnginePlugin : public QObject, public QTextToSpeechPlugin
{
    Q_OBJECT
    Q_INTERFACES(QTextToSpeechPlugin)
    Q_PLUGIN_METADATA(IID "org.qt-project.qt.speech.tts.plugin/6.0" FILE "stand_in_engine.json")

public:
    QTextToSpeechEngine *createTextToSpeechEngine(const QVariantMap &parameters, QObject *parent,
                                                  QString *errorString) const override;
};

} // namespace lidlark::test
