#include "core/drawing/fault.h"
#include "core/drawing/marks.h"

namespace lidlark::drawing {

namespace {

constexpr double usualArm = 40;
constexpr double usualFinger = 18;

/// A pose laid on the drawing, with the arm that runs out of the picture.
struct PosedHand {
    Affine map;
    Path palm;
    Path arm;
    double armWidth = usualArm;
    double fingerWidth = usualFinger;
};

/// Far enough along the pose's own direction to leave the picture.
Path armAlong(Point far, Point wrist)
{
    constexpr double times = 3;
    return lineThrough(
        {{wrist.x + times * (far.x - wrist.x), wrist.y + times * (far.y - wrist.y)}, wrist});
}

/// From where the drawing says the arm comes, to the wrist.
Path armFrom(const YamlNode &arm, Point wrist, const Place &place)
{
    if (arm.kind == YamlNode::Kind::Scalar) {
        Path path = moved(pathIn(arm), place.map);
        path.push_back({'L', {wrist}});
        return path;
    }
    std::vector<Point> points;
    if (!listIn(arm).empty() && arm.children.front().kind == YamlNode::Kind::List)
        points =
            arm.children.size() == 1 ? std::vector{pointIn(arm.children.front())} : pointsIn(arm);
    else
        points.push_back(pointIn(arm));
    for (Point &point : points)
        point = place.map(point);
    points.push_back(wrist);
    return lineThrough(points);
}

PosedHand posed(const Fields &mark, const Fields &pose, const Place &place)
{
    PosedHand hand;
    const double size = sizeOf(mark);
    hand.map = place.map * placedBy(mark, pointIn(pose.at("anchor")));
    hand.palm = moved(pathIn(pose.at("palm")), hand.map);
    hand.fingerWidth = mark.number("finger_width", pose.number("finger", usualFinger) * size);
    hand.armWidth = mark.number("arm_width", pose.number("arm", usualArm) * size);
    const Point wrist = hand.map(pointIn(pose.at("wrist")));
    const YamlNode *arm = mark.find("arm");
    hand.arm =
        arm ? armFrom(*arm, wrist, place) : armAlong(hand.map(pointIn(pose.at("far"))), wrist);
    return hand;
}

/// One step of a pose: bones of fingers, or skin that hides where they are rooted.
void drawBones(const YamlNode &step, const PosedHand &hand, const Place &place)
{
    const Fields fields(step, {"fingers", "skin"});
    if (const YamlNode *skin = fields.find("skin"))
        place.print->fill(moved(pathIn(*skin), hand.map), Colour::Paper);
    for (const YamlNode &finger : fields.list("fingers"))
        place.print->bone(moved(pathIn(finger), hand.map), hand.fingerWidth, boneEdge,
                          Colour::Paper);
}

void drawStep(const YamlNode &step, const Fields &mark, const PosedHand &hand, const Place &place)
{
    if (step.kind == YamlNode::Kind::Map) {
        drawBones(step, hand, place);
    } else if (step.text == "palm") {
        place.print->fill(hand.palm, Colour::Paper);
        place.print->stroke(hand.arm, {hand.armWidth - boneEdge, Colour::Paper});
    } else if (step.text == "holds" || step.text == "in_palm") {
        drawMarks(mark.list(step.text), place);
    } else {
        refuse(step, "a step of a pose is palm, holds, in_palm, fingers or skin");
    }
}

} // namespace

/// Hands are bones (look.md, section 5): each finger a line of ink with a line of paper on it, back
/// to front, the palm over their roots, what is held between the fingers that hold it.
void drawHand(const YamlNode &mark, const Place &place)
{
    const Fields fields(mark, {"hand", "at", "turn", "size", "flip", "arm", "holds", "in_palm",
                               "arm_width", "finger_width"});
    const std::string name = fields.at("hand").text;
    const YamlNode *file = place.shelf->find(Kind::Hand, name);
    if (!file)
        refuse(mark, "there is no hand \"" + name + "\"");
    const Fields pose(*file, {"anchor", "wrist", "far", "arm", "finger", "palm", "draw"});
    const PosedHand hand = posed(fields, pose, place);
    place.print->bone(hand.arm, hand.armWidth, boneEdge, Colour::Paper);
    place.print->stroke(hand.palm, {boneEdge});
    for (const YamlNode &step : listIn(pose.at("draw")))
        drawStep(step, fields, hand, place);
}

} // namespace lidlark::drawing
