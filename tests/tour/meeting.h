#pragma once

#include "tests/tour/open_app.h"

namespace lidlark::test {

/// Two phones meet: each takes in what it may hold of the other. Of two homes that share one box,
/// that is the box and the goals alone (events.md 4).
inline void letMeet(const QString &one, const QString &other, const char *clock)
{
    const auto takeFrom = [clock](const QString &from, const QString &to) {
        auto source = store::Database::open(from.toStdString());
        auto target = store::Database::open(to.toStdString());
        const auto device = store::DeviceRepository(*target).device();
        StillClock now(*msFromText(clock));
        SeededEntropy entropy("meeting");
        usecase::Workplace workplace{*target, realCatalogue(), now, entropy, **device};
        const std::string home = (*device)->home.value;
        (void)usecase::takeEventsFrom(*source, workplace, [&home](const journal::Lane &lane) {
            return lane.kind == journal::LaneKind::Box || lane.kind == journal::LaneKind::Goals ||
                   lane.scope == home;
        });
    };
    takeFrom(one, other);
    takeFrom(other, one);
}

} // namespace lidlark::test
