#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/kept_rows.h"
#include "mobile/bridge/own_item_desk.h"

namespace lidlark::mobile {

/// The therapist's own things and those of ours that measure otherwise: drafts, those that are
/// ready, and in whose boxes they count.
class OwnItemListViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(int count READ rows NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role { EntryRole = Qt::UserRole, NameRole, DrawingRole, NoteRole };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int rows() const { return rowCount(); }
    [[nodiscard]] QString problem() const { return m_problem; }

    /// For a new one: nothing is kept of it yet.
    Q_INVOKABLE QString fresh() const;

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    void load();
    [[nodiscard]] static QString noteOf(const OwnItemOnDesk &row);

    Household *m_household = nullptr;
    std::vector<OwnItemOnDesk> m_rows;
    QString m_problem;
};

} // namespace lidlark::mobile
