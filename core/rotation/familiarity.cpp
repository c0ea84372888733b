#include "core/rotation/familiarity.h"

namespace lidlark::rotation {

const Record &recordOf(const Question &question, const ActivityId &activity)
{
    static const Record none;
    const auto found = question.records.find(activity);
    return found == question.records.end() ? none : found->second;
}

bool isNew(const Record &record)
{
    return record.plays == 0;
}

bool isKnownFriend(const Record &record)
{
    return record.plays >= 1 && (record.askedAgain > 0 || record.favourite || record.plays >= 2);
}

} // namespace lidlark::rotation
