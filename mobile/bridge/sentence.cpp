#include "mobile/bridge/sentence.h"

#include <QCoreApplication>

#include "mobile/bridge/text.h"

namespace lidlark::mobile {

QString translated(const wording::Sentence &sentence)
{
    const QString text = QCoreApplication::translate("core", sentence.english.c_str());
    return fromCore(wording::fill({toCore(text), sentence.arguments}));
}

} // namespace lidlark::mobile
