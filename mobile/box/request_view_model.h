#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"
#include "mobile/bridge/kept_rows.h"

#include <vector>

namespace lidlark::mobile {

/// What was asked for and how far it has come, then what runs low; of one item or of all.
class RequestViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    /// Of this item, low or not; empty: of all that are asked for or low.
    Q_PROPERTY(QString itemId READ itemId WRITE setItemId NOTIFY loaded FINAL)
    Q_PROPERTY(int count READ count NOTIFY loaded FINAL)
    Q_PROPERTY(int asked READ asked NOTIFY loaded FINAL) ///< Of these, open requests.
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)
    /// "Asked for", "Seen", "Packed", "On its way", "Counted in".
    Q_PROPERTY(QList<QString> steps READ steps CONSTANT FINAL)

public:
    enum Role {
        ItemIdRole = Qt::UserRole,
        NameRole,
        DrawingRole,
        NoteRole,    ///< "2 in the box, 6 on the lid list."
        IsOpenRole,  ///< Asked for, and not yet counted in.
        StepRole,    ///< Index among `steps`; -1: not asked for.
        SaidByRole,  ///< "Morven, Tuesday": of that step.
        SpokenRole,  ///< The step in one sentence.
        MissingRole, ///< Pieces that would fill the lid list again.
        HeadingRole  ///< Over the first of a kind; else empty.
    };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString itemId() const;
    void setItemId(const QString &itemId);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] int count() const { return rowCount(); }
    [[nodiscard]] int asked() const;
    [[nodiscard]] QString problem() const { return m_problem; }
    [[nodiscard]] static QStringList steps();

    Q_INVOKABLE bool ask(int row);
    /// @param step index among `steps`, below the last: that is `countIn`.
    Q_INVOKABLE bool move(int row, int step);
    Q_INVOKABLE bool countIn(int row, int pieces);

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    void load();
    void readRows();
    bool report(const Outcome &outcome);
    [[nodiscard]] ItemId itemAt(int row) const;
    [[nodiscard]] QString headingOf(int row) const;

    Household *m_household = nullptr;
    ItemId m_item;
    std::vector<usecase::BoxItem> m_rows;
    QString m_problem;
};

} // namespace lidlark::mobile
