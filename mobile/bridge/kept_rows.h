#pragma once

#include <QAbstractListModel>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace lidlark::mobile {

/// Rows that are read anew whenever something was written. Where the same rows stand in the same
/// order only what they say has changed: what shows them stays, and with it the focus of the
/// keyboard, the light of a switch and the place of a screen reader.
class KeptRows : public QAbstractListModel
{
    Q_OBJECT
    QML_ANONYMOUS

protected:
    using QAbstractListModel::QAbstractListModel;

    /// What tells one row from another, in their order.
    [[nodiscard]] virtual QStringList rowKeys() const = 0;

    /// @param read fills the rows; nobody looks at them meanwhile.
    template <typename Read> void renewRows(Read read)
    {
        const QStringList before = rowKeys();
        read();
        tellOfRows(before);
    }

private:
    void tellOfRows(const QStringList &before);
};

} // namespace lidlark::mobile
