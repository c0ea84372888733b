#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/kept_rows.h"
#include "mobile/bridge/packing_desk.h"

namespace lidlark::mobile {

/// A box between two families: what is cleaned and what is replaced before another child has it.
class TendViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    /// Codes of all boxes that were ever handed over and are not retired.
    Q_PROPERTY(QList<QString> codes READ codes NOTIFY loaded FINAL)
    /// The box on the table; empty: the first of them.
    Q_PROPERTY(QString code READ code WRITE setCode NOTIFY loaded FINAL)
    Q_PROPERTY(QString standingWords READ standingWords NOTIFY loaded FINAL)
    Q_PROPERTY(bool withChild READ withChild NOTIFY loaded FINAL)
    Q_PROPERTY(bool returned READ returned NOTIFY loaded FINAL)
    /// What has to be done before another child has it, items named; empty: nothing.
    Q_PROPERTY(QString firstWords READ firstWords NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        ItemIdRole = Qt::UserRole,
        NameRole,
        DrawingRole,
        ReplaceRole, ///< It is replaced, never cleaned.
        DoneRole,
        StateRole ///< "Soap and water. Callum, today."; empty: still to do.
    };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString code() const;
    void setCode(const QString &code);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] QStringList codes() const { return m_codes; }
    [[nodiscard]] QString standingWords() const;
    [[nodiscard]] bool withChild() const;
    [[nodiscard]] bool returned() const;
    [[nodiscard]] QString firstWords() const;
    [[nodiscard]] QString problem() const { return m_problem; }

    Q_INVOKABLE void takeBack();
    /// @param how "soap-and-water", "wiped", "machine".
    Q_INVOKABLE void clean(int row, const QString &how);
    /// @param lot of the new one; may be empty.
    Q_INVOKABLE void replace(int row, const QString &lot);
    Q_INVOKABLE void untend(int row);
    Q_INVOKABLE void retire();

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    void load();
    void readRows();
    void readCodes();
    void answer(const Outcome &outcome);
    [[nodiscard]] usecase::BoxTending tendingAt(int row) const;

    Household *m_household = nullptr;
    QStringList m_codes;
    std::string m_code;
    usecase::TendedBox m_box;
    std::vector<ItemId> m_items; ///< Those to be cleaned, then those to be replaced.
    QString m_problem;
};

} // namespace lidlark::mobile
