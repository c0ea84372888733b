#pragma once

#include "core/store/crew_repository.h"
#include "core/store/projector.h"
#include "core/sync/fetch.h"
#include "core/usecase/keep_box.h"
#include "core/usecase/play_activity.h"

#include "tests/support/forger.h"
#include "tests/support/hostile_folder.h"

namespace lidlark::test {

inline const std::string finsBox = "b-fin";
inline const journal::Lane finsBoxLane{journal::LaneKind::Box, finsBox};
inline const journal::Lane finsHomeLane{journal::LaneKind::Home, "h-fin"};

/// Three phones of one box that share nothing but a hostile folder: the therapist's, a parent's and
/// a caregiver's. All have met.
struct HostileCrew {
    HostileFolder folder;
    CrewPhone morven{"Morven", store::Role::Therapist, ""};
    CrewPhone ruth{"Ruth", store::Role::Parent, "h-fin"};
    CrewPhone gran{"Gran", store::Role::Caregiver, "h-fin"};
    bool ready = false; ///< All went well so far.

    HostileCrew()
    {
        morven.clock.moveTo(islandTime(4, 10, 0));
        usecase::Workplace workplace = morven.workplace();
        ready = usecase::issueBox(workplace, familyOf("Fin")).ok() && morven.found(finsBox).ok() &&
                morven.letIn(ruth, finsBox).ok();
        (void)visit(morven);
        (void)visit(ruth);
        ready = ready && ruth.letIn(gran, finsBox).ok();
        ready = ready && everybodyVisits();
    }

    sync::Exchanged visit(CrewPhone &phone) { return phone.exchange(finsBox, folder.storage()); }
    /// Looks without writing anything.
    sync::Exchanged look(CrewPhone &phone)
    {
        sync::Post post = phone.post();
        const auto report = sync::takeIn(post, finsBox, folder.storage());
        sync::Exchanged failed;
        failed.received = -1;
        return report ? *report : failed;
    }
    /// What lies there that cannot be applied, whether or not it was told before.
    sync::Findings findingsOf(CrewPhone &phone)
    {
        sync::Post post = phone.post();
        const auto book = sync::CrewBook::open(post, finsBox);
        const auto caught = sync::fetchNew(post, *book, folder.storage());
        return caught ? caught->findings : sync::Findings();
    }
    [[nodiscard]] std::vector<CrewPhone *> phones() { return {&morven, &ruth, &gran}; }

    /// @returns whether nobody found anything, the last time.
    bool everybodyVisits(int times = 3)
    {
        bool well = true;
        for (int time = 0; time < times; ++time) {
            well = true;
            for (CrewPhone *phone : phones()) {
                const auto report = visit(*phone);
                well = well && report.received >= 0 && report.findings.empty() && !report.trouble &&
                       !report.copied;
            }
        }
        return well;
    }

    /// One act, by which it is seen whether words get through.
    bool counts(CrewPhone &phone, int pegs)
    {
        usecase::Workplace workplace = phone.workplace();
        return usecase::countBox(workplace, "Fin", {}, {{{"pegs"}, pegs}}).ok();
    }
    int pegsOf(CrewPhone &phone) { return itemOf(phone, "Fin", "pegs").low; }

    /// The honest go on: whatever one of them says about the box reaches the other.
    bool goesOn(CrewPhone &one, CrewPhone &other)
    {
        (void)visit(one);
        const bool said = counts(one, pegsOf(one) == 3 ? 4 : 3);
        (void)visit(one);
        (void)visit(other);
        const auto own =
            store::EventRepository(one.database).ofDeviceAfter(finsBoxLane, one.device.id, 0);
        const std::string heard = eventsIn(other.database, journal::LaneKind::Box);
        return said && own && std::ranges::all_of(own->events, [&](const journal::Event &event) {
                   return heard.find(journal::canonicalText(event)) != std::string::npos;
               });
    }
};

/// What was found of a device, of all its lanes.
inline std::vector<sync::FindingKind> kindsOf(const sync::Findings &findings,
                                              const DeviceId &device)
{
    std::vector<sync::FindingKind> kinds;
    for (const sync::Finding &finding : findings) {
        if (finding.device == device)
            kinds.push_back(finding.kind);
    }
    return kinds;
}

/// Who is in, by what a phone says.
inline crew::Crew crewOf(CrewPhone &phone)
{
    return *store::CrewRepository(phone.database).crewOf(finsBox);
}

/// The same as text, with what is accepted of those who are out.
inline std::string membersOf(CrewPhone &phone)
{
    std::string text;
    const crew::Crew crew = crewOf(phone);
    for (const auto &[device, member] : crew.everMembers()) {
        text += device.value + (crew.has(device) ? " in" : " out");
        if (const auto gone = crew.gone().find(device); gone != crew.gone().end())
            text += crew::fieldsOf(crew::Removal{device, gone->second});
        text += '\n';
    }
    return text;
}

} // namespace lidlark::test
