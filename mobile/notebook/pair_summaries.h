#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"

#include <vector>

namespace lidlark::mobile {

/// What the child told before and after, a row for each activity with enough of it (checkin.md 7).
/// What an adult guessed has rows of its own.
class PairSummaries : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(int count READ count NOTIFY loaded FINAL)

public:
    enum Role { NameRole = Qt::UserRole, TextRole };

    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return rowCount(); }

signals:
    void loaded();

private:
    void load();
    void add(const usecase::Family &family, checkin::ShownBy by);

    struct Summary {
        QString name;
        QString text;
    };

    Household *m_household = nullptr;
    std::vector<Summary> m_summaries;
};

} // namespace lidlark::mobile
