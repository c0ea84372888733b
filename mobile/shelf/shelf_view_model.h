#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/kept_rows.h"
#include "mobile/bridge/shelf_desk.h"

#include <vector>

namespace lidlark::mobile {

/// All that boxes are packed with: how much of it lies on the shelf, and how it is bought.
class ShelfViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    /// Part of a name, a shop or a lot; empty: everything.
    Q_PROPERTY(QString searched READ searched WRITE setSearched NOTIFY asked FINAL)
    /// One of `Only`.
    Q_PROPERTY(int only READ only WRITE setOnly NOTIFY asked FINAL)
    Q_PROPERTY(int count READ rowCountNow NOTIFY loaded FINAL)
    /// "25 things, 3 without a price."
    Q_PROPERTY(QString words READ words NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        ItemIdRole = Qt::UserRole,
        NameRole,
        DrawingRole,
        NoteRole, ///< "24 for £1.50. Lot L-12."
        StockRole ///< "120 pieces"; "None left".
    };
    enum Only { All, NoPrice, NoneLeft, UsedUp };
    Q_ENUM(Only)

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString searched() const { return m_searched; }
    void setSearched(const QString &searched);
    [[nodiscard]] int only() const { return m_only; }
    void setOnly(int only);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int rowCountNow() const { return rowCount(); }
    [[nodiscard]] QString words() const;
    [[nodiscard]] QString problem() const { return m_problem; }

signals:
    void loaded();
    void asked();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    void load();
    void choose();
    [[nodiscard]] bool isWanted(const ShelfThing &thing) const;
    [[nodiscard]] QString noteOf(const ShelfThing &thing) const;

    Household *m_household = nullptr;
    QString m_searched;
    int m_only = All;
    std::string m_currency;
    std::vector<ShelfThing> m_things;
    std::vector<std::size_t> m_rows; ///< Those of `m_things` that are shown.
    QString m_problem;
};

} // namespace lidlark::mobile
