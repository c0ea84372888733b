#pragma once

#include "core/crew/given_key.h"
#include "core/crew/opening.h"
#include "core/sync/epoch.h"
#include "core/sync/post.h"

#include <map>
#include <set>
#include <string>
#include <vector>

namespace lidlark::sync {

/// An epoch whose key this phone holds.
struct HeldEpoch {
    Epoch epoch;
    DeviceId writer;            ///< The one device that writes under it; empty: all who hold it.
    std::set<DeviceId> writers; ///< Whose segments there may be.
    /// What one device has handed to a guest: who holds the history knows it better.
    [[nodiscard]] bool isCopy() const
    {
        return !writer.empty() && epoch.lane.kind != journal::LaneKind::Home;
    }
};

/// What a phone knows of the crew of one box: who is in it, which epochs there are, and the keys of
/// those that it holds. Read at one moment.
class CrewBook
{
public:
    static Result<CrewBook> open(const Post &post, const std::string &box);

    [[nodiscard]] const crew::Crew &crew() const { return m_crew; }
    [[nodiscard]] const std::string &box() const { return m_box; }
    /// The phone itself, while it is in the crew; else null.
    [[nodiscard]] const crew::Member *me() const;
    [[nodiscard]] const std::vector<HeldEpoch> &held() const { return m_held; }
    [[nodiscard]] const HeldEpoch *held(const Digest &epoch) const;
    [[nodiscard]] const std::vector<crew::Opening> &openings() const { return m_openings; }

    /// The lanes of this crew that may be read by somebody in it: the box's, those of its homes,
    /// and of copies those that were begun. Where no home shares what it plays, there is no key for
    /// it.
    [[nodiscard]] const std::set<journal::Lane> &lanes() const { return m_lanes; }
    /// Who may hold the key of a lane today; with @p writer, that device too.
    [[nodiscard]] std::set<DeviceId> entitledTo(const journal::Lane &lane, const DeviceId &writer,
                                                Day today) const;
    /// The epoch of @p lane in which @p writer alone writes, or, where that is empty, everybody.
    [[nodiscard]] crew::InForce inForce(const journal::Lane &lane, const DeviceId &writer,
                                        Day today) const;
    /// Whether the crew knows that @p device was given the key of @p epoch.
    [[nodiscard]] bool hasKey(const DeviceId &device, const Digest &epoch) const;
    /// Folders are listed this time, and not only asked for the next file.
    [[nodiscard]] bool looksThrough() const { return m_looksThrough; }
    void lookThrough() { m_looksThrough = true; }
    /// The epochs held just before this one, in the lane: of one that all write in.
    [[nodiscard]] std::vector<const HeldEpoch *> before(const Digest &epoch) const;
    /// Those held that follow it.
    [[nodiscard]] std::vector<const HeldEpoch *> after(const Digest &epoch) const;
    /// Whether the phone holds every epoch of the lane that all write in, from the first on: it can
    /// tell whether anything of a device is missing.
    [[nodiscard]] bool holdsAllOf(const journal::Lane &lane) const;

private:
    CrewBook(std::string box, DeviceId device) : m_box(std::move(box)), m_device(std::move(device))
    {
    }
    void takeKeys(const Post &post);
    void hold(const Digest &id, const journal::Lane &lane, const DeviceId &writer,
              const std::string &letter, const crypto::LetterSeed &seed);
    void takeGivenKeys(const Post &post);
    Outcome takeHandedKeys(const Post &post);
    void orderHeld();
    Outcome findCopied(const Post &post);

    std::string m_box;
    DeviceId m_device;
    crew::Crew m_crew;
    std::set<journal::Lane> m_lanes;
    bool m_looksThrough = false;
    std::vector<crew::Opening> m_openings;
    std::vector<crew::GivenKey> m_given;
    std::vector<HeldEpoch> m_held;
    std::map<Digest, std::vector<std::size_t>> m_later; ///< By epoch: places of those that follow.
};

} // namespace lidlark::sync
