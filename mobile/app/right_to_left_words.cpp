#include "right_to_left_words.h"

#include "mobile/bridge/whole_places.h"

namespace lidlark::mobile {

QString RightToLeftWords::translate(const char *context, const char *sourceText,
                                    const char *disambiguation, int n) const
{
    return withWholePlaces(QTranslator::translate(context, sourceText, disambiguation, n));
}

} // namespace lidlark::mobile
