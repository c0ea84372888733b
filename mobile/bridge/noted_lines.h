#pragma once

#include <QStringList>

#include "mobile/bridge/household.h"

namespace lidlark::mobile {

/// What was noted, in the interface language: "2 pegs lost".
QStringList notedLines(const usecase::Noted &noted, const Household &household);
/// Who noted it, and when: "Ruth, 18:25".
QString notedBy(const usecase::Noted &noted);

} // namespace lidlark::mobile
