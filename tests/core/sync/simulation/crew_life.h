#pragma once

#include "crew_wire.h"

namespace lidlark::test {

/// What becomes of the caregiver's tablet.
enum class Fate { Stays, Restored, Removed };

/// Thirty days of a crew: the therapist, a phone in each of two homes, a tablet in one of them, and
/// a guest for some days. Only clock, chance and the wire are made up.
class CrewLife
{
public:
    CrewLife(unsigned seed, std::string folder)
        : m_dice(seed), m_folder(std::move(folder)),
          m_judge(m_phones), m_wire{m_dice, m_judge, m_phones, samples::ShakyStorage(seed + 1, 0)}
    {
    }

    static constexpr int days = 30;

    /// @returns what went wrong first; empty: nothing.
    std::string live()
    {
        begin();
        for (m_day = 1; m_day <= days && m_judge.fault().empty(); ++m_day) {
            m_wire.storage.shakeBy(m_dice.oneOf(std::vector<int>{0, 0, 5, 20}));
            liveADay();
        }
        if (m_judge.fault().empty())
            end();
        return m_judge.fault();
    }

    [[nodiscard]] const CrewJudge &judge() const { return m_judge; }
    [[nodiscard]] int acts() const { return m_acts; }
    [[nodiscard]] int exchanges() const { return m_wire.exchanges; }
    [[nodiscard]] int deaths() const { return m_wire.deaths; }
    [[nodiscard]] int bundles() const { return m_wire.bundles; }

private:
    SimPhone &add(const std::string &person, store::Role role, const std::string &home)
    {
        m_phones.push_back(std::make_unique<SimPhone>(person, role, home));
        SimPhone &phone = *m_phones.back();
        phone.wrongBy = wrongClock(role);
        phone.tell(m_wire.now);
        return phone;
    }

    std::int64_t wrongClock(store::Role role)
    {
        static const std::vector<std::int64_t> clocks{0,
                                                      0,
                                                      40 * msPerMinute,
                                                      2 * msPerDay,
                                                      std::int64_t{-3} * 365 * msPerDay,
                                                      -5 * msPerMinute};
        // Who lets others in has a clock that is off by minutes: a guest's days are those it says.
        static const std::vector<std::int64_t> slight{0, 40 * msPerMinute, -5 * msPerMinute};
        return m_dice.oneOf(
            role == store::Role::Caregiver || role == store::Role::Therapist ? clocks : slight);
    }

    void begin()
    {
        m_wire.now = islandTime(4, 10, 0);
        m_morven = &add("Morven", store::Role::Therapist, "");
        m_morven->wrongBy = 0;
        m_morven->tell(m_wire.now);
        usecase::Workplace workplace = m_morven->workplace();
        if (!usecase::issueBox(workplace, familyOf(effie)) || !m_morven->found(effiesBox))
            m_judge.fail(*m_morven, "cannot begin");
        m_morven->in = true;
        m_kirsty = &add("Kirsty", store::Role::Parent, "h-effie-mum");
        m_aaron = &add("Aaron", store::Role::Parent, "h-effie-dad");
        m_tablet = &add("Tablet", store::Role::Caregiver, "h-effie-mum");
        letIn(*m_morven, *m_kirsty);
        letIn(*m_morven, *m_aaron);
        m_morven->wrongBy = wrongClock(store::Role::Therapist);
        m_fate = static_cast<Fate>(m_dice.below(3));
        m_turningDay = 12 + m_dice.below(10);
        m_guestDay = 6 + m_dice.below(12);
    }

    void letIn(SimPhone &host, SimPhone &newcomer, std::optional<Day> until = {})
    {
        m_wire.meet(host);
        sync::Post hosts = host.post();
        const auto welcome = sync::letIn(hosts, effiesBox, newcomer.asNewcomer(until));
        if (!welcome)
            return;
        const auto read = sync::welcomeIn(sync::letterOf(*welcome, host.entropy), newcomer.secret);
        sync::Post theirs = newcomer.post();
        newcomer.in = read && sync::settleIn(theirs, *read).ok();
        newcomer.device = theirs.device;
        if (!newcomer.in)
            m_judge.fail(newcomer, "could not settle in");
        m_judge.look(host);
        m_wire.meet(host);
        m_wire.meet(newcomer);
    }

    void remove(SimPhone &host, const DeviceId &device)
    {
        sync::Post hosts = host.post();
        if (sync::removeMember(hosts, effiesBox, device)) {
            for (const auto &phone : m_phones)
                phone->in = phone->in && phone->device.id != device;
        }
        m_judge.look(host);
        m_wire.meet(host);
    }

    void liveADay()
    {
        const std::int64_t morning = islandTime(4 + m_day, 7, 0);
        turn();
        for (int moment = 0; moment < 6; ++moment) {
            m_wire.now = morning + moment * 2 * msPerHour + m_dice.below(100) * msPerMinute;
            for (const auto &phone : m_phones)
                liveAMoment(*phone);
        }
    }

    void liveAMoment(SimPhone &phone)
    {
        phone.tell(m_wire.now);
        if (m_dice.oneIn(3)) {
            m_acts += SimActs(phone, m_dice).one() ? 1 : 0;
            m_judge.look(phone);
        }
        if (m_dice.oneIn(3))
            m_wire.meet(phone);
        if (m_dice.oneIn(25))
            m_wire.handOver(phone, *m_dice.oneOf(m_phones));
    }

    /// What happens on some of the days alone.
    void turn()
    {
        if (!m_tablet->in && m_tablet->was.empty() && m_day < m_turningDay)
            letIn(*m_kirsty, *m_tablet);
        if (m_day == m_guestDay) {
            SimPhone &host = m_dice.oneIn(2) ? *m_kirsty : *m_aaron;
            SimPhone &guest = add("Archie", store::Role::Guest, host.device.home.value);
            host.tell(m_wire.now);
            const auto today = store::todayOf(host.clock);
            letIn(host, guest, today->day + m_dice.below(sync::guestDays));
        }
        if (m_fate == Fate::Restored)
            turnBack();
        if (m_fate == Fate::Removed && m_day == m_turningDay) {
            remove(*m_kirsty, m_tablet->device.id);
            m_tablet = &add("Tablet2", store::Role::Caregiver, "h-effie-mum");
            letIn(*m_kirsty, *m_tablet);
        }
    }

    /// The tablet's store is set back by some days, and it is let in anew.
    void turnBack()
    {
        if (m_day == m_turningDay - 5)
            (void)m_tablet->backUp(m_folder + "/backup.sqlite");
        if (m_day == m_turningDay && !m_tablet->backup.empty()) {
            m_judge.forgive(*m_tablet);
            m_tablet->restore();
            if (m_tablet->match() == sync::Match::Well || !m_tablet->becomeAnother())
                m_judge.fail(*m_tablet, "did not notice that it was set back");
        }
        if (m_day > m_turningDay && !m_tablet->in && !m_tablet->was.empty() && m_dice.oneIn(2))
            letIn(*m_kirsty, *m_tablet);
        if (m_day == m_turningDay + 8 && m_tablet->in && !m_tablet->was.empty())
            remove(*m_kirsty, m_tablet->was);
    }

    void end()
    {
        m_wire.calm = true;
        m_wire.storage.steady();
        m_wire.now = islandTime(4 + days + 10, 12, 0);
        for (int round = 0; round < 8; ++round) {
            m_wire.now += round % 4 == 0 ? msPerDay : msPerHour;
            m_wire.settled = round > 4;
            for (const auto &phone : m_phones) {
                if (m_judge.fault().empty())
                    m_wire.meet(*phone);
            }
        }
        if (m_judge.fault().empty())
            m_judge.judge();
    }

    SimDice m_dice;
    std::string m_folder;
    CrewJudge::Phones m_phones;
    CrewJudge m_judge;
    CrewWire m_wire;
    SimPhone *m_morven = nullptr;
    SimPhone *m_kirsty = nullptr;
    SimPhone *m_aaron = nullptr;
    SimPhone *m_tablet = nullptr;
    Fate m_fate = Fate::Stays;
    int m_day = 0;
    int m_turningDay = 0;
    int m_guestDay = 0;
    int m_acts = 0;
};

} // namespace lidlark::test
