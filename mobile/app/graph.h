#pragma once

#include <QString>

#include <memory>

class QQmlApplicationEngine;

namespace lidlark::mobile {

class Household;

/// What the command line may ask for.
struct StartOptions {
    QString store;
    QString catalogue;      ///< Empty: the one built in.
    QString clock;          ///< ISO 8601 instant to run on from; empty: the phone's own.
    double textScale = 0;   ///< 0: as kept.
    QString scheme;         ///< "light", "dark", "contrast"; empty: as kept.
};

/// The whole app behind one window: household, sitting, play in hand, appearance, screens.
class Graph
{
public:
    explicit Graph(const StartOptions &options);
    ~Graph();

    /// Loads the window. @returns false when it could not be made.
    bool show();
    [[nodiscard]] QQmlApplicationEngine &engine() { return *m_engine; }
    [[nodiscard]] Household &household() { return *m_household; }

private:
    std::unique_ptr<Household> m_household;
    std::unique_ptr<class Sitting> m_sitting;
    std::unique_ptr<class PlayInHand> m_playInHand;
    std::unique_ptr<class Appearance> m_appearance;
    std::unique_ptr<QQmlApplicationEngine> m_engine;
};

} // namespace lidlark::mobile
