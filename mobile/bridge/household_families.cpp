#include "mobile/bridge/household.h"

#include <QFileInfo>

#include "core/store/refold.h"
#include "core/wording/family_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

constexpr auto familyKey = "phone.family"; // its file's name, without folders

/// A store made ready to be worked in.
Result<std::unique_ptr<store::Database>> opened(const std::string &file)
{
    Result<store::Database> database = store::Database::openExisting(file);
    if (!database)
        return database.error();
    return std::make_unique<store::Database>(*std::move(database));
}

} // namespace

void Household::close()
{
    m_workplace.reset();
    m_further.reset();
    m_phone.reset();
}

QString Household::lastFamily() const
{
    const auto last = m_phone ? store::DeviceRepository(*m_phone).localState(familyKey)
                              : Result<std::optional<std::string>>(std::optional<std::string>());
    return last && *last ? fromCore(**last) : QString();
}

Outcome Household::openSomeFamily()
{
    std::vector<std::string> wanted;
    for (const usecase::FamilyOnPhone &family : m_families) {
        if (!family.problem)
            wanted.push_back(family.file);
    }
    const QString last = lastFamily();
    std::ranges::stable_partition(wanted, [&last](const std::string &file) {
        return QFileInfo(fromCore(file)).fileName() == last;
    });
    wanted.push_back(m_folder.first()); // nobody yet: the first run is to come
    Outcome done = Error{ErrorCode::NotFound, m_folder.first()};
    for (const std::string &file : wanted) {
        done = openFamily(file);
        if (done)
            break;
    }
    return done;
}

Outcome Household::openFamily(const std::string &file)
{
    const bool isFirst = file == m_folder.first();
    if (isFirst && !m_phone)
        return Error{ErrorCode::Unreadable, file};
    std::unique_ptr<store::Database> further;
    if (!isFirst) {
        auto database = opened(file);
        if (!database)
            return database.error();
        further = *std::move(database);
    }
    store::Database &database = isFirst ? *m_phone : *further;
    if (Outcome folded = store::refoldIfOld(database); !folded)
        return folded;
    const auto device = store::DeviceRepository(database).device();
    if (!device)
        return device.error();
    m_workplace = std::make_unique<usecase::Workplace>(usecase::Workplace{
        database, *m_catalogue, *m_clock, *m_entropy, device->value_or(store::Device{})});
    m_further = std::move(further); // the one before is closed only now
    m_family = file;
    return Done{};
}

void Household::lookAround()
{
    m_phoneChildren.show(usecase::childrenOf(m_families));
    m_phoneChildren.pick(m_family, m_child);
    emit childrenChanged();
}

bool Household::severalFamilies() const
{
    return std::ranges::count_if(m_families, [](const usecase::FamilyOnPhone &family) {
               return !family.problem;
           }) > 1;
}

QStringList Household::unreadable() const
{
    QStringList lines;
    for (const usecase::FamilyOnPhone &family : m_families) {
        if (family.problem && !(family.file == m_family))
            lines.append(translated(wording::unreadableFamily(
                *family.problem, toCore(QFileInfo(fromCore(family.file)).fileName()))));
    }
    return lines;
}

QStringList Household::takenOff() const
{
    QStringList names;
    for (const TakenOff &family : m_takenOff)
        names.append(family.children.join(QStringLiteral(", ")));
    return names;
}

void Household::keepWhoseFamily()
{
    // Whose box stands on top is a convenience: when it cannot be kept, nothing is lost.
    if (m_phone)
        (void)store::DeviceRepository(*m_phone).setLocalState(
            familyKey, toCore(QFileInfo(fromCore(m_family)).fileName()));
}

bool Household::report(const Outcome &outcome)
{
    if (!outcome)
        emit failed(sentenceFor(outcome.error()));
    return outcome.ok();
}

bool Household::chooseChild(const QString &family, const QString &alias)
{
    if (toCore(family) == m_family) {
        setChild(alias);
        return true;
    }
    if (!report(openFamily(toCore(family))))
        return false;
    keepWhoseFamily();
    (void)store::DeviceRepository(m_workplace->database).setLocalState(childKey, toCore(alias));
    // Of another family nothing may be said: the one who holds the phone reads on as before.
    if (!languageSaid().isEmpty())
        speakAsWanted();
    keepLimits();
    readChildren();
    emit changed();
    return true;
}

Outcome Household::addFamily(const usecase::FirstAnswers &answers)
{
    const auto file = usecase::addFamily(m_folder, *m_catalogue, *m_clock, *m_entropy, answers);
    if (!file)
        return file.error();
    m_families = usecase::familiesIn(m_folder);
    if (Outcome done = openFamily(*file); !done)
        return done;
    keepWhoseFamily();
    readChildren();
    emit changed();
    return Done{};
}

bool Household::takeOff()
{
    if (!severalFamilies())
        return false; // the last one's box is what the phone is for
    const QStringList names = m_children;
    const std::string file = m_family;
    emit leaving();
    close();
    const auto aside = usecase::takeFamilyOff(m_folder, file);
    if (aside)
        m_takenOff.push_back({*aside, names});
    openStore();
    keepWhoseFamily();
    emit changed();
    return report(aside ? Outcome(Done{}) : aside.error());
}

bool Household::bringBack(int index)
{
    if (index < 0 || index >= static_cast<int>(m_takenOff.size()))
        return false;
    const auto at = m_takenOff.begin() + index;
    const auto back = m_folder.bringBack(at->file);
    if (!report(back ? Outcome(Done{}) : back.error()))
        return false;
    m_takenOff.erase(at);
    m_families = usecase::familiesIn(m_folder);
    lookAround();
    return true;
}

} // namespace lidlark::mobile
