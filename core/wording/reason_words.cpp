#include "core/wording/reason_words.h"

#include "core/wording/catalogue_terms.h"
#include "core/wording/tag_words.h"

#include <string_view>

namespace lidlark::wording {

namespace {

using catalogue::Catalogue;
using catalogue::ItemKind;
using safety::Reason;
using safety::ReasonCode;

/// How the gate joins several names.
constexpr std::string_view nameSeparator = ", ";

Sentence thingOf(const Reason &reason)
{
    return {reason.tag ? tagThing(*reason.tag) : say("this"), {}};
}

Argument itemOf(const Reason &reason, const Catalogue &catalogue)
{
    if (!reason.item)
        return Sentence{say("something"), {}};
    const ItemKind *kind = catalogue.item(*reason.item);
    return kind != nullptr ? nameOf(*kind) : Argument(reason.item->value);
}

/// An age in whole sentences, so that nothing but a number has to be put in another language's
/// place: @p years, @p halfYears ("two and a half") or @p months, each with its own "%1".
Sentence withAge(int age, English years, English halfYears, English months)
{
    if (age >= 24 && age % 12 == 0)
        return {years, {inWords(age / 12)}};
    if (age >= 24 && age % 12 == 6)
        return {halfYears, {inWords(age / 12)}};
    return {months, {inWords(age)}};
}

/// One thing said of nobody in particular, of one person and of several.
struct PeopleTemplates {
    English nobody;
    English one;
    English several;
};

PeopleTemplates peopleTemplatesFor(ReasonCode code)
{
    switch (code) {
    case ReasonCode::UnderThreeInRoom:
        return {say("Somebody under three may be here: no %1."),
                say("%1 is under three and is here: no %2."),
                say("%1 and %2 are under three and are here: no %3.")};
    case ReasonCode::MoutherInRoom:
        return {say("Somebody here may put things in the mouth: no %1."),
                say("%1 may put things in the mouth: no %2."),
                say("%1 and %2 may put things in the mouth: no %3.")};
    default:
        // Not say("is small"): a mouther of any age counts (activities.md 1.4, BALLOON).
        return {say("A small child may live here: no %1 in this home."),
                say("%1 lives here: no %2 in this home at any time."),
                say("%1 and %2 live here: no %3 in this home at any time.")};
    }
}

/// "Mirren, Tam", as another language writes it.
Argument listed(const std::string &names)
{
    const std::size_t lastComma = names.rfind(nameSeparator);
    if (lastComma == std::string::npos)
        return names;
    return Sentence{
        say("%1, %2"),
        {listed(names.substr(0, lastComma)), names.substr(lastComma + nameSeparator.size())}};
}

Sentence aboutPeople(const Reason &reason)
{
    const PeopleTemplates templates = peopleTemplatesFor(reason.code);
    const Sentence thing = thingOf(reason);
    if (reason.name.empty())
        return {templates.nobody, {thing}};
    const std::size_t lastComma = reason.name.rfind(nameSeparator);
    if (lastComma == std::string::npos)
        return {templates.one, {reason.name, thing}};
    return {templates.several,
            {listed(reason.name.substr(0, lastComma)),
             reason.name.substr(lastComma + nameSeparator.size()), thing}};
}

/// @p withItem names the item; without one the tag is the activity's own.
Sentence aboutAvoidance(const Reason &reason, const Argument &item, English withItem,
                        English without)
{
    return reason.item ? Sentence{withItem, {item}} : Sentence{without, {}};
}

Sentence aboutItems(const Reason &reason, const Catalogue &catalogue)
{
    const Argument item = itemOf(reason, catalogue);
    switch (reason.code) {
    case ReasonCode::LatexInHome:
        return aboutAvoidance(reason, item,
                              say("Somebody at home must avoid latex. Out of the house: %1."),
                              say("Somebody at home must avoid latex, and this uses it."));
    case ReasonCode::WheatInHome:
        return aboutAvoidance(reason, item, say("Somebody at home must avoid wheat: not with %1."),
                              say("Somebody at home must avoid wheat, and this uses it."));
    case ReasonCode::MilkInHome:
        return {say("Somebody at home may have to avoid milk: not with %1."), {item}};
    case ReasonCode::AllergenInHome:
        return {say("Somebody at home may have to avoid %1: not with %2."), {reason.name, item}};
    case ReasonCode::StiffHollow:
        return {say("Can stick over a small child's nose and mouth: no %1 near an under-three."),
                {item}};
    case ReasonCode::ItemUsedUp:
        return reason.number > 1 ? Sentence{say("It needs %1, and fewer are left: %2."),
                                            {inWords(reason.number), item}}
                                 : Sentence{say("No %1 left in the box."), {item}};
    case ReasonCode::ItemPastDate:
        return {say("Too old, or dried out: %1."), {item}};
    case ReasonCode::ItemToWash:
        return {say("It was in a mouth. Wash it first: %1."), {item}};
    case ReasonCode::HomeLacksExtra:
        return {say("This home has no %1."), {item}};
    default:
        return {say("This box has no %1."), {item}};
    }
}

Sentence aboutTouchAndBody(const Reason &reason)
{
    switch (reason.code) {
    case ReasonCode::TouchNotLiked:
        return {say("It uses touch, and nobody has said that touch is liked here."), {}};
    case ReasonCode::NeedsTherapist:
        return {say("Because of %1: ask your therapist first."), {thingOf(reason)}};
    case ReasonCode::BrokenSkin:
        return {say("Not while skin is sore or broken."), {}};
    case ReasonCode::ScentAvoided:
        return {say("It smells, and strong smells are avoided here."), {}};
    case ReasonCode::QuietNow:
        return {say("It can be loud, and it is quiet time now."), {}};
    default:
        return {say("Water needs an adult right beside. Say so under \"Who is here\"."), {}};
    }
}

Sentence belowTagFloor(const Reason &reason)
{
    Sentence sentence = withAge(reason.number, sayCounted("Not before %1 years, because of %2."),
                                say("Not before %1 and a half years, because of %2."),
                                sayCounted("Not before %1 months, because of %2."));
    sentence.arguments.emplace_back(thingOf(reason));
    return sentence;
}

/// What is not known is taken for the closest.
Sentence closerAdult(catalogue::Supervision needed)
{
    switch (needed) {
    case catalogue::Supervision::Near:
        return {say("Needs someone in the same room."), {}};
    case catalogue::Supervision::Reach:
        return {say("Needs someone within arm's reach."), {}};
    case catalogue::Supervision::Beside:
        break;
    }
    return {say("Needs someone right beside."), {}};
}

/// What the home itself asks for, and what the therapist has noted of it.
Sentence aboutThisHome(const Reason &reason)
{
    switch (reason.code) {
    case ReasonCode::SmallInHome:
        return {
            say("A small child lives here: %1 only as your therapist has noted, for example asleep "
                "or out. Ask your therapist."),
            {thingOf(reason)}};
    case ReasonCode::NoHighPlace:
        return {
            say("A small child lives here: %1 need a box kept up high. Say so on the home sheet."),
            {thingOf(reason)}};
    default:
        return {say("This game has changed since your therapist's yes. Ask your therapist."), {}};
    }
}

Sentence boxElsewhere(const Reason &reason)
{
    return reason.name.empty() ? Sentence{say("The box is not here."), {}}
                               : Sentence{say("The box is %1."), {reason.name}};
}

Sentence floorNote(const Reason &reason)
{
    if (reason.tag == catalogue::Tag::Balloon)
        return {say("A piece of balloon may still lie about. Look first, then say so."), {}};
    return {say("A small piece may still lie on the floor. Look first, then say so."), {}};
}

Sentence aboutKnowing(const Reason &reason)
{
    switch (reason.code) {
    case ReasonCode::AgeUnknown:
        return {say("Nobody has said how old your child is, so only a few are offered."), {}};
    case ReasonCode::AllergyUnanswered:
        return {say("The question about allergies is still open, so only a few are offered."), {}};
    case ReasonCode::NotPublished:
        return {say("Taken out of the collection."), {}};
    case ReasonCode::NotReviewed:
        return {say("Your therapist shows only what a clinician has checked."), {}};
    case ReasonCode::BelowTagFloor:
        return belowTagFloor(reason);
    default:
        return withAge(reason.number, sayCounted("Offered from %1 years."),
                       say("Offered from %1 and a half years."),
                       sayCounted("Offered from %1 months."));
    }
}

} // namespace

Sentence sentenceFor(const Reason &reason, const Catalogue &catalogue)
{
    switch (reason.code) {
    case ReasonCode::AgeUnknown:
    case ReasonCode::AllergyUnanswered:
    case ReasonCode::NotPublished:
    case ReasonCode::NotReviewed:
    case ReasonCode::BelowFloor:
    case ReasonCode::BelowTagFloor:
        return aboutKnowing(reason);
    case ReasonCode::UnderThreeInRoom:
    case ReasonCode::MoutherInRoom:
    case ReasonCode::SmallChildInHome:
        return aboutPeople(reason);
    case ReasonCode::LatexInHome:
    case ReasonCode::WheatInHome:
    case ReasonCode::MilkInHome:
    case ReasonCode::AllergenInHome:
    case ReasonCode::StiffHollow:
    case ReasonCode::ItemMissing:
    case ReasonCode::ItemUsedUp:
    case ReasonCode::ItemPastDate:
    case ReasonCode::ItemToWash:
    case ReasonCode::HomeLacksExtra:
        return aboutItems(reason, catalogue);
    case ReasonCode::NeedsCloserAdult:
        return closerAdult(reason.supervision.value_or(catalogue::Supervision::Beside));
    case ReasonCode::SmallInHome:
    case ReasonCode::NoHighPlace:
    case ReasonCode::PermissionOutdated:
        return aboutThisHome(reason);
    case ReasonCode::BoxElsewhere:
        return boxElsewhere(reason);
    case ReasonCode::FloorNoteOpen:
        return floorNote(reason);
    case ReasonCode::TouchNotLiked:
    case ReasonCode::NeedsTherapist:
    case ReasonCode::BrokenSkin:
    case ReasonCode::ScentAvoided:
    case ReasonCode::QuietNow:
    case ReasonCode::WaterUnderThree:
        break;
    }
    return aboutTouchAndBody(reason);
}

} // namespace lidlark::wording
