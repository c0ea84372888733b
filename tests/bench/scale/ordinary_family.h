#pragma once

#include "core/usecase/check_in.h"
#include "core/usecase/keep_box.h"
#include "core/usecase/play_activity.h"
#include "core/usecase/restock.h"
#include "tests/support/crew_phone.h"

#include <array>
#include <random>

namespace lidlark::bench {

/// One family's phones, as they are used on ordinary days: real use cases on real stores, only
/// clock and chance are made up. What is assumed is printed by bench_scale.
class OrdinaryFamily
{
public:
    static constexpr std::size_t phones = 4;
    static constexpr std::size_t therapist = 0;
    static constexpr std::array<const char *, phones> names{"therapist", "parent", "other parent",
                                                            "caregiver"};

    explicit OrdinaryFamily(unsigned seed) : m_chance(seed)
    {
        add("Morven", store::Role::Therapist, "");
        add("Ruth", store::Role::Parent, home);
        add("Gregor", store::Role::Parent, home);
        add("Gran", store::Role::Caregiver, home);
    }

    [[nodiscard]] test::CrewPhone &phone(std::size_t place) { return *m_phones[place]; }
    [[nodiscard]] static const std::string &box()
    {
        static const std::string id = "b-fin";
        return id;
    }

    /// The box is handed over and everybody let in, each with the files of those before.
    /// @param meet one exchange of a phone.
    template <class Meet> bool begin(const Meet &meet)
    {
        tellAll(test::islandTime(4, 10, 0));
        usecase::Workplace workplace = phone(therapist).workplace();
        bool well = usecase::issueBox(workplace, test::familyOf(child)).ok() &&
                    phone(therapist).found(box()).ok();
        constexpr std::array<std::size_t, phones> hosts{0, 0, 1, 1};
        for (std::size_t guest = 1; guest < phones && well; ++guest) {
            meet(hosts[guest]);
            well = phone(hosts[guest]).letIn(phone(guest), box()).ok();
            meet(hosts[guest]);
            meet(guest);
        }
        return well;
    }

    /// Everything people do on one day. @param day from 0. @param meet one exchange of a phone.
    template <class Meet> void liveADay(int day, const Meet &meet)
    {
        const std::int64_t morning = test::islandTime(5 + day, 0, 0);
        const auto at = [&](int hour, int minute) {
            tellAll(morning + hour * msPerHour + minute * msPerMinute);
        };
        const auto everybody = [&] {
            for (std::size_t who = 0; who < phones; ++who)
                meet(who);
        };
        at(7, 0);
        everybody();
        at(7, 30);
        play(1 + day % 2);
        at(12, 0);
        everybody();
        at(15, 30);
        play(3);
        at(17, 0);
        everybody();
        at(18, 30);
        play(2 - day % 2);
        weekly(day);
        at(20, 0);
        everybody();
    }

    void tellAll(std::int64_t now)
    {
        for (const auto &each : m_phones)
            each->clock.moveTo(now);
    }

    [[nodiscard]] int plays() const { return m_plays; }

private:
    static constexpr const char *child = "Fin";
    static constexpr const char *home = "h-fin";

    void add(const char *person, store::Role role, const char *where)
    {
        m_phones.push_back(std::make_unique<test::CrewPhone>(person, role, where));
    }
    int below(int limit) { return static_cast<int>(m_chance() % static_cast<unsigned>(limit)); }

    /// A kite, three offers, one of them played and put back; often something is noticed.
    void play(std::size_t who)
    {
        usecase::Workplace workplace = phone(who).workplace();
        usecase::MenuRequest request;
        request.child = child;
        request.kite = static_cast<checkin::Kite>(below(4));
        const auto today = usecase::suggestToday(workplace, request);
        if (!today || today->menu.offers.empty())
            return;
        (void)usecase::markOffered(workplace, *today);
        const auto &offers = today->menu.offers;
        const catalogue::Activity &chosen =
            offers[static_cast<std::size_t>(below(static_cast<int>(offers.size())))]
                .admitted.activity();
        const auto entry =
            usecase::checkIn(workplace, child, *request.kite, checkin::ShownBy::Child);
        const auto play = usecase::startPlay(workplace, {child, chosen.id, {}, {}});
        tellAll(phone(who).clock.nowMs() + 6 * msPerMinute);
        if (!play || !entry)
            return;
        if (usecase::putBack(workplace, *play, {}, goneOf(chosen), countedOf(chosen)))
            ++m_plays;
        const checkin::CheckIn before{
            *entry, today->family.child.id, today->when, *request.kite, checkin::ShownBy::Child, {},
            {}};
        (void)usecase::checkInAfter(workplace, before, static_cast<checkin::Kite>(below(4)),
                                    chosen.id);
        if (below(3) == 0)
            (void)usecase::noticePhrase(workplace, *play, static_cast<play::Phrase>(below(3)));
    }

    static usecase::CountedHome countedOf(const catalogue::Activity &chosen)
    {
        usecase::CountedHome all;
        for (const catalogue::ItemUse &use : chosen.items)
            all[use.item] = box::mostPieces;
        return all;
    }

    /// Of every fourth play one piece is used up.
    std::vector<usecase::NamedException> goneOf(const catalogue::Activity &chosen)
    {
        if (below(4) != 0)
            return {};
        for (const catalogue::ItemUse &use : chosen.items) {
            if (use.source == catalogue::Source::Box)
                return {{use.item, box::ExceptionKind::UsedUp, 1}};
        }
        return {};
    }

    /// On Sundays four items are counted, one is asked for, and what was asked for is packed and
    /// counted in.
    void weekly(int day)
    {
        if (day % 7 != 6)
            return;
        static const std::array<ItemId, 4> items{ItemId{"eyes"}, ItemId{"pegs"}, ItemId{"crayons"},
                                                 ItemId{"pompoms"}};
        usecase::Workplace parents = phone(1).workplace();
        for (const ItemId &item : items)
            (void)usecase::countBox(parents, child, {}, {{item, 4 + below(3)}});
        const ItemId &wanted = items[static_cast<std::size_t>(below(4))];
        (void)usecase::askFor(parents, child, {}, wanted);
        usecase::Workplace therapists = phone(therapist).workplace();
        if (!m_wanted.value.empty()) {
            (void)usecase::moveRequest(therapists, child, {}, m_wanted, box::RequestStep::Packed);
            (void)usecase::countIn(parents, child, {}, m_wanted, 3);
        }
        m_wanted = wanted;
    }

    std::mt19937 m_chance;
    std::vector<std::unique_ptr<test::CrewPhone>> m_phones;
    ItemId m_wanted;
    int m_plays = 0;
};

} // namespace lidlark::bench
