#include "core/wording/review_words.h"

namespace lidlark::wording {

Sentence reviewNotice(const catalogue::ReviewCount &count)
{
    if (count.reviewed >= count.entries)
        return {};
    if (count.reviewed == 0)
        return {
            say("Written with care, not yet checked by a clinician. Follow your local rules and "
                "your therapist."),
            {}};
    return {say("A clinician has checked %1 of the %2 activities; the others were written with "
                "care and "
                "wait for it. Follow your local rules and your therapist."),
            {inDigits(count.reviewed), inDigits(count.entries)}};
}

Sentence notYetChecked()
{
    return {say("Written with care, not yet checked by a clinician."), {}};
}

} // namespace lidlark::wording
