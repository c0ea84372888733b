#pragma once

#include "core/usecase/demo_phone.h"
#include "core/usecase/exchange_events.h"
#include "core/usecase/issue_box.h"
#include "core/usecase/suggest_today.h"

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <memory>
#include <sstream>

namespace lidlark::test {

inline std::string sourceDir()
{
    const char *folder = std::getenv("LIDLARK_SOURCE_DIR");
    return folder != nullptr ? folder : ".";
}

inline std::vector<catalogue::SourceFile> filesIn(const std::string &name)
{
    std::vector<catalogue::SourceFile> files;
    for (const auto &entry :
         std::filesystem::directory_iterator(sourceDir() + "/assets/catalogue/" + name)) {
        std::ifstream stream(entry.path(), std::ios::binary);
        std::ostringstream text;
        text << stream.rdbuf();
        files.push_back({name + "/" + entry.path().filename().string(), text.str()});
    }
    return files;
}

/// The catalogue that ships, read once.
inline const catalogue::Catalogue &realCatalogue()
{
    static const catalogue::Catalogue loaded =
        catalogue::load(filesIn("items"), filesIn("activities"));
    return loaded;
}

/// 2027-01-DD HH:MM on the island, where winter time is UTC.
inline std::int64_t islandTime(int dayOfJanuary, int hour, int minute)
{
    return (dayFrom({2027, 1, 1})->number + dayOfJanuary - 1) * msPerDay +
           (hour * 60 + minute) * msPerMinute;
}

/// A phone of the island with a store in memory: real core, only the clock and chance are made up.
struct Phone {
    store::Database database;
    store::Device device;
    StillClock clock{islandTime(11, 18, 10)};
    SeededEntropy entropy;

    Phone(const std::string &person, store::Role role, const std::string &home)
        : database(*store::Database::open(":memory:")), device{{"d-" + person},
                                                               person,
                                                               role,
                                                               {home}},
          entropy("test " + person)
    {
        (void)store::DeviceRepository(database).setDevice(device);
    }

    [[nodiscard]] usecase::Workplace workplace()
    {
        return {database, realCatalogue(), clock, entropy, device};
    }

    /// Takes in everything of @p other that this phone may hold.
    int meet(Phone &other)
    {
        usecase::Workplace mine = workplace();
        const auto taken =
            usecase::takeEventsFrom(other.database, mine, [this](const journal::Lane &lane) {
                switch (lane.kind) {
                case journal::LaneKind::Box:
                    return true;
                case journal::LaneKind::Goals:
                    return device.role != store::Role::Guest;
                case journal::LaneKind::Safety:
                    return device.home.empty() || lane.scope == device.home.value;
                default:
                    return lane.scope == device.home.value;
                }
            });
        return taken ? *taken : -1;
    }
};

inline usecase::island::Family familyOf(const std::string &child)
{
    for (const usecase::island::Family &family : usecase::island::families()) {
        if (family.child == child)
            return family;
    }
    return {};
}

/// Morven's phone with the boxes of @p children handed over on 4 January.
inline std::unique_ptr<Phone> therapistWith(const std::vector<std::string> &children)
{
    auto morven = std::make_unique<Phone>("Morven", store::Role::Therapist, "");
    morven->clock.moveTo(islandTime(4, 10, 0));
    usecase::Workplace workplace = morven->workplace();
    for (const std::string &child : children)
        (void)usecase::issueBox(workplace, familyOf(child));
    return morven;
}

/// One item of a box as this phone sees it.
inline store::ItemRow itemOf(Phone &phone, const std::string &child, const std::string &item)
{
    usecase::Workplace workplace = phone.workplace();
    const auto family = usecase::loadFamily(workplace, child);
    if (family) {
        for (const store::ItemRow &row : family->items) {
            if (row.item.value == item)
                return row;
        }
    }
    return {};
}

} // namespace lidlark::test
