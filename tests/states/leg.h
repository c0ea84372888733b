#pragma once

#include "tests/states/walk.h"

#include <QDir>

#include <vector>

namespace lidlark::test {

inline constexpr const char *firstEvening = "2027-01-11T18:25:00Z";

/// One start of the app, and its stops.
struct Leg {
    const char *name;
    /// The store of the demo island it begins with: "fresh/" as handed over, "lived/" nine days on.
    /// Null: the store as the leg before has left it, or none.
    const char *from;
    const char *store; ///< Its own name in the folder of the walk.
    const char *clock;
    void (*walk)(Walk &);
    void (*prepare)(const QDir &folder) = nullptr; ///< Something else that happens first.
    bool aloud = false;                            ///< The phone has a voice.
    const char *catalogue = nullptr;               ///< In the folder; null: the one built in.
};

/// Every screen in every state worth seeing, as families meet them.
[[nodiscard]] std::vector<Leg> everyLeg();

// Its parts, by place.
void addTodayLegs(std::vector<Leg> &legs);
void addKiteLegs(std::vector<Leg> &legs);
void addPlayLegs(std::vector<Leg> &legs);
void addTroubleLegs(std::vector<Leg> &legs);
void addBoxLegs(std::vector<Leg> &legs);
void addHomeLegs(std::vector<Leg> &legs);
void addFamiliesLegs(std::vector<Leg> &legs);
void addOwnLegs(std::vector<Leg> &legs);
void addCrewLegs(std::vector<Leg> &legs);
void addWorkbenchLegs(std::vector<Leg> &legs);
void addPackingLegs(std::vector<Leg> &legs);
void addBuyingLegs(std::vector<Leg> &legs);
void addWritingLegs(std::vector<Leg> &legs);

} // namespace lidlark::test
