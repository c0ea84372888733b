#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"
#include "mobile/bridge/kept_rows.h"
#include "mobile/bridge/new_list.h"

#include <vector>

namespace lidlark::mobile {

/// What must leave the house: since somebody must avoid it, then since a new lid list has it no
/// more; then what stays although it looks alike (job.md scenarios 3 and 7).
class TakeOutViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    /// "This is a latex-free home now."
    Q_PROPERTY(QString lead READ lead NOTIFY loaded FINAL)
    /// "Take these out of the house, then wash hands. Trouble breathing ..."
    Q_PROPERTY(QString text READ text NOTIFY loaded FINAL)
    /// Who said so and when, a line each.
    Q_PROPERTY(QList<QString> said READ said NOTIFY loaded FINAL)
    /// What else in the house may hold it, a line each.
    Q_PROPERTY(QList<QString> atHome READ atHome NOTIFY loaded FINAL)
    Q_PROPERTY(bool allOut READ allOut NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        ItemIdRole = Qt::UserRole,
        HeadingRole, ///< Over the first of a kind; else empty.
        NameRole,
        DrawingRole,
        NoteRole,
        StaysRole,
        OutRole
    };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] QString lead() const;
    [[nodiscard]] QString text() const;
    [[nodiscard]] QStringList said() const;
    [[nodiscard]] QStringList atHome() const;
    [[nodiscard]] bool allOut() const;
    [[nodiscard]] QString problem() const { return m_problem; }

    /// All pieces of that row have left the house.
    Q_INVOKABLE void confirm(int row);

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    struct Row {
        ItemId item;
        QString note;
        QString heading; ///< Of its kind.
        bool stays = false;
        bool out = false;
    };
    void load();
    void readRows();
    void addRemoved();
    [[nodiscard]] QString outWords(const std::string &by, const DayPart &when) const;
    [[nodiscard]] Row rowFor(const usecase::RemovedThing &thing) const;
    [[nodiscard]] Row rowFor(const usecase::TakeOutThing &thing) const;
    [[nodiscard]] Row rowForStaying(const ItemId &item, child::Avoided what) const;

    Household *m_household = nullptr;
    std::vector<usecase::TakeOut> m_takeOuts;
    std::optional<usecase::RevisionState> m_list; ///< A new one.
    std::vector<Row> m_rows;
    QString m_problem;
};

} // namespace lidlark::mobile
