#include "mobile/bridge/household.h"

#include "core/wording/review_words.h"
#include "mobile/bridge/known_languages.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

QString Household::reviewNotice() const
{
    // What was signed in English says nothing of a translation.
    const bool translation = knownLanguage(m_language) != nullptr;
    const std::string language(translation ? toCore(m_language)
                                           : std::string(catalogue::writtenIn));
    return translated(wording::reviewNotice(
        catalogue::countReviews(catalogue().activities(), language, today().day)));
}

} // namespace lidlark::mobile
