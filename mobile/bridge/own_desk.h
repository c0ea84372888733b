#pragma once

#include <QString>
#include <QStringList>

#include "core/usecase/own_entries.h"
#include "mobile/bridge/household.h"

#include <vector>

namespace lidlark::mobile {

/// What the pages of a therapist's own activities ask of the store on the table.

/// One thing or activity on the desk: as it was typed last, and in whose boxes it is.
struct OwnOnDesk {
    QString id;
    QString name; ///< Empty: not yet named.
    QString drawing;
    bool signedOff = false;
    QStringList children; ///< Whose boxes have it.
    bool newer = false;   ///< Some of these boxes have other words than the desk.
};

/// Adds to @p row in whose boxes @p kept is.
Outcome addBoxes(Household &household, const workbench::OwnKept &kept, OwnOnDesk &row);

Result<std::vector<OwnOnDesk>> ownActivities(Household &household);

/// A new one on the desk. @param from the id of an activity whose words it begins with; empty:
/// none.
/// @returns its id.
Result<QString> startOwn(Household &household, const QString &from);

/// As it was typed last, even where the app was ended over it.
Result<catalogue::Activity> ownWriting(Household &household, const QString &id);
/// Whether it was signed off and nothing was typed since.
bool isSignedOff(Household &household, const QString &id);

/// Holds what is being typed, at once and on this phone alone.
Outcome holdWriting(Household &household, const catalogue::Activity &activity);
/// Keeps what was held as the therapist's draft. Nothing new: writes nothing.
Outcome keepWriting(Household &household, const QString &id);

Result<usecase::OwnFindings> findingsOf(Household &household, const catalogue::Activity &activity);
Result<usecase::OwnFindings> signOff(Household &household, const QString &id);
Outcome throwAwayOwn(Household &household, const QString &id);

/// What the gate says in each box; empty while the loader refuses it.
Result<std::vector<usecase::OwnFit>> fitsOf(Household &household,
                                            const catalogue::Activity &activity);
Outcome sendOwn(Household &household, const QString &child, const QString &id);
Outcome withdrawOwn(Household &household, const QString &child, const QString &id);

/// Who wrote an own activity that is in the child's box: "Written by Morven, not yet checked by a
/// clinician."; empty for what is built in, and for what a clinician has signed.
QString ownNotice(Household &household, const catalogue::Activity &activity);

} // namespace lidlark::mobile
