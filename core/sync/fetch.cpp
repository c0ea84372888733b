#include "core/sync/fetch.h"

#include "core/store/event_repository.h"
#include "core/store/segment_repository.h"
#include "core/sync/gap.h"
#include "core/sync/kind_of_finding.h"
#include "core/sync/last_words.h"
#include "core/sync/publish.h"
#include "core/sync/rightful.h"

#include <algorithm>
#include <map>
#include <set>

namespace lidlark::sync {

namespace {

constexpr std::uint64_t furthestAhead = 10'000; ///< Numbers that are tried against a listing.
/// Bytes of events that are taken in at once: what one segment may hold, so twice that in memory at
/// most. By their number, years of small files would be folded anew after each hundred.
constexpr std::size_t textAtOnce = largestText;

/// Walks along the chains of others.
class Fetcher
{
public:
    Fetcher(Post &post, const CrewBook &book, Storage &storage, Whose whose)
        : m_segments(post.database), m_events(post.database), m_lastWords(post, book, storage),
          m_own(post.device.id), m_book(book), m_storage(storage), m_whose(whose)
    {
    }

    Outcome walk(const HeldEpoch &held, const DeviceId &device)
    {
        const crew::Member *member = m_book.crew().member(device);
        const crew::Member *me = m_book.me();
        const bool guest = me != nullptr && me->role == crew::Role::Guest;
        const bool wanted =
            (device == m_own) == (m_whose == Whose::Own) && (guest || !held.isCopy());
        if (!wanted || member == nullptr || m_caught.trouble || m_caught.more)
            return Done{};
        const auto past = hasMovedOn(held.epoch, device);
        if (!past || *past)
            return past ? Outcome(Done{}) : Outcome(past.error());
        auto chain = chainOf(held.epoch, device);
        if (!chain)
            return chain.error();
        Result<bool> more = true;
        while ((more = takeNext(held.epoch, *member, *chain)) && *more) {
            m_caught.more = m_text >= textAtOnce;
            if (m_caught.more)
                break;
        }
        if (!more)
            return more.error();
        m_last[{held.epoch.lane, device}] = chain->lastCounter;
        return Done{};
    }

    Catch takeAll()
    {
        m_caught.lastWords = m_lastWords.takeAll();
        return std::move(m_caught);
    }

private:
    /// Who has written something of its own under a later key writes no more under this one; and
    /// all of it is here, where nothing of that device is missing. What it only hands on there may
    /// lie before what it still writes here.
    Result<bool> hasMovedOn(const Epoch &epoch, const DeviceId &device)
    {
        const auto later = m_book.after(epoch.id);
        if (later.empty()) // as with the newest key, which is asked for the most
            return false;
        std::uint64_t before = 0;
        std::uint64_t since = 0;
        for (const HeldEpoch &held : m_book.held()) {
            if (held.epoch.lane != epoch.lane)
                continue;
            const auto chain = m_segments.chainOf(held.epoch.id, device);
            if (!chain)
                return chain.error();
            const bool isLater = std::ranges::find(later, &held) != later.end();
            std::uint64_t &last = isLater ? since : before;
            for (const store::SegmentRow &row : *chain)
                last = std::max(last, row.lastCounter);
        }
        if (since <= before)
            return false;
        const auto gap =
            m_events.hasGap(epoch.lane, device, m_book.crew().acceptedUpTo(device, epoch.lane));
        return gap ? Result<bool>(!*gap) : gap;
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

    Result<Standing> standing(const Segment &segment, const Epoch &epoch, const DeviceId &device,
                              const Chain &chain)
    {
        const Standing found = standingOf(segment, chain);
        // Told again is what was said before, not something else in its stead.
        if (found == Standing::Next && segment.header.content == toldAgain)
            return standingInGap(m_events, segment, {device, epoch.lane}, m_caught.segments);
        if (found != Standing::CounterGap)
            return found;
        const std::uint64_t first = segment.header.firstCounter;
        if (first <= chain.lastCounter) // of before something that is here: its key came later
            return standingInGap(m_events, segment, {device, epoch.lane}, m_caught.segments);
        // Who holds no earlier key cannot know what was before it.
        const bool begins = chain.hashes.empty() && !m_book.holdsAllOf(epoch.lane);
        return begins ? Standing::Next : found;
    }

    /// @returns whether there may be another one after it.
    Result<bool> takeNext(const Epoch &epoch, const crew::Member &member, Chain &chain)
    {
        const std::uint64_t sequence = chain.before + chain.hashes.size() + 1;
        auto bytes = get(epoch, member, sequence);
        if (bytes)
            return take(epoch, member, chain, sequence, *std::move(bytes));
        if (m_caught.trouble || m_whose == Whose::Own)
            return false;
        return takeToldAgain(epoch, member, chain);
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
    Result<bool> takeToldAgain(const Epoch &epoch, const crew::Member &member, Chain &chain)
    {
        if (!m_book.looksThrough())
            return false;
        const auto answer = m_storage.list(folderName(epoch, member.device));
        m_caught.trouble = troubleIn(answer);
        if (m_caught.trouble)
            return false;
        const auto &listed = std::get<std::vector<std::string>>(answer);
        std::set<std::string> strange(listed.begin(), listed.end());
        std::erase_if(strange, [](const std::string &name) { return name.ends_with(partEnd); });
        const std::uint64_t last = chain.before + chain.hashes.size() + 1;
        // Nearly always what is known is all there is: then no later name is worked out.
        for (std::uint64_t known = last; known > 0 && !strange.empty(); --known)
            strange.erase(segmentName(epoch, member.device, known));
        bool isLater = false;
        for (std::uint64_t later = last + 1; !strange.empty() && later < last + furthestAhead;
             ++later) {
            if (strange.erase(segmentName(epoch, member.device, later)) == 0)
                continue;
            isLater = true;
            auto taken = takeAnew(epoch, member, chain, later);
            if (!taken || *taken)
                return taken;
        }
        if (isLater) // what comes after it is there, and was brought after it
            find(FindingKind::Missing, epoch, member.device, last);
        return false;
    }

    /// Where everything before is told again, the chain begins anew.
    Result<bool> takeAnew(const Epoch &epoch, const crew::Member &member, Chain &chain,
                          std::uint64_t later)
    {
        auto bytes = get(epoch, member, later);
        const auto opened = openSegment(bytes.value_or(""), epoch, member.device, member.signer);
        const auto *segment = std::get_if<Segment>(&opened);
        if (segment == nullptr || segment->header.content != toldAgain)
            return false;
        Chain anew;
        anew.lastCounter = chain.lastCounter;
        auto taken = take(epoch, member, anew, later, *std::move(bytes));
        if (taken && *taken)
            chain = anew;
        return taken;
    }

    Result<bool> take(const Epoch &epoch, const crew::Member &member, Chain &chain,
                      std::uint64_t sequence, std::string bytes)
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
        const auto rightful = isRightful(m_segments, m_events, segment, {m_book, epoch, member});
        if (!rightful)
            return rightful.error();
        if (!*rightful) {
            find(FindingKind::Intruder, epoch, member.device, sequence);
            return hearLastWords(epoch, member, std::move(segment));
        }
        const auto stands = standing(segment, epoch, member.device, chain);
        if (!stands)
            return stands.error();
        if (const auto wrong = kindOf(*stands)) {
            find(*wrong, epoch, member.device, sequence);
            return false;
        }
        extend(chain, segment);
        m_text += segment.header.textSize;
        m_caught.segments.push_back(
            {epoch, member.device, std::move(segment), std::move(bytes), chain.lastCounter});
        return true;
    }

    /// @returns false: the chain ends here.
    Result<bool> hearLastWords(const Epoch &epoch, const crew::Member &member, Segment refused)
    {
        if (m_whose == Whose::Own)
            return false;
        const auto trouble = m_lastWords.hear(epoch, member, std::move(refused));
        if (!trouble)
            return trouble.error();
        m_caught.trouble = *trouble;
        return false;
    }

    store::SegmentRepository m_segments;
    store::EventRepository m_events;
    LastWords m_lastWords;
    DeviceId m_own;
    const CrewBook &m_book;
    Storage &m_storage;
    Whose m_whose;
    Catch m_caught;
    std::size_t m_text = 0; ///< Bytes of the events caught.
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
