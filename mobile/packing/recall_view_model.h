#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/packing_desk.h"

namespace lidlark::mobile {

/// A lot is typed; every box that may hold it is shown, and where it is.
class RecallViewModel : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household MEMBER m_household REQUIRED)
    /// "3 boxes may hold it."; empty: nothing was looked for.
    Q_PROPERTY(QString words READ words NOTIFY found FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY found FINAL)

public:
    enum Role { CodeRole = Qt::UserRole, ItemRole, DrawingRole, PlaceRole };

    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] QString words() const { return m_words; }
    [[nodiscard]] QString problem() const { return m_problem; }

    Q_INVOKABLE void look(const QString &lot);

signals:
    void found();

private:
    Household *m_household = nullptr;
    std::vector<store::LotFound> m_rows;
    QString m_words;
    QString m_problem;
};

} // namespace lidlark::mobile
