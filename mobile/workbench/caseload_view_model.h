#pragma once

#include <QtQml/qqmlregistration.h>

#include "core/wording/caseload_words.h"
#include "mobile/bridge/household.h"
#include "mobile/bridge/kept_rows.h"
#include "mobile/bridge/workbench_desk.h"

#include <vector>

namespace lidlark::mobile {

/// The board: each child under each thing that the box needs, then those whose box needs nothing
/// (job.md T16). Nothing of when or how often anybody played.
class CaseloadViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(QString boxWords READ boxWords NOTIFY loaded FINAL) ///< "10 boxes".
    /// "3 things to pack": asked for and not packed yet, over all boxes.
    Q_PROPERTY(QString packWords READ packWords NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        ChildRole = Qt::UserRole, ///< Alias.
        HeadingRole,              ///< Over the first of a column: "Needs stock"; else empty.
        MatterRole,               ///< The column, by name, for each row; empty: nothing waits.
        WordsRole                 ///< Lines.
    };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] QString boxWords() const;
    [[nodiscard]] QString packWords() const;
    [[nodiscard]] QString problem() const { return m_problem; }

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    struct Row {
        QString child;
        QString matter; ///< Words of the column.
        QStringList lines;
    };
    void load();
    void readRows();
    void addColumn(const std::vector<usecase::BoxHealth> &all, wording::BoxMatter matter);

    Household *m_household = nullptr;
    std::vector<Row> m_rows;
    int m_boxes = 0;
    int m_toPack = 0;
    QString m_problem;
};

} // namespace lidlark::mobile
