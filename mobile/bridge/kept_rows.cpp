#include "mobile/bridge/kept_rows.h"

namespace lidlark::mobile {

void KeptRows::tellOfRows(const QStringList &before)
{
    if (!before.isEmpty() && before == rowKeys()) {
        emit dataChanged(index(0), index(rowCount() - 1));
        return;
    }
    beginResetModel();
    endResetModel();
}

} // namespace lidlark::mobile
