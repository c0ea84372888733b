#include "core/usecase/pack_box.h"

#include "core/usecase/clinic_word.h"
#include "core/usecase/typed_line.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

using workbench::Hand;
using workbench::LineState;
using workbench::Mark;
using workbench::MarkSaid;
using workbench::PackBox;
using workbench::PackLine;

constexpr std::size_t longestName = 40;

const PackLine *lineOf(const PackBox &box, const ItemId &item)
{
    const auto found = std::ranges::find(box.lines, item, &PackLine::item);
    return found != box.lines.end() ? &*found : nullptr;
}

/// One box on the table, and who stands at it.
struct AtBox {
    PackTable table;
    std::string who;
    std::string code;

    [[nodiscard]] const PackBox &box() const { return *table.box(code); }
};

Result<AtBox> atBox(Workplace &therapist, const PackLineAt &at)
{
    if (const Outcome may = mayKeepClinic(therapist); !may)
        return may.error();
    auto who = typedLine("name", at.author, longestName);
    auto table = packTable(therapist, at.build);
    if (!who || !table)
        return who ? table.error() : who.error();
    if (table->box(at.box) == nullptr)
        return Error{ErrorCode::NotFound, "this box"};
    if (table->isHandedOver(at.box))
        return aboutBox(at.box, "was handed over as this build");
    return AtBox{*std::move(table), who->empty() ? therapist.device.person : *who, at.box};
}

Outcome mayLieInside(const PackBox &box, const PackLine &line, Hand hand)
{
    if (!box.conflict.empty())
        return aboutBox(box.code, box.conflict);
    if (box.notReady == workbench::NotReady::Disputed)
        return aboutBox(box.code, "written in two ways");
    if (line.hand == Hand::Unsaid || line.hand == hand)
        return Done{};
    return aboutBox(box.code,
                    line.item.value + (hand == Hand::Unsaid ? ": say for which hand"
                                                            : ": made for the other hand"));
}

bool saidAlready(const PackLine &line, const std::string &who)
{
    return line.isIn() && std::ranges::any_of(line.packed, [&who](const auto &packed) {
               return workbench::isSamePerson(packed.who, who);
           });
}

Outcome sayMark(Workplace &therapist, const AtBox &at, const MarkSaid &mark)
{
    return sayInClinic(therapist, journal::Kind::PackMark, workbench::fieldsOf(mark), at.who);
}

} // namespace

const PackBox *PackTable::box(const std::string &code) const
{
    const auto found = std::ranges::find(boxes, code, &PackBox::code);
    return found != boxes.end() ? &*found : nullptr;
}

int PackTable::ready() const
{
    return static_cast<int>(std::ranges::count_if(boxes, &PackBox::isReady));
}

bool PackTable::isHandedOver(const std::string &code) const
{
    return std::ranges::find(handedOver, code) != handedOver.end();
}

Result<PackTable> packTable(Workplace &therapist, const workbench::BuildId &id)
{
    store::ClinicRepository clinic(therapist.database);
    auto packed = clinic.build(id);
    const auto designs = clinic.designs();
    const auto supplies = clinic.supplies();
    auto handedOver = clinic.handedOverAs(id);
    if (!packed || !designs || !supplies)
        return !packed ? packed.error() : !designs ? designs.error() : supplies.error();
    if (!handedOver)
        return handedOver.error();
    if (!*packed)
        return Error{ErrorCode::NotFound, "this build"};
    PackTable table{(*packed)->build, {}, *std::move(handedOver)};
    for (const workbench::KeptBox &box : table.build.boxes) {
        const auto design = designs->find(box.box.design);
        table.boxes.push_back(
            workbench::packBoxOf(box, design != designs->end() ? &design->second : nullptr,
                                 (*packed)->marks, therapist.catalogue, *supplies));
    }
    return table;
}

Outcome packLine(Workplace &therapist, const PackLineAt &at, Hand hand)
{
    const auto here = atBox(therapist, at);
    if (!here)
        return here.error();
    const PackLine *line = lineOf(here->box(), at.item);
    if (line == nullptr)
        return Error{ErrorCode::NotFound, at.item.value + " in this box"};
    if (Outcome may = mayLieInside(here->box(), *line, hand); !may)
        return may;
    if (saidAlready(*line, here->who))
        return Done{};
    const auto supplies = store::ClinicRepository(therapist.database).supplies();
    if (!supplies)
        return supplies.error();
    MarkSaid mark = workbench::packedMark(at.build, at.box, *line, *supplies);
    mark.hand = line->hand == Hand::Unsaid ? Hand::Unsaid : hand;
    return sayMark(therapist, *here, mark);
}

Outcome unpackLine(Workplace &therapist, const PackLineAt &at)
{
    const auto here = atBox(therapist, at);
    if (!here)
        return here.error();
    const PackLine *line = lineOf(here->box(), at.item);
    const auto &takeOut = here->box().takeOut;
    const bool wrongly = std::ranges::find(takeOut, at.item) != takeOut.end();
    if (line == nullptr && !wrongly)
        return Error{ErrorCode::NotFound, at.item.value + " in this box"};
    if (line != nullptr && line->state == LineState::Open)
        return aboutBox(at.box, at.item.value + ": not packed");
    return sayMark(therapist, *here, {at.build, at.box, at.item, Mark::NotPacked});
}

Outcome lookOver(Workplace &therapist, const PackLineAt &at)
{
    const auto here = atBox(therapist, at);
    if (!here)
        return here.error();
    const PackLine *line = lineOf(here->box(), at.item);
    if (line == nullptr)
        return Error{ErrorCode::NotFound, at.item.value + " in this box"};
    if (line->state == LineState::LookedOver)
        return Done{};
    if (line->state != LineState::Packed)
        return aboutBox(at.box, at.item.value + ": not packed");
    if (!PackBox::mayLookOver(*line, here->who))
        return aboutBox(at.box, at.item.value + ": somebody else looks it over");
    MarkSaid mark{at.build, at.box, at.item, Mark::SecondLook};
    for (const workbench::PackedBy &packed : line->packed)
        mark.of.insert(packed.identity);
    return sayMark(therapist, *here, mark);
}

} // namespace lidlark::usecase
