#pragma once

#include "core/store/event_repository.h"
#include "core/store/projector.h"
#include "core/sync/webdav_storage.h"

#include "tests/support/crew_phone.h"
#include "tests/support/dav_server.h"

#include <filesystem>
#include <set>
#include <string>

namespace lidlark::test {

/// A crew's folder on a real server: the only thing its phones share.
class CrewPlace
{
public:
    /// @param server outlives this. @param folder of its own, made with the first file.
    CrewPlace(const DavServer &server, std::string folder)
        : m_server(server), m_folder(std::move(folder))
    {
    }

    [[nodiscard]] sync::ServerAddress address() const
    {
        return sync::folderIn(m_server.address(), m_folder);
    }

    /// The phone goes there over a line of its own.
    sync::Exchanged visit(CrewPhone &phone, const std::string &box) const
    {
        sync::WebdavStorage storage(address());
        return phone.exchange(box, storage);
    }

    /// Each of @p phones in turn, as often as told. @returns whether nobody met any trouble; says
    /// who met what.
    bool everybodyVisits(const std::vector<CrewPhone *> &phones, const std::string &box,
                         int times = 2) const
    {
        bool well = true;
        for (int time = 0; time < times; ++time) {
            for (CrewPhone *phone : phones) {
                const std::string met = troubleOf(visit(*phone, box));
                if (!met.empty())
                    qWarning("%s met: %s", phone->device.person.c_str(), met.c_str());
                well = well && met.empty();
            }
        }
        return well;
    }

    /// Every file that lies there, by its path on the server's disk.
    [[nodiscard]] std::set<std::string> files() const
    {
        std::set<std::string> paths;
        const auto root = m_server.root() / m_folder;
        if (!std::filesystem::exists(root))
            return paths;
        for (const auto &entry : std::filesystem::recursive_directory_iterator(root)) {
            if (entry.is_regular_file())
                paths.insert(entry.path().string());
        }
        return paths;
    }

private:
    static std::string troubleOf(const sync::Exchanged &report)
    {
        std::string text = report.received < 0 ? "an error of the store " : "";
        if (report.trouble)
            text += "trouble " + std::to_string(static_cast<int>(*report.trouble)) + " ";
        for (const sync::Finding &finding : report.findings)
            text += "finding " + std::to_string(static_cast<int>(finding.kind)) + " of " +
                    finding.device.value + " in " + toText(finding.lane) + " ";
        text += report.out ? "out " : "";
        text += report.copied ? "copied " : "";
        text += report.waiting > 0 ? "waiting " : "";
        return text;
    }

    const DavServer &m_server;
    std::string m_folder;
};

/// What a store holds of one kind of lane, each event a line, in one order.
inline std::string eventsIn(store::Database &database, journal::LaneKind kind)
{
    const auto events = store::EventRepository(database).all();
    if (!events)
        return "unreadable";
    std::set<std::string> lines;
    for (const journal::Event &event : *events) {
        if (event.lane.kind == kind)
            lines.insert(journal::canonicalText(event));
    }
    std::string text;
    for (const std::string &line : lines)
        text += line + "\n";
    return text;
}

inline bool rowsAreThoseOfARefold(store::Database &database)
{
    const auto matches = store::Projector(database).matchesRefold();
    return matches && *matches;
}

/// The therapist's phone with the box of @p family handed over on 4 January, and its crew founded.
inline std::unique_ptr<CrewPhone> founderOf(const usecase::island::Family &family)
{
    auto morven = std::make_unique<CrewPhone>("Morven", store::Role::Therapist, "");
    morven->clock.moveTo(islandTime(4, 10, 0));
    usecase::Workplace workplace = morven->workplace();
    const bool issued = usecase::issueBox(workplace, family).ok();
    return issued && morven->found("b-" + usecase::demoId(family.child)) ? std::move(morven)
                                                                         : nullptr;
}

} // namespace lidlark::test
