#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"
#include "mobile/bridge/take_out_words.h"

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
    Q_PROPERTY(int count READ count NOTIFY loaded FINAL)
    /// What has to leave this home; empty: nothing.
    Q_PROPERTY(QString takeOutLead READ takeOutLead NOTIFY loaded FINAL)
    Q_PROPERTY(QString takeOutText READ takeOutText NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        ItemIdRole = Qt::UserRole,
        NameRole,
        DrawingRole,
        CountTextRole,
        TagRole,  ///< "low", "drying", "which?", or empty.
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
    [[nodiscard]] bool floorNote() const;
    [[nodiscard]] int count() const { return rowCount(); }
    [[nodiscard]] QString takeOutLead() const { return m_takeOut.lead; }
    [[nodiscard]] QString takeOutText() const { return m_takeOut.text; }
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
    TakeOutWords m_takeOut;
    std::map<ItemId, int> m_counted;
    QString m_problem;
};

} // namespace lidlark::mobile
