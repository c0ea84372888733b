#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/kept_rows.h"
#include "mobile/bridge/own_desk.h"

namespace lidlark::mobile {

/// What lies on the therapist's own desk, a row each, read anew whenever the store has changed.
class OwnDeskRows : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ANONYMOUS
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

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;
    void setProblem(const QString &problem) { m_problem = problem; }

private:
    [[nodiscard]] virtual Result<std::vector<OwnOnDesk>> desk(Household &household) const = 0;
    /// How it is called; in whose boxes it is.
    [[nodiscard]] virtual QString nameOf(const OwnOnDesk &row) const = 0;
    [[nodiscard]] virtual QString noteOf(const OwnOnDesk &row) const = 0;
    void load();

    Household *m_household = nullptr;
    std::vector<OwnOnDesk> m_rows;
    QString m_problem;
};

} // namespace lidlark::mobile
