#include "core/sync/crew_book.h"

#include "core/crew/rights.h"
#include "core/journal/lane_home.h"
#include "core/store/crew_repository.h"
#include "core/store/event_repository.h"
#include "core/store/segment_repository.h"
#include "core/sync/crew_lanes.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

using journal::Lane;
using journal::LaneKind;

/// A key in a letter; nothing for a letter to somebody else.
std::optional<crypto::EpochKey> keyIn(const std::string &letter, const crypto::LetterSeed &seed)
{
    const auto text = crypto::letterOpened(letter, seed);
    if (!text || text->size() != crypto::EpochKey::size)
        return std::nullopt;
    std::array<std::uint8_t, crypto::EpochKey::size> bytes{};
    std::copy(text->begin(), text->end(), bytes.begin());
    return crypto::EpochKey(bytes);
}

} // namespace

Result<CrewBook> CrewBook::open(const Post &post, const std::string &box)
{
    const Lane lane{LaneKind::Box, box};
    store::EventRepository repository(post.database);
    const auto events = repository.ofSubject({lane, "epochs"});
    auto crew = store::CrewRepository(post.database).crewOf(box);
    if (!events || !crew)
        return events ? crew.error() : events.error();
    CrewBook book(box, post.device.id);
    book.m_crew = *std::move(crew);
    book.m_lanes = lanesOf(box, book.m_crew);
    book.m_openings = crew::openingsAmong(*events, book.m_crew);
    book.m_given = crew::givenAmong(*events, book.m_crew);
    if (const Outcome done = book.findCopied(post); !done)
        return done.error();
    book.takeKeys(post);
    book.takeGivenKeys(post);
    if (const Outcome done = book.takeHandedKeys(post); !done)
        return done.error();
    book.orderHeld();
    return book;
}

Outcome CrewBook::findCopied(const Post &post)
{
    store::EventRepository events(post.database);
    for (const auto &[device, member] : m_crew.everMembers()) {
        if (member.home.empty())
            continue;
        const Lane lane = journal::sharedPlaysOf(member.home.value);
        const auto own = events.lastCounter(lane, m_device);
        if (!own)
            return own.error();
        if (*own > 0 ||
            std::ranges::find(m_openings, lane, &crew::Opening::lane) != m_openings.end())
            m_lanes.insert(lane);
    }
    return Done{};
}

void CrewBook::takeKeys(const Post &post)
{
    const crypto::LetterSeed seed = crypto::letterSeedOf(post.secret);
    for (const crew::Opening &opening : m_openings) {
        const auto letter = opening.letters.find(m_device);
        if (letter != opening.letters.end())
            hold(opening.id, opening.lane, opening.writer, letter->second, seed);
    }
}

void CrewBook::takeGivenKeys(const Post &post)
{
    const crypto::LetterSeed seed = crypto::letterSeedOf(post.secret);
    for (const crew::GivenKey &given : m_given) {
        const auto letter = given.letters.find(m_device);
        const auto opening = std::ranges::find(m_openings, given.epoch, &crew::Opening::id);
        if (letter != given.letters.end() && opening != m_openings.end() &&
            held(given.epoch) == nullptr)
            hold(given.epoch, opening->lane, opening->writer, letter->second, seed);
    }
}

bool CrewBook::hasKey(const DeviceId &device, const Digest &epoch) const
{
    const auto opening = std::ranges::find(m_openings, epoch, &crew::Opening::id);
    return (opening != m_openings.end() && opening->letters.contains(device)) ||
           std::ranges::any_of(m_given, [&](const crew::GivenKey &given) {
               return given.epoch == epoch && given.letters.contains(device);
           });
}

Outcome CrewBook::takeHandedKeys(const Post &post)
{
    const crypto::LetterSeed seed = crypto::letterSeedOf(post.secret);
    const auto keys = store::SegmentRepository(post.database).handedKeys();
    if (!keys)
        return keys.error();
    for (const store::HandedKey &key : *keys) {
        if (key.box == m_box && held(key.epoch) == nullptr)
            hold(key.epoch, key.lane, key.writer, key.letter, seed);
    }
    return Done{};
}

void CrewBook::hold(const Digest &id, const Lane &lane, const DeviceId &writer,
                    const std::string &letter, const crypto::LetterSeed &seed)
{
    // An epoch of another crew's lane, or of the clinic's: nothing that lies under it is for here.
    const auto key = m_lanes.contains(lane) ? keyIn(letter, seed) : std::nullopt;
    if (!key)
        return;
    const auto opening = std::ranges::find(m_openings, id, &crew::Opening::id);
    HeldEpoch held{{m_box, lane, id, *key}, writer, {}};
    if (!writer.empty())
        held.writers = {writer};
    else if (opening != m_openings.end()) // who was given it later only reads what is past
        held.writers = opening->holders();
    m_held.push_back(std::move(held));
}

/// Which of the held follow which: asked for each device and epoch.
void CrewBook::orderHeld()
{
    std::map<Digest, std::size_t> places;
    for (std::size_t i = 0; i < m_held.size(); ++i)
        places.emplace(m_held[i].epoch.id, i);
    for (const HeldEpoch &held : m_held) {
        for (const Digest &earlier : crew::allBefore(held.epoch.id, m_openings)) {
            if (const auto place = places.find(earlier); place != places.end())
                m_later[earlier].push_back(places[held.epoch.id]);
        }
    }
}

const crew::Member *CrewBook::me() const
{
    return m_crew.has(m_device) ? m_crew.member(m_device) : nullptr;
}

const HeldEpoch *CrewBook::held(const Digest &epoch) const
{
    const auto found = std::ranges::find_if(
        m_held, [&epoch](const HeldEpoch &held) { return held.epoch.id == epoch; });
    return found == m_held.end() ? nullptr : &*found;
}

std::set<DeviceId> CrewBook::entitledTo(const Lane &lane, const DeviceId &writer, Day today) const
{
    auto entitled = crew::entitledTo(m_crew, lane, today);
    for (const DeviceId &guest : crew::guestsLeftOut(lane, m_openings, m_crew))
        entitled.erase(guest);
    if (!writer.empty())
        entitled.insert(writer);
    return entitled;
}

crew::InForce CrewBook::inForce(const Lane &lane, const DeviceId &writer, Day today) const
{
    return crew::inForce({lane, writer}, m_openings, entitledTo(lane, writer, today));
}

std::vector<const HeldEpoch *> CrewBook::after(const Digest &epoch) const
{
    std::vector<const HeldEpoch *> later;
    if (const auto places = m_later.find(epoch); places != m_later.end()) {
        for (const std::size_t place : places->second)
            later.push_back(&m_held[place]);
    }
    return later;
}

std::vector<const HeldEpoch *> CrewBook::before(const Digest &epoch) const
{
    std::vector<const HeldEpoch *> earlier;
    for (const HeldEpoch &held : m_held) {
        if (crew::follows(epoch, held.epoch.id, m_openings))
            earlier.push_back(&held);
    }
    const auto all = earlier;
    std::erase_if(earlier, [&](const HeldEpoch *held) {
        return std::ranges::any_of(all, [&](const HeldEpoch *other) {
            return crew::follows(other->epoch.id, held->epoch.id, m_openings);
        });
    });
    return earlier;
}

bool CrewBook::holdsAllOf(const Lane &lane) const
{
    return std::ranges::all_of(m_openings, [&](const crew::Opening &opening) {
        return opening.lane != lane || !opening.writer.empty() || held(opening.id) != nullptr;
    });
}

} // namespace lidlark::sync
