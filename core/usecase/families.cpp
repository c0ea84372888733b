#include "core/usecase/families.h"

#include "core/store/box_repository.h"
#include "core/store/home_repository.h"
#include "core/usecase/keep_limits.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

FamilyOnPhone lookInto(const std::string &file)
{
    FamilyOnPhone family{file, {}, {}, {}, {}, std::nullopt};
    Result<store::Database> database = store::Database::openExisting(file);
    if (!database) {
        family.problem = database.error();
        return family;
    }
    const auto device = store::DeviceRepository(*database).device();
    const auto boxes = store::BoxRepository(*database).boxes();
    if (!device || !boxes) {
        family.problem = device ? boxes.error() : device.error();
        return family;
    }
    for (const store::BoxRow &box : *boxes)
        family.children.push_back(box.alias);
    if (!*device)
        return family;
    family.person = (*device)->person;
    store::HomeRepository homes(*database);
    const auto name = homes.fact((*device)->home, {}, "name");
    family.homeName = name ? name->value_or("") : "";
    const auto sheet = homes.sheet((*device)->home);
    if (!sheet || !*sheet)
        return family;
    for (const child::Person &person : (*sheet)->people)
        family.people.push_back(person.alias);
    return family;
}

Outcome setUpIn(const std::string &file, const catalogue::Catalogue &catalogue, const Clock &clock,
                Entropy &entropy, const FirstAnswers &answers)
{
    Result<store::Database> database = store::Database::open(file);
    if (!database)
        return database.error();
    Workplace workplace{*database, catalogue, clock, entropy, {}};
    const auto device = setUpHome(workplace, answers);
    return device ? Outcome(Done{}) : device.error();
}

/// A new first store that keeps what the phone itself has to keep.
Outcome writePhoneState(const std::string &file,
                        std::span<const std::pair<std::string, std::string>> state)
{
    Result<store::Database> database = store::Database::open(file);
    if (!database)
        return database.error();
    store::DeviceRepository local(*database);
    for (const auto &[key, value] : state) {
        if (Outcome done = local.setLocalState(key, value); !done)
            return done;
    }
    return Done{};
}

/// How many of @p children have this one's alias and the same of @p field; itself among them.
template <class Field>
auto likeIt(std::span<const ChildOnPhone> children, const ChildOnPhone &child, Field field)
{
    return std::ranges::count_if(children, [&](const ChildOnPhone &other) {
        return other.alias == child.alias && other.*field == child.*field;
    });
}

/// What tells @p all[@p i] from the others of its alias: the home's name, else who writes there,
/// else a number.
ChildOnPhone toldApart(std::span<const ChildOnPhone> all, std::size_t i)
{
    ChildOnPhone child = all[i];
    const bool alone = likeIt(all, child, &ChildOnPhone::alias) == 1;
    const bool homeTells =
        !child.homeName.empty() && likeIt(all, child, &ChildOnPhone::homeName) == 1;
    if (!alone && !homeTells && likeIt(all, child, &ChildOnPhone::person) > 1)
        child.number = static_cast<int>(likeIt(all.first(i + 1), child, &ChildOnPhone::person));
    if (alone || !homeTells)
        child.homeName.clear();
    if (alone || homeTells)
        child.person.clear();
    return child;
}

} // namespace

std::vector<FamilyOnPhone> familiesIn(const store::FamilyFolder &folder)
{
    std::vector<FamilyOnPhone> families;
    for (const std::string &file : folder.all()) {
        FamilyOnPhone family = lookInto(file);
        const bool missing = family.problem && family.problem->code == ErrorCode::NotFound;
        if (!missing && (family.problem || !family.children.empty()))
            families.push_back(std::move(family));
    }
    return families;
}

std::vector<ChildOnPhone> childrenOf(std::span<const FamilyOnPhone> families)
{
    std::vector<ChildOnPhone> all;
    for (const FamilyOnPhone &family : families) {
        for (const std::string &alias : family.children)
            all.push_back({alias, family.file, family.homeName, family.person, 0});
    }
    std::vector<ChildOnPhone> told;
    told.reserve(all.size());
    for (std::size_t i = 0; i < all.size(); ++i)
        told.push_back(toldApart(all, i));
    return told;
}

std::vector<std::string> namesIn(std::span<const FamilyOnPhone> families)
{
    std::vector<std::string> names;
    for (const FamilyOnPhone &family : families) {
        names.insert(names.end(), family.children.begin(), family.children.end());
        names.insert(names.end(), family.people.begin(), family.people.end());
    }
    return names;
}

Result<std::string> addFamily(store::FamilyFolder &folder, const catalogue::Catalogue &catalogue,
                              const Clock &clock, Entropy &entropy, const FirstAnswers &answers)
{
    Result<std::string> making = folder.making();
    if (!making)
        return making;
    if (const Outcome done = setUpIn(*making, catalogue, clock, entropy, answers); !done)
        return done.error();
    return folder.keep(*making);
}

Result<std::string> takeFamilyOff(store::FamilyFolder &folder, const std::string &file)
{
    if (file != folder.first())
        return folder.takeOff(file);
    Result<store::Database> phone = store::Database::openExisting(file);
    const auto state = phone ? store::DeviceRepository(*phone).phoneState() : phone.error();
    if (!state)
        return state.error();
    phone = Error{ErrorCode::NotFound, file}; // closed before it is moved
    Result<std::string> aside = folder.takeOff(file);
    if (!aside)
        return aside;
    if (const Outcome written = writePhoneState(file, *state); !written)
        return written.error();
    return aside;
}

void keepLimitsElsewhere(const store::FamilyFolder &folder, const std::string &onTable,
                         const Workplace &workplace)
{
    for (const std::string &file : folder.all()) {
        if (file == onTable)
            continue;
        Result<store::Database> database = store::Database::openExisting(file);
        const auto device = database ? store::DeviceRepository(*database).device()
                                     : Result<std::optional<store::Device>>(database.error());
        if (!device || !*device)
            continue;
        Workplace other{*database, workplace.catalogue, workplace.clock, workplace.entropy,
                        **device};
        // What cannot be taken away now is tried again at the next start.
        (void)keepLimits(other);
    }
}

bool playedOnPhone(const store::FamilyFolder &folder, Day day)
{
    return std::ranges::any_of(folder.all(), [day](const std::string &file) {
        Result<store::Database> database = store::Database::openExisting(file);
        if (!database)
            return false;
        const auto played = store::HomeRepository(*database).playedOn(day);
        return played && *played;
    });
}

} // namespace lidlark::usecase
