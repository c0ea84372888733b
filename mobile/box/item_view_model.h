#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"

#include <optional>

namespace lidlark::mobile {

/// All that is known of one item of the box, and what an adult may say of it.
class ItemViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(QString itemId READ itemId WRITE setItemId REQUIRED)
    Q_PROPERTY(QString name READ name NOTIFY loaded FINAL) ///< "Stick-on eyes".
    Q_PROPERTY(QString drawing READ drawing NOTIFY loaded FINAL)
    Q_PROPERTY(QString countWords READ countWords NOTIFY loaded FINAL) ///< "4 or 5 in the box".
    Q_PROPERTY(QString standWords READ standWords NOTIFY loaded FINAL) ///< What else is said.
    Q_PROPERTY(int most READ most NOTIFY loaded FINAL) ///< Pieces that may lie in the box.
    Q_PROPERTY(int out READ out NOTIFY loaded FINAL)   ///< Still in use.
    Q_PROPERTY(QList<QString> care READ care NOTIFY loaded FINAL)
    Q_PROPERTY(QList<QString> exceptionWords READ exceptionWords CONSTANT FINAL)

    Q_PROPERTY(bool mouthed READ mouthed NOTIFY loaded FINAL)
    Q_PROPERTY(bool cleanable READ cleanable NOTIFY loaded FINAL)
    Q_PROPERTY(QString mouthedWords READ mouthedWords NOTIFY loaded FINAL)
    Q_PROPERTY(QList<QString> afterMouth READ afterMouth NOTIFY loaded FINAL)

    Q_PROPERTY(bool lookDue READ lookDue NOTIFY loaded FINAL)
    Q_PROPERTY(QString look READ look NOTIFY loaded FINAL) ///< "Feel it: is it still soft?"
    Q_PROPERTY(QString lookedWords READ lookedWords NOTIFY loaded FINAL)
    Q_PROPERTY(bool pastDate READ pastDate NOTIFY loaded FINAL)

    Q_PROPERTY(QList<QString> rescue READ rescue NOTIFY loaded FINAL)
    Q_PROPERTY(QString petNotice READ petNotice NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    using QObject::QObject;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString itemId() const;
    void setItemId(const QString &itemId);

    [[nodiscard]] QString name() const;
    [[nodiscard]] QString drawing() const;
    [[nodiscard]] QString countWords() const;
    [[nodiscard]] QString standWords() const;
    [[nodiscard]] int most() const { return m_item ? m_item->row.high : 0; }
    [[nodiscard]] int out() const { return m_item ? m_item->row.out : 0; }
    [[nodiscard]] QStringList care() const;
    [[nodiscard]] static QStringList exceptionWords();
    [[nodiscard]] bool mouthed() const { return m_item && m_item->row.care.mouthed; }
    [[nodiscard]] bool cleanable() const { return kind() != nullptr && kind()->cleanable; }
    [[nodiscard]] QString mouthedWords() const;
    [[nodiscard]] QStringList afterMouth() const;
    [[nodiscard]] bool lookDue() const { return m_item && m_item->freshness.lookDue && most() > 0; }
    [[nodiscard]] QString look() const;
    [[nodiscard]] QString lookedWords() const;
    [[nodiscard]] bool pastDate() const { return m_item && m_item->freshness.pastDate > 0; }
    [[nodiscard]] QStringList rescue() const;
    [[nodiscard]] QString petNotice() const;
    [[nodiscard]] QString problem() const { return m_problem; }

    /// Pieces are gone. @param word index among `exceptionWords`. @param daysAgo 0 or 1.
    /// @returns false with `problem` said.
    Q_INVOKABLE bool noteGone(int word, int pieces, int daysAgo);
    Q_INVOKABLE bool noteBackAgain(int pieces);
    Q_INVOKABLE bool noteGood();
    /// "mouthed", "washed", "replaced".
    Q_INVOKABLE bool noteHygiene(const QString &mark);
    Q_INVOKABLE bool throwAway();
    /// Something lies on a floor that must be looked for before anything else.
    Q_INVOKABLE bool needsFloorCheck() const;

signals:
    void loaded();

private:
    void load();
    bool report(const Outcome &outcome);
    [[nodiscard]] const catalogue::ItemKind *kind() const
    {
        return m_item ? m_item->kind : nullptr;
    }

    Household *m_household = nullptr;
    ItemId m_id;
    std::optional<usecase::BoxItem> m_item;
    QString m_problem;
};

} // namespace lidlark::mobile
