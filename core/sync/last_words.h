#pragma once

#include "core/store/event_repository.h"
#include "core/sync/crew_book.h"
#include "core/sync/segment.h"
#include "core/sync/storage.h"

#include <optional>
#include <vector>

namespace lidlark::sync {

/// Whom a device wanted out, that had been removed itself before this was heard of. Who heard the
/// two together has taken both in: so that all judge the same (core/crew/removals.h), whoever heard
/// of one alone takes the other in later. It is kept as an event; nothing else that it says past
/// what is accepted of it is.
class LastWords
{
public:
    /// Segments that are looked through for them, of one device under one epoch.
    static constexpr int mostSegments = 32;
    /// Kept of one device about another.
    static constexpr int mostAboutOne = 4;
    /// Bytes of the fields of one: room for the lanes of some forty homes.
    static constexpr std::size_t largest = 8'000;

    LastWords(Post &post, const CrewBook &book, Storage &storage)
        : m_events(post.database), m_book(book), m_storage(storage), m_own(post.device.id)
    {
    }

    /// In @p refused, and in what @p member has sealed under @p epoch after it.
    Result<std::optional<Trouble>> hear(const Epoch &epoch, const crew::Member &member,
                                        Segment refused);
    /// What was not here before.
    std::vector<journal::Event> takeAll() { return std::move(m_words); }

private:
    [[nodiscard]] bool isHeardBySomeoneElse() const;
    Outcome know();
    void take(const Epoch &epoch, const DeviceId &device, const Segment &segment);
    [[nodiscard]] bool isKept(const journal::Event &event, const Epoch &epoch,
                              const DeviceId &device) const;

    store::EventRepository m_events;
    const CrewBook &m_book;
    Storage &m_storage;
    DeviceId m_own;
    std::optional<std::vector<journal::Event>> m_known; ///< Of members, once they were needed.
    std::vector<journal::Event> m_words;
};

} // namespace lidlark::sync
