#pragma once

#include <QStringList>

#include "core/catalogue/translation.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

/// A line with its English on a line of its own under it, whole in either reading direction.
QString withEnglishUnder(const std::string &line, const std::string &english);

/// A line of an entry that guards somebody: while nobody has checked its translation, the English
/// stands under it.
template <class Entry>
QString guardingLine(const Entry &entry, const std::string &line, const std::string &english)
{
    return catalogue::isUnchecked(entry) ? withEnglishUnder(line, english) : fromCore(line);
}

/// Several of them: `guardingLines(activity, &catalogue::Activity::watchFor)`.
template <class Entry>
QStringList guardingLines(const Entry &entry, std::vector<std::string> Entry::*lines)
{
    QStringList texts;
    const std::vector<std::string> &english = catalogue::inEnglish(entry).*lines;
    for (std::size_t i = 0; i < (entry.*lines).size(); ++i)
        texts.append(guardingLine(entry, (entry.*lines)[i], english.at(i)));
    return texts;
}

/// What to look for on an item.
inline QString lookWordsOf(const catalogue::ItemKind &kind)
{
    return guardingLine(kind, kind.life.check, catalogue::inEnglish(kind).life.check);
}

} // namespace lidlark::mobile
