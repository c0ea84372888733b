#include "core/usecase/own_entries.h"

#include "core/base/utf8.h"
#include "core/store/clinic_rows.h"
#include "core/store/subjects_of.h"
#include "core/usecase/clinic_word.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

using workbench::OwnKept;
using workbench::OwnSort;

constexpr std::size_t idLetters = 10;

std::string subjectPrefix(OwnSort sort)
{
    return sort == OwnSort::Item ? "own-item:" : "own-activity:";
}

journal::Kind kindOf(OwnSort sort)
{
    return sort == OwnSort::Item ? journal::Kind::OwnItem : journal::Kind::OwnActivity;
}

Outcome keep(Workplace &therapist, const OwnKept &kept)
{
    if (!isPlainUtf8(kept.text))
        return Error{ErrorCode::Invalid, "text: no plain text"};
    journal::Event event;
    event.kind = kindOf(kept.sort);
    event.fields = workbench::fieldsOf(kept);
    if (kept.text.size() > catalogue::longestOwnText)
        return Error{ErrorCode::Invalid, "text: longer than 16 kB"};
    const bool mayBe = kept.sort == OwnSort::Item ||
                       catalogue::isOwnId(kept.id); // a built-in activity cannot be written over
    if (!mayBe || !workbench::ownKeptFrom(event))
        return Error{ErrorCode::Invalid, "id: small letters, digits and hyphens, \"own-\" first"};
    return sayInClinic(therapist, event.kind, event.fields);
}

} // namespace

std::string freshOwnId(Entropy &entropy)
{
    return std::string(catalogue::ownPrefix) + entropy.freshId().substr(0, idLetters);
}

Outcome keepOwnItem(Workplace &therapist, const std::string &id, const std::string &text)
{
    if (!catalogue::isOwnId(id) && therapist.catalogue.item({id}) == nullptr)
        return Error{ErrorCode::Invalid, "id: \"own-\" first, or that of a built-in item"};
    return keep(therapist, {id, OwnSort::Item, text, false});
}

Outcome keepOwnActivity(Workplace &therapist, const std::string &id, const std::string &text)
{
    return keep(therapist, {id, OwnSort::Activity, text, false});
}

Outcome throwAwayOwn(Workplace &therapist, OwnSort sort, const std::string &id)
{
    return keep(therapist, {id, sort, {}, false});
}

Result<std::optional<OwnKept>> ownKept(Workplace &workplace, OwnSort sort, const std::string &id)
{
    store::EventRepository repository(workplace.database);
    const auto events = repository.standingOfSubject({store::clinicLane, subjectPrefix(sort) + id});
    const auto mets = repository.standingOfSubject({store::clinicLane, "met"});
    if (!events || !mets)
        return events ? mets.error() : events.error();
    return workbench::foldOwnKept(*events, journal::Seen(*mets));
}

Result<std::vector<OwnKept>> ownKept(Workplace &workplace)
{
    store::EventRepository repository(workplace.database);
    std::vector<OwnKept> all;
    std::optional<journal::Seen> seen; // nothing is read for it where nothing is kept
    for (const OwnSort sort : {OwnSort::Item, OwnSort::Activity}) {
        const auto subjects =
            store::subjectsOf(workplace.database, store::clinicLane, subjectPrefix(sort));
        if (!subjects)
            return subjects.error();
        for (const store::LaneSubject &subject : *subjects) {
            const auto events = repository.standingOfSubject(subject);
            if (!events)
                return events.error();
            if (!seen) {
                const auto mets = repository.standingOfSubject({store::clinicLane, "met"});
                if (!mets)
                    return mets.error();
                seen.emplace(*mets);
            }
            if (auto kept = workbench::foldOwnKept(*events, *seen))
                all.push_back(*std::move(kept));
        }
    }
    return all;
}

} // namespace lidlark::usecase
