#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/buying_desk.h"
#include "mobile/bridge/kept_rows.h"

namespace lidlark::mobile {

/// One build: what is said of it, its boxes, and more boxes while somebody thinks about adding
/// them.
class BuildViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(QString build READ build WRITE setBuild REQUIRED)
    Q_PROPERTY(int count READ rowCount NOTIFY loaded FINAL)
    /// As it is being written: kept only by `keepHead`.
    Q_PROPERTY(QString name READ name NOTIFY loaded FINAL)
    Q_PROPERTY(QString dayWords READ dayWords NOTIFY loaded FINAL)
    Q_PROPERTY(QString currency READ currency NOTIFY loaded FINAL)
    Q_PROPERTY(int spares READ spares WRITE setSpares NOTIFY loaded FINAL)
    Q_PROPERTY(QString headWords READ headWords NOTIFY loaded FINAL)
    /// "Bought on 4 January for £220.34."; empty: not yet.
    Q_PROPERTY(QString boughtWords READ boughtWords NOTIFY loaded FINAL)
    /// Kinds of box to choose from, and the one that is added.
    Q_PROPERTY(QList<QString> designIds READ designIds NOTIFY loaded FINAL)
    Q_PROPERTY(QList<QString> designNames READ designNames NOTIFY loaded FINAL)
    Q_PROPERTY(QString design READ design WRITE setDesign NOTIFY loaded FINAL)
    /// Children of this store who have no box in this build yet.
    Q_PROPERTY(QList<QString> childrenLeft READ childrenLeft NOTIFY loaded FINAL)
    /// What is thought about: "K7 for Anya"; empty: nothing.
    Q_PROPERTY(QString thought READ thought NOTIFY loaded FINAL)
    Q_PROPERTY(QList<QString> thoughtLines READ thoughtLines NOTIFY loaded FINAL)
    Q_PROPERTY(QList<QString> costLines READ costLines NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role { CodeRole = Qt::UserRole, WhoseRole, NoteRole, SpecialRole };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString build() const;
    void setBuild(const QString &build);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] QString name() const;
    [[nodiscard]] QString dayWords() const;
    [[nodiscard]] QString currency() const;
    [[nodiscard]] int spares() const { return m_head.sparesPercent; }
    void setSpares(int percent);
    [[nodiscard]] QString headWords() const;
    [[nodiscard]] QString boughtWords() const;
    [[nodiscard]] QStringList designIds() const;
    [[nodiscard]] QStringList designNames() const;
    [[nodiscard]] QString design() const;
    void setDesign(const QString &design);
    [[nodiscard]] QStringList childrenLeft() const;
    [[nodiscard]] QString thought() const;
    [[nodiscard]] QStringList thoughtLines() const;
    [[nodiscard]] QStringList costLines() const { return m_cost; }
    [[nodiscard]] QString problem() const { return m_problem; }

    Q_INVOKABLE void moveDay(int days);
    Q_INVOKABLE bool keepHead(const QString &name, const QString &currency);
    /// A box for that child, or so many for nobody: said, and not kept yet.
    /// @param children one, or several at once.
    Q_INVOKABLE void thinkOf(const QStringList &children);
    Q_INVOKABLE void thinkOfSome(int boxes);
    Q_INVOKABLE void forget();
    /// Keeps what is thought about.
    Q_INVOKABLE bool add();

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    void load();
    void readRows();
    void setThought(const Result<std::vector<workbench::KeptBox>> &boxes);
    [[nodiscard]] const workbench::Design *designOf(const workbench::KeptBox &box) const;

    Household *m_household = nullptr;
    workbench::BuildId m_id;
    workbench::KeptBuild m_build;
    workbench::KeptBuild m_head; ///< While it is written.
    workbench::Designs m_designs;
    workbench::DesignId m_design;
    BoughtNames m_names;
    std::vector<workbench::KeptBox> m_thought;
    QStringList m_cost;
    QString m_problem;
};

} // namespace lidlark::mobile
