#pragma once

#include "mobile/bridge/voice.h"

#include <QStringList>

#include <memory>
#include <utility>

namespace lidlark::test {

/// Stands for the phone's voice where there is no sound device: keeps every line it is given.
class ListeningVoice : public mobile::Voice
{
public:
    explicit ListeningVoice(std::shared_ptr<QStringList> said) : m_said(std::move(said)) {}

    [[nodiscard]] bool available() const override { return true; }
    /// Goes on speaking until it is stopped, as a slow reader would.
    void say(const QString &text) override
    {
        m_said->append(text);
        setSpeaking(true);
    }
    void stop() override { setSpeaking(false); }

private:
    std::shared_ptr<QStringList> m_said; ///< Outlives the app, so that it can be read afterwards.
};

} // namespace lidlark::test
