#include "core/wording/reason_words.h"

#include "core/wording/tag_words.h"

namespace lidlark::wording {

namespace {

using catalogue::Catalogue;
using catalogue::ItemKind;
using safety::Reason;
using safety::ReasonCode;

std::string thingOf(const Reason &reason)
{
    return reason.tag ? std::string(tagThing(*reason.tag)) : std::string("this");
}

std::string itemOf(const Reason &reason, const Catalogue &catalogue)
{
    if (!reason.item)
        return "something";
    const ItemKind *kind = catalogue.item(*reason.item);
    return kind != nullptr ? kind->name : reason.item->value;
}

/// "2 years", "2 years 6 months", "18 months".
std::string ageWords(int months)
{
    if (months < 24)
        return std::to_string(months) + " months";
    std::string words = std::to_string(months / 12) + " years";
    if (months % 12 != 0)
        words += " " + std::to_string(months % 12) + " months";
    return words;
}

Sentence aboutPeople(const Reason &reason)
{
    const bool named = !reason.name.empty();
    const std::string thing = thingOf(reason);
    switch (reason.code) {
    case ReasonCode::UnderThreeInRoom:
        return named ? Sentence{"%1 is under three and is here: no %2.", {reason.name, thing}}
                     : Sentence{"Somebody under three may be here: no %1.", {thing}};
    case ReasonCode::MoutherInRoom:
        return named ? Sentence{"%1 may put things in the mouth: no %2.", {reason.name, thing}}
                     : Sentence{"Somebody here may put things in the mouth: no %1.", {thing}};
    default:
        return named ? Sentence{"%1 lives here and is still small: no %2 in this home.",
                                {reason.name, thing}}
                     : Sentence{"A small child lives here: no %1 in this home.", {thing}};
    }
}

Sentence aboutItems(const Reason &reason, const Catalogue &catalogue)
{
    const std::string item = itemOf(reason, catalogue);
    switch (reason.code) {
    case ReasonCode::LatexInHome:
        return {"Somebody at home must avoid latex: %1 stay out of the house.", {item}};
    case ReasonCode::WheatInHome:
        return {"Somebody at home must avoid wheat: not with %1.", {item}};
    case ReasonCode::MilkInHome:
        return {"Somebody at home may have to avoid milk: not with %1.", {item}};
    case ReasonCode::ItemUsedUp:
        return reason.number > 1 ? Sentence{"It needs %1 of the %2, and fewer are left.",
                                            {numberWord(reason.number), item}}
                                 : Sentence{"No %1 left in the box.", {item}};
    case ReasonCode::ItemPastDate:
        return {"The %1 is too old or has dried out.", {item}};
    case ReasonCode::HomeLacksExtra:
        return {"It needs %1 from the house, and you said there is none.", {item}};
    default:
        return {"This box has no %1.", {item}};
    }
}

Sentence aboutTouchAndBody(const Reason &reason)
{
    switch (reason.code) {
    case ReasonCode::TouchNotLiked:
        return {"It uses touch, and nobody has said that touch is liked here.", {}};
    case ReasonCode::NeedsTherapist:
        return {"Because of %1: ask your therapist first.", {thingOf(reason)}};
    case ReasonCode::BrokenSkin:
        return {"Not while skin is sore or broken.", {}};
    case ReasonCode::ScentAvoided:
        return {"It smells, and strong smells are avoided here.", {}};
    case ReasonCode::QuietNow:
        return {"It can be loud, and it is quiet time now.", {}};
    default:
        return {"Water needs an adult right beside. Say so under \"Who is here\".", {}};
    }
}

Sentence aboutKnowing(const Reason &reason)
{
    switch (reason.code) {
    case ReasonCode::AgeUnknown:
        return {"Nobody has said how old your child is, so only a few are offered.", {}};
    case ReasonCode::AllergyUnanswered:
        return {"The question about allergies is still open, so only a few are offered.", {}};
    case ReasonCode::NotPublished:
        return {"Taken out of the collection.", {}};
    case ReasonCode::NotReviewed:
        return {"Your therapist shows only what a clinician has checked.", {}};
    case ReasonCode::BelowTagFloor:
        return {"Not before %1, because of %2.", {ageWords(reason.number), thingOf(reason)}};
    default:
        return {"Offered from %1.", {ageWords(reason.number)}};
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
    case ReasonCode::ItemMissing:
    case ReasonCode::ItemUsedUp:
    case ReasonCode::ItemPastDate:
    case ReasonCode::HomeLacksExtra:
        return aboutItems(reason, catalogue);
    case ReasonCode::NeedsCloserAdult:
        return reason.supervision == catalogue::Supervision::Beside
                   ? Sentence{"Needs someone right beside.", {}}
                   : Sentence{"Needs someone within arm's reach.", {}};
    case ReasonCode::BoxElsewhere:
        return reason.name.empty() ? Sentence{"The box is not here.", {}}
                                   : Sentence{"The box is %1.", {reason.name}};
    case ReasonCode::FloorNoteOpen:
        return {"A small piece may still lie on the floor. Look first, then say so.", {}};
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
