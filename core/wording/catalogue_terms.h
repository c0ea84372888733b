#pragma once

#include "core/catalogue/translation.h"
#include "core/wording/sentence.h"

namespace lidlark::wording {

/// Words of an entry for a sentence: as they are shown, and in English for the line under it.
template <class Entry>
Argument termOf(const Entry &entry, const std::string &shown, const std::string &english)
{
    return entry.inEnglish ? Argument(Translated{shown, english}) : Argument(shown);
}

/// "stick-on eyes".
inline Argument nameOf(const catalogue::ItemKind &kind)
{
    return termOf(kind, kind.name, catalogue::inEnglish(kind).name);
}

/// "stick-on eye".
inline Argument oneOf(const catalogue::ItemKind &kind)
{
    return termOf(kind, kind.one, catalogue::inEnglish(kind).one);
}

/// What to look for on it.
inline Argument checkOf(const catalogue::ItemKind &kind)
{
    return termOf(kind, kind.life.check, catalogue::inEnglish(kind).life.check);
}

} // namespace lidlark::wording
