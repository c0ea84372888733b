#pragma once

#include "core/store/segment_repository.h"
#include "core/sync/crew_book.h"
#include "core/sync/outbox.h"
#include "core/sync/segment.h"
#include "tests/bench/merge/years_of_play.h"
#include "tests/core/sync/shaky_storage.h"
#include "tests/support/crew_phone.h"

#include <array>

namespace lidlark::bench {

/// A crew of five devices that write, and a sixth that holds every key and none of what they write.
class SealedCrew
{
public:
    SealedCrew()
    {
        add("Morven", store::Role::Therapist, "");
        add("Ruth", store::Role::Parent, "h-fin");
        add("Gregor", store::Role::Parent, "h-fin");
        add("Gran", store::Role::Caregiver, "h-fin");
        add("Isla", store::Role::Caregiver, "h-fin");
        add("Late", store::Role::Parent, "h-fin");
    }

    /// @returns whether all were let in, and each holds what it needs.
    bool begin()
    {
        usecase::Workplace workplace = m_phones.front()->workplace();
        bool well = usecase::issueBox(workplace, test::familyOf("Fin")).ok() &&
                    m_phones.front()->found(boxId).ok();
        for (std::size_t i = 1; i < m_phones.size() && well; ++i) {
            test::CrewPhone &host = *m_phones[i == 1 ? 0 : 1];
            (void)host.exchange(boxId, m_storage);
            well = host.letIn(*m_phones[i], boxId).ok();
            everybodyMeets();
        }
        for (int round = 0; round < 3; ++round)
            everybodyMeets();
        return well;
    }

    [[nodiscard]] std::vector<Writer> writers() const
    {
        std::vector<Writer> writers;
        for (std::size_t i = 0; i + 1 < m_phones.size(); ++i)
            writers.push_back({m_phones[i]->device.id, m_phones[i]->device.person, i > 0});
        return writers;
    }

    /// How far each has written by now.
    [[nodiscard]] std::map<std::pair<journal::Lane, DeviceId>, std::uint64_t> upTo()
    {
        std::map<std::pair<journal::Lane, DeviceId>, std::uint64_t> counters;
        for (const auto &phone : m_phones) {
            const auto events = store::EventRepository(phone->database).all();
            for (const journal::Event &event : *events) {
                std::uint64_t &last = counters[{event.lane, event.device}];
                last = std::max(last, event.counter);
            }
        }
        return counters;
    }

    /// @p written as segments on the storage, so many events a file. @returns whether all could be.
    bool publish(const Written &written, std::size_t eventsInFile)
    {
        for (const auto &[place, events] : written) {
            const auto &[lane, device] = place;
            for (const auto &phone : m_phones) {
                if (phone->device.id == device && !publishRun(*phone, lane, events, eventsInFile))
                    return false;
            }
        }
        return true;
    }

    [[nodiscard]] test::CrewPhone &late() { return *m_phones.back(); }
    [[nodiscard]] samples::ShakyStorage &storage() { return m_storage; }
    /// What lies there besides what was published.
    [[nodiscard]] std::size_t bytesOnStorage() const
    {
        std::size_t sum = 0;
        for (const auto &[place, bytes] : m_storage.files)
            sum += bytes.size();
        return sum;
    }

    static inline const std::string boxId = "b-fin";

private:
    void add(const char *person, store::Role role, const char *home)
    {
        m_phones.push_back(std::make_unique<test::CrewPhone>(person, role, home));
        m_phones.back()->clock.moveTo(test::islandTime(4, 10, 0));
    }

    void everybodyMeets()
    {
        for (const auto &phone : m_phones) {
            if (store::CrewRepository(phone->database).crewOf(boxId)->has(phone->device.id))
                (void)phone->exchange(boxId, m_storage);
        }
    }

    bool publishRun(test::CrewPhone &phone, const journal::Lane &lane,
                    std::span<const journal::Event> events, std::size_t eventsInFile)
    {
        const auto post = phone.post();
        const auto book = sync::CrewBook::open(post, boxId);
        const auto today = store::todayOf(phone.clock);
        const sync::HeldEpoch *held = sync::writingEpoch(post, *book, lane, today->day);
        if (held == nullptr)
            return false;
        const auto chain =
            store::SegmentRepository(phone.database).chainOf(held->epoch.id, phone.device.id);
        sync::Link link;
        if (!chain->empty())
            link = {chain->back().sequence + 1, chain->back().hash};
        while (!events.empty()) {
            const std::size_t count = std::min(eventsInFile, events.size());
            const auto bytes = sync::sealSegment(held->epoch, link, events.first(count),
                                                 crypto::signingSeedOf(phone.secret),
                                                 sync::freshNonce(phone.entropy));
            if (!bytes)
                return false;
            m_storage.files[{sync::folderName(held->epoch, phone.device.id),
                             sync::segmentName(held->epoch, phone.device.id, link.sequence)}] =
                *bytes;
            link = {link.sequence + 1, blake2b(*bytes)};
            events = events.subspan(count);
        }
        return true;
    }

    std::vector<std::unique_ptr<test::CrewPhone>> m_phones;
    samples::ShakyStorage m_storage{1, 0};
};

} // namespace lidlark::bench
