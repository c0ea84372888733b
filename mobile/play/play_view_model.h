#pragma once

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "core/wording/label_words.h"
#include "mobile/bridge/household.h"
#include "mobile/bridge/play_in_hand.h"

namespace lidlark::mobile {

/// The activity in hand as sentences and pictures, one step at a time.
class PlayViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household MEMBER m_household REQUIRED)
    Q_PROPERTY(lidlark::mobile::PlayInHand *playInHand READ playInHand WRITE setPlayInHand REQUIRED)
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(QString lead READ lead NOTIFY changed FINAL) ///< Who sits where.
    /// The English stands under what guards somebody, so that it is twice as long.
    Q_PROPERTY(bool inTwoLanguages READ inTwoLanguages NOTIFY changed FINAL)
    Q_PROPERTY(QString cautions READ cautions NOTIFY changed FINAL) ///< The first few sentences.
    Q_PROPERTY(QList<QString> allCautions READ allCautions NOTIFY changed FINAL)
    /// Words of a regulation, exactly, and where they stand.
    Q_PROPERTY(QList<QString> labelWords READ labelWords NOTIFY changed FINAL)
    Q_PROPERTY(QString labelSource READ labelSource NOTIFY changed FINAL)
    Q_PROPERTY(QString adultLine READ adultLine NOTIFY changed FINAL)
    Q_PROPERTY(QString invite READ invite NOTIFY changed FINAL)
    Q_PROPERTY(int stepCount READ stepCount NOTIFY changed FINAL)
    Q_PROPERTY(int step READ step NOTIFY changed FINAL)
    Q_PROPERTY(QString stepText READ stepText NOTIFY changed FINAL)
    Q_PROPERTY(QString drawing READ drawing NOTIFY changed FINAL)
    Q_PROPERTY(QString drawingAlt READ drawingAlt NOTIFY changed FINAL)
    /// The line in use, or else the first one, of each way.
    Q_PROPERTY(QString easier READ easier NOTIFY changed FINAL)
    Q_PROPERTY(QString harder READ harder NOTIFY changed FINAL)
    /// "as-written", "easier" or "harder": how it is played.
    Q_PROPERTY(QString way READ way NOTIFY changed FINAL)
    /// Why it is played that way; empty where nobody has said.
    Q_PROPERTY(QString gradingNote READ gradingNote NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> swapLines READ swapLines NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> say READ say NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> watchFor READ watchFor NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> waysIn READ waysIn NOTIFY changed FINAL)
    Q_PROPERTY(bool balloon READ balloon NOTIFY changed FINAL)
    /// Of an activity of the therapist's own: who wrote it; else empty.
    Q_PROPERTY(QString writtenBy READ writtenBy NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] PlayInHand *playInHand() const { return m_playInHand; }
    void setPlayInHand(PlayInHand *playInHand);

    [[nodiscard]] QString name() const;
    [[nodiscard]] QString lead() const;
    [[nodiscard]] bool inTwoLanguages() const;
    [[nodiscard]] QString cautions() const;
    [[nodiscard]] QStringList allCautions() const;
    [[nodiscard]] QStringList labelWords() const;
    [[nodiscard]] QString labelSource() const;
    [[nodiscard]] QString adultLine() const;
    [[nodiscard]] QString invite() const;
    [[nodiscard]] int stepCount() const;
    [[nodiscard]] int step() const;
    [[nodiscard]] QString stepText() const;
    [[nodiscard]] QString drawing() const;
    [[nodiscard]] QString drawingAlt() const;
    [[nodiscard]] QString easier() const;
    [[nodiscard]] QString harder() const;
    [[nodiscard]] QString way() const;
    [[nodiscard]] QString gradingNote() const;
    [[nodiscard]] QStringList swapLines() const;
    [[nodiscard]] QStringList say() const;
    [[nodiscard]] QStringList watchFor() const;
    [[nodiscard]] QStringList waysIn() const;
    [[nodiscard]] bool balloon() const;
    [[nodiscard]] QString writtenBy() const;

signals:
    void changed();

private:
    [[nodiscard]] const catalogue::Activity *activityInHand() const;
    [[nodiscard]] std::vector<wording::Sentence> cautionSentences() const;
    [[nodiscard]] std::vector<wording::LabelWords> label() const;
    [[nodiscard]] const catalogue::Step *currentStep() const;
    [[nodiscard]] QString lineOf(play::Way way) const;

    Household *m_household = nullptr;
    PlayInHand *m_playInHand = nullptr;
};

} // namespace lidlark::mobile
