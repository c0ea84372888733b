#include "core/workbench/readiness.h"

#include <algorithm>

namespace lidlark::workbench {

namespace {

/// A look counts when it was of every word of packing that stands, by a person who gave none of
/// them.
const LookedBy *countingLook(const LineMarks &marks)
{
    const auto counts = [&marks](const LookedBy &look) {
        return !isSamePerson(look.who, "") &&
               std::ranges::all_of(marks.packed, [&look](const PackedBy &packed) {
                   return look.of.contains(packed.identity) && !isSamePerson(packed.who, look.who);
               });
    };
    const auto found = std::ranges::find_if(marks.looks, counts);
    return found != marks.looks.end() ? &*found : nullptr;
}

Hand handWanted(const KeptBox &box, const ItemId &item, const catalogue::Catalogue &catalogue)
{
    if (!isHanded(item, catalogue.item(kindOf(item))))
        return Hand::Unsaid;
    return box.personal.hand == Hand::Left ? Hand::Left : Hand::Right;
}

LineState stateOf(const PackLine &line, const LineMarks &marks)
{
    if (marks.packed.empty())
        return LineState::Open;
    for (const PackedBy &packed : marks.packed) {
        if (line.hand != Hand::Unsaid && packed.hand != line.hand)
            return LineState::WrongHand;
    }
    for (const PackedBy &packed : marks.packed) {
        if (packed.pieces != line.pieces)
            return LineState::WrongCount;
    }
    return countingLook(marks) != nullptr ? LineState::LookedOver : LineState::Packed;
}

PackLine lineOf(const KeptBox &box, const BoxPart &part, const Marks &marks,
                const catalogue::Catalogue &catalogue)
{
    PackLine line;
    line.item = part.item;
    line.pieces = part.pieces;
    line.hand = handWanted(box, part.item, catalogue);
    const auto found = marks.find({box.box.code, part.item});
    if (found == marks.end())
        return line;
    line.state = stateOf(line, found->second);
    line.packed = found->second.packed;
    line.perhapsTwice = line.packed.size() > 1;
    if (line.state == LineState::LookedOver)
        line.lookedBy = countingLook(found->second)->who;
    return line;
}

bool isListed(const KeptBox &box, const ItemId &item)
{
    return std::ranges::find(box.box.parts, item, &BoxPart::item) != box.box.parts.end();
}

NotReady notReadyFor(const PackBox &box, bool disputed)
{
    if (!box.conflict.empty())
        return NotReady::Conflict;
    if (disputed)
        return NotReady::Disputed;
    if (!box.takeOut.empty())
        return NotReady::TakeOut;
    const auto lines = static_cast<int>(box.lines.size());
    if (lines == 0 || box.linesIn() < lines)
        return NotReady::Lines;
    return box.special && box.linesLookedOver() < lines ? NotReady::SecondLook : NotReady::Nothing;
}

} // namespace

int PackBox::linesIn() const
{
    return static_cast<int>(std::ranges::count_if(lines, &PackLine::isIn));
}

int PackBox::linesLookedOver() const
{
    return static_cast<int>(std::ranges::count(lines, LineState::LookedOver, &PackLine::state));
}

bool PackBox::mayLookOver(const PackLine &line, const std::string &who)
{
    return line.state == LineState::Packed && !isSamePerson(who, "") &&
           std::ranges::none_of(line.packed, [&who](const PackedBy &packed) {
               return isSamePerson(packed.who, who);
           });
}

MarkSaid packedMark(const BuildId &build, const std::string &box, const PackLine &line,
                    const KeptSupplies &supplies)
{
    MarkSaid mark{build, box, line.item};
    mark.pieces = line.pieces;
    const auto supply = supplies.find(line.item);
    mark.lot = supply != supplies.end() ? supply->second.lot : std::string();
    return mark;
}

PackBox packBoxOf(const KeptBox &box, const Design *design, const Marks &marks,
                  const catalogue::Catalogue &catalogue, const KeptSupplies &supplies)
{
    PackBox packed;
    packed.code = box.box.code;
    packed.whose = box.box.whose;
    packed.special = isSpecial(box, design);
    packed.callOuts = callOutsOf(box, design);
    packed.conflict = conflictIn(box, catalogue, supplies).value_or("");
    for (const BoxPart &part : box.box.parts)
        packed.lines.push_back(lineOf(box, part, marks, catalogue));
    for (const auto &[line, said] : marks) {
        if (line.first == packed.code && !said.packed.empty() && !isListed(box, line.second))
            packed.takeOut.push_back(line.second);
    }
    packed.notReady = notReadyFor(packed, box.disputed);
    return packed;
}

} // namespace lidlark::workbench
