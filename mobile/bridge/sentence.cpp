#include "mobile/bridge/sentence.h"

#include <QCoreApplication>

#include "mobile/bridge/text.h"

namespace lidlark::mobile {

QString translated(const wording::Sentence &sentence)
{
    QString text = QCoreApplication::translate("core", sentence.english.c_str());
    // All at once, so that a "%1" inside an argument stays as it was typed.
    QString filled;
    for (qsizetype i = 0; i < text.size(); ++i) {
        const int number = i + 1 < text.size() ? text[i + 1].digitValue() : -1;
        const bool placeholder =
            text[i] == u'%' && number >= 1 && number <= static_cast<int>(sentence.arguments.size());
        if (!placeholder) {
            filled += text[i];
            continue;
        }
        filled += fromCore(sentence.arguments[static_cast<std::size_t>(number - 1)]);
        ++i;
    }
    return filled;
}

} // namespace lidlark::mobile
