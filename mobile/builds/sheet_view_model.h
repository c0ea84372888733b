#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/buying_desk.h"
#include "mobile/bridge/kept_rows.h"

namespace lidlark::mobile {

/// The sheet of one build: what is to be put right first, what is spent today and for what, and, as
/// another thing altogether, what lies in each box.
class SheetViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(QString build READ build WRITE setBuild REQUIRED)
    Q_PROPERTY(QString name READ name NOTIFY loaded FINAL)
    Q_PROPERTY(int count READ rowCount NOTIFY loaded FINAL)
    Q_PROPERTY(int boxes READ boxes NOTIFY loaded FINAL)
    Q_PROPERTY(QList<QString> problems READ problems NOTIFY loaded FINAL)
    /// What is paid at the till: "£220.34"; empty: it cannot be reckoned yet.
    Q_PROPERTY(QString spend READ spend NOTIFY loaded FINAL)
    /// There is something to buy, to set aside or to put back.
    Q_PROPERTY(bool open READ isOpen NOTIFY loaded FINAL)
    /// All that was bought for these boxes so far, a line each.
    Q_PROPERTY(QList<QString> bought READ bought NOTIFY loaded FINAL)
    /// Boxes that are alike in cost and content, once: "Standard box, as designed", the codes, what
    /// lies in each of them.
    Q_PROPERTY(QList<QString> boxNames READ boxNames NOTIFY loaded FINAL)
    Q_PROPERTY(QList<QString> boxCodes READ boxCodes NOTIFY loaded FINAL)
    Q_PROPERTY(QList<QString> boxWorths READ boxWorths NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        ItemIdRole = Qt::UserRole,
        NameRole,
        DrawingRole,
        NeedRole, ///< "In the boxes: 150. Spares: 0. On the shelf: 10."
        BuyRole,  ///< "School Supply: packs of 24, 6 to buy, £9.00"; one line a shop.
        LeftRole  ///< "On the shelf afterwards: 4."
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
    [[nodiscard]] int boxes() const { return static_cast<int>(m_sheet.build.boxes.size()); }
    [[nodiscard]] QStringList problems() const;
    [[nodiscard]] QString spend() const;
    [[nodiscard]] bool isOpen() const;
    [[nodiscard]] QStringList bought() const;
    [[nodiscard]] QStringList boxNames() const;
    [[nodiscard]] QStringList boxCodes() const;
    [[nodiscard]] QStringList boxWorths() const;
    [[nodiscard]] QString problem() const { return m_problem; }

    /// Where a problem is put right: "shelf", "build", a box's code after "box ", or a thing of the
    /// shelf after "supply ".
    [[nodiscard]] Q_INVOKABLE QString placeOf(int problem) const;
    Q_INVOKABLE void book();

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    struct Group {
        std::vector<std::size_t> boxes; ///< Places in the build.
        std::int64_t pence = 0;
        bool unpriced = false; ///< Something of it has no price.
    };
    void load();
    void readRows();
    void groupBoxes();
    [[nodiscard]] const workbench::Sheet *sheet() const;
    [[nodiscard]] const workbench::BuildProblems *faults() const;
    [[nodiscard]] QString buyWords(const workbench::SheetLine &line,
                                   const workbench::Supply &supply) const;
    [[nodiscard]] QString needWords(const workbench::SheetLine &line) const;
    [[nodiscard]] QString groupName(const Group &group) const;

    Household *m_household = nullptr;
    workbench::BuildId m_build;
    usecase::BuildSheet m_sheet{{}, {}, {}, workbench::BuildProblems{}};
    std::vector<std::size_t> m_lines; ///< Of the sheet's lines, those that are shown.
    std::vector<Group> m_groups;
    workbench::Designs m_designs;
    BoughtNames m_names;
    QString m_problem;
};

} // namespace lidlark::mobile
