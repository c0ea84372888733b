#pragma once

#include "crew_judge.h"
#include "sim_acts.h"

#include "tests/core/sync/shaky_storage.h"

namespace lidlark::test {

/// What becomes of the caregiver's tablet.
enum class Fate { Stays, Restored, Removed };

/// Thirty days of a crew: the therapist, a phone in each of two homes, a tablet in one of them, and
/// a guest for some days. Only clock, chance and the wire are made up.
class CrewLife
{
public:
    CrewLife(unsigned seed, std::string folder)
        : m_dice(seed), m_storage(seed + 1, 0), m_folder(std::move(folder)), m_judge(m_phones)
    {
    }

    static constexpr int days = 30;

    /// @returns what went wrong first; empty: nothing.
    std::string live()
    {
        begin();
        for (m_day = 1; m_day <= days && m_judge.fault().empty(); ++m_day) {
            m_storage.shakeBy(m_dice.oneOf(std::vector<int>{0, 0, 5, 20}));
            liveADay();
        }
        if (m_judge.fault().empty())
            end();
        return m_judge.fault();
    }

    [[nodiscard]] const CrewJudge &judge() const { return m_judge; }
    [[nodiscard]] int acts() const { return m_acts; }
    [[nodiscard]] int exchanges() const { return m_exchanges; }
    [[nodiscard]] int deaths() const { return m_deaths; }
    [[nodiscard]] int bundles() const { return m_bundles; }

private:
    SimPhone &add(const std::string &person, store::Role role, const std::string &home)
    {
        m_phones.push_back(std::make_unique<SimPhone>(person, role, home));
        SimPhone &phone = *m_phones.back();
        phone.wrongBy = wrongClock(role);
        phone.tell(m_now);
        return phone;
    }

    std::int64_t wrongClock(store::Role role)
    {
        static const std::vector<std::int64_t> clocks{
            0, 0, 40 * msPerMinute, 2 * msPerDay, std::int64_t{-3} * 365 * msPerDay, -5 * msPerMinute};
        // Who lets others in has a clock that is off by minutes: a guest's days are those it says.
        static const std::vector<std::int64_t> slight{0, 40 * msPerMinute, -5 * msPerMinute};
        return m_dice.oneOf(role == store::Role::Caregiver || role == store::Role::Therapist
                                ? clocks
                                : slight);
    }

    void begin()
    {
        m_now = islandTime(4, 10, 0);
        m_morven = &add("Morven", store::Role::Therapist, "");
        m_morven->wrongBy = 0;
        m_morven->tell(m_now);
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
        meet(host);
        sync::Post hosts = host.post();
        const auto welcome = sync::letIn(hosts, effiesBox, newcomer.asNewcomer(until));
        if (!welcome)
            return;
        const auto read =
            sync::welcomeIn(sync::letterOf(*welcome, host.entropy), newcomer.secret);
        sync::Post theirs = newcomer.post();
        newcomer.in = read && sync::settleIn(theirs, *read).ok();
        newcomer.device = theirs.device;
        if (!newcomer.in)
            m_judge.fail(newcomer, "could not settle in");
        m_judge.look(host);
        meet(host);
        meet(newcomer);
    }

    void remove(SimPhone &host, const DeviceId &device)
    {
        sync::Post hosts = host.post();
        if (sync::removeMember(hosts, effiesBox, device)) {
            for (const auto &phone : m_phones)
                phone->in = phone->in && phone->device.id != device;
        }
        m_judge.look(host);
        meet(host);
    }

    void liveADay()
    {
        const std::int64_t morning = islandTime(4 + m_day, 7, 0);
        turn();
        for (int moment = 0; moment < 6; ++moment) {
            m_now = morning + moment * 2 * msPerHour + m_dice.below(100) * msPerMinute;
            for (const auto &phone : m_phones)
                liveAMoment(*phone);
        }
    }

    void liveAMoment(SimPhone &phone)
    {
        phone.tell(m_now);
        if (m_dice.oneIn(3)) {
            m_acts += SimActs(phone, m_dice).one() ? 1 : 0;
            m_judge.look(phone);
        }
        if (m_dice.oneIn(3))
            meet(phone);
        if (m_dice.oneIn(25))
            handOver(phone, *m_dice.oneOf(m_phones));
    }

    /// What happens on some of the days alone.
    void turn()
    {
        if (!m_tablet->in && m_tablet->was.empty() && m_day < m_turningDay)
            letIn(*m_kirsty, *m_tablet);
        if (m_day == m_guestDay) {
            SimPhone &host = m_dice.oneIn(2) ? *m_kirsty : *m_aaron;
            SimPhone &guest = add("Archie", store::Role::Guest, host.device.home.value);
            host.tell(m_now);
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

    /// One exchange, which may break off anywhere.
    void meet(SimPhone &phone)
    {
        phone.tell(m_now);
        const sync::Match match = phone.match();
        if (match != sync::Match::Well)
            m_judge.fail(phone, "does not know its own store");
        ++m_exchanges;
        PowerlessStorage wire(m_storage);
        if (!m_calm && m_dice.oneIn(5))
            wire.dieAt(m_dice.below(40), m_dice.oneIn(2));
        int steps = !m_calm && m_dice.oneIn(8) ? m_dice.below(10) : 1'000'000;
        sync::Post mine = phone.post();
        try {
            const auto shared = sync::shareAll(mine, match, phone.keeper, wire,
                                               [&steps] { return steps-- > 0; });
            if (!shared)
                m_judge.fail(phone, "exchange: " + shared.error().detail);
            else
                read(phone, *shared);
        } catch (const PowerLoss &) {
            ++m_deaths;
        }
        m_judge.look(phone);
    }

    void read(SimPhone &phone, const sync::Shared &shared)
    {
        for (const auto &[box, report] : shared.boxes) {
            if (report.copied)
                m_judge.fail(phone, "takes itself for a copy");
            for (const sync::Finding &finding : report.findings) {
                const bool unfinished = finding.kind == sync::FindingKind::Missing && !m_settled;
                if (!unfinished && !isOfRemoved(finding.device))
                    m_judge.fail(phone, "finding " +
                                            std::to_string(static_cast<int>(finding.kind)) + " " +
                                            toText(finding.lane) + " " + finding.device.value);
            }
        }
    }

    [[nodiscard]] bool isOfRemoved(const DeviceId &device) const
    {
        return std::ranges::none_of(m_phones, [&device](const auto &phone) {
            return phone->in && phone->device.id == device;
        });
    }

    /// One phone's files, from hand to hand; sometimes twice.
    void handOver(SimPhone &from, SimPhone &to)
    {
        sync::Post theirs = from.post();
        const auto bundle = sync::bundleOfCrew(theirs, effiesBox);
        if (!bundle)
            return m_judge.fail(from, "bundle: " + bundle.error().detail);
        const auto bytes = sync::bundleOf(*bundle);
        const auto read = bytes ? std::get<sync::Bundle>(sync::bundleFrom(*bytes)) : sync::Bundle();
        sync::BundleStorage file(read);
        sync::Post mine = to.post();
        ++m_bundles;
        for (int time = m_dice.below(2); time < 2; ++time) {
            if (const auto taken = sync::takeIn(mine, effiesBox, file); !taken)
                m_judge.fail(to, "handed over: " + taken.error().detail);
        }
        m_judge.look(from);
        m_judge.look(to);
    }

    void end()
    {
        m_calm = true;
        m_storage.steady();
        m_now = islandTime(4 + days + 10, 12, 0);
        for (int round = 0; round < 8; ++round) {
            m_now += round % 4 == 0 ? msPerDay : msPerHour;
            m_settled = round > 4;
            for (const auto &phone : m_phones) {
                if (m_judge.fault().empty())
                    meet(*phone);
            }
        }
        if (m_judge.fault().empty())
            m_judge.judge();
    }

    SimDice m_dice;
    samples::ShakyStorage m_storage;
    std::string m_folder;
    CrewJudge::Phones m_phones;
    CrewJudge m_judge;
    SimPhone *m_morven = nullptr;
    SimPhone *m_kirsty = nullptr;
    SimPhone *m_aaron = nullptr;
    SimPhone *m_tablet = nullptr;
    Fate m_fate = Fate::Stays;
    std::int64_t m_now = 0;
    int m_day = 0;
    int m_turningDay = 0;
    int m_guestDay = 0;
    int m_acts = 0;
    int m_exchanges = 0;
    int m_deaths = 0;
    int m_bundles = 0;
    bool m_calm = false;    ///< Nothing breaks any more.
    bool m_settled = false; ///< And everybody has met everybody.
};

} // namespace lidlark::test
