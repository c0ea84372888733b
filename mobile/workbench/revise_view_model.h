#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"
#include "mobile/bridge/kept_rows.h"
#include "mobile/bridge/workbench_desk.h"

#include <map>
#include <vector>

namespace lidlark::mobile {

/// A lid list while it is being changed: nothing is written before it is sent.
class ReviseViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(int nextNumber READ nextNumber NOTIFY loaded FINAL)
    Q_PROPERTY(bool changed READ isChanged NOTIFY loaded FINAL)
    /// What sending it does, a line each: which activities go, what the home takes out, what is to
    /// be sent.
    Q_PROPERTY(QList<QString> effects READ effects NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        ItemIdRole = Qt::UserRole,
        NameRole,
        DrawingRole,
        NoteRole,   ///< "6 until now"; "new".
        PiecesRole, ///< 0: left out.
        OutRole,
        SwapIdRole, ///< What could stand in for a thing left out, and is not on the list; or empty.
        SwapNameRole
    };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int nextNumber() const { return m_number + 1; }
    [[nodiscard]] bool isChanged() const;
    [[nodiscard]] QStringList effects() const { return m_effects; }
    [[nodiscard]] QString problem() const { return m_problem; }

    [[nodiscard]] Q_INVOKABLE bool has(const QString &itemId) const;
    Q_INVOKABLE void setPieces(const QString &itemId, int pieces);
    Q_INVOKABLE void leaveOut(const QString &itemId, bool out);
    /// With the pieces of a standard box, at least one.
    Q_INVOKABLE void putIn(const QString &itemId);
    /// As many as there were of what it stands in for, unless a standard box has some.
    Q_INVOKABLE void putInFor(const QString &itemId, const QString &leftOut);
    /// @returns whether it was sent; else `problem` says why, and nothing is lost.
    Q_INVOKABLE bool send(const QString &why);

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    using Packed = std::map<ItemId, int>;
    void load();
    void tell();
    void put(const ItemId &item, int pieces);
    [[nodiscard]] Packed packed() const;
    [[nodiscard]] QString nameOf(const ItemId &item) const;
    [[nodiscard]] QString noteOf(const ItemId &item) const;
    [[nodiscard]] ItemId swapOf(const ItemId &item) const;
    [[nodiscard]] QStringList effectsOf(const usecase::RevisionWeighed &weighed) const;
    [[nodiscard]] QString listed(const std::vector<usecase::Pieces> &things) const;
    [[nodiscard]] QString activities(const std::vector<ActivityId> &ids) const;

    Household *m_household = nullptr;
    int m_number = 0;
    Packed m_before;
    std::vector<ItemId> m_order; ///< As they stand on the page: those of the list, then the new.
    Packed m_pieces;             ///< 0: left out.
    QStringList m_effects;
    QString m_problem;
};

} // namespace lidlark::mobile
