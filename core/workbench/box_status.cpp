#include "core/workbench/box_status.h"

#include "core/workbench/standing.h"

#include <algorithm>

namespace lidlark::workbench {

namespace {

using journal::Event;
using journal::Seen;

/// The events of a box that can be read, and what they say.
using Said = std::vector<std::pair<const Event *, StatusSaid>>;

struct Round {
    const Event *issued = nullptr;
    StatusSaid said;
    std::string identity;
    const Event *returned = nullptr;
    Day returnedDay;
};

std::vector<Round> roundsOf(const Said &all, const Seen &seen)
{
    std::vector<const Event *> issues;
    for (const auto &[event, said] : all) {
        if (said.step == BoxStep::Issued)
            issues.push_back(event);
    }
    std::vector<Round> rounds;
    for (const Event *event : standingOf(issues, seen))
        rounds.push_back({event, *readStatus(*event), journal::identityOf(*event), nullptr, {}});
    for (const auto &[event, said] : all) {
        for (Round &round : rounds) {
            const bool ofIt = said.step == BoxStep::Returned && said.round == round.identity;
            // Of several words that it is back, the first that was written.
            if (!ofIt || (round.returned != nullptr && writtenLater(*event, *round.returned)))
                continue;
            round.returned = event;
            round.returnedDay = said.day;
        }
    }
    // Those still out stand first, the later written before the earlier.
    std::ranges::sort(rounds, [](const Round &a, const Round &b) {
        const bool aOut = a.returned == nullptr;
        const bool bOut = b.returned == nullptr;
        return aOut != bOut ? aOut : writtenLater(*a.issued, *b.issued);
    });
    return rounds;
}

/// All that was said of one item in one round, as one register.
std::map<ItemId, std::vector<const Event *>> careOf(const Said &all, const std::string &round)
{
    std::map<ItemId, std::vector<const Event *>> care;
    for (const auto &[event, said] : all) {
        if (!said.item.empty() && said.round == round)
            care[said.item].push_back(event);
    }
    return care;
}

/// The least of what stands: nothing before cleaned, cleaned before replaced.
std::optional<Tended> leastOf(const std::vector<const Event *> &standing)
{
    const Event *least = nullptr;
    StatusSaid leastSaid;
    for (const Event *event : standing) {
        const StatusSaid said = *readStatus(*event);
        if (said.step == BoxStep::NotYet)
            return std::nullopt;
        const bool lesser = least != nullptr && said.step == BoxStep::Cleaned &&
                            leastSaid.step == BoxStep::Replaced;
        const bool alike = least != nullptr && said.step == leastSaid.step;
        if (least == nullptr || lesser || (alike && writtenLater(*event, *least))) {
            least = event;
            leastSaid = said;
        }
    }
    return least == nullptr ? std::nullopt
                            : std::optional(Tended{leastSaid.step == BoxStep::Replaced,
                                                   leastSaid.how, least->author, leastSaid.day});
}

void addLot(BoxStatus &status, const ItemId &item, const std::string &lot)
{
    if (!lot.empty())
        status.lots[item].insert(lot);
}

void readCare(BoxStatus &status, const Said &all, const Seen &seen)
{
    for (const auto &[item, said] : careOf(all, status.round)) {
        const auto standing = standingOf(said, seen);
        const auto tended = leastOf(standing);
        if (tended)
            status.tended[item] = *tended;
        const bool gone = tended && tended->replaced; // the old one, on every word that stands
        if (gone)
            status.lots.erase(item);
        for (const Event *event : gone ? standing : said)
            addLot(status, item, readStatus(*event)->lot);
    }
}

void readRound(BoxStatus &status, const std::vector<Round> &rounds)
{
    const Round &round = rounds.front();
    const bool back = round.returned != nullptr;
    status.standing = back ? Standing::Returned : Standing::Issued;
    status.child = round.said.to;
    status.day = back ? round.returnedDay : round.said.day;
    status.by = back ? round.returned->author : round.issued->author;
    status.round = round.identity;
    status.pieces = round.said.pieces;
    for (const Round &other : rounds) {
        for (const auto &[item, lots] : other.said.lots) {
            for (const std::string &lot : lots)
                addLot(status, item, lot);
        }
        if (&other != &round && other.returned == nullptr)
            status.alsoWith.push_back(other.said.to);
    }
}

void readRetired(BoxStatus &status, const Said &all)
{
    const Event *first = nullptr;
    for (const auto &[event, said] : all) {
        if (said.step != BoxStep::Retired || (first != nullptr && writtenLater(*event, *first)))
            continue;
        first = event;
        status.standing = Standing::Retired;
        status.day = said.day;
        status.by = event->author;
        status.why = said.why;
    }
}

} // namespace

std::optional<BoxStatus> foldBoxStatus(std::span<const Event> events, const Seen &seen)
{
    Said all;
    for (const Event &event : events) {
        if (auto said = readStatus(event))
            all.emplace_back(&event, *std::move(said));
    }
    if (all.empty())
        return std::nullopt;
    BoxStatus status;
    status.code = all.front().second.box;
    for (const auto &[event, said] : all) {
        if (!said.build.empty())
            status.builds.insert(said.build);
    }
    const std::vector<Round> rounds = roundsOf(all, seen);
    if (!rounds.empty()) {
        readRound(status, rounds);
        readCare(status, all, seen);
    }
    readRetired(status, all);
    return status;
}

} // namespace lidlark::workbench
