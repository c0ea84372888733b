#include "core/catalogue/allergen.h"
#include "core/child/home_facts.h"

#include "core/child/phone_number.h"

#include <charconv>
#include <functional>
#include <map>

namespace lidlark::child {

namespace {

Answer answerOf(std::string_view value)
{
    return answerNames.parse(value).value_or(Answer::Unanswered);
}

/// A yes about one person is a yes of the home; a no counts only when said of the whole home.
void setAvoidance(Answer &answer, const Fact &fact)
{
    const Answer said = answerOf(fact.value);
    if (said == Answer::Yes)
        answer = Answer::Yes;
    else if (said == Answer::No && fact.person.empty() && answer == Answer::Unanswered)
        answer = Answer::No;
}

void setPersonFact(Person &person, const Fact &fact)
{
    if (fact.fact == "alias")
        person.alias = fact.value;
    else if (fact.fact == "kind")
        person.kind = personKindNames.parse(fact.value).value_or(PersonKind::Child);
    else if (fact.fact == "born-by")
        person.age = Age{*dayFromText(fact.value)};
    else if (fact.fact == "mouths")
        person.mouths = answerOf(fact.value);
    else if (fact.fact == "pica")
        person.pica = fact.value == "yes";
    else if (fact.fact == "lives")
        person.visits = fact.value == "visits";
}

bool setFlag(HomeSheet &sheet, const Fact &fact)
{
    const std::map<std::string_view, std::reference_wrapper<bool>> flags{
        {"seizure-shunt-or-neck", sheet.flags.seizureShuntOrNeck},
        {"heart-lung-or-shunt", sheet.flags.heartLungOrShunt},
        {"joint-or-heart", sheet.flags.jointOrHeart},
        {"mouth-or-swallowing", sheet.flags.mouthOrSwallowing},
        {"broken-skin", sheet.flags.brokenSkin},
        {"avoid-scent", sheet.flags.avoidScent},
        {"sound-sensitive", sheet.flags.soundSensitive},
        {"pets", sheet.pets},
        {"high-storage", sheet.highStorage},
        {"reviewed-only", sheet.reviewedOnly}};
    const auto flag = flags.find(fact.fact);
    if (flag == flags.end())
        return false;
    flag->second.get() = fact.value == "yes";
    return true;
}

void setHomeFact(HomeSheet &sheet, const Fact &fact)
{
    constexpr std::string_view lacks = "lacks-";
    if (setFlag(sheet, fact))
        return;
    if (fact.fact == "name") {
        sheet.name = fact.value;
    } else if (fact.fact == "others") {
        sheet.avoidances.others = fact.value;
    } else if (fact.fact == emergencyNumberFact && isPhoneNumber(fact.value)) {
        sheet.emergencyNumber = fact.value;
    } else if (fact.fact == poisonLineFact && isPhoneNumber(fact.value)) {
        sheet.poisonLine = fact.value;
    } else if (fact.fact == "likes-touch") {
        sheet.likesTouch = answerOf(fact.value);
    } else if (fact.fact == "bedtime") {
        int minute = 0;
        const auto end = fact.value.data() + fact.value.size();
        if (std::from_chars(fact.value.data(), end, minute).ptr == end && minute >= 0 &&
            minute < 1440)
            sheet.bedtimeMinute = minute;
    } else if (fact.fact.starts_with(lacks) && fact.value == "yes") {
        sheet.missingExtras.push_back({fact.fact.substr(lacks.size())});
    }
}

bool setAvoidances(HomeSheet &sheet, const Fact &fact)
{
    const std::map<std::string_view, std::reference_wrapper<Answer>> answers{
        {"latex", sheet.avoidances.latex},
        {"wheat", sheet.avoidances.wheat},
        {"coeliac", sheet.avoidances.coeliac},
        {"milk", sheet.avoidances.milk},
        {"latex-risk", sheet.avoidances.latexRisk}};
    const auto answer = answers.find(fact.fact);
    if (answer == answers.end()) {
        if (!catalogue::isPlainAllergen(fact.fact))
            return false;
        setAvoidance(sheet.avoidances.more[fact.fact], fact);
        return true;
    }
    setAvoidance(answer->second.get(), fact);
    return true;
}

constexpr std::string_view floorOf = "floor-";

void setPermission(Permissions &permissions, const Permission &permission)
{
    if (permission.name == "spin")
        permissions.spin = true;
    else if (permission.name == "breath")
        permissions.breath = true;
    else if (permission.name == "lift")
        permissions.lift = true;
    else if (permission.name == "straw")
        permissions.straw = true;
    else if (permission.name == "small-when-away")
        permissions.smallWhenAway = permission.words;
    else if (permission.name.starts_with(floorOf))
        permissions.floors[{permission.name.substr(floorOf.size())}] = {permission.months,
                                                                        permission.version};
}

} // namespace

HomeSheet homeSheetFrom(const HomeId &id, std::span<const Fact> facts,
                        std::span<const Permission> permissions)
{
    HomeSheet sheet;
    sheet.id = id;
    std::map<std::string, Person> people;
    std::map<std::string, bool> gone;
    for (const Fact &fact : facts) {
        if (setAvoidances(sheet, fact))
            continue;
        if (fact.person.empty()) {
            setHomeFact(sheet, fact);
            continue;
        }
        Person &person = people[fact.person];
        person.id = {fact.person};
        setPersonFact(person, fact);
        if (fact.fact == "lives" && fact.value == "no")
            gone[fact.person] = true;
    }
    for (auto &[key, person] : people) {
        if (!gone.contains(key))
            sheet.people.push_back(std::move(person));
    }
    for (const Permission &permission : permissions)
        setPermission(sheet.permissions, permission);
    return sheet;
}

} // namespace lidlark::child
