#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"

namespace lidlark::mobile {

/// The chart of use of one item, for adults, and how long it probably lasts.
class UseViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(QString itemId READ itemId WRITE setItemId REQUIRED)
    Q_PROPERTY(QList<int> pieces READ pieces NOTIFY loaded FINAL) ///< A week each, oldest first.
    Q_PROPERTY(QList<QString> labels READ labels NOTIFY loaded FINAL)
    Q_PROPERTY(QString words READ words NOTIFY loaded FINAL) ///< The chart, read aloud.
    /// "Probably lasts 3 to 6 weeks.", and on how few data that rests.
    Q_PROPERTY(QList<QString> lasting READ lasting NOTIFY loaded FINAL)
    Q_PROPERTY(bool anyUse READ anyUse NOTIFY loaded FINAL)

public:
    using QObject::QObject;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString itemId() const;
    void setItemId(const QString &itemId);
    [[nodiscard]] QList<int> pieces() const { return m_pieces; }
    [[nodiscard]] QStringList labels() const { return m_labels; }
    [[nodiscard]] QString words() const { return m_words; }
    [[nodiscard]] QStringList lasting() const { return m_lasting; }
    [[nodiscard]] bool anyUse() const;

signals:
    void loaded();

private:
    void load();
    void readWeeks(const usecase::BoxItem &item);
    void readOutlook(const usecase::BoxItem &item);

    Household *m_household = nullptr;
    ItemId m_item;
    QList<int> m_pieces;
    QStringList m_labels;
    QString m_words;
    QStringList m_lasting;
};

} // namespace lidlark::mobile
