#include "mobile/bridge/household.h"

#include <QDirIterator>
#include <QFile>
#include <QFileInfo>

#include "core/store/recording.h"
#include "core/store/refold.h"
#include "core/usecase/keep_limits.h"
#include "core/usecase/own_notes.h"
#include "core/wording/catalogue_words.h"
#include "core/wording/error_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <vector>

namespace lidlark::mobile {

namespace {

constexpr auto childKey = "screen.child";

std::vector<catalogue::SourceFile> filesIn(const QString &folder, const QString &name)
{
    std::vector<catalogue::SourceFile> files;
    QDirIterator entries(folder + u'/' + name, {QStringLiteral("*.yaml")}, QDir::Files);
    while (entries.hasNext()) {
        QFile file(entries.next());
        catalogue::SourceFile source{toCore(name + u'/' + QFileInfo(file).fileName()), {}};
        if (file.open(QIODevice::ReadOnly))
            source.text = file.readAll().toStdString();
        files.push_back(std::move(source)); // an unreadable file is empty text, and reported
    }
    return files;
}

} // namespace

Household::Household(const Places &places, std::unique_ptr<Clock> clock,
                     std::unique_ptr<Entropy> entropy, QObject *parent)
    : QObject(parent), m_places(places), m_clock(std::move(clock)), m_entropy(std::move(entropy))
{
    loadCatalogue();
    openStore();
}

Household::~Household() = default;

void Household::loadCatalogue()
{
    m_catalogue = catalogue::load(filesIn(m_places.catalogue, QStringLiteral("items")),
                                  filesIn(m_places.catalogue, QStringLiteral("activities")));
    for (const catalogue::Problem &problem : m_catalogue.problems())
        qWarning("%s", problem.text().c_str());
}

void Household::openAgain()
{
    openStore();
}

void Household::openStore()
{
    m_workplace.reset();
    m_database.reset();
    Result<store::Database> opened = store::Database::open(toCore(m_places.store));
    if (!opened) {
        setProblem(sentenceFor(opened.error()));
        return;
    }
    m_database = std::make_unique<store::Database>(*std::move(opened));
    if (const Outcome folded = store::refoldIfOld(*m_database); !folded) {
        setProblem(sentenceFor(folded.error()));
        return;
    }
    const auto device = store::DeviceRepository(*m_database).device();
    if (!device) {
        setProblem(sentenceFor(device.error()));
        return;
    }
    m_workplace = std::make_unique<usecase::Workplace>(usecase::Workplace{
        *m_database, m_catalogue, *m_clock, *m_entropy, device->value_or(store::Device{})});
    const auto today = store::todayOf(*m_clock);
    setProblem(today ? QString() : sentenceFor(today.error()));
    keepLimits();
    readChildren();
}

void Household::keepLimits()
{
    // What cannot be taken away now is tried again at the next start.
    (void)usecase::expireCheckIns(*m_workplace);
    (void)usecase::eraseRemovedNotes(*m_workplace);
}

void Household::readChildren()
{
    const auto boxes = store::BoxRepository(*m_database).boxes();
    if (!boxes) {
        setProblem(sentenceFor(boxes.error()));
        return;
    }
    m_children.clear();
    for (const store::BoxRow &box : *boxes)
        m_children.append(fromCore(box.alias));
    const auto last = store::DeviceRepository(*m_database).localState(childKey);
    const QString kept = last && *last ? fromCore(**last) : QString();
    m_child = m_children.contains(kept) ? kept : m_children.value(0);
    const auto name =
        store::HomeRepository(*m_database).fact(m_workplace->device.home, std::string(), "name");
    m_homeName = name && *name ? fromCore(**name) : QString();
    emit childrenChanged();
    emit childChanged();
}

void Household::setChild(const QString &alias)
{
    if (alias == m_child || !m_children.contains(alias))
        return;
    m_child = alias;
    // Which child stands on top is a convenience: when it cannot be kept, nothing is lost.
    (void)store::DeviceRepository(*m_database).setLocalState(childKey, toCore(alias));
    emit childChanged();
    emit changed();
}

QString Household::catalogueNote() const
{
    const auto missing = wording::missingFrom(m_catalogue);
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
    return translated(wording::sentenceFor(error));
}

Outcome Household::setUp(const usecase::FirstAnswers &answers)
{
    const Result<store::Device> device = usecase::setUpHome(*m_workplace, answers);
    if (!device)
        return device.error();
    m_workplace->device = *device;
    readChildren();
    setChild(fromCore(answers.childAlias));
    emit changed();
    return Done{};
}

void Household::setProblem(const QString &problem)
{
    if (problem == m_problem)
        return;
    m_problem = problem;
    emit problemChanged();
}

} // namespace lidlark::mobile
