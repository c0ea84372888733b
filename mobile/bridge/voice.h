#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace lidlark::mobile {

/// What reads lines aloud. This one has no voice: it is silent and says so, and then nothing on a
/// screen may promise sound. The phone's own is PhoneVoice; tests listen with one of theirs.
class Voice : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by main")
    /// Lines can be heard in the app's language. May change while the app runs.
    Q_PROPERTY(bool available READ available NOTIFY availableChanged FINAL)
    /// Something is being said.
    Q_PROPERTY(bool speaking READ speaking NOTIFY speakingChanged FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] virtual bool available() const { return false; }
    [[nodiscard]] bool speaking() const { return m_speaking; }
    /// Says @p text in place of whatever is being said. One voice, one loudness, one pace for
    /// everything (checkin.md 3.1). Silent where there is no voice.
    Q_INVOKABLE virtual void say(const QString &text) { Q_UNUSED(text) }
    Q_INVOKABLE virtual void stop() {}
    /// The app speaks another language now: whatever is being said ends, and only a voice of that
    /// language speaks on.
    virtual void changeLanguage() {}

    /// The speaker sign: says the lines one after the other, each as a sentence of its own. While
    /// something is being said, the same sign stops it: by a key here, by a finger in `touchBegan`.
    Q_INVOKABLE void read(const QStringList &lines);
    /// A finger comes down anywhere: whatever is being said ends.
    Q_INVOKABLE void touchBegan();
    /// Call it once whatever the touch does has been done.
    Q_INVOKABLE void touchEnded();

signals:
    void availableChanged();
    void speakingChanged();

protected:
    void setSpeaking(bool speaking);

private:
    bool m_speaking = false;
    bool m_silencedByTouch = false;
};

} // namespace lidlark::mobile
