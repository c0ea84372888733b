#pragma once

#include "core/catalogue/write_entry.h"
#include "core/usecase/own_entries.h"

#include "tests/support/phone.h"

namespace lidlark::test {

/// A thing and an activity of a therapist's own, invented for tests.
inline catalogue::ItemKind bobbins(double acrossMm = 28, double longMm = 24)
{
    catalogue::ItemKind item;
    item.id = {"own-bobbins"};
    item.name = "wooden bobbins";
    item.one = "wooden bobbin";
    item.lidCount = 4;
    item.comesBack = catalogue::ComesBack::Counted;
    item.measures.whole = *measure::solidFrom("cylinder", {acrossMm, longMm});
    item.cleanable = true;
    item.care = {"Wash."};
    item.use = catalogue::UsePrior{1, 60};
    item.drawing = "item-box";
    item.alt = "A wooden bobbin.";
    return item;
}

inline catalogue::Activity bobbinRoad()
{
    using namespace catalogue;
    Activity road;
    road.id = {"own-bobbin-road"};
    road.entry = road.id.value;
    road.status = Status::AwaitingReview;
    road.name = "Bobbin Road";
    road.invite = "Which bobbin rolls the longest road?";
    road.adultLine = "Sit beside the child at the table. Put four bobbins in a row between you.";
    road.picture = {"item-box", "Four wooden bobbins in a row."};
    road.steps = {{"Lay a book flat to make a small hill.", {}},
                  {"The child lets one bobbin go at the top. Watch where it stops.", {}},
                  {"Push it home with one finger and try the next one.", {}}};
    road.items = {{{"own-bobbins"}, 4, Source::Box, Role::Must, Fate::ComesBack, 4},
                  {{"book"}, 1, Source::Home, Role::Must, Fate::ComesBack, 0}};
    road.skillsMain = {Skill::For};
    road.skillsAlso = {Skill::Iso};
    road.ageFloorMonths = 36;
    road.floorReason = "Bobbins are small parts.";
    road.senses = {Sense::Tactile, Sense::Visual};
    road.hands = 1;
    road.positions = {Position::Chair, Position::Wheelchair};
    road.easier = {{Lever::Distance, "Start half way down the hill", {}}};
    road.harder = {{Lever::Speed, "Let it go so slowly that it stops on the book", {}}};
    road.waysIn.oneHand = "The book lies still by itself. One hand does it all.";
    road.waysIn.seated = "Lay the book on a tray over the knees of the wheelchair.";
    road.cautions = {Tag::Small};
    road.watchFor = {"A bobbin near a mouth."};
    road.stopWhen = {"Anything goes to the mouth."};
    road.say = {"I saw that one turn before it stopped."};
    road.putBack = {"Four bobbins: count them into the bag", "Lid on"};
    return road;
}

/// Keeps and signs off both. @returns whether nothing was found.
inline bool writeOwn(usecase::Workplace &therapist, const catalogue::ItemKind &item = bobbins(),
                     const catalogue::Activity &activity = bobbinRoad())
{
    if (!usecase::keepOwnItem(therapist, item.id.value, yamlOf(item)) ||
        !usecase::keepOwnActivity(therapist, activity.id.value, yamlOf(activity)))
        return false;
    const auto things = usecase::publishOwnItem(therapist, realCatalogue(), item.id.value);
    const auto plays = usecase::publishOwnActivity(therapist, realCatalogue(), activity.id.value);
    return things && things->clean() && plays && plays->clean();
}

/// A phone's workplace with the own entries for one child's box, as the app and the command line
/// have it.
class OwnWorkplace
{
public:
    explicit OwnWorkplace(Phone &phone, const std::string &child = "Fin")
    {
        usecase::Workplace plain = phone.workplace();
        m_files = *usecase::ownFilesFor(plain, child);
        m_catalogue = catalogue::catalogueWith(realCatalogue(), m_files);
        m_place = std::make_unique<usecase::Workplace>(usecase::Workplace{
            phone.database, m_catalogue, phone.clock, phone.entropy, phone.device});
    }

    [[nodiscard]] usecase::Workplace &place() { return *m_place; }
    [[nodiscard]] const catalogue::Catalogue &catalogue() const { return m_catalogue; }
    [[nodiscard]] const catalogue::OwnFiles &files() const { return m_files; }

private:
    catalogue::OwnFiles m_files;
    catalogue::Catalogue m_catalogue;
    std::unique_ptr<usecase::Workplace> m_place;
};

/// Morven's phone with a box that was packed with four bobbins as well.
inline std::unique_ptr<Phone> therapistWithBobbins(const std::vector<std::string> &children)
{
    auto morven = std::make_unique<Phone>("Morven", store::Role::Therapist, "");
    morven->clock.moveTo(islandTime(4, 10, 0));
    usecase::Workplace workplace = morven->workplace();
    for (const std::string &child : children) {
        usecase::island::Family family = familyOf(child);
        family.packed[{"own-bobbins"}] = 4;
        (void)usecase::issueBox(workplace, family);
    }
    return morven;
}

} // namespace lidlark::test
