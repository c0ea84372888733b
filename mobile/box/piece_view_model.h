#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"
#include "mobile/bridge/kept_rows.h"

#include <vector>

namespace lidlark::mobile {

/// The pieces of a perishable that are still in the box: when each was opened, how long it keeps.
class PieceViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(QString itemId READ itemId WRITE setItemId REQUIRED)
    Q_PROPERTY(int count READ count NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)
    /// "today", "yesterday", "3 days ago", "a week ago", "not opened".
    Q_PROPERTY(QList<QString> openedChoices READ openedChoices CONSTANT FINAL)
    /// How long the family keeps it once opened: "a week", "two weeks", "a month", "no limit of
    /// ours".
    Q_PROPERTY(QList<QString> keepChoices READ keepChoices CONSTANT FINAL)
    Q_PROPERTY(int keepChoice READ keepChoice NOTIFY loaded FINAL) ///< -1: another limit.

public:
    enum Role {
        WordsRole = Qt::UserRole, ///< "Opened on 4 January. Left open twice."
        OpenedRole,
        PastDateRole,
        ChoiceRole ///< Index among the choices; -1: another day.
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
    [[nodiscard]] QString problem() const { return m_problem; }
    [[nodiscard]] static QStringList openedChoices();
    [[nodiscard]] static QStringList keepChoices();
    [[nodiscard]] int keepChoice() const;

    /// The piece was opened then; the last choice: not at all.
    Q_INVOKABLE void chooseOpened(int row, int choice);
    Q_INVOKABLE void leftOpen(int row);
    Q_INVOKABLE void chooseKeep(int choice);

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    void load();
    void readRows();
    void report(const Outcome &outcome);
    [[nodiscard]] int choiceOf(const box::PieceFreshness &piece) const;

    Household *m_household = nullptr;
    ItemId m_item;
    std::vector<box::PieceFreshness> m_pieces;
    std::optional<int> m_keepsDays;
    QString m_problem;
};

} // namespace lidlark::mobile
