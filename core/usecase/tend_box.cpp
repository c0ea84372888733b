#include "core/usecase/tend_box.h"

#include "core/store/recording.h"
#include "core/usecase/clinic_word.h"
#include "core/usecase/typed_line.h"
#include "core/workbench/lot.h"

namespace lidlark::usecase {

namespace {

using workbench::BoxStep;
using workbench::Standing;
using workbench::StatusSaid;

constexpr std::size_t longestName = 40;
constexpr std::size_t longestWhy = 80;

Outcome sayStatus(Workplace &therapist, const StatusSaid &said, const std::string &author = {})
{
    return sayInClinic(therapist, journal::Kind::BoxStatus, workbench::fieldsOf(said), author);
}

Result<Day> dayOf(const Workplace &therapist, const BoxTending &tending,
                  const workbench::BoxStatus &status)
{
    const auto today = store::todayOf(therapist.clock);
    if (!today)
        return today.error();
    const Day day = tending.day.value_or(today->day);
    if (day > today->day)
        return Error{ErrorCode::Invalid, "day: still to come"};
    if (day < status.day)
        return Error{ErrorCode::Invalid, "day: before it came back"};
    return day;
}

/// What a word about one item of a returned box begins with.
Result<StatusSaid> aboutItem(Workplace &therapist, const BoxTending &tending, BoxStep step)
{
    const auto box = tendedBox(therapist, tending.code);
    if (!box)
        return box.error();
    if (box->status.standing != Standing::Returned)
        return aboutBox(tending.code, "has not come back");
    if (!box->status.pieces.contains(tending.item))
        return Error{ErrorCode::NotFound, tending.item.value + " in this box"};
    const auto day = dayOf(therapist, tending, box->status);
    if (!day)
        return day.error();
    StatusSaid said;
    said.box = tending.code;
    said.step = step;
    said.day = *day;
    said.round = box->status.round;
    said.item = tending.item;
    return said;
}

Outcome sayOfItem(Workplace &therapist, const BoxTending &tending, const StatusSaid &said)
{
    const auto who = typedLine("name", tending.author, longestName);
    return who ? sayStatus(therapist, said, *who) : Outcome(who.error());
}

} // namespace

Result<TendedBox> tendedBox(Workplace &therapist, const std::string &code)
{
    const auto status = store::ClinicRepository(therapist.database).status(code);
    if (!status)
        return status.error();
    if (!*status)
        return Error{ErrorCode::NotFound, "this box"};
    return TendedBox{**status, workbench::stillToDo(**status, therapist.catalogue)};
}

Result<std::vector<std::pair<std::string, Standing>>> knownBoxes(Workplace &therapist)
{
    return store::ClinicRepository(therapist.database).boxes();
}

Outcome takeBoxBack(Workplace &therapist, const std::string &code)
{
    const auto box = tendedBox(therapist, code);
    const auto today = store::todayOf(therapist.clock);
    if (!box || !today)
        return box ? today.error() : box.error();
    if (box->status.standing != Standing::Issued)
        return aboutBox(code, "is not with a child");
    StatusSaid said;
    said.box = code;
    said.step = BoxStep::Returned;
    said.day = today->day;
    said.round = box->status.round;
    return sayStatus(therapist, said);
}

Outcome cleanItem(Workplace &therapist, const BoxTending &tending, workbench::CleanedHow how)
{
    auto said = aboutItem(therapist, tending, BoxStep::Cleaned);
    if (!said)
        return said.error();
    if (workbench::careFor(therapist.catalogue.item(workbench::kindOf(tending.item))) ==
        workbench::Care::Replace)
        return Error{ErrorCode::Invalid, tending.item.value + ": is replaced, not cleaned"};
    said->how = how;
    return sayOfItem(therapist, tending, *said);
}

Outcome replaceItem(Workplace &therapist, const BoxTending &tending, const std::string &lot)
{
    auto said = aboutItem(therapist, tending, BoxStep::Replaced);
    auto line = typedLine("lot", lot, workbench::longestLot);
    if (!said || !line)
        return said ? line.error() : said.error();
    said->lot = *std::move(line);
    return sayOfItem(therapist, tending, *said);
}

Outcome untendItem(Workplace &therapist, const BoxTending &tending)
{
    const auto said = aboutItem(therapist, tending, BoxStep::NotYet);
    return said ? sayOfItem(therapist, tending, *said) : Outcome(said.error());
}

Outcome retireBox(Workplace &therapist, const std::string &code, const std::string &why)
{
    const auto box = tendedBox(therapist, code);
    const auto today = store::todayOf(therapist.clock);
    auto words = typedLine("why", why, longestWhy);
    if (!box || !today || !words)
        return !box ? box.error() : !today ? today.error() : words.error();
    if (box->status.standing == Standing::Retired)
        return aboutBox(code, "used no more");
    StatusSaid said;
    said.box = code;
    said.step = BoxStep::Retired;
    said.day = today->day;
    said.why = *std::move(words);
    return sayStatus(therapist, said);
}

} // namespace lidlark::usecase
