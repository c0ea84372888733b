#pragma once

#include <QString>
#include <QStringList>

#include "core/catalogue/write_entry.h"
#include "core/usecase/own_entries.h"
#include "mobile/bridge/own_desk.h"

#include <vector>

namespace lidlark::mobile {

/// What the pages of a therapist's own things ask of the store on the table. A thing whose id is
/// that of a built-in one says that this one measures otherwise.

/// While it is written.
struct OwnItemDraft {
    catalogue::ItemKind kind;
    catalogue::Holds holds;
    /// What was typed and is no size yet, as the page keeps it; empty: nothing.
    QString typed;
};

Result<std::vector<OwnOnDesk>> ownItems(Household &household);
/// For a new thing: nothing is kept of it until something is typed.
QString newOwnItem(Household &household);
/// What is built in under this id, without anything of a therapist's own; null: nothing is.
const catalogue::ItemKind *builtInItem(Household &household, const QString &id);

/// As it was typed last, even where the app was ended over it; else as the built-in one is, or
/// blank.
Result<OwnItemDraft> ownItemWriting(Household &household, const QString &id);
/// Whether it was signed off and nothing was typed since.
bool isItemSignedOff(Household &household, const QString &id);

/// Holds what is being typed, at once and on this phone alone.
Outcome holdItem(Household &household, const OwnItemDraft &draft);
/// Keeps what was held as the therapist's draft. Nothing new: writes nothing.
Outcome keepItem(Household &household, const QString &id);
Outcome throwAwayItem(Household &household, const QString &id);

Result<usecase::OwnFindings> findingsOfItem(Household &household, const OwnItemDraft &draft);
Result<usecase::OwnFindings> signOffItem(Household &household, const QString &id);

/// What it means for each box, before it is kept and after.
Result<std::vector<usecase::OwnReach>> reachOfItem(Household &household, const OwnItemDraft &draft);
Outcome sendItem(Household &household, const QString &child, const QString &id);
Outcome withdrawItem(Household &household, const QString &child, const QString &id);

} // namespace lidlark::mobile
