#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "typed_size.h"

#include <vector>

namespace lidlark::mobile {

/// Solids while they are measured: one piece, the same worn down, or what comes off it. One that
/// comes or goes leaves the others as they are, and the cursor where it was.
class OwnSolids : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Part of what is written")
    Q_PROPERTY(int count READ rows NOTIFY edited FINAL)
    Q_PROPERTY(int most READ most CONSTANT FINAL)
    /// Each has a name: what comes off.
    Q_PROPERTY(bool named READ isNamed CONSTANT FINAL)
    Q_PROPERTY(QList<QString> shapes READ shapes CONSTANT FINAL)

public:
    enum Role { ShapeRole = Qt::UserRole, LabelsRole, SizesRole, ProblemsRole, PartRole, CupRole };
    enum Sort { Whole, Worn, Parts };

    OwnSolids(Sort sort, QObject *parent);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int rows() const { return rowCount(); }
    [[nodiscard]] int most() const;
    [[nodiscard]] bool isNamed() const { return m_sort == Parts; }
    [[nodiscard]] QStringList shapes() const;

    void show(std::vector<TypedSolid> solids);
    [[nodiscard]] const std::vector<TypedSolid> &solids() const { return m_solids; }
    /// Of one a size is missing or is none.
    [[nodiscard]] bool isUnread() const;

    Q_INVOKABLE void add();
    Q_INVOKABLE void takeOut(int row);
    Q_INVOKABLE void choose(int row, int shape);
    Q_INVOKABLE void write(int row, int place, const QString &text);
    Q_INVOKABLE void call(int row, const QString &part);
    Q_INVOKABLE void turnCup(int row);

signals:
    void edited();

private:
    [[nodiscard]] bool has(int row) const { return row >= 0 && row < rowCount(); }
    [[nodiscard]] TypedSolid &at(int row) { return m_solids[static_cast<std::size_t>(row)]; }
    void changed(int row, const QList<int> &roles);

    Sort m_sort;
    std::vector<TypedSolid> m_solids;
};

} // namespace lidlark::mobile
