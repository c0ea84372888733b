#include "core/box/sides.h"

#include "core/box/request_events.h"

#include <algorithm>

namespace lidlark::box {

using journal::Event;

Side sideOf(const Event &event)
{
    Side side{journal::identityOf(event), event.author, event.device, event.when};
    if (const auto counted = readCounted(event)) {
        side.pieces = counted->inBox;
        side.isCount = true;
    } else if (const auto arrived = readCountedIn(event)) {
        side.pieces = arrived->pieces;
        side.brings = true;
    } else if (const auto found = readFound(event)) {
        side.pieces = found->count;
        side.brings = true;
    } else if (const auto outcome = readOutcome(event)) {
        side.exceptions = outcome->exceptions;
        side.pieces = outcome->exceptions.total();
    } else if (const auto loose = readLooseException(event)) {
        side.exceptions.set(loose->kind, loose->count);
        side.pieces = std::abs(loose->count);
        side.brings = loose->count < 0;
    }
    return side;
}

Question questionOver(std::string id, QuestionSort sort, std::vector<const Event *> events)
{
    std::sort(events.begin(), events.end(),
              [](const Event *a, const Event *b) { return writtenEarlier(*a, *b); });
    Question question;
    question.id = std::move(id);
    question.sort = sort;
    question.sides.reserve(events.size());
    for (const Event *event : events)
        question.sides.push_back(sideOf(*event));
    const Side &last = question.sides.back();
    question.askedOf = last.author;
    question.askedOn = last.device;
    question.asked = last.when;
    return question;
}

} // namespace lidlark::box
