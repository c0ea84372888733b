#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/kept_rows.h"
#include "mobile/bridge/own_desk.h"

#include <set>

namespace lidlark::mobile {

/// Child by child: whether an own activity fits the box and the home, whether it is there, and
/// who is chosen to have it.
class OwnBoxesViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(QString entry READ entry WRITE setEntry REQUIRED)
    /// Read when this changes: an activity that is signed off, or not.
    Q_PROPERTY(bool signedOff READ isSignedOff WRITE setSignedOff REQUIRED)
    Q_PROPERTY(int chosen READ chosen NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        ChildRole = Qt::UserRole,
        NoteRole, ///< What the gate says, and how it stands in the box.
        InBoxRole,
        ChosenRole ///< To have these words.
    };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString entry() const { return m_entry; }
    void setEntry(const QString &entry);
    [[nodiscard]] bool isSignedOff() const { return m_signedOff; }
    void setSignedOff(bool signedOff);
    [[nodiscard]] int chosen() const { return static_cast<int>(m_chosen.size()); }
    [[nodiscard]] QString problem() const { return m_problem; }

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    Q_INVOKABLE void choose(const QString &child, bool chosen);
    /// To all that are chosen. @returns whether every box has it.
    Q_INVOKABLE bool send();
    Q_INVOKABLE void withdraw(const QString &child);

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    void load();
    void answer(const Outcome &outcome);
    [[nodiscard]] QString noteOf(const usecase::OwnFit &fit) const;
    [[nodiscard]] bool hasTheseWords(const usecase::OwnFit &fit) const;

    Household *m_household = nullptr;
    QString m_entry;
    bool m_signedOff = false;
    std::string m_text;
    catalogue::Activity m_activity;
    std::vector<usecase::OwnFit> m_rows;
    std::set<QString> m_chosen;
    QString m_problem;
};

} // namespace lidlark::mobile
