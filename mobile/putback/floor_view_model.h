#pragma once

#include <QAbstractListModel>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"

#include <map>

namespace lidlark::mobile {

/// Pieces that may lie on the floor, one row an item, and the ways to close that (job.md scenarios
/// 2 and 5). What is found is said first and written when it is kept.
class FloorViewModel : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household MEMBER m_household REQUIRED)
    /// "Two stick-on eyes are missing."
    Q_PROPERTY(QString lead READ lead NOTIFY loaded FINAL)
    /// "First look at each child's hands and mouth. ..."
    Q_PROPERTY(QString text READ text NOTIFY loaded FINAL)
    /// Pieces that are named as found and not yet kept.
    Q_PROPERTY(int named READ named NOTIFY namedChanged FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        ItemIdRole = Qt::UserRole,
        NameRole,
        DrawingRole,
        NoteRole,    ///< "Two missing."
        MissingRole, ///< Pieces.
        FoundRole,   ///< Pieces named as found so far.
        WholeRole,   ///< All or none: a burst balloon is found when every piece is.
        WholeTextRole
    };

    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] QString lead() const;
    [[nodiscard]] QString text() const;
    [[nodiscard]] int named() const;
    [[nodiscard]] QString problem() const { return m_problem; }

    Q_INVOKABLE void load();
    /// How many of that row turned up; the same number again takes it back.
    Q_INVOKABLE void nameFound(int row, int pieces);
    /// Keeps what was named. @returns whether nothing is missing any more.
    Q_INVOKABLE bool keepFound();
    /// The floor was looked over, and nothing more was found. @returns whether that was kept.
    Q_INVOKABLE bool floorChecked();

signals:
    void loaded();
    void namedChanged();

private:
    [[nodiscard]] const usecase::MissingItem *rowAt(int row) const;
    bool report(const Outcome &outcome);

    Household *m_household = nullptr;
    usecase::FloorSearch m_search;
    std::map<ItemId, int> m_found;
    QString m_problem;
};

} // namespace lidlark::mobile
