#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"
#include "mobile/bridge/kept_rows.h"

#include <vector>

namespace lidlark::mobile {

/// The page of one child's box for the one who packs it: what waits, how far the last change of the
/// lid list has come, and the list in force.
class ChildViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    /// What waits, each its lines joined: "Needs stock", then what.
    Q_PROPERTY(QList<QString> matters READ matters NOTIFY loaded FINAL)
    Q_PROPERTY(QList<QString> matterLines READ matterLines NOTIFY loaded FINAL)
    /// How far the last change has come; empty: the box has the list it was handed over with.
    Q_PROPERTY(QString changeWords READ changeWords NOTIFY loaded FINAL)
    Q_PROPERTY(QString listWords READ listWords NOTIFY loaded FINAL) ///< "Lid list R2".
    /// What is shared of plays (mobile/bridge/shared_lines.h); empty: nothing is said of it.
    Q_PROPERTY(QList<QString> shared READ shared NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role { ItemIdRole = Qt::UserRole, NameRole, DrawingRole, NoteRole };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] QStringList matters() const { return m_matters; }
    [[nodiscard]] QStringList matterLines() const { return m_matterLines; }
    [[nodiscard]] QString changeWords() const { return m_change; }
    [[nodiscard]] QString listWords() const;
    [[nodiscard]] QStringList shared() const { return m_shared; }
    [[nodiscard]] QString problem() const { return m_problem; }

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    void load();
    void readMatters();
    void readRows();

    Household *m_household = nullptr;
    std::vector<usecase::BoxItem> m_items; ///< Of the list in force.
    int m_number = 0;
    QStringList m_matters;
    QStringList m_matterLines;
    QString m_change;
    QStringList m_shared;
    QString m_problem;
};

} // namespace lidlark::mobile
