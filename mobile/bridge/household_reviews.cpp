#include "mobile/bridge/household.h"

#include "core/wording/review_words.h"
#include "mobile/bridge/sentence.h"

namespace lidlark::mobile {

QString Household::reviewNotice() const
{
    // The texts themselves are in one language so far, whatever the app's is.
    return translated(wording::reviewNotice(
        catalogue::countReviews(catalogue().activities(), catalogue::writtenIn, today().day)));
}

} // namespace lidlark::mobile
