#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"
#include "mobile/bridge/voice.h"

#include <map>
#include <set>
#include <vector>

namespace lidlark::mobile {

/// A full count of the box: what the count screen says now, and what differed once it was kept.
class CountViewModel : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    /// Says each piece that is counted up; null: silent.
    Q_PROPERTY(lidlark::mobile::Voice *voice MEMBER m_voice FINAL)
    Q_PROPERTY(int count READ count NOTIFY loaded FINAL)
    /// "Pegs: 5 counted, 6 expected. One is missing.": after it was kept.
    Q_PROPERTY(QList<QString> differences READ differences NOTIFY loaded FINAL)
    Q_PROPERTY(bool kept READ kept NOTIFY loaded FINAL)
    /// What is missing may lie on the floor.
    Q_PROPERTY(bool floorNote READ floorNote NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        ItemIdRole = Qt::UserRole,
        NameRole, ///< As inside a sentence: "stick-on eyes".
        DrawingRole,
        NoteRole, ///< "6 on the lid list. 1 still in use."
        CountedRole,
        SaidRole,     ///< Somebody has counted it on this page; else the ledger's number stands.
        ExpectedRole, ///< At most, in the box.
        LookRole,     ///< What to look for, with it in hand; empty: nothing.
        NextNameRole  ///< The item after this one; empty: the last.
    };

    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] int count() const { return rowCount(); }
    [[nodiscard]] QStringList differences() const { return m_differences; }
    [[nodiscard]] bool kept() const { return m_kept; }
    [[nodiscard]] bool floorNote() const { return m_floorNote; }
    [[nodiscard]] QString problem() const { return m_problem; }

    /// The picture was touched: one more; the first touch begins at one.
    Q_INVOKABLE void countUp(int row);
    /// @param pieces 0 to 99.
    Q_INVOKABLE void setCounted(int row, int pieces);
    /// Writes the full count. @returns false with `problem` said.
    Q_INVOKABLE bool keep();
    [[nodiscard]] Q_INVOKABLE bool isSaid(int row) const;

signals:
    void loaded();

private:
    void load();

    Household *m_household = nullptr;
    Voice *m_voice = nullptr;
    std::vector<usecase::BoxItem> m_rows;
    std::map<ItemId, int> m_counted;
    std::set<ItemId> m_said;
    QStringList m_differences;
    QString m_problem;
    bool m_kept = false;
    bool m_floorNote = false;
};

} // namespace lidlark::mobile
