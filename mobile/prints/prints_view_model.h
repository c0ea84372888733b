#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"
#include "mobile/prints/print_job.h"

#include <vector>

namespace lidlark::mobile {

/// What can be printed on this phone for the child on the table.
class PrintsViewModel : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    /// "R2 is in force since 25 January 2027 ..."; empty: the first list is.
    Q_PROPERTY(QString outOfDate READ outOfDate NOTIFY loaded FINAL)

public:
    enum Role { PrintRole = Qt::UserRole, NameRole, NoteRole };

    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] QString outOfDate() const { return m_outOfDate; }

    /// What it is called: "Lid list".
    static QString nameOf(Print what);

signals:
    void loaded();

private:
    void load();
    static QString noteOf(Print what);

    Household *m_household = nullptr;
    std::vector<Print> m_prints;
    QString m_outOfDate;
};

} // namespace lidlark::mobile
