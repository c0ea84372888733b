#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/buying_desk.h"
#include "mobile/bridge/kept_rows.h"

namespace lidlark::mobile {

/// One box of a build while it is changed: hand, what goes in, what is swapped or left out and why.
/// Nothing is kept before somebody says so.
class BuildBoxViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(QString build READ build WRITE setBuild REQUIRED)
    Q_PROPERTY(QString code READ code WRITE setCode REQUIRED)
    Q_PROPERTY(QString whose READ whose NOTIFY loaded FINAL)
    /// Children of this store for whom no box of the build is, this one's own among them.
    Q_PROPERTY(QList<QString> children READ children NOTIFY loaded FINAL)
    /// What its home must avoid, in words; empty: nothing.
    Q_PROPERTY(QString avoidWords READ avoidWords NOTIFY loaded FINAL)
    /// "left", "right", or empty: not said.
    Q_PROPERTY(QString hand READ hand WRITE setHand NOTIFY loaded FINAL)
    /// Names of the reasons, and how they are called.
    Q_PROPERTY(QList<QString> reasonIds READ reasonIds CONSTANT FINAL)
    Q_PROPERTY(QList<QString> reasonNames READ reasonNames CONSTANT FINAL)
    Q_PROPERTY(bool changed READ isChanged NOTIFY loaded FINAL)
    /// Ids of what is in it, or belongs there.
    Q_PROPERTY(QList<QString> items READ items NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        ItemIdRole = Qt::UserRole, ///< Of the design; of the box where it was added.
        NameRole,                  ///< Of what lies in the box, else of what was left out.
        DrawingRole,
        PiecesRole,   ///< 0: left out.
        StateRole,    ///< How it differs from the design, in words; empty: not at all.
        DiffersRole,  ///< A reason is to be given.
        ReasonRole,   ///< One of `reasonIds`; empty: none yet.
        WordsRole,    ///< Of the therapist's own.
        SwapNameRole, ///< What the catalogue would put in its place; empty: nothing.
        SwappedRole
    };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString build() const;
    void setBuild(const QString &build);
    [[nodiscard]] QString code() const;
    void setCode(const QString &code);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] QString whose() const;
    [[nodiscard]] QStringList children() const { return m_children; }
    [[nodiscard]] QString avoidWords() const;
    [[nodiscard]] QString hand() const;
    void setHand(const QString &hand);
    [[nodiscard]] static QStringList reasonIds();
    [[nodiscard]] static QStringList reasonNames();
    [[nodiscard]] bool isChanged() const { return m_box != m_kept; }
    [[nodiscard]] QStringList items() const { return rowKeys(); }
    [[nodiscard]] QString problem() const { return m_problem; }

    [[nodiscard]] Q_INVOKABLE bool has(const QString &itemId) const;
    /// Filled in anew for a child, with what the homes must avoid.
    Q_INVOKABLE void fillFor(const QString &child);
    Q_INVOKABLE void setPieces(int row, int pieces);
    Q_INVOKABLE void leaveOut(int row);
    /// As the design has it.
    Q_INVOKABLE void putBack(int row);
    Q_INVOKABLE void swap(int row);
    Q_INVOKABLE void putIn(const QString &itemId);
    Q_INVOKABLE void setReason(int row, const QString &reason);
    Q_INVOKABLE void setWords(int row, const QString &words);
    /// @returns whether it was kept; else `problem` says why not.
    Q_INVOKABLE bool keep(const QString &whose);
    Q_INVOKABLE bool drop();

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    /// A thing of the design, or one that was added.
    struct Row {
        ItemId item;
        int usual = 0; ///< 0: added.
    };
    void read();
    void tell();
    [[nodiscard]] std::vector<Row> rowsOf() const;
    [[nodiscard]] const Row &rowAt(int row) const { return m_rows[static_cast<std::size_t>(row)]; }
    [[nodiscard]] bool isRow(int row) const { return row >= 0 && row < rowCount(); }
    /// Among the parts of the box; past them: nothing lies there for the row.
    [[nodiscard]] std::size_t placeOf(const Row &row) const;
    /// What lies in the box for a row; null: nothing.
    [[nodiscard]] const workbench::BoxPart *partFor(const Row &row) const;
    [[nodiscard]] workbench::BoxPart *partFor(const Row &row);
    [[nodiscard]] bool isOtherHandAlone(const workbench::BoxPart &part) const;
    [[nodiscard]] bool differs(const Row &row) const;
    [[nodiscard]] QString stateOf(const Row &row) const;
    [[nodiscard]] const catalogue::ItemKind *swapOf(const Row &row) const;
    [[nodiscard]] const workbench::Departure *reasonOf(const ItemId &item) const;
    workbench::Departure &reasonFor(const ItemId &item);

    Household *m_household = nullptr;
    workbench::BuildId m_build;
    std::string m_code;
    workbench::KeptBox m_kept;
    workbench::KeptBox m_box;
    workbench::Design m_design;
    std::vector<Row> m_rows;
    BoughtNames m_names;
    QStringList m_children;
    QString m_problem;
};

} // namespace lidlark::mobile
