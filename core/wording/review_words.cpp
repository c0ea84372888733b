#include "core/wording/review_words.h"

namespace lidlark::wording {

Sentence reviewNotice(const catalogue::ReviewCount &count)
{
    if (count.reviewed >= count.entries)
        return {"", {}};
    if (count.reviewed == 0)
        return {"Written with care, not yet checked by a clinician. Follow your local rules and "
                "your therapist.",
                {}};
    return {
        "A clinician has checked %1 of the %2 activities; the others were written with care and "
        "wait for it. Follow your local rules and your therapist.",
        {std::to_string(count.reviewed), std::to_string(count.entries)}};
}

Sentence notYetChecked()
{
    return {"Written with care, not yet checked by a clinician.", {}};
}

} // namespace lidlark::wording
