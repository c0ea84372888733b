#include "core/usecase/set_up_home.h"

#include "core/box/box_events.h"
#include "core/box/place.h"
#include "core/child/fact_problems.h"
#include "core/store/box_repository.h"
#include "core/store/crew_repository.h"
#include "core/store/home_repository.h"
#include "core/store/recording.h"
#include "core/usecase/say_statement.h"
#include "core/usecase/swaps_to_ask.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace lidlark::usecase {

namespace {

using journal::Kind;
using journal::Lane;
using journal::LaneKind;

constexpr std::size_t longestAlias = 40;

std::optional<Error> problemWith(const std::string &field, const std::string &alias)
{
    if (alias.empty())
        return Error{ErrorCode::Invalid, field + ": empty"};
    if (alias.size() > longestAlias)
        return Error{ErrorCode::Invalid, field + ": too long"};
    return std::nullopt;
}

std::optional<Error> problemWith(const FirstAnswers &answers, Day today)
{
    if (auto problem = problemWith("name", answers.childAlias))
        return problem;
    if (auto problem = problemWith("your name", answers.adultAlias))
        return problem;
    // A birth month counts as its last day, which may still lie ahead; a later month cannot.
    if (answers.age && answers.age->latestBirth > today + 31)
        return Error{ErrorCode::BeforeBirth, toText(today)};
    for (const auto &other : answers.otherChildren) {
        if (auto problem = problemWith("name", other.alias))
            return problem;
    }
    return std::nullopt;
}

/// The statements of a first run, in the order in which they were asked.
std::vector<child::Fact> factsOf(const FirstAnswers &answers, const std::string &child,
                                 Entropy &entropy)
{
    std::vector<child::Fact> facts;
    const auto addChild = [&facts](const std::string &id, const std::string &alias,
                                   const std::optional<child::Age> &age, child::Answer mouths) {
        facts.push_back({id, "alias", alias});
        facts.push_back({id, "kind", "child"});
        facts.push_back({id, "lives", "yes"});
        if (age)
            facts.push_back({id, "born-by", toText(age->latestBirth)});
        if (mouths != child::Answer::Unanswered)
            facts.push_back({id, "mouths", std::string(child::answerNames.of(mouths))});
    };
    addChild(child, answers.childAlias, answers.age, child::Answer::Unanswered);
    for (const auto &other : answers.otherChildren)
        addChild(entropy.freshId(), other.alias, other.age, other.mouths);
    const std::string adult = entropy.freshId();
    facts.push_back({adult, "alias", answers.adultAlias});
    facts.push_back({adult, "kind", "adult"});
    facts.push_back({adult, "lives", "yes"});
    if (answers.latex != child::Answer::Unanswered)
        facts.push_back({"", "latex", std::string(child::answerNames.of(answers.latex))});
    if (answers.wheat != child::Answer::Unanswered) {
        facts.push_back({"", "wheat", std::string(child::answerNames.of(answers.wheat))});
        facts.push_back({"", "coeliac", std::string(child::answerNames.of(answers.wheat))});
    }
    return facts;
}

/// What must not come into this home has something that stands in for it.
Outcome askForSwaps(store::Recording &recording, const Lane &box, const FirstAnswers &answers,
                    const catalogue::Catalogue &catalogue)
{
    for (const auto &[what, answer] : {std::pair{child::Avoided::Latex, answers.latex},
                                       std::pair{child::Avoided::Wheat, answers.wheat}}) {
        if (answer != child::Answer::Yes)
            continue;
        for (const box::RequestSaid &swap : swapsToAsk(answers.lidList, catalogue, what)) {
            if (Outcome done = recording.say(box, Kind::Request, box::fieldsOf(swap)); !done)
                return done;
        }
    }
    return Done{};
}

Outcome writeFacts(store::Recording &recording, const HomeId &home,
                   const std::vector<child::Fact> &facts)
{
    for (const child::Fact &fact : facts) {
        Outcome done =
            recording.say({LaneKind::Safety, home.value}, Kind::Fact, child::fieldsOf(fact));
        if (!done)
            return done;
    }
    return Done{};
}

Outcome writeAll(store::Recording &recording, const FirstAnswers &answers,
                 const store::Device &device, Entropy &entropy,
                 const catalogue::Catalogue &catalogue)
{
    const std::string child = entropy.freshId();
    const Lane box{LaneKind::Box, entropy.freshId()};
    const nlohmann::json who{{"child", child}, {"alias", answers.childAlias}};
    std::vector<std::pair<Kind, std::string>> said{
        {Kind::Child, who.dump()},
        {Kind::Revision, box::fieldsOf(box::Revision{1, answers.lidList, {}})},
        {Kind::Place, box::fieldsOfPlace(device.home.value, "at home")}};
    for (const auto &[kind, fields] : said) {
        if (Outcome done = recording.say(box, kind, fields); !done)
            return done;
    }
    if (Outcome done = writeFacts(recording, device.home, factsOf(answers, child, entropy)); !done)
        return done;
    return askForSwaps(recording, box, answers, catalogue);
}

} // namespace

Result<store::Device> setUpHome(Workplace &workplace, const FirstAnswers &answers)
{
    const auto today = store::todayOf(workplace.clock);
    if (!today)
        return today.error();
    if (const auto problem = problemWith(answers, today->day))
        return *problem;
    store::Device device = workplace.device;
    if (device.id.empty())
        device = {{workplace.entropy.freshId()},
                  answers.adultAlias,
                  store::Role::Parent,
                  {workplace.entropy.freshId()}};
    Result<store::Recording> recording =
        store::Recording::begin(workplace.database, device, workplace.clock);
    if (!recording)
        return recording.error();
    store::DeviceRepository local(workplace.database);
    if (const Outcome done = local.setDevice(device); !done)
        return done.error();
    if (const Outcome done =
            writeAll(*recording, answers, device, workplace.entropy, workplace.catalogue);
        !done)
        return done.error();
    if (const Outcome done = recording->commit(); !done)
        return done.error();
    return device;
}

Result<bool> isHomeToBeTold(Workplace &workplace, const std::string &child)
{
    const HomeId &home = workplace.device.home;
    const auto box = store::BoxRepository(workplace.database).boxOf(child);
    if (home.empty() || workplace.device.role == store::Role::Guest || !box)
        return false;
    const auto sheet = store::HomeRepository(workplace.database).sheet(home);
    const auto crew = store::CrewRepository(workplace.database).crewOf(box->id.value);
    if (!sheet || !crew)
        return sheet ? crew.error() : sheet.error();
    const std::vector<crew::Member> members = crew->present();
    return !*sheet && std::ranges::none_of(members, [&](const crew::Member &member) {
        return member.home == home && member.device != workplace.device.id;
    });
}

Outcome tellHome(Workplace &workplace, const std::string &child, FirstAnswers answers)
{
    const auto today = store::todayOf(workplace.clock);
    store::BoxRepository boxes(workplace.database);
    const auto box = boxes.boxOf(child);
    if (!today || !box)
        return today ? box.error() : today.error();
    const auto revision = boxes.revision(box->id);
    if (!revision)
        return revision.error();
    answers.childAlias = child;
    answers.adultAlias = workplace.device.person;
    answers.lidList = *revision ? (*revision)->revision.packed : std::map<ItemId, int>();
    if (const auto problem = problemWith(answers, today->day))
        return *problem;
    auto recording = store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    if (!recording)
        return recording.error();
    Outcome told = writeFacts(*recording, workplace.device.home,
                              factsOf(answers, box->child.value, workplace.entropy));
    if (told)
        told =
            askForSwaps(*recording, {LaneKind::Box, box->id.value}, answers, workplace.catalogue);
    return told ? recording->commit() : told;
}

Outcome sayFact(Workplace &workplace, const HomeId &home, const child::Fact &fact)
{
    const auto today = store::todayOf(workplace.clock);
    const auto sheet = store::HomeRepository(workplace.database).sheet(home);
    if (!today || !sheet)
        return today ? sheet.error() : today.error();
    const child::HomeSheet *known = *sheet ? &**sheet : nullptr;
    if (const auto problem = child::problemWith(fact, known, today->day))
        return Error{ErrorCode::Invalid, *problem};
    return sayStatement(workplace, home, fact);
}

} // namespace lidlark::usecase
