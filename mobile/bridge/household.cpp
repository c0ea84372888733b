#include "mobile/bridge/household.h"

#include "core/store/recording.h"
#include "core/store/rights.h"
#include "core/usecase/keep_limits.h"
#include "core/usecase/own_notes.h"
#include "core/usecase/packs_for_another.h"
#include "core/usecase/set_up_clinic.h"
#include "core/wording/catalogue_words.h"
#include "core/wording/day_words.h"
#include "core/wording/error_words.h"
#include "mobile/bridge/known_languages.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <vector>

namespace lidlark::mobile {

Household::Household(const Places &places, std::unique_ptr<Clock> clock,
                     std::unique_ptr<Entropy> entropy, QObject *parent)
    : QObject(parent), m_places(places), m_clock(std::move(clock)), m_entropy(std::move(entropy)),
      m_folder(toCore(places.store))
{
    m_catalogue = &catalogueIn(knownLanguages().constFirst().code);
    m_folder.forgetTakenOff(); // an app that was killed was closed, too
    // Another box, or something new from its therapist: before any screen reads on.
    const auto takeUp = [this] {
        if (m_workplace && !m_language.isEmpty())
            m_catalogue = &catalogueIn(m_language);
        if (m_workplace && &m_workplace->catalogue != m_catalogue)
            m_workplace = std::make_unique<usecase::Workplace>(usecase::Workplace{
                m_workplace->database, *m_catalogue, *m_clock, *m_entropy, m_workplace->device});
    };
    connect(this, &Household::childChanged, this, takeUp);
    connect(this, &Household::changed, this, takeUp);
    openStore();
    speakAsWanted();
}

Household::~Household()
{
    close();
    m_folder.forgetTakenOff();
}

void Household::openAgain()
{
    openStore();
    speakAsWanted();
}

void Household::openStore()
{
    close();
    Result<store::Database> phone = store::Database::open(m_folder.first());
    const std::optional<Error> torn = phone ? std::nullopt : std::optional(phone.error());
    if (!torn)
        m_phone = std::make_unique<store::Database>(*std::move(phone));
    m_families = usecase::familiesIn(m_folder);
    if (const Outcome opened = openSomeFamily(); !opened) {
        setProblem(sentenceFor(torn.value_or(opened.error())));
        return;
    }
    const auto today = store::todayOf(*m_clock);
    setProblem(today ? QString() : sentenceFor(today.error()));
    keepLimits();
    readChildren();
}

void Household::keepLimits()
{
    // What cannot be taken away now is tried again at the next start.
    (void)usecase::keepLimits(*m_workplace);
    usecase::keepLimitsElsewhere(m_folder, m_family, *m_workplace);
    (void)usecase::eraseRemovedNotes(*m_workplace);
}

void Household::readChildren()
{
    const auto boxes = store::BoxRepository(m_workplace->database).boxes();
    if (!boxes) {
        setProblem(sentenceFor(boxes.error()));
        return;
    }
    m_children.clear();
    for (const store::BoxRow &box : *boxes)
        m_children.append(fromCore(box.alias));
    const auto packsForAnother = usecase::packsForAnother(*m_workplace);
    m_packsForAnother = packsForAnother && *packsForAnother;
    const auto last = store::DeviceRepository(m_workplace->database).localState(childKey);
    const QString kept = last && *last ? fromCore(**last) : QString();
    m_child = m_children.contains(kept) ? kept : m_children.value(0);
    const auto name = store::HomeRepository(m_workplace->database)
                          .fact(m_workplace->device.home, std::string(), "name");
    m_homeName = name && *name ? fromCore(**name) : QString();
    lookAround();
    emit childChanged();
}

void Household::setChild(const QString &alias)
{
    if (alias == m_child || !m_children.contains(alias))
        return;
    m_child = alias;
    // Which child stands on top is a convenience: when it cannot be kept, nothing is lost.
    (void)store::DeviceRepository(m_workplace->database).setLocalState(childKey, toCore(alias));
    m_phoneChildren.pick(m_family, m_child);
    emit childrenChanged();
    emit childChanged();
    emit changed();
}

QString Household::catalogueNote() const
{
    const auto missing = wording::missingFrom(*m_catalogue);
    return missing ? translated(*missing) : QString();
}

QString Household::person() const
{
    return m_workplace ? fromCore(m_workplace->device.person) : QString();
}

DeviceId Household::device() const
{
    return m_workplace ? m_workplace->device.id : DeviceId{};
}

bool Household::therapist() const
{
    return m_workplace && m_workplace->device.role == store::Role::Therapist;
}

bool Household::guest() const
{
    return m_workplace && m_workplace->device.role == store::Role::Guest;
}

QString Household::guestUntil() const
{
    const bool ends = guest() && m_workplace->device.until;
    return ends ? translated(wording::dateWords(*m_workplace->device.until)) : QString();
}

bool Household::accessEnded() const
{
    return m_workplace && store::accessEnded(m_workplace->device, today().day);
}

Result<usecase::Family> Household::family()
{
    return usecase::loadFamily(*m_workplace, toCore(m_child));
}

DayPart Household::today() const
{
    const auto today = store::todayOf(*m_clock);
    return today ? *today : DayPart{};
}

QString Household::sentenceFor(const Error &error) const
{
    return translated(wording::sentenceFor(error, m_catalogue));
}

Outcome Household::setUp(const usecase::FirstAnswers &answers)
{
    const Result<store::Device> device = usecase::setUpHome(*m_workplace, answers);
    if (!device)
        return device.error();
    m_workplace->device = *device;
    m_families = usecase::familiesIn(m_folder);
    readChildren();
    setChild(fromCore(answers.childAlias));
    emit changed();
    return Done{};
}

bool Household::homeToBeTold()
{
    const auto toBeTold =
        isOpen() ? usecase::isHomeToBeTold(*m_workplace, toCore(m_child)) : Result<bool>(false);
    return toBeTold && *toBeTold;
}

Outcome Household::tellHome(const usecase::FirstAnswers &answers)
{
    Outcome told = usecase::tellHome(*m_workplace, toCore(m_child), answers);
    if (told)
        emit changed();
    return told;
}

Outcome Household::setUpClinic(const QString &person)
{
    const Result<store::Device> device = usecase::setUpClinic(*m_workplace, toCore(person));
    if (!device)
        return device.error();
    m_workplace->device = *device;
    readChildren();
    emit changed();
    return Done{};
}

void Household::countBoxes()
{
    m_families = usecase::familiesIn(m_folder);
    readChildren();
    emit changed();
}

void Household::setProblem(const QString &problem)
{
    if (problem == m_problem)
        return;
    m_problem = problem;
    emit problemChanged();
}

} // namespace lidlark::mobile
