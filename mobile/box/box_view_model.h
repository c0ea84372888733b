#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"

#include <map>

namespace lidlark::mobile {

/// The lid list with its counts: what lies in the box, as far as anybody knows.
class BoxViewModel : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(
        QString placeWords READ placeWords NOTIFY loaded FINAL) ///< "At home, says Ruth, Monday".
    Q_PROPERTY(QString revisionWords READ revisionWords NOTIFY loaded FINAL) ///< "Lid list R1".
    Q_PROPERTY(bool here READ here NOTIFY loaded FINAL)
    Q_PROPERTY(bool floorNote READ floorNote NOTIFY loaded FINAL)
    /// Things of the box must still leave the house.
    Q_PROPERTY(bool mustLeave READ mustLeave NOTIFY loaded FINAL)
    Q_PROPERTY(int count READ count NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        ItemIdRole = Qt::UserRole,
        NameRole,
        DrawingRole,
        CountTextRole,
        TagRole,  ///< "low", "drying", "which?", "taken out" ..., or empty.
        NoneRole, ///< Nothing left.
        ExpectedRole,
        CountedRole, ///< What the count screen says now.
        CareRole
    };

    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] QString placeWords() const;
    [[nodiscard]] QString revisionWords() const;
    [[nodiscard]] bool here() const;
    [[nodiscard]] bool floorNote() const { return m_floorNote; }
    [[nodiscard]] bool mustLeave() const { return m_mustLeave; }
    [[nodiscard]] int count() const { return rowCount(); }
    [[nodiscard]] QString problem() const { return m_problem; }

    Q_INVOKABLE void load();
    /// "Box is here", or gone: "school", "away".
    Q_INVOKABLE void sayPlace(const QString &place);
    Q_INVOKABLE void setCounted(int row, int pieces);
    /// Writes the full count. @returns false with `problem` said.
    Q_INVOKABLE bool keepCount();

signals:
    void loaded();

private:
    [[nodiscard]] QString tagOf(const store::ItemRow &row) const;

    Household *m_household = nullptr;
    std::optional<usecase::Family> m_family;
    std::map<ItemId, int> m_counted;
    std::map<ItemId, QString> m_outTags; ///< "taken out", "take out", "asked for".
    QString m_problem;
    bool m_floorNote = false;
    bool m_mustLeave = false;
};

} // namespace lidlark::mobile
