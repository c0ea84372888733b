#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/kept_rows.h"
#include "mobile/bridge/packing_desk.h"

namespace lidlark::mobile {

/// A build on the packing table: its boxes, and how far each is.
class PackTableViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    /// Its id; empty: the newest.
    Q_PROPERTY(QString build READ build WRITE setBuild NOTIFY loaded FINAL)
    Q_PROPERTY(QString name READ name NOTIFY loaded FINAL)
    /// Names and ids of all builds, newest first.
    Q_PROPERTY(QList<QString> buildNames READ buildNames NOTIFY loaded FINAL)
    Q_PROPERTY(QList<QString> buildIds READ buildIds NOTIFY loaded FINAL)
    Q_PROPERTY(int count READ rowCount NOTIFY loaded FINAL)
    /// "3 of 12 ready".
    Q_PROPERTY(QString readyWords READ readyWords NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        CodeRole = Qt::UserRole,
        WhoseRole,
        StateRole, ///< In words.
        SpecialRole,
        ReadyRole,
        GoneRole ///< It was handed over.
    };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString build() const;
    void setBuild(const QString &build);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] QString name() const;
    [[nodiscard]] QStringList buildNames() const;
    [[nodiscard]] QStringList buildIds() const;
    [[nodiscard]] QString readyWords() const;
    [[nodiscard]] QString problem() const { return m_problem; }

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    void load();
    void readRows();
    [[nodiscard]] bool isGone(const std::string &code) const;

    Household *m_household = nullptr;
    workbench::BuildId m_build;
    std::vector<store::BuildRow> m_builds;
    usecase::PackTable m_table;
    QString m_problem;
};

} // namespace lidlark::mobile
