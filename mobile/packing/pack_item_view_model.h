#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/kept_rows.h"
#include "mobile/bridge/packing_desk.h"

#include <vector>

namespace lidlark::mobile {

/// One item of a build: which boxes get how many of it, each with its tick. The next item is one
/// tap away.
class PackItemViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(QString build READ build WRITE setBuild REQUIRED)
    /// Of the items of the build, the how-manieth lies on the table; from 0.
    Q_PROPERTY(int at READ at WRITE setAt NOTIFY loaded FINAL)
    Q_PROPERTY(int items READ items NOTIFY loaded FINAL)
    Q_PROPERTY(QString name READ name NOTIFY loaded FINAL)
    Q_PROPERTY(QString drawing READ drawing NOTIFY loaded FINAL)
    /// "132 in all, 60 still to go in".
    Q_PROPERTY(QString countWords READ countWords NOTIFY loaded FINAL)
    /// So many boxes in which nothing is called out are still without it.
    Q_PROPERTY(int plain READ plain NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        CodeRole = Qt::UserRole,
        WhoseRole,
        PiecesRole,
        CallRole,  ///< "Silicone loops, not rubber bands. For an allergy."; else empty.
        StateRole, ///< In words; empty: still open.
        InRole,
        HandRole, ///< "left", "right", or empty: it does not matter.
        WrongRole ///< Something is wrong with what lies in it.
    };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString build() const;
    void setBuild(const QString &build);
    [[nodiscard]] int at() const { return m_at; }
    void setAt(int at);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] int items() const { return static_cast<int>(m_items.size()); }
    [[nodiscard]] QString name() const;
    [[nodiscard]] QString drawing() const;
    [[nodiscard]] QString countWords() const;
    [[nodiscard]] int plain() const { return m_plain; }
    [[nodiscard]] QString problem() const { return m_problem; }

    /// It lies in that box. @param hand as read off the thing: "left", "right"; else empty.
    Q_INVOKABLE void tick(int row, const QString &hand);
    Q_INVOKABLE void untick(int row);
    /// It lies in all the plain boxes.
    Q_INVOKABLE void tickPlain();

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    struct Row {
        std::string code;
        std::string whose;
        workbench::PackLine line;
        QString call;
    };
    void load();
    void readRows();
    void readItems(const usecase::PackTable &table);
    void addRow(const workbench::PackBox &box);
    void answer(const Outcome &outcome);
    [[nodiscard]] ItemId item() const;

    Household *m_household = nullptr;
    workbench::BuildId m_build;
    int m_at = 0;
    int m_plain = 0;
    std::vector<ItemId> m_items;
    std::vector<Row> m_rows;
    std::string m_refused; ///< Box: what was in hand is for the other hand, and so put back.
    QString m_problem;
};

} // namespace lidlark::mobile
