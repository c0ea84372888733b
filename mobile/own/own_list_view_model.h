#pragma once

#include <QtQml/qqmlregistration.h>

#include "own_desk_rows.h"

namespace lidlark::mobile {

/// The therapist's own activities: drafts, those that are ready, and in whose boxes they are.
class OwnListViewModel : public lidlark::mobile::OwnDeskRows
{
    Q_OBJECT
    QML_ELEMENT

public:
    using OwnDeskRows::OwnDeskRows;

    /// A new one. @param from whose words it begins with; empty: nobody's.
    /// @returns its id; empty: `problem` says why there is none.
    Q_INVOKABLE QString start(const QString &from);
    /// Ours whose name holds @p words, by id; at most twelve.
    Q_INVOKABLE QStringList models(const QString &words) const;
    Q_INVOKABLE QString modelName(const QString &activity) const;
    Q_INVOKABLE QString modelDrawing(const QString &activity) const;

private:
    [[nodiscard]] Result<std::vector<OwnOnDesk>> desk(Household &household) const override;
    [[nodiscard]] QString nameOf(const OwnOnDesk &row) const override;
    [[nodiscard]] QString noteOf(const OwnOnDesk &row) const override;
};

} // namespace lidlark::mobile
