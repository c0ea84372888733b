#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "core/workbench/supply.h"

#include <optional>
#include <vector>

namespace lidlark::mobile {

/// The ways to buy one thing while they are written, in the order in which they are liked: as they
/// were typed, with what is wrong with each field.
class PackOffers : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("A part of SupplyViewModel")
    Q_PROPERTY(int count READ rowCountNow NOTIFY edited FINAL)

public:
    enum Role {
        ShopRole = Qt::UserRole,
        PiecesRole,
        PriceRole,
        CurrencyRole, ///< Empty: that of the build.
        PiecesProblemRole,
        PriceProblemRole
    };

    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int rowCountNow() const { return rowCount(); }

    void show(const std::vector<workbench::PackOffer> &offers);
    /// What was typed, told at each field where it is not to be read.
    /// @param currency of the build. @returns nothing where some of it cannot be kept.
    std::optional<std::vector<workbench::PackOffer>> read(const std::string &currency);
    /// The row that `read` met first with something wrong; -1: none.
    [[nodiscard]] Q_INVOKABLE int firstWrong() const;
    /// Everything that is typed, one line after another.
    [[nodiscard]] QStringList typed() const;

    Q_INVOKABLE void setShop(int row, const QString &text);
    Q_INVOKABLE void setPieces(int row, const QString &text);
    Q_INVOKABLE void setPrice(int row, const QString &text);
    Q_INVOKABLE void add();
    Q_INVOKABLE void remove(int row);
    /// Liked better than the one before it.
    Q_INVOKABLE void moveUp(int row);

signals:
    void edited();

private:
    struct Row {
        QString shop;
        QString pieces;
        QString price;
        std::string currency;
        QString piecesProblem;
        QString priceProblem;
    };
    [[nodiscard]] bool has(int row) const { return row >= 0 && row < rowCount(); }
    Row &at(int row) { return m_rows[static_cast<std::size_t>(row)]; }
    void changed(int row);
    static workbench::PackOffer readRow(Row &row, const std::string &currency);

    std::vector<Row> m_rows;
};

} // namespace lidlark::mobile
