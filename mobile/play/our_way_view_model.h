#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/play_in_hand.h"

namespace lidlark::mobile {

/// The family's own way of playing the activity in hand.
class OurWayViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::PlayInHand *playInHand READ playInHand WRITE setPlayInHand REQUIRED)
    Q_PROPERTY(QString words READ words NOTIFY changed FINAL) ///< Empty: none kept.
    /// This phone is one of the home's own, so it may keep one.
    Q_PROPERTY(bool mayKeep READ mayKeep NOTIFY changed FINAL)
    /// Why the last tap changed nothing; empty: it did.
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(int longest READ longest CONSTANT FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] PlayInHand *playInHand() const { return m_playInHand; }
    void setPlayInHand(PlayInHand *playInHand);
    [[nodiscard]] QString words() const { return m_words; }
    [[nodiscard]] bool mayKeep() const;
    [[nodiscard]] QString problem() const { return m_problem; }
    [[nodiscard]] static int longest();

    /// Empty: takes it off.
    Q_INVOKABLE bool keep(const QString &words);

signals:
    void changed();

private:
    void load();

    PlayInHand *m_playInHand = nullptr;
    QString m_words;
    QString m_problem;
};

} // namespace lidlark::mobile
