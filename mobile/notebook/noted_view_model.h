#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"

#include <vector>

namespace lidlark::mobile {

/// What was noted today, newest first, each with its way back.
class NotedViewModel : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(int count READ count NOTIFY loaded FINAL)
    /// Why the last tap changed nothing; empty: it did.
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role { WordsRole = Qt::UserRole, WhoRole, TakenBackRole, MineRole };

    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return rowCount(); }
    [[nodiscard]] QString problem() const { return m_problem; }

    Q_INVOKABLE bool takeBack(int row);
    Q_INVOKABLE bool putInAgain(int row);

signals:
    void loaded();

private:
    void load();
    bool change(int row, Outcome (Household::*how)(const std::string &));

    Household *m_household = nullptr;
    std::vector<usecase::Noted> m_noted;
    QString m_problem;
};

} // namespace lidlark::mobile
