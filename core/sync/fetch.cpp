#include "core/sync/fetch.h"

#include "core/store/segment_repository.h"
#include "core/sync/publish.h"

#include <algorithm>
#include <map>
#include <set>

namespace lidlark::sync {

namespace {

constexpr std::uint64_t furthestAhead = 10'000; ///< Numbers that are tried against a listing.
constexpr std::size_t segmentsAtOnce = 100;     ///< At most 100 MB in memory, usually 3.

FindingKind kindOf(SegmentFault fault)
{
    return fault == SegmentFault::Newer ? FindingKind::Newer : FindingKind::Damaged;
}

std::optional<FindingKind> kindOf(Standing standing)
{
    switch (standing) {
    case Standing::Next:
    case Standing::Known:
        break;
    case Standing::Forked:
        return FindingKind::Forked;
    case Standing::Broken:
        return FindingKind::Broken;
    case Standing::NotYet:
    case Standing::CounterGap:
        return FindingKind::Missing;
    }
    return std::nullopt;
}

/// Walks along the chains of others.
class Fetcher
{
public:
    Fetcher(Post &post, const CrewBook &book, Storage &storage, Whose whose)
        : m_segments(post.database), m_own(post.device.id), m_book(book), m_storage(storage),
          m_whose(whose)
    {
    }

    Outcome walk(const HeldEpoch &held, const DeviceId &device)
    {
        const crew::Member *member = m_book.crew().member(device);
        const bool wanted = (device == m_own) == (m_whose == Whose::Own);
        if (!wanted || member == nullptr || m_caught.trouble || m_caught.more)
            return Done{};
        const auto past = hasMovedOn(held.epoch, device);
        if (!past || *past)
            return past ? Outcome(Done{}) : Outcome(past.error());
        auto chain = chainOf(held.epoch, device);
        if (!chain)
            return chain.error();
        while (takeNext(held.epoch, *member, *chain)) {
            if (m_caught.segments.size() >= segmentsAtOnce)
                m_caught.more = true;
            if (m_caught.more)
                break;
        }
        m_last[{held.epoch.lane, device}] = chain->lastCounter;
        return Done{};
    }

    Catch takeAll() { return std::move(m_caught); }

private:
    /// Who has written under a later key writes no more under this one.
    Result<bool> hasMovedOn(const Epoch &epoch, const DeviceId &device)
    {
        for (const HeldEpoch *later : m_book.after(epoch.id)) {
            const auto chain = m_segments.chainOf(later->epoch.id, device);
            if (!chain)
                return chain.error();
            if (!chain->empty())
                return true;
        }
        return false;
    }

    Result<Chain> chainOf(const Epoch &epoch, const DeviceId &device)
    {
        const auto rows = m_segments.chainOf(epoch.id, device);
        const auto last = m_segments.lastCounter(m_book.box(), epoch.lane, device);
        if (!rows || !last)
            return rows ? last.error() : rows.error();
        Chain chain;
        for (const store::SegmentRow &row : *rows) {
            // Where it was told again, what was before it is no part of the chain any more.
            if (row.sequence != chain.before + chain.hashes.size() + 1)
                chain = {row.sequence - 1, {}, 0};
            chain.hashes.push_back(row.hash);
        }
        // What was caught in this look under another epoch goes before.
        chain.lastCounter = std::max(*last, m_last[{epoch.lane, device}]);
        return chain;
    }

    void find(FindingKind kind, const Epoch &epoch, const DeviceId &device, std::uint64_t sequence)
    {
        m_caught.findings.push_back({kind, device, epoch.lane, sequence});
    }

    /// Whether it may be applied at all, wherever it stands.
    [[nodiscard]] bool isRightful(const Segment &segment, const Epoch &epoch,
                                  const crew::Member &member) const
    {
        // Events of its own come in any way; those of others only from who may vouch for them.
        const bool handedOn =
            std::ranges::any_of(segment.events, [&member](const journal::Event &event) {
                return event.device != member.device && event.device != member.was;
            });
        const bool vouches =
            member.role == crew::Role::Parent || member.role == crew::Role::Therapist;
        if (handedOn && !vouches)
            return false;
        return segment.header.firstCounter <= m_book.crew().acceptedUpTo(member.device, epoch.lane);
    }

    [[nodiscard]] Standing standing(const Segment &segment, const Epoch &epoch,
                                    const Chain &chain) const
    {
        const Standing found = standingOf(segment, chain);
        // Who holds no earlier key cannot know what was before it.
        const bool begins = found == Standing::CounterGap && chain.hashes.empty() &&
                            segment.header.firstCounter > chain.lastCounter &&
                            !m_book.holdsAllOf(epoch.lane);
        return begins ? Standing::Next : found;
    }

    /// @returns whether there may be another one after it.
    bool takeNext(const Epoch &epoch, const crew::Member &member, Chain &chain)
    {
        const std::uint64_t sequence = chain.before + chain.hashes.size() + 1;
        auto bytes = get(epoch, member, sequence);
        if (bytes)
            return take(epoch, member, chain, sequence, *std::move(bytes));
        return !m_caught.trouble && m_whose == Whose::Others && takeToldAgain(epoch, member, chain);
    }

    std::optional<std::string> get(const Epoch &epoch, const crew::Member &member,
                                   std::uint64_t sequence)
    {
        auto answer = m_storage.get(
            {folderName(epoch, member.device), segmentName(epoch, member.device, sequence)});
        m_caught.trouble = troubleIn(answer);
        return m_caught.trouble ? std::nullopt
                                : std::get<std::optional<std::string>>(std::move(answer));
    }

    /// On the day to look through, and on the first of all: what is there under later numbers,
    /// because what was before it is gone?
    bool takeToldAgain(const Epoch &epoch, const crew::Member &member, Chain &chain)
    {
        if (!m_book.looksThrough())
            return false;
        const auto answer = m_storage.list(folderName(epoch, member.device));
        m_caught.trouble = troubleIn(answer);
        if (m_caught.trouble)
            return false;
        const auto &listed = std::get<std::vector<std::string>>(answer);
        std::set<std::string> names(listed.begin(), listed.end());
        const std::uint64_t next = chain.before + chain.hashes.size() + 2;
        std::erase_if(names, [](const std::string &name) { return name.ends_with(partEnd); });
        // Nearly always what is known is all there is: then no later name is worked out.
        for (std::uint64_t known = next - 2; known > 0 && !names.empty(); --known)
            names.erase(segmentName(epoch, member.device, known));
        for (std::uint64_t later = next; !names.empty() && later < next + furthestAhead; ++later) {
            if (!names.contains(segmentName(epoch, member.device, later)))
                continue;
            Chain anew;
            anew.lastCounter = chain.lastCounter;
            auto bytes = get(epoch, member, later);
            const auto opened =
                openSegment(bytes.value_or(""), epoch, member.device, member.signer);
            const auto *segment = std::get_if<Segment>(&opened);
            if (segment == nullptr || segment->header.content != toldAgain)
                continue;
            if (!take(epoch, member, anew, later, *std::move(bytes)))
                return false;
            chain = anew;
            return true;
        }
        return false;
    }

    bool take(const Epoch &epoch, const crew::Member &member, Chain &chain, std::uint64_t sequence,
              std::string bytes)
    {
        auto opened = openSegment(bytes, epoch, member.device, member.signer);
        if (const auto *fault = std::get_if<SegmentFault>(&opened)) {
            find(kindOf(*fault), epoch, member.device, sequence);
            return false;
        }
        auto &segment = std::get<Segment>(opened);
        if (segment.header.sequence != sequence) { // renamed, or an old one under a new name
            find(FindingKind::Damaged, epoch, member.device, sequence);
            return false;
        }
        if (!isRightful(segment, epoch, member)) {
            find(FindingKind::Intruder, epoch, member.device, sequence);
            return false;
        }
        if (const auto wrong = kindOf(standing(segment, epoch, chain))) {
            find(*wrong, epoch, member.device, sequence);
            return false;
        }
        extend(chain, segment);
        m_caught.segments.push_back(
            {epoch, member.device, std::move(segment), std::move(bytes), chain.lastCounter});
        return true;
    }

    store::SegmentRepository m_segments;
    DeviceId m_own;
    const CrewBook &m_book;
    Storage &m_storage;
    Whose m_whose;
    Catch m_caught;
    std::map<std::pair<journal::Lane, DeviceId>, std::uint64_t> m_last;
};

} // namespace

Result<Catch> fetchNew(Post &post, const CrewBook &book, Storage &storage, Whose whose)
{
    Fetcher fetcher(post, book, storage, whose);
    for (const HeldEpoch &held : book.held()) {
        for (const DeviceId &device : held.writers) {
            if (const Outcome done = fetcher.walk(held, device); !done)
                return done.error();
        }
    }
    return fetcher.takeAll();
}

} // namespace lidlark::sync
