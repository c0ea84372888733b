#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"
#include "mobile/bridge/new_list.h"
#include "mobile/bridge/sitting.h"

#include <map>
#include <vector>

namespace lidlark::mobile {

/// The lid list with its counts: what lies in the box, as far as anybody knows.
class BoxViewModel : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(lidlark::mobile::Sitting *sitting READ sitting WRITE setSitting REQUIRED)
    Q_PROPERTY(
        QString placeWords READ placeWords NOTIFY loaded FINAL) ///< "At home, says Ruth, Monday".
    Q_PROPERTY(QString revisionWords READ revisionWords NOTIFY loaded FINAL) ///< "Lid list R1".
    Q_PROPERTY(bool here READ here NOTIFY loaded FINAL)
    Q_PROPERTY(bool floorNote READ floorNote NOTIFY loaded FINAL)
    /// Things of the box must still leave the house.
    Q_PROPERTY(bool mustLeave READ mustLeave NOTIFY loaded FINAL)
    /// "The list on the lid is out of date ...", and why it was changed; empty: it is not.
    Q_PROPERTY(QString lidWords READ lidWords NOTIFY loaded FINAL)
    Q_PROPERTY(QString whyWords READ whyWords NOTIFY loaded FINAL)
    /// "On the way: silk scarf."; empty: nothing new is.
    Q_PROPERTY(QString onTheWay READ onTheWay NOTIFY loaded FINAL)
    /// Nobody has counted it all for a month.
    Q_PROPERTY(bool countDue READ countDue NOTIFY loaded FINAL)
    Q_PROPERTY(QString requestWords READ requestWords NOTIFY loaded FINAL) ///< "2 asked for".
    Q_PROPERTY(int count READ count NOTIFY loaded FINAL)
    /// Of all items, a space between them: the longest word decides how many stand side by side.
    Q_PROPERTY(QString names READ names NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        ItemIdRole = Qt::UserRole,
        NameRole,
        DrawingRole,
        CountTextRole,
        TagRole, ///< "low", "use soon", "which?", "taken out" ..., or empty.
        NoneRole ///< Nothing left.
    };

    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] Sitting *sitting() const { return m_sitting; }
    void setSitting(Sitting *sitting);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] QString placeWords() const;
    [[nodiscard]] QString revisionWords() const;
    [[nodiscard]] bool here() const;
    [[nodiscard]] bool floorNote() const { return m_floorNote; }
    [[nodiscard]] bool mustLeave() const { return m_mustLeave; }
    [[nodiscard]] bool countDue() const { return m_countDue; }
    [[nodiscard]] QString lidWords() const;
    [[nodiscard]] QString whyWords() const;
    [[nodiscard]] QString onTheWay() const;
    [[nodiscard]] QString requestWords() const;
    [[nodiscard]] int count() const { return rowCount(); }
    [[nodiscard]] QString names() const;
    [[nodiscard]] QString problem() const { return m_problem; }

    Q_INVOKABLE void load();
    /// "Box is here": known to everybody who shares it.
    Q_INVOKABLE void sayHere();
    /// "Not here": of this phone and this sitting alone.
    Q_INVOKABLE void sayNotHere();
    /// The new list is on the lid: of this phone alone.
    Q_INVOKABLE void sayLidIsNew();

signals:
    void loaded();

private:
    void readTakeOuts();
    void readNewList();
    [[nodiscard]] QString saidWords(const box::PlaceSaid &said) const;
    [[nodiscard]] QString tagOf(const usecase::BoxItem &item) const;

    Household *m_household = nullptr;
    Sitting *m_sitting = nullptr;
    std::optional<usecase::Family> m_family;
    std::vector<usecase::BoxItem> m_items;
    std::optional<usecase::RevisionState> m_list; ///< A new one.
    bool m_lidIsOld = false;
    std::map<ItemId, QString> m_outTags; ///< "taken out", "take out", "asked for".
    QString m_problem;
    bool m_floorNote = false;
    bool m_mustLeave = false;
    bool m_countDue = false;
};

} // namespace lidlark::mobile
