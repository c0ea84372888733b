#pragma once

#include "core/base/instant.h"
#include "core/usecase/play_activity.h"
#include "mobile/app/graph.h"
#include "mobile/bridge/household.h"
#include "mobile/bridge/play_in_hand.h"
#include "tests/support/phone.h"
#include "tests/tour/hand.h"

#include <QFile>
#include <QQmlApplicationEngine>

namespace lidlark::test {

/// Day 1 of the island, when the demo's families play.
inline constexpr const char *mondayEvening = "2027-01-11T18:25:00Z";

inline QString text(const char *words)
{
    return QString::fromUtf8(words);
}

/// The app started on a store at a moment, and a hand in front of it.
struct OpenApp {
    /// @param voice what the app reads aloud with; none: it is silent.
    OpenApp(const QString &store, const char *clock, const QString &catalogue = {},
            std::unique_ptr<mobile::Voice> voice = nullptr)
        : graph({store, catalogue, msFromText(clock), std::nullopt, std::nullopt, true, {}},
                std::move(voice))
    {
        if (!graph.show())
            qFatal("no window");
        window = qobject_cast<QQuickWindow *>(graph.engine().rootObjects().constFirst());
        Hand::settle(600);
    }
    mobile::Graph graph;
    QQuickWindow *window = nullptr;
    [[nodiscard]] Hand hand() const { return Hand(window); }
};

/// Writes a family's phone, as handed over on 4 January, to @p file.
inline void writeStore(const QString &file, const std::string &child, const std::string &person,
                       const std::string &home)
{
    QFile::remove(file);
    auto morven = therapistWith({child});
    auto database = store::Database::open(file.toStdString());
    const store::Device device{{"d-" + person}, person, store::Role::Parent, {home}};
    (void)store::DeviceRepository(*database).setDevice(device);
    StillClock clock(islandTime(4, 12, 0));
    SeededEntropy entropy("story");
    usecase::Workplace workplace{*database, realCatalogue(), clock, entropy, device};
    (void)usecase::takeEventsFrom(morven->database, workplace, [&home](const auto &lane) {
        return lane.kind != journal::LaneKind::Safety || lane.scope == home;
    });
}

} // namespace lidlark::test
