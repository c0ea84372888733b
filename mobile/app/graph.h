#pragma once

#include <QString>

#include "language.h"

#include "mobile/bridge/voice.h"
#include "mobile/platform/keychain.h"
#include "mobile/platform/notifier.h"

#include <cstdint>
#include <memory>
#include <optional>

class QQmlApplicationEngine;

namespace lidlark::mobile {

class Appearance;
class CrewLife;
class Household;
class PlayInHand;
class Reminders;
class Sitting;

/// What the command line may ask for.
struct StartOptions {
    QString store;
    QString catalogue; ///< Empty: the one built in.
    std::optional<std::int64_t>
        fromMs;                      ///< Run on from this instant; absent: the phone's own clock.
    std::optional<double> textScale; ///< 1 to 2; absent: as kept.
    std::optional<int> scheme;       ///< 0 light, 1 dark, 2 contrast; absent: as kept.
    bool reducedMotion = false;      ///< True: nothing moves in this run; false: as kept.
    QString language = {};           ///< "ur"; empty: the one of whoever writes on the phone.
    bool remind = false;             ///< No window: the reminder of the day, if it is due.
};

/// The whole app behind one window: household, sitting, play in hand, appearance, reminders, voice,
/// crew, screens.
class Graph
{
public:
    /// @param voice reads aloud; none: the app is silent. @param notifier shows reminders; none:
    /// nothing does. @param keychain keeps the crew's keys; none: a file beside the store does.
    explicit Graph(const StartOptions &options, std::unique_ptr<Voice> voice = nullptr,
                   std::unique_ptr<Notifier> notifier = nullptr,
                   std::shared_ptr<Keychain> keychain = nullptr);
    ~Graph();
    Graph(const Graph &) = delete;
    Graph &operator=(const Graph &) = delete;

    /// Loads the window. @returns false when it could not be made.
    bool show();
    [[nodiscard]] QQmlApplicationEngine &engine() { return *m_engine; }
    [[nodiscard]] Household &household() { return *m_household; }
    [[nodiscard]] PlayInHand &playInHand() { return *m_playInHand; }
    [[nodiscard]] Sitting &sitting() { return *m_sitting; }
    [[nodiscard]] Appearance &appearance() { return *m_appearance; }
    [[nodiscard]] CrewLife &crewLife() { return *m_crewLife; }
    [[nodiscard]] Reminders &reminders() { return *m_reminders; }

private:
    void changeLanguage();

    Language m_language; ///< First: what comes after it already speaks.
    std::unique_ptr<Household> m_household;
    std::unique_ptr<Sitting> m_sitting;
    std::unique_ptr<PlayInHand> m_playInHand;
    std::unique_ptr<Appearance> m_appearance;
    std::unique_ptr<Notifier> m_notifier;
    std::unique_ptr<Reminders> m_reminders;
    std::unique_ptr<Voice> m_voice;
    std::unique_ptr<CrewLife> m_crewLife;
    std::unique_ptr<QQmlApplicationEngine> m_engine;
};

} // namespace lidlark::mobile
