#pragma once

#include "gate_world.h"
#include "oracle_table.h"

#include <algorithm>
#include <map>
#include <vector>

/// A second reading of the gate, written straight from activities.md 1.3, 1.4 and 2.1 and safety.md
/// SP-01, HM-01, AL-01, LA-01, SV-01 and SV-02 for tests. It shares no code with core/safety,
/// prefers plain loops over speed, and answers only yes or no.
namespace oracle {

using catalogue::Activity;
using catalogue::ItemKind;
using catalogue::Supervision;
using child::Person;

/// Reads a world and one activity.
class Judge
{
public:
    Judge(const GateWorld &world, const Activity &activity) : m_world(world), m_activity(activity)
    {
        readPlayer();
        readRoom();
        readHome();
    }

    /// Whether any way of playing it is allowed here and now.
    [[nodiscard]] bool allows() const
    {
        std::vector<const ItemKind *> chosen;
        return anyAllowed(chosen);
    }

    /// Whether it may be played with exactly these swaps.
    [[nodiscard]] bool allowsWith(const std::map<ItemId, ItemId> &swaps) const
    {
        return wayIsAllowed(wayWith(swaps));
    }

    [[nodiscard]] Tags tagsWith(const std::map<ItemId, ItemId> &swaps) const
    {
        return tagsOfWay(wayWith(swaps));
    }

    [[nodiscard]] Supervision supervisionWith(const std::map<ItemId, ItemId> &swaps) const
    {
        return needed(wayWith(swaps));
    }

private:
    /// For each line of the activity's items, what is really used; null: unknown to the catalogue.
    using Way = std::vector<const ItemKind *>;

    void readPlayer()
    {
        if (m_world.child.age)
            m_months = m_world.child.age->youngestMonths(m_world.today);
        if (!m_world.hasHome)
            return;
        for (const Person &person : m_world.home.people) {
            if (person.id.value != m_world.child.id.value)
                continue;
            m_playerMouths = person.mouths;
            m_playerPica = person.pica;
            if (m_months && person.age)
                m_months = std::min(*m_months, person.age->youngestMonths(m_world.today));
        }
    }

    [[nodiscard]] Smallness of(const Person &person) const
    {
        if (person.id.value == m_world.child.id.value)
            return smallnessOf(m_months, m_playerMouths, m_playerPica, true);
        std::optional<int> months;
        if (person.age)
            months = person.age->youngestMonths(m_world.today);
        return smallnessOf(months, person.mouths, person.pica,
                           person.kind == child::PersonKind::Child);
    }

    void readRoom()
    {
        m_room = smallnessOf(m_months, m_playerMouths, m_playerPica, true);
        m_room.join({m_world.room.visitorUnderThree, m_world.room.visitorMouther});
        if (!m_world.room.present) {
            if (!m_world.hasHome)
                m_room.join({true, true});
            for (const Person &person : m_world.home.people) {
                if (m_world.hasHome)
                    m_room.join(of(person));
            }
            return;
        }
        for (const PersonId &id : *m_world.room.present) {
            bool known = id.value == m_world.child.id.value;
            for (const Person &person : m_world.home.people) {
                if (m_world.hasHome && person.id == id) {
                    known = true;
                    m_room.join(of(person));
                }
            }
            if (!known)
                m_room.join({true, true});
        }
    }

    void readHome()
    {
        if (!m_world.hasHome)
            m_home = {true, true};
        for (const Person &person : m_world.home.people) {
            if (m_world.hasHome && !person.visits)
                m_home.join(of(person));
        }
    }

    [[nodiscard]] Way wayWith(const std::map<ItemId, ItemId> &swaps) const
    {
        Way way;
        for (const auto &use : m_activity.items) {
            const auto swap = swaps.find(use.item);
            way.push_back(m_world.catalogue.item(swap == swaps.end() ? use.item : swap->second));
        }
        return way;
    }

    bool anyAllowed(Way &chosen) const
    {
        if (chosen.size() == m_activity.items.size())
            return wayIsAllowed(chosen);
        const ItemId original = m_activity.items[chosen.size()].item;
        std::vector<ItemId> options{original};
        for (const auto &swap : m_activity.swaps) {
            if (swap.item == original && m_world.catalogue.item(swap.with))
                options.push_back(swap.with);
        }
        for (const ItemId &option : options) {
            chosen.push_back(m_world.catalogue.item(option));
            const bool allowed = anyAllowed(chosen);
            chosen.pop_back();
            if (allowed)
                return true;
        }
        return false;
    }

    [[nodiscard]] bool isSwapped(const Way &way, std::size_t line) const
    {
        return way[line] && way[line]->id != m_activity.items[line].item;
    }

    [[nodiscard]] const catalogue::ActivitySwap *swapOf(const Way &way, std::size_t line) const
    {
        for (const auto &swap : m_activity.swaps) {
            if (isSwapped(way, line) && swap.item == m_activity.items[line].item &&
                swap.with == way[line]->id)
                return &swap;
        }
        return nullptr;
    }

    [[nodiscard]] static Tags broughtBy(const ItemKind *kind)
    {
        Tags tags = kind ? tagsOf(kind->tags) : Tags{};
        if (kind && kind->id.value == "towel")
            tags.erase("FACE"); // 1.3: "towel apart".
        return tags;
    }

    [[nodiscard]] Tags tagsOfWay(const Way &way) const
    {
        Tags all = tagsOf(m_activity.cautions);
        // 1.4, PAPER: "an entry that makes smaller ones (snips) carries SMALL".
        Tags staying = tagsOf(m_activity.madeTags);
        all.insert(staying.begin(), staying.end());
        for (std::size_t i = 0; i < way.size(); ++i) {
            const Tags original = broughtBy(m_world.catalogue.item(m_activity.items[i].item));
            all.insert(original.begin(), original.end());
            if (!isSwapped(way, i))
                staying.insert(original.begin(), original.end());
        }
        Tags result;
        for (const TableLine &line : table()) {
            if (!all.contains(line.tag))
                continue;
            if (staying.contains(line.tag) || line.fromMovement || !isTakenAway(way, line.tag))
                result.insert(line.tag);
        }
        for (std::size_t i = 0; i < way.size(); ++i) {
            if (!isSwapped(way, i))
                continue;
            const Tags own = tagsOf(way[i]->tags);
            result.insert(own.begin(), own.end());
            const Tags written = tagsOf(swapOf(way, i)->cautions);
            result.insert(written.begin(), written.end());
        }
        return result;
    }

    [[nodiscard]] bool isTakenAway(const Way &way, std::string_view tag) const
    {
        for (std::size_t i = 0; i < way.size(); ++i) {
            if (isSwapped(way, i) &&
                broughtBy(m_world.catalogue.item(m_activity.items[i].item)).contains(tag))
                return true;
        }
        return false;
    }

    [[nodiscard]] bool isAtHand(const ItemKind &kind) const
    {
        if (kind.source == catalogue::Source::Home) {
            const auto &missing = m_world.home.missingExtras;
            return !m_world.hasHome ||
                   std::find(missing.begin(), missing.end(), kind.id) == missing.end();
        }
        const auto stock = m_world.box.items.find(kind.id);
        return stock != m_world.box.items.end() && stock->second.low > 0;
    }

    /// 1.3: the swap is what is in the box in place of the item.
    [[nodiscard]] Way wayOfTheBox() const
    {
        Way way;
        for (const auto &use : m_activity.items) {
            const ItemKind *used = m_world.catalogue.item(use.item);
            const bool gone = used && !isAtHand(*used);
            for (auto swap = m_activity.swaps.rbegin(); gone && swap != m_activity.swaps.rend();
                 ++swap) {
                const ItemKind *with = m_world.catalogue.item(swap->with);
                if (swap->item == use.item && with && isAtHand(*with))
                    used = with; // Read from the back, so the first listed stays.
            }
            way.push_back(used);
        }
        return way;
    }

    [[nodiscard]] bool wayIsAllowed(const Way &way) const
    {
        const Tags tags = tagsOfWay(way);
        return isPublished() && unknownAllows(tags) && ageAllows(way, tags) &&
               roomAllows(way, tags) && conditionAllows(tags) && notesAllow(tags) &&
               homeAllows(tags, way) && flagsAllow(tags) && stockAllows(way) &&
               m_world.room.adultCanBe >= needed(way);
    }

    [[nodiscard]] bool isPublished() const // 2.1.2
    {
        const auto yes = m_world.home.permissions.floors.find(m_activity.id);
        if (m_world.hasHome && yes != m_world.home.permissions.floors.end() &&
            m_activity.version > yes->second.version)
            return false;
        if (m_activity.status == catalogue::Status::Reviewed)
            return true;
        return m_activity.status == catalogue::Status::AwaitingReview &&
               !(m_world.hasHome && m_world.home.reviewedOnly);
    }

    [[nodiscard]] bool unknownAllows(const Tags &tags) const // 2.1.1
    {
        const auto &avoids = m_world.home.avoidances;
        const bool allergiesKnown = m_world.hasHome && avoids.latex != Answer::Unanswered &&
                                    avoids.wheat != Answer::Unanswered &&
                                    avoids.coeliac != Answer::Unanswered;
        if (m_months && allergiesKnown)
            return true;
        if (m_activity.ageFloorMonths > 18)
            return false;
        Tags written = tagsOf(m_activity.cautions);
        written.insert(tags.begin(), tags.end());
        for (const TableLine &line : table()) {
            if (line.hard && written.contains(line.tag))
                return false;
        }
        return !written.contains("TRACE") && !written.contains("WATER") &&
               !written.contains("TOUCH");
    }

    /// The floor of a way: the entry's, which a therapist may lower for this version of it (2.1.3),
    /// or more where a swap is written for older children.
    [[nodiscard]] int floorOf(const Way &way) const
    {
        int swapFloor = 0;
        for (std::size_t i = 0; i < way.size(); ++i) {
            if (const auto *swap = swapOf(way, i))
                swapFloor = std::max(swapFloor, swap->ageFloorMonths);
        }
        const int own = m_activity.ageFloorMonths;
        if (swapFloor > own)
            return swapFloor;
        const auto yes = m_world.home.permissions.floors.find(m_activity.id);
        const bool lowered = m_world.hasHome && yes != m_world.home.permissions.floors.end() &&
                             yes->second.version == m_activity.version && yes->second.months < own;
        return lowered ? yes->second.months : own;
    }

    [[nodiscard]] bool ageAllows(const Way &way, const Tags &tags) const // 2.1.3
    {
        if (!m_months)
            return true;
        if (*m_months < floorOf(way))
            return false;
        return std::none_of(table().begin(), table().end(), [&](const TableLine &line) {
            return tags.contains(line.tag) && *m_months < line.floor;
        });
    }

    /// SP-01: another small child of the home, and nobody has noted "asleep or out, high storage".
    [[nodiscard]] bool conditionAllows(const Tags &tags) const
    {
        const bool small = tags.contains("SMALL") || tags.contains("COIN");
        if (!small || (!m_home.underThree && !m_home.mouther))
            return true;
        return m_world.hasHome && m_world.home.highStorage &&
               !m_world.home.permissions.smallWhenAway.empty();
    }

    /// 1.4, "everyone who will be in the room"; HM-01.
    [[nodiscard]] bool roomAllows(const Way &way, const Tags &tags) const
    {
        for (const ItemKind *used : way) {
            if (used && used->hazards.sealsAFace && m_room.underThree)
                return false;
        }
        for (const TableLine &line : table()) {
            if (!tags.contains(line.tag))
                continue;
            if ((line.hiddenForUnderThree && m_room.underThree) ||
                (line.hiddenForMouther && m_room.mouther))
                return false;
        }
        if (tags.contains("WATER") && m_room.underThree && !m_world.room.besideSaid)
            return false;
        return !tags.contains("BALLOON") || (!m_home.underThree && !m_home.mouther);
    }

    [[nodiscard]] bool notesAllow(const Tags &tags) const // 2.1.7, and scenario 2 for balloons
    {
        const Tags suggested = tagsOfWay(wayOfTheBox());
        const auto carries = [&](const char *tag) {
            return tags.contains(tag) || suggested.contains(tag);
        };
        const bool small =
            m_room.underThree || m_room.mouther || m_home.underThree || m_home.mouther;
        if (m_world.box.floorNoteOpen && small && (carries("SMALL") || carries("COIN")))
            return false;
        return !m_world.box.balloonNoteOpen || !carries("BALLOON");
    }

    [[nodiscard]] bool homeAllows(const Tags &tags, const Way &way) const // 1.4 LATEX, WHEAT
    {
        const auto &avoids = m_world.home.avoidances;
        const bool latex = avoids.latex == Answer::Yes || avoids.latexRisk == Answer::Yes; // LA-01
        if (m_world.hasHome && latex && tags.contains("LATEX"))
            return false;
        if (m_world.hasHome && tags.contains("WHEAT") &&
            (avoids.wheat == Answer::Yes || avoids.coeliac == Answer::Yes))
            return false;
        for (const ItemKind *kind : way) { // AL-01, and 1.3 for milk
            if (kind && !std::all_of(kind->allergens.begin(), kind->allergens.end(),
                                     [this](const std::string &a) { return isFine(a); }))
                return false;
        }
        return true;
    }

    /// Whether somebody has said that nobody at home avoids it. Latex and wheat have tags.
    [[nodiscard]] bool isFine(const std::string &allergen) const
    {
        if (allergen == "latex" || allergen == "wheat")
            return true;
        if (!m_world.hasHome)
            return false;
        const auto &avoids = m_world.home.avoidances;
        if (allergen == "milk")
            return avoids.milk == Answer::No;
        return avoids.more.contains(allergen) && avoids.more.at(allergen) == Answer::No;
    }

    [[nodiscard]] bool flagsAllow(const Tags &tags) const // 1.4, soft tags, STRAW, FOAM
    {
        if (tags.contains("NOISE") && m_world.room.quietNow)
            return false;
        if (!m_world.hasHome)
            return !tags.contains("TOUCH");
        const child::MedicalFlags &flags = m_world.home.flags;
        const child::Permissions &yes = m_world.home.permissions;
        if (tags.contains("TOUCH") && m_world.home.likesTouch != Answer::Yes)
            return false;
        if (tags.contains("SPIN") && flags.seizureShuntOrNeck && !yes.spin)
            return false;
        if (tags.contains("BREATH") && flags.heartLungOrShunt && !yes.breath)
            return false;
        if (tags.contains("LIFT") && flags.jointOrHeart && !yes.lift)
            return false;
        if (tags.contains("STRAW") && flags.mouthOrSwallowing && !yes.straw)
            return false;
        if (tags.contains("FOAM") && flags.brokenSkin)
            return false;
        if (tags.contains("SCENT") && flags.avoidScent)
            return false;
        return !tags.contains("NOISE") || !flags.soundSensitive;
    }

    [[nodiscard]] bool stockAllows(const Way &way) const // 2.1.6
    {
        std::map<std::string, int> pieces;
        for (std::size_t i = 0; i < way.size(); ++i) {
            if (!way[i])
                return false;
            if (isSwapped(way, i) || m_activity.items[i].role == catalogue::Role::Must)
                pieces[way[i]->id.value] += m_activity.items[i].quantity;
        }
        for (const auto &[id, wanted] : pieces) {
            const ItemKind &kind = *m_world.catalogue.item({id});
            if (!isAtHand(kind))
                return false;
            if (kind.source == catalogue::Source::Home)
                continue;
            const auto &stock = m_world.box.items.at({id});
            if (!m_world.box.here || stock.pastDate || stock.toWash || stock.low < wanted)
                return false;
        }
        return true;
    }

    [[nodiscard]] Supervision needed(const Way &way) const // 2.1.5, SV-01, SV-02, SP-01, PAPER
    {
        const Tags tags = tagsOfWay(way);
        bool beside = !m_months || *m_months < 36;
        for (const char *tag :
             {"BALLOON", "BAND", "ELASTIC", "CORD", "COIN", "FOAM", "SHARP", "WATER"})
            beside = beside || tags.contains(tag);
        beside = beside || (tags.contains("PAPER") && m_room.mouther);
        if (tags.contains("SMALL") || tags.contains("COIN"))
            beside = beside || m_home.underThree || m_home.mouther;
        if (beside)
            return Supervision::Beside;
        bool reach = tags.contains("SMALL") || tags.contains("DOUGH") || tags.contains("PINCH");
        for (const ItemKind *kind : way)
            reach = reach || (kind && (kind->id.value == "crayons" || kind->id.value == "chunky"));
        if (reach && *m_months < 72 && m_activity.supervision == Supervision::Near)
            return Supervision::Reach;
        return m_activity.supervision;
    }

    const GateWorld &m_world;
    const Activity &m_activity;
    std::optional<int> m_months;
    Answer m_playerMouths = Answer::Unanswered;
    bool m_playerPica = false;
    Smallness m_room;
    Smallness m_home;
};

} // namespace oracle
