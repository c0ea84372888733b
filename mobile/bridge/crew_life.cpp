#include "mobile/bridge/crew_life.h"

#include "core/store/crew_repository.h"
#include "core/sync/consent.h"
#include "core/sync/kept_place.h"
#include "core/sync/sharing_words.h"
#include "core/wording/day_words.h"
#include "mobile/bridge/crew_keeper.h"
#include "mobile/bridge/crew_storage.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

CrewLife::CrewLife(Household *household, std::shared_ptr<Keychain> keychain, QObject *parent)
    : QObject(parent), m_household(household), m_keychain(std::move(keychain))
{
    connect(household, &Household::changed, this, &CrewLife::look);
    connect(household, &Household::childChanged, this, &CrewLife::look);
    connect(household, &Household::childrenChanged, this, &CrewLife::look);
    connect(household, &Household::leaving, &m_runner, &CrewRunner::stop);
    connect(&m_runner, &CrewRunner::ranOne, this, &CrewLife::busyChanged);
    look();
}

CrewDeskPlace CrewLife::deskPlace()
{
    ++m_errands;
    return {m_household->storeFile(), &m_household->clock(), m_keychain,
            m_chance ? m_chance(m_errands) : nullptr};
}

void CrewLife::setTable(bool table)
{
    if (table == m_table)
        return;
    m_table = table;
    look();
}

Whose CrewLife::whose() const
{
    return {toCore(m_household->child()), table()};
}

void CrewLife::look()
{
    m_inCrew = false;
    m_joining = false;
    m_outside = false;
    m_place.clear();
    m_agreement.clear();
    if (m_household->isOpen())
        lookAt(m_household->workplace().database);
    emit changed();
}

void CrewLife::lookAt(store::Database &database)
{
    const auto id = crewIdOf(database, whose());
    const auto crew =
        id ? store::CrewRepository(database).crewOf(*id) : Result<crew::Crew>(crew::Crew{});
    using Table = CrewMembers::Table;
    const Table packs = m_household->packsOnly() ? Table::PacksOnly
                        : table()                ? Table::Own
                                                 : Table::None;
    m_members.show(crew ? *crew : crew::Crew{}, m_household->device(), packs);
    m_inCrew = crew && crew->has(m_household->device());
    m_outside = crew && !crew->empty() && !m_inCrew;
    if (const auto address = sync::addressIn(database))
        m_place = fromCore(*address);
    const auto joining = sync::joiningIn(database);
    m_joining = joining && joining->has_value();
    m_keysInFile = keysLieInAFile(database);
    if (const auto consent = sync::consentIn(database); consent && *consent)
        m_agreement =
            tr("%1 said yes to sharing on %2.")
                .arg(fromCore((*consent)->person), translated(wording::dateWords((*consent)->day)));
    readState(database);
}

void CrewLife::readState(store::Database &database)
{
    const auto state = sync::sharingState(database);
    const Clock &clock = m_household->clock();
    m_shares = state && state->inCrew;
    m_state = translated(sync::sentenceFor(state ? *state : sync::SharingState{}, clock.nowMs(),
                                           clock.offsetMinutes()));
}

bool CrewLife::mayLetIn() const
{
    if (!m_household->isOpen() || m_household->needsWelcome())
        return false;
    return crew::letsIn(m_household->workplace().device.role) &&
           (m_inCrew || m_members.rowCount() == 0);
}

bool CrewLife::outside() const
{
    return m_outside || (!m_setBack.empty() && m_setBack == m_household->device());
}

bool CrewLife::agree()
{
    return agreeAs(m_household->person());
}

bool CrewLife::agreeAs(const QString &person)
{
    const Outcome done =
        sync::consentToSharing(m_household->workplace().database,
                               {toCore(person), m_household->today().day, sync::consentWording});
    if (!done)
        emit failed(m_household->sentenceFor(done.error()));
    look();
    return done.ok();
}

void CrewLife::withdraw()
{
    m_runner.stopSoon();
    const Outcome done =
        sync::withdrawConsent(m_household->workplace().database, m_household->today().day);
    if (!done)
        emit failed(m_household->sentenceFor(done.error()));
    m_troubles.clear();
    look();
}

void CrewLife::shareNow()
{
    m_triedMs = m_household->clock().nowMs();
    run<ShareReport>(
        this, [](CrewDesk &desk) { return share(desk); },
        [this](const Result<ShareReport> &report) { take(report); });
}

void CrewLife::shareByItself()
{
    const std::int64_t since = m_household->clock().nowMs() - m_triedMs;
    const bool lately = since >= 0 && since < shareEveryMs;
    if (!m_shares || !agreed() || m_place.isEmpty() || lately || busy())
        return;
    if (m_sparing && m_sparing(isOnServer(toCore(m_place))))
        return;
    shareNow();
}

bool CrewLife::isOwn(const QString &device) const
{
    return toCore(device) == m_household->device().value;
}

void CrewLife::remove(const QString &device)
{
    run<ShareReport>(
        this,
        [whose = whose(), id = DeviceId{toCore(device)}](CrewDesk &desk) {
            return removeDevice(desk, whose, id);
        },
        [this](const Result<ShareReport> &report) { take(report); });
}

void CrewLife::leave()
{
    remove(fromCore(m_household->device().value));
}

void CrewLife::take(const Result<ShareReport> &report)
{
    m_troubles.clear();
    if (report) {
        m_setBack = report->setBack ? m_household->device() : DeviceId();
        if (report->trouble)
            m_troubles.append(translated(*report->trouble));
        for (const wording::Sentence &finding : report->findings)
            m_troubles.append(translated(finding));
        m_troubles.removeDuplicates();
    } else {
        m_troubles.append(m_household->sentenceFor(report.error()));
    }
    m_household->announce();
}

} // namespace lidlark::mobile
