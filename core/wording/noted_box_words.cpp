#include "core/wording/noted_box_words.h"

#include "core/box/box_events.h"
#include "core/box/piece_events.h"
#include "core/box/request_events.h"
#include "core/journal/fields.h"
#include "core/play/grading_events.h"
#include "core/wording/day_words.h"

#include <array>

namespace lidlark::wording {

namespace {

using box::ExceptionKind;
using journal::Event;
using journal::Kind;

/// The item at the head of a line: "Pegs".
std::string headOf(const ItemId &item, const NotedAbout &about)
{
    const catalogue::ItemKind *kind = about.catalogue.item(item);
    return capital(kind == nullptr ? item.value : kind->name);
}

/// The item after a number: "peg", "pegs".
std::string nounOf(const ItemId &item, int pieces, const NotedAbout &about)
{
    const catalogue::ItemKind *kind = about.catalogue.item(item);
    if (kind == nullptr)
        return item.value;
    return pieces == 1 ? kind->one : kind->name;
}

Sentence gone(const ItemId &item, ExceptionKind kind, int pieces, const NotedAbout &about)
{
    // In the order of box::ExceptionKind.
    static constexpr std::array lines{say("%1 %2 used up"), say("%1 %2 lost"), say("%1 %2 broken"),
                                      say("%1 %2 dried out"), say("%1 %2 still in use")};
    if (pieces < 0)
        return {sayCounted("%1 %2 back in the box"),
                {inDigits(-pieces), nounOf(item, -pieces, about)}};
    return {lines[static_cast<std::size_t>(kind)], {inDigits(pieces), nounOf(item, pieces, about)}};
}

std::vector<Sentence> outcomeWords(const box::Outcome &outcome, const NotedAbout &about)
{
    if (outcome.exceptions.allHome())
        return {{say("%1: all back"), {headOf(outcome.item, about)}}};
    std::vector<Sentence> lines;
    for (std::size_t i = 0; i < box::exceptionKindCount; ++i) {
        const auto kind = static_cast<ExceptionKind>(i);
        if (const int pieces = outcome.exceptions.of(kind); pieces != 0)
            lines.push_back(gone(outcome.item, kind, pieces, about));
    }
    return lines;
}

Sentence openedWords(const box::Opened &opened, const NotedAbout &about)
{
    const std::string item = headOf(opened.item, about);
    if (!opened.day)
        return {say("%1: not opened after all"), {item}};
    if (*opened.day == about.today)
        return {say("%1: opened today"), {item}};
    return {say("%1: opened %2"), {item, dateWords(*opened.day)}};
}

Sentence hygieneWords(const box::HygieneSaid &said, const NotedAbout &about)
{
    // In the order of box::HygieneMark.
    static constexpr std::array lines{say("%1: was in a mouth"), say("%1: washed"),
                                      say("%1: replaced")};
    return {lines[static_cast<std::size_t>(said.mark)], {headOf(said.item, about)}};
}

Sentence requestWords(const box::RequestSaid &said, const NotedAbout &about)
{
    // In the order of box::RequestStep.
    static constexpr std::array lines{say("%1: asked for"), say("%1: request seen"),
                                      say("%1: packed"), say("%1: on its way"),
                                      say("%1: counted in")};
    return {lines[static_cast<std::size_t>(said.step)], {headOf(said.item, about)}};
}

Sentence limitWords(const box::KeepingLimit &limit, const NotedAbout &about)
{
    const std::string item = headOf(limit.item, about);
    if (limit.days)
        return {say("%1: once opened, keeps days: %2"), {item, inDigits(*limit.days)}};
    return {say("%1: keeps as long as its kind does"), {item}};
}

Sentence pinWords(const Event &event, const NotedAbout &about)
{
    const catalogue::Activity *activity = about.catalogue.activity(about.activity);
    const std::string name = activity != nullptr ? activity->name : about.activity.value;
    // In the order of play::Way.
    static constexpr std::array lines{say("%1: asked for as written"), say("%1: asked for easier"),
                                      say("%1: asked for harder")};
    const auto way = play::wayNames.parse(journal::Fields(event.fields).text("way").value_or(""));
    if (!way)
        return {say("%1: asked for in no special way"), {name}};
    return {lines[static_cast<std::size_t>(*way)], {name}};
}

} // namespace

std::vector<Sentence> notedOfBox(const Event &event, const NotedAbout &about)
{
    if (const auto outcome = box::readOutcome(event))
        return outcomeWords(*outcome, about);
    if (const auto loose = box::readLooseException(event))
        return {gone(loose->item, loose->kind, loose->count, about)};
    if (const auto found = box::readFound(event))
        return {{sayCounted("%1 %2 found"),
                 {inDigits(found->count), nounOf(found->item, found->count, about)}}};
    if (const auto counted = box::readCounted(event))
        return {{say("%1: %2 counted"), {headOf(counted->item, about), inDigits(counted->inBox)}}};
    if (const auto checked = box::readFloorChecked(event))
        return {{say("%1: floor checked, not found"), {headOf(checked->item, about)}}};
    if (const auto opened = box::readOpened(event))
        return {openedWords(*opened, about)};
    if (const auto left = box::readLeftOpen(event))
        return {{say("%1: found left open"), {headOf(left->item, about)}}};
    if (const auto checked = box::readChecked(event))
        return {{say("%1: looked over, good"), {headOf(checked->item, about)}}};
    if (const auto limit = box::readKeepingLimit(event))
        return {limitWords(*limit, about)};
    if (const auto said = box::readHygiene(event))
        return {hygieneWords(*said, about)};
    if (const auto taken = box::readTakenOut(event))
        return {{say("%1: out of the house"), {headOf(taken->item, about)}}};
    if (const auto asked = box::readRequest(event))
        return {requestWords(*asked, about)};
    if (const auto came = box::readCountedIn(event))
        return {{sayCounted("%1 %2 counted in"),
                 {inDigits(came->pieces), nounOf(came->item, came->pieces, about)}}};
    if (const auto answered = box::readAnswered(event))
        return {{say("%1: question answered"), {headOf(answered->item, about)}}};
    if (event.kind == Kind::Place)
        return {{say("Box: %1"), {journal::Fields(event.fields).text("words").value_or("")}}};
    if (event.kind == Kind::GradingPin)
        return {pinWords(event, about)};
    return {};
}

} // namespace lidlark::wording
