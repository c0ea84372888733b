#pragma once

#include "mobile/bridge/voice.h"

#include <QTimer>

class QTextToSpeech;

namespace lidlark::mobile {

/// The voice of the phone's own speech engine, in the app's language. It is looked for once the
/// first page stands, as an engine may take its time; until then, and where none is installed or
/// none speaks the language, it is silent.
class PhoneVoice : public Voice
{
    Q_OBJECT
    QML_ANONYMOUS

public:
    explicit PhoneVoice(QObject *parent = nullptr);

    [[nodiscard]] bool available() const override { return m_available; }
    void say(const QString &text) override;
    void stop() override;
    void changeLanguage() override;

private:
    void look();
    void findVoice();
    void setAvailable(bool available);

    QTextToSpeech *m_speech = nullptr;
    bool m_available = false;
    QTimer m_surelyOver;
};

} // namespace lidlark::mobile
