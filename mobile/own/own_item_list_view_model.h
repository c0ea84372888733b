#pragma once

#include <QtQml/qqmlregistration.h>

#include "own_desk_rows.h"

namespace lidlark::mobile {

/// The therapist's own things and those of ours that measure otherwise: drafts, those that are
/// ready, and in whose boxes they count.
class OwnItemListViewModel : public lidlark::mobile::OwnDeskRows
{
    Q_OBJECT
    QML_ELEMENT

public:
    using OwnDeskRows::OwnDeskRows;

    /// For a new one: nothing is kept of it yet.
    Q_INVOKABLE QString fresh() const;

private:
    [[nodiscard]] Result<std::vector<OwnOnDesk>> desk(Household &household) const override;
    [[nodiscard]] QString nameOf(const OwnOnDesk &row) const override;
    [[nodiscard]] QString noteOf(const OwnOnDesk &row) const override;
};

} // namespace lidlark::mobile
