#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/buying_desk.h"
#include "mobile/bridge/kept_rows.h"

namespace lidlark::mobile {

/// All builds, newest first, and a new one while it is written.
class BuildsViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(int count READ rowCount NOTIFY loaded FINAL)
    /// How many kinds of box there are.
    Q_PROPERTY(int designs READ designs NOTIFY loaded FINAL)
    /// Of a new build: on which day it is packed, in words, and its spares in percent.
    Q_PROPERTY(QString dayWords READ dayWords NOTIFY loaded FINAL)
    Q_PROPERTY(int spares READ spares WRITE setSpares NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        BuildIdRole = Qt::UserRole,
        NameRole,
        NoteRole ///< "4 January. Boxes: 6. Ready: 2."
    };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] int designs() const { return m_designs; }
    [[nodiscard]] QString dayWords() const;
    [[nodiscard]] int spares() const { return m_new.sparesPercent; }
    void setSpares(int percent);
    [[nodiscard]] QString problem() const { return m_problem; }

    Q_INVOKABLE void moveDay(int days);
    /// @returns its id; empty: `problem` says why not, and what was typed stays.
    Q_INVOKABLE QString start(const QString &name, const QString &currency);

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    struct Row {
        store::BuildRow build;
        int ready = 0;
    };
    void load();
    void readRows();

    Household *m_household = nullptr;
    std::vector<Row> m_rows;
    workbench::KeptBuild m_new;
    int m_designs = 0;
    QString m_problem;
};

} // namespace lidlark::mobile
