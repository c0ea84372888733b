#include "stretched_words.h"

#include "mobile/bridge/stretched.h"

namespace lidlark::mobile {

QString StretchedWords::translate(const char *context, const char *sourceText,
                                  const char *disambiguation, int n) const
{
    const QString english = m_english.translate(context, sourceText, disambiguation, n);
    return stretched(english.isEmpty() ? QString::fromUtf8(sourceText) : english);
}

} // namespace lidlark::mobile
