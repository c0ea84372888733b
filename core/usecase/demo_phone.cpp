#include "core/usecase/demo_phone.h"

#include "core/store/event_repository.h"
#include "core/store/refold.h"
#include "core/usecase/reading_language.h"

#include <cctype>

namespace lidlark::usecase {

std::string demoId(const std::string &alias)
{
    std::string id;
    for (const char c : alias)
        id.push_back(c == ' ' ? '-'
                              : static_cast<char>(std::tolower(static_cast<unsigned char>(c))));
    return id;
}

std::int64_t demoEveningMs(int day)
{
    return (island::dayOne() + (day - 1)).number * msPerDay + (18 * 60 + 10) * msPerMinute;
}

std::int64_t demoIssueMs()
{
    return island::issueDay().number * msPerDay + 10 * msPerHour;
}

DemoPhone::DemoPhone(store::Database store, store::Device owner,
                     const catalogue::Catalogue &entries, const std::string &seed)
    : database(std::move(store)), device(std::move(owner)), catalogue(entries),
      clock(demoIssueMs()), entropy(seed)
{
}

Result<std::unique_ptr<DemoPhone>> DemoPhone::open(const std::string &folder,
                                                   const DemoPerson &person,
                                                   const catalogue::Catalogue &catalogue)
{
    Result<store::Database> database = store::Database::open(folder + "/" + person.file);
    if (!database)
        return database.error();
    if (const Outcome folded = store::refoldIfOld(*database); !folded)
        return folded.error();
    const store::Device device{
        {person.device}, person.person, person.role, {person.home}, person.until};
    store::DeviceRepository local(*database);
    const auto known = local.device();
    if (!known)
        return known.error();
    if (!*known) {
        if (const Outcome done = local.setDevice(device); !done)
            return done.error();
    }
    const auto events = store::EventRepository(*database).count();
    if (!events)
        return events.error();
    // How much is there already is part of the seed: moved on twice, no id comes up again.
    const std::string seed = "island " + person.device + " " + std::to_string(*events);
    return std::make_unique<DemoPhone>(*std::move(database), device, catalogue, seed);
}

Outcome DemoPhone::startReading(const std::string &language)
{
    Workplace here = workplace();
    const auto said = readingLanguage(here);
    if (!said)
        return said.error();
    return language.empty() || *said ? Outcome(Done{}) : readIn(here, language);
}

} // namespace lidlark::usecase
