#pragma once

#include "core/crypto/seal.h"
#include "core/store/recording.h"
#include "core/store/segment_repository.h"
#include "core/sync/crew_book.h"
#include "core/sync/outbox.h"
#include "core/sync/segment.h"
#include "core/sync/squeeze.h"

#include "tests/support/crew_phone.h"

#include <string>
#include <vector>

namespace lidlark::test {

/// A member who keeps to none of the rules: holds the keys, and seals and signs whatever it likes.
class Forger
{
public:
    /// @param phone a member's. The lane's key is the one it writes under now.
    Forger(CrewPhone &phone, const std::string &box, const journal::Lane &lane)
        : Forger(phone, keyOf(phone, box, lane))
    {
    }
    /// Under a key that it held once.
    Forger(CrewPhone &phone, sync::HeldEpoch held) : m_phone(phone), m_held(std::move(held))
    {
        store::SegmentRepository segments(phone.database);
        const auto chain = segments.chainOf(m_held.epoch.id, phone.device.id);
        if (!chain->empty())
            m_link = {chain->back().sequence + 1, chain->back().hash};
        m_counter =
            *store::EventRepository(phone.database).lastCounter(m_held.epoch.lane, phone.device.id);
    }

    [[nodiscard]] const sync::HeldEpoch &held() const { return m_held; }
    [[nodiscard]] const sync::Epoch &epoch() const { return m_held.epoch; }
    /// Of the next own event.
    [[nodiscard]] std::uint64_t nextCounter() const { return m_counter + 1; }
    [[nodiscard]] std::uint64_t nextSequence() const { return m_link.sequence; }
    /// Where the segment of a number lies.
    [[nodiscard]] sync::Place placeOf(std::uint64_t sequence) const
    {
        return {sync::folderName(m_held.epoch, m_phone.device.id),
                sync::segmentName(m_held.epoch, m_phone.device.id, sequence)};
    }
    /// Where the next one goes.
    [[nodiscard]] sync::Place nextPlace() const { return placeOf(m_link.sequence); }

    /// An event of this device, @p ahead places after the next.
    [[nodiscard]] journal::Event event(journal::Kind kind, std::string fields,
                                       std::uint64_t ahead = 0) const
    {
        const std::int64_t now = m_phone.clock.nowMs();
        return {m_held.epoch.lane,     m_phone.device.id,
                nextCounter() + ahead, {now, 0},
                dayPartAt(now, 0),     0,
                m_phone.device.person, kind,
                std::move(fields)};
    }
    [[nodiscard]] sync::SegmentHeader header(std::size_t events = 1,
                                             std::uint8_t content = sync::ownEvents) const
    {
        return {sync::crewTag(epoch()),
                sync::laneTag(epoch()),
                epoch().id,
                sync::deviceTag(epoch(), m_phone.device.id),
                m_link.sequence,
                nextCounter(),
                m_link.previous,
                static_cast<std::uint32_t>(events),
                0,
                sync::freshNonce(m_phone.entropy),
                content};
    }
    /// Sealed and signed, whatever stands in it.
    [[nodiscard]] std::string sealed(const std::string &text, sync::SegmentHeader header) const
    {
        header.textSize = static_cast<std::uint32_t>(text.size());
        std::string bytes = sync::toBytes(header);
        bytes +=
            crypto::sealed(sync::squeezed(text), bytes, sync::sealKeyOf(epoch()), header.nonce);
        return bytes + crypto::textOf(crypto::signatureOf("lidlark segment 1\n" + bytes,
                                                          crypto::signingSeedOf(m_phone.secret)));
    }
    [[nodiscard]] std::string sealed(const std::vector<journal::Event> &events,
                                     std::uint8_t content = sync::ownEvents) const
    {
        std::string text;
        for (const journal::Event &event : events)
            text += journal::canonicalText(event) + '\n';
        return sealed(text, header(events.size(), content));
    }

private:
    static sync::HeldEpoch keyOf(CrewPhone &phone, const std::string &box,
                                 const journal::Lane &lane)
    {
        const sync::Post post = phone.post();
        const auto book = sync::CrewBook::open(post, box);
        const auto today = store::todayOf(phone.clock)->day;
        const sync::HeldEpoch *held = sync::writingEpoch(post, *book, lane, today);
        if (held == nullptr)
            qFatal("%s has no key of %s", phone.device.id.value.c_str(), toText(lane).c_str());
        return *held;
    }

    CrewPhone &m_phone;
    sync::HeldEpoch m_held;
    sync::Link m_link;
    std::uint64_t m_counter = 0;
};

} // namespace lidlark::test
