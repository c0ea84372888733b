#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"

namespace lidlark::mobile {

/// The words for an emergency, a row for each thing that may have gone wrong
/// (core/wording/emergency_words.h), and the numbers the family has entered.
class EmergencyViewModel : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    /// "Call your local emergency number."
    Q_PROPERTY(QString firstLine READ firstLine NOTIFY loaded FINAL)
    Q_PROPERTY(QString callText READ callText NOTIFY loaded FINAL) ///< Empty: no number entered.
    Q_PROPERTY(QString poisonText READ poisonText NOTIFY loaded FINAL)
    Q_PROPERTY(QString callUrl READ callUrl NOTIFY loaded FINAL) ///< "tel:112"
    Q_PROPERTY(QString poisonUrl READ poisonUrl NOTIFY loaded FINAL)

public:
    enum Role {
        NameRole = Qt::UserRole, ///< "airway", "swallowed", "breathing", "eye"
        TitleRole,
        LinesRole
    };

    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] QString firstLine() const;
    [[nodiscard]] QString callText() const;
    [[nodiscard]] QString poisonText() const;
    [[nodiscard]] QString callUrl() const;
    [[nodiscard]] QString poisonUrl() const;

signals:
    void loaded();

private:
    Household *m_household = nullptr;
    std::string m_emergencyNumber;
    std::string m_poisonLine;
};

} // namespace lidlark::mobile
