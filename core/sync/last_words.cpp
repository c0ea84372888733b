#include "core/sync/last_words.h"

#include <algorithm>

namespace lidlark::sync {

using journal::Event;

Result<std::optional<Trouble>> LastWords::hear(const Epoch &epoch, const crew::Member &member,
                                               Segment refused)
{
    if (epoch.lane.kind != journal::LaneKind::Box || !m_book.crew().removed(member.device) ||
        !isHeardBySomeoneElse())
        return std::optional<Trouble>();
    if (const Outcome known = know(); !known)
        return known.error();
    for (int count = 1;; ++count) {
        take(epoch, member.device, refused);
        if (count == mostSegments)
            return std::optional<Trouble>();
        const std::uint64_t sequence = refused.header.sequence + 1;
        auto answer = m_storage.get(
            {folderName(epoch, member.device), segmentName(epoch, member.device, sequence)});
        if (const auto trouble = troubleIn(answer))
            return trouble;
        const auto &bytes = std::get<std::optional<std::string>>(answer);
        auto opened = openSegment(bytes.value_or(""), epoch, member.device, member.signer);
        auto *segment = std::get_if<Segment>(&opened);
        if (segment == nullptr || segment->header.sequence != sequence ||
            segment->header.previous != refused.hash)
            return std::optional<Trouble>();
        refused = std::move(*segment);
    }
}

/// Where nobody is left to agree with, a thief's answer would only shut this phone out.
bool LastWords::isHeardBySomeoneElse() const
{
    return std::ranges::any_of(m_book.crew().present(), [this](const crew::Member &member) {
        return member.device != m_own;
    });
}

Outcome LastWords::know()
{
    if (m_known)
        return Done{};
    auto events = m_events.ofSubject({{journal::LaneKind::Box, m_book.box()}, "members"});
    if (!events)
        return events.error();
    m_known = *std::move(events);
    return Done{};
}

void LastWords::take(const Epoch &epoch, const DeviceId &device, const Segment &segment)
{
    for (const Event &event : segment.events) {
        if (!isKept(event, epoch, device))
            continue;
        m_known->push_back(event);
        m_words.push_back(event);
    }
}

bool LastWords::isKept(const Event &event, const Epoch &epoch, const DeviceId &device) const
{
    const auto removal = crew::readRemoval(event);
    if (!removal || event.device != device || removal->device == device ||
        m_book.crew().member(removal->device) == nullptr || event.fields.size() > largest ||
        event.counter <= m_book.crew().acceptedUpTo(device, epoch.lane))
        return false;
    const std::string identity = journal::identityOf(event);
    int aboutOne = 0;
    for (const Event &known : *m_known) {
        const auto other = crew::readRemoval(known);
        if (!other || known.device != device || other->device != removal->device)
            continue;
        if (journal::identityOf(known) == identity)
            return false;
        ++aboutOne;
    }
    return aboutOne < mostAboutOne;
}

} // namespace lidlark::sync
