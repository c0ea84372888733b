#include "core/catalogue/measured_hazards.h"

#include "core/measure/test_cylinder.h"

namespace lidlark::catalogue {

namespace {

using measure::Solid;

bool fitsCylinder(const Solid &solid)
{
    return measure::fitsTestCylinder(solid, measure::largestScaleInTestCylinder(solid));
}

bool passesHole(const Solid &solid)
{
    return measure::isSmallBall(solid).value_or(false);
}

constexpr auto fits = " fits the small parts cylinder";
constexpr auto passes = " passes the hole for small balls";

void measureWhole(const Measures &measures, std::vector<MeasuredTag> &tags)
{
    if (measures.whole && fitsCylinder(*measures.whole))
        tags.push_back({Tag::Small, std::string("it") + fits});
    if (measures.least && fitsCylinder(*measures.least))
        tags.push_back({Tag::Small, std::string("worn down, it") + fits});
    if (measures.rollsAs == RollsAs::Ball && measures.whole && passesHole(*measures.whole))
        tags.push_back({Tag::Small, std::string("as a ball it") + passes});
    if (measures.rollsAs == RollsAs::Marble)
        tags.push_back({Tag::Small, "it is a marble"});
}

void measureParts(const Measures &measures, std::vector<MeasuredTag> &tags)
{
    for (const LoosePart &part : measures.comesOff) {
        if (fitsCylinder(part.solid))
            tags.push_back({Tag::Small, "its " + part.name + fits});
        else if (passesHole(part.solid))
            tags.push_back({Tag::Small, "its " + part.name + passes});
        else if (part.suctionCup)
            tags.push_back({Tag::Small, "its " + part.name + " is a suction cup or dart tip"});
    }
}

void measureCord(const Measures &measures, std::vector<MeasuredTag> &tags)
{
    if (!measures.cord)
        return;
    const measure::CordFaults faults = measure::faultsOf(*measures.cord);
    if (faults.tooLong)
        tags.push_back({Tag::Cord, "its cord is longer than 220 mm"});
    if (faults.loopTooWide)
        tags.push_back({Tag::Cord, "its loop is wider than 360 mm round"});
    if (faults.tooThin)
        tags.push_back({Tag::Cord, "its cord is thinner than 1.5 mm"});
}

} // namespace

bool isSmall(const Solid &piece)
{
    return fitsCylinder(piece) || (piece.shape() == measure::Shape::Sphere && passesHole(piece));
}

std::vector<MeasuredTag> measuredTags(const Measures &measures)
{
    std::vector<MeasuredTag> tags;
    measureWhole(measures, tags);
    measureParts(measures, tags);
    measureCord(measures, tags);
    return tags;
}

MeasuredHazards hazardsOf(const Measures &measures)
{
    return hazardsOf(measures, measuredTags(measures));
}

MeasuredHazards hazardsOf(const Measures &measures, const std::vector<MeasuredTag> &tags)
{
    MeasuredHazards hazards;
    for (const MeasuredTag &measured : tags)
        hazards.tags.add(measured.tag);
    hazards.isMarble = measures.rollsAs == RollsAs::Marble;
    hazards.isSmallBall =
        measures.rollsAs == RollsAs::Ball && measures.whole && passesHole(*measures.whole);
    for (const LoosePart &part : measures.comesOff)
        hazards.holdsSmallBall = hazards.holdsSmallBall || passesHole(part.solid);
    hazards.sealsAFace = measures.hollow && measure::maySealAFace(*measures.hollow);
    return hazards;
}

} // namespace lidlark::catalogue
