#pragma once

#include <QtQml/qqmlregistration.h>

#include "core/catalogue/activity.h"
#include "mobile/bridge/household.h"
#include "mobile/bridge/kept_rows.h"

namespace lidlark::mobile {

/// What an activity is played with, each thing with its number, and what else there is to choose.
class OwnThings : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Part of what is written")
    Q_PROPERTY(int count READ rows NOTIFY edited FINAL)

public:
    enum Role {
        ItemIdRole = Qt::UserRole,
        NameRole,
        DrawingRole,
        PiecesRole,
        MostRole, ///< As many as a box has.
        NoteRole, ///< What to mind about it: "Small parts"; empty: nothing.
        SpareRole ///< It can be left out.
    };

    using KeptRows::KeptRows;
    void show(Household *household, std::vector<catalogue::ItemUse> uses);
    [[nodiscard]] const std::vector<catalogue::ItemUse> &uses() const { return m_uses; }

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int rows() const { return rowCount(); }

    /// What is not there yet and whose name holds @p words, by id.
    Q_INVOKABLE QStringList others(const QString &words) const;
    Q_INVOKABLE QString nameOf(const QString &itemId) const;
    Q_INVOKABLE QString drawingOf(const QString &itemId) const;
    Q_INVOKABLE QString noteOf(const QString &itemId) const;
    Q_INVOKABLE void add(const QString &itemId);
    Q_INVOKABLE void takeOut(int row);
    Q_INVOKABLE void setPieces(int row, int pieces);
    Q_INVOKABLE void spare(int row, bool spare);

signals:
    void edited();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    [[nodiscard]] const catalogue::ItemKind *kindOf(const ItemId &item) const;
    void count(catalogue::ItemUse &use, int pieces) const;

    Household *m_household = nullptr;
    std::vector<catalogue::ItemUse> m_uses;
};

} // namespace lidlark::mobile
