#pragma once

#include <QObject>
#include <QString>
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

public:
    using QObject::QObject;

    [[nodiscard]] virtual bool available() const { return false; }
    /// Says @p text in place of whatever is being said. One voice, one loudness, one pace for
    /// everything (checkin.md 3.1). Silent where there is no voice.
    Q_INVOKABLE virtual void say(const QString &text) { Q_UNUSED(text) }
    Q_INVOKABLE virtual void stop() {}

signals:
    void availableChanged();
};

} // namespace lidlark::mobile
