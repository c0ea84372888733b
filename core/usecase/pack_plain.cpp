#include "core/usecase/pack_plain.h"

#include "core/store/recording.h"
#include "core/usecase/clinic_word.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

using workbench::PackBox;
using workbench::PackLine;

const PackLine *openLineOf(const PackBox &box, const ItemId &item)
{
    const auto line = std::ranges::find(box.lines, item, &PackLine::item);
    const bool open = line != box.lines.end() && line->state == workbench::LineState::Open &&
                      line->hand == workbench::Hand::Unsaid;
    return open ? &*line : nullptr;
}

bool isPlain(const PackBox &box)
{
    return !box.special && box.callOuts.empty() && box.conflict.empty() &&
           box.notReady != workbench::NotReady::Disputed;
}

} // namespace

std::vector<std::string> plainBoxesWithout(const PackTable &table, const ItemId &item)
{
    std::vector<std::string> codes;
    for (const PackBox &box : table.boxes) {
        if (!table.isHandedOver(box.code) && isPlain(box) && openLineOf(box, item) != nullptr)
            codes.push_back(box.code);
    }
    return codes;
}

Outcome packPlainBoxes(Workplace &therapist, const workbench::BuildId &build, const ItemId &item)
{
    if (Outcome may = mayKeepClinic(therapist); !may)
        return may;
    const auto table = packTable(therapist, build);
    const auto supplies = store::ClinicRepository(therapist.database).supplies();
    if (!table || !supplies)
        return table ? supplies.error() : table.error();
    auto recording = store::Recording::begin(therapist.database, therapist.device, therapist.clock);
    if (!recording)
        return recording.error();
    for (const std::string &code : plainBoxesWithout(*table, item)) {
        const PackLine &line = *openLineOf(*table->box(code), item);
        const auto mark = workbench::packedMark(build, code, line, *supplies);
        Outcome said =
            recording->say(store::clinicLane, journal::Kind::PackMark, workbench::fieldsOf(mark));
        if (!said)
            return said;
    }
    return recording->commit();
}

} // namespace lidlark::usecase
